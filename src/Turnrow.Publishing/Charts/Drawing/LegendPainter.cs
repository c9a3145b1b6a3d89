using System.Globalization;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Charts.Layout;
using Turnrow.Publishing.Charts.Layout.Rounds;
using Turnrow.Publishing.Charts.Symbols;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Charts.Drawing;

/// <summary>Draws the legend: each sign that the chart uses, in the terms asked for.</summary>
/// <param name="svg">Where to.</param>
/// <param name="terms">The terms.</param>
/// <param name="isRound">True if all of the chart's rows are rounds.</param>
/// <param name="yarns">The yarns' names.</param>
internal sealed class LegendPainter(SvgWriter svg, Terms terms, bool isRound, IReadOnlyList<string> yarns)
{
    private const double SampleWidth = 56;
    private const double AfterSample = 6;
    private const double TextSize = 13;
    private const double BetweenEntries = 22;
    private const double BetweenLines = 8;
    private const double LowestLine = 22;

    /// <summary>Draws entries in lines as wide as there is room, and returns the height they take.</summary>
    public double Draw(IEnumerable<LegendEntry> entries, double left, double top, double width)
    {
        var start = top;
        var line = new List<(LegendEntry Entry, string Text, double Width)>();
        var used = 0.0;
        foreach (var entry in entries)
        {
            var text = TextOf(entry);
            var needed = SampleWidth + AfterSample + ChartScale.TextWidth(text, TextSize) + BetweenEntries;
            if (line.Count > 0 && used + needed > width)
            {
                top += DrawLine(line, left, top);
                line.Clear();
                used = 0;
            }

            line.Add((entry, text, needed));
            used += needed;
        }

        if (line.Count > 0) top += DrawLine(line, left, top);
        return top - start;
    }

    private double DrawLine(List<(LegendEntry Entry, string Text, double Width)> line, double left, double top)
    {
        var height = LowestLine;
        foreach (var (entry, _, _) in line) height = Math.Max(height, HeightOf(entry));
        foreach (var (entry, text, width) in line)
        {
            DrawSample(entry, new Point(left + (SampleWidth / 2), top + ((height + HeightOf(entry)) / 2)));
            svg.Open("text").With("x", left + SampleWidth + AfterSample).With("y", top + (height / 2) + 4.5).With("font-size", TextSize).Text(text).Close();
            left += width;
        }

        return height + BetweenLines;
    }

    private static double HeightOf(LegendEntry entry) => entry.Sign switch
    {
        LegendSign.Stitch when entry.Stitch is { Making: StitchMaking.Spur, Form: { } form } => SpurSymbol.HeightOf(form) + 6,
        LegendSign.Stitch or LegendSign.Increase or LegendSign.Decrease or LegendSign.Cluster => ChartScale.HeightOf(entry.Stitch),
        LegendSign.Special => ChartScale.HeightOf(HighestOf(entry.Stitch!.Form!)),
        LegendSign.CountedChain or LegendSign.DecreasingChain or LegendSign.UncountedChain => ChartScale.HeightOf(entry.Stitch),
        LegendSign.Sides or LegendSign.Hook => 30,
        _ => LowestLine,
    };

    private void DrawSample(LegendEntry entry, Point foot)
    {
        var ink = new Ink();
        var head = foot - new Point(0, HeightOf(entry) - 4);
        var middle = foot.Towards(head, 0.5);
        switch (entry.Sign)
        {
            case LegendSign.Stitch or LegendSign.Increase or LegendSign.Decrease or LegendSign.Cluster or LegendSign.Special:
                Legs(ink, entry, foot - new Point(0, 3), head);
                break;
            case LegendSign.Hook:
                CrossSymbol.Instance.Leg(ink, foot - new Point(0, 8), foot - new Point(0, 24), 0);
                if (entry.Hook.RowsDown() > 0) ink.Line(foot - new Point(0, 8), foot - new Point(0, 1));
                HookMark.Draw(ink, foot - new Point(0, 8), entry.Hook);
                break;
            case LegendSign.Chain:
                ink.Oval(middle, new Point(1, 0), 8, OvalSymbol.Across);
                break;
            case LegendSign.CountedChain or LegendSign.DecreasingChain or LegendSign.UncountedChain:
                OvalSymbol.Chain(ink, foot, head, entry.Count);
                break;
            case LegendSign.SlipOver:
                ink.Dot(middle, DotSymbol.Radius);
                break;
            case LegendSign.RoundJoin:
                ink.Dot(middle, RowPainter.JoinRadius);
                break;
            case LegendSign.JoinBeside:
                ink.Line(middle - new Point(9, 0), middle);
                ink.Dot(middle, DotSymbol.Radius);
                break;
            case LegendSign.Unworked:
                ink.Line(middle - new Point(4, 0), middle + new Point(4, 0));
                break;
            case LegendSign.Waiting:
                WaitingPainter.Mark(ink, middle);
                break;
            case LegendSign.OverWaiting:
                for (var y = -7.5; y <= 7.5; y += 5) ink.Line(middle + new Point(0, y), middle + new Point(0, y + 1.5));
                break;
            case LegendSign.Base:
                ink.Lines(middle + new Point(-20, 0), middle + new Point(20, 0));
                for (var x = -10; x <= 10; x += 20) ink.Line(middle + new Point(x, 0), middle + new Point(x, 5));
                break;
            case LegendSign.Ring:
                Ring(ink, middle, entry.Count);
                break;
            case LegendSign.Way:
                Marks.Arrow(ink, middle - new Point(14, 0), towardsRight: false);
                break;
            case LegendSign.Start:
                Marks.Arrow(ink, middle + new Point(14, 0), towardsRight: true);
                break;
            case LegendSign.Join:
                Marks.Join(ink, middle - new Point(5, 0), towardsRight: false);
                break;
            case LegendSign.Cut:
                Marks.Cut(ink, middle + new Point(5, 0), towardsRight: false);
                break;
            default:
                Drawn(entry, middle, ink);
                break;
        }

        ink.WriteTo(svg);
    }

    private void Drawn(LegendEntry entry, Point middle, Ink ink)
    {
        switch (entry.Sign)
        {
            case LegendSign.Yarn:
                YarnPainter.Fill(svg, entry.Count, middle.X - 20, middle.Y - 9, middle.X + 20, middle.Y + 9);
                svg.Open("rect").With("x", middle.X - 20).With("y", middle.Y - 9).With("width", 40.0).With("height", 18.0).With("fill", "none").With("stroke", "currentColor").With("stroke-width", 0.7).Close();
                break;
            case LegendSign.Sides:
                svg.Open("rect").With("x", middle.X - 20).With("y", middle.Y - 9).With("width", 40.0).With("height", 18.0)
                    .With("fill", "#e4e4e4").Close();
                break;
            case LegendSign.Number:
                svg.Open("text").With("x", middle.X).With("y", middle.Y + 4.5).With("font-size", TextSize).With("text-anchor", "middle").Text(entry.Count > 0 ? $"({entry.Count.ToString(CultureInfo.InvariantCulture)})" : "(?)").Close();
                break;
            case LegendSign.Fold:
                foreach (var x in (ReadOnlySpan<double>)[-16, 16])
                    ink.Lines(middle + new Point(x, 9), middle + new Point(x, 3), middle + new Point(x - 3, 1), middle + new Point(x + 3, -1), middle + new Point(x, -3), middle + new Point(x, -9));
                break;
            case LegendSign.HiddenRows:
                ink.Lines(middle + new Point(-20, -2), middle + new Point(-10, 3), middle + new Point(0, -2), middle + new Point(10, 3), middle + new Point(20, -2));
                break;
        }
    }

    private static void Ring(Ink ink, Point middle, int chains)
    {
        const double radius = 7;
        if (chains == 0) ink.Oval(middle, new Point(1, 0), radius, radius);
        for (var i = 0; i < Math.Min(chains, 6); i++)
        {
            var up = Compass.Up(i / (double)Math.Min(chains, 6));
            ink.Oval(middle + (up * radius), up.Across(), 3.2, 1.7);
        }
    }

    private static void Legs(Ink ink, LegendEntry entry, Point foot, Point head)
    {
        if (entry.Stitch is { Making: StitchMaking.Spur, Form: { } spur })
        {
            SpurSymbol.Draw(ink, foot, spur);
            return;
        }

        if (entry.Sign == LegendSign.Special)
        {
            Places(ink, entry.Stitch!.Form!, foot, head);
            return;
        }

        if (entry.Stitch is { Symbol.Shape: SymbolShape.Parts, Form: { } form })
        {
            Parts(ink, form, foot, head);
            return;
        }

        var symbol = Symbol.Of(entry.Stitch!.Symbol);
        var legs = Math.Max(1, entry.Count);
        var bars = entry.Stitch.Symbol.Bars;
        // Wide spreads are drawn narrow enough for the sample's room.
        var apart = Math.Min(ChartScale.Column, (SampleWidth - 22) / Math.Max(1, legs - 1));
        for (var leg = 0; leg < legs; leg++)
        {
            var aside = new Point((leg - ((legs - 1) / 2.0)) * apart, 0);
            if (entry.Sign == LegendSign.Increase)
            {
                symbol.Leg(ink, foot, head + aside, bars);
                symbol.Head(ink, head + aside);
                continue;
            }

            if (entry.Sign == LegendSign.Cluster) ink.Line(foot, foot.Towards(head, 0.4) + (aside * 0.4));
            var from = entry.Sign == LegendSign.Cluster ? foot.Towards(head, 0.4) + (aside * 0.4) : foot + aside;
            symbol.Leg(ink, from, head, entry.Sign == LegendSign.Cluster ? Math.Min(1, bars) : bars);
        }

        if (entry.Sign != LegendSign.Increase) symbol.Head(ink, head);
    }

    // Stitches that end together, each from its own place.
    private static void Parts(Ink ink, StitchForm form, Point foot, Point head)
    {
        var apart = Math.Min(ChartScale.Column, (SampleWidth - 22) / Math.Max(1, form.Takes - 1));
        foreach (var part in form.Parts)
        {
            if (part.Stitch is not { } stitch) continue;
            var aside = new Point((part.Place - ((form.Takes - 1) / 2.0)) * apart, 0);
            Symbol.Of(stitch.Symbol).Leg(ink, foot + aside, head, stitch.Symbol.Bars);
            Symbol.Of(stitch.Symbol).Head(ink, head);
        }
    }

    // Stitches and spaces side by side, each stitch from its own place.
    private static void Places(Ink ink, StitchForm form, Point foot, Point head)
    {
        var wide = Math.Max(form.Places, form.Takes);
        var apart = Math.Min(ChartScale.Column, (SampleWidth - 12) / Math.Max(1, wide - 1));
        var made = 0;
        foreach (var part in form.Parts)
        {
            if (part.Stitch is not { } stitch)
            {
                OvalSymbol.Arc(ink, At(head, made - 0.5, form.Places), At(head, made + 0.5, form.Places), part.Count, 2.5);
                made++;
                continue;
            }

            if (part.IsKnot)
            {
                Knot(ink, stitch, At(head, made - 1, form.Places));
                continue;
            }

            var (symbol, top) = (Symbol.Of(stitch.Symbol), head + new Point(0, ChartScale.HeightOf(HighestOf(form)) - ChartScale.HeightOf(stitch)));
            for (var i = 0; i < part.Count; i++, made++)
            {
                symbol.Leg(ink, At(foot, part.Place, Math.Max(1, form.Takes)), At(top, made, form.Places), stitch.Symbol.Bars);
                symbol.Head(ink, At(top, made, form.Places));
            }
        }

        void Knot(Ink on, Stitch stitch, Point at)
        {
            if (stitch.Making == StitchMaking.Spur) SpurSymbol.Draw(on, at, stitch.Form!);
            else Symbol.Of(stitch.Symbol).Leg(on, at, at - new Point(0, ChartScale.HeightOf(stitch) / 2), 0);
        }

        Point At(Point middle, double index, int count) => middle + new Point((index - ((count - 1) / 2.0)) * apart, 0);
    }

    private static Stitch HighestOf(StitchForm form) => form.Parts.Select(static part => part.Worked).OfType<Stitch>().MaxBy(static stitch => stitch.Height)!;

    private string Row => isRound ? "round" : "row";

    private string TextOf(LegendEntry entry)
    {
        var name = entry.Stitch?.In(terms);
        var count = entry.Count.ToString(CultureInfo.InvariantCulture);
        return entry.Sign switch
        {
            LegendSign.Stitch or LegendSign.Special => $"{name!.Name} ({name.Abbreviation}){(entry.Stitch?.Making == StitchMaking.Reversed ? ", worked from left to right" : string.Empty)}",
            LegendSign.Increase => $"{count} {name!.Abbreviation} in one place",
            LegendSign.Decrease => $"{name!.Abbreviation}{count}tog: {count} {name.Abbreviation} together",
            LegendSign.Cluster => $"{count} {name!.Abbreviation} together in one place",
            LegendSign.Yarn => Names.Words(yarns[entry.Count]),
            LegendSign.Hook => HookText(entry.Hook),
            LegendSign.Chain => "chain (ch)",
            LegendSign.CountedChain => $"ch {count} at a {Row}’s start: the first {name!.Abbreviation}",
            LegendSign.DecreasingChain => $"ch {count} at a {Row}’s start: the first leg of a decrease",
            LegendSign.UncountedChain => $"ch {count} at a {Row}’s start: not a stitch",
            LegendSign.SlipOver => "slip stitch (sl st)",
            LegendSign.RoundJoin => "slip stitch (sl st) that joins the round",
            LegendSign.JoinBeside => $"{name!.Name} ({name.Abbreviation}) into the piece beside it",
            LegendSign.Unworked => "stitch left unworked",
            LegendSign.Waiting => "stitch left for a later row",
            LegendSign.OverWaiting => "worked into a stitch left before",
            LegendSign.Base => "the edge it is worked on",
            LegendSign.Ring => entry.Count == 0 ? "adjustable ring: start here" : $"ring of {count} ch: start here",
            LegendSign.Way => "rounds are read anticlockwise, from the middle",
            LegendSign.Start => "start here",
            LegendSign.Join => "join yarn",
            LegendSign.Cut => "cut yarn",
            LegendSign.Sides => isRound ? "wrong-side round (WS), read clockwise" : "wrong-side row (WS); a right-side row (RS) is not shaded",
            LegendSign.Number => $"stitches in the {Row}; its number stands where it starts",
            LegendSign.Fold => "gap: as many as it says, not drawn one by one",
            _ => $"break: {Row}s not drawn",
        };
    }

    private static string HookText(HookInto hook) => hook switch
    {
        HookInto.BackLoop => "in the back loop only (BLO)",
        HookInto.FrontLoop => "in the front loop only (FLO)",
        HookInto.FrontPost => "round the post from the front (FP)",
        HookInto.OneDown or HookInto.TwoDown or HookInto.ThreeDown => "spike: worked into a row further down",
        _ => "round the post from the back (BP)",
    };
}
