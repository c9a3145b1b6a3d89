using Turnrow.Fabric.Motifs;
using Turnrow.Publishing.Charts.Drawing;
using Turnrow.Publishing.Charts.Layout;
using Turnrow.Publishing.Trade;
using static System.FormattableString;

namespace Turnrow.Publishing.Charts;

/// <summary>Draws how the motifs of a blanket lie: in which order they are worked, and where each is joined to those that are there.</summary>
internal static class BlanketMap
{
    private const double Half = 21;
    private const double Margin = 24;
    private const double HeadingSize = 17;
    private const double HeadingRoom = 48;
    private const double Line = 22;
    private const double Narrowest = 620;
    private const double Number = 12;
    private const double Thick = 3.4;

    // More would be too small to be read, and the rest lies as these do.
    private const int Most = 30;
    private const int MostFrames = 3;

    private static readonly string[] Fills = ["#fff", "#efefef", "#dcdcdc", "#c6c6c6"];

    private static readonly string[] On = ["by itself", "joined along one side", "joined along two sides", "joined along three sides"];

    /// <summary>The drawing of one size.</summary>
    /// <param name="name">The blanket's name.</param>
    /// <param name="motifs">The kinds of motif.</param>
    /// <param name="layout">How its motifs lie.</param>
    /// <param name="id">What its identifiers begin with.</param>
    /// <param name="size">The size's name; empty for a pattern without sizes.</param>
    public static ChartFile Of(string name, IReadOnlyList<string> motifs, MotifLayout layout, string id, string size)
    {
        var (wide, high) = (Math.Min(layout.Longest, Most), Math.Min(layout.Down, Most));
        var heading = $"{Names.Title(name)}, layout{(size.Length == 0 ? string.Empty : $", size {size}")}";
        var body = new SvgWriter();
        var width = Math.Max(Narrowest, ((2 * wide) + 1) * Half + (2 * Margin));
        var paper = new Paper(body, width);
        paper.Write(Margin, Margin, HeadingSize, "start", heading, bold: true);
        var ground = new Ground(layout, Margin, HeadingRoom + Margin, high);
        long before = 0;
        for (var row = 1; row <= high; row++)
        {
            for (var at = 1; at <= Math.Min(layout.In(row), wide); at++) Draw(paper, ground, layout, row, at, before + at);
            before += layout.In(row);
        }

        if (high == layout.Down) Dot(body, ground.Corners(layout.Down, 1)[0]);
        var foot = Notes(paper, motifs, layout, wide < layout.Longest || high < layout.Down ? (wide, high) : null, ground.Foot + Line);
        var sight = Invariant($"To be seen: {layout.Motifs} motifs in {layout.Down} rows{(layout.IsSetOff ? " set off by half a motif" : string.Empty)}, numbered from the lowest row up, a thick line wherever one is joined to another.");
        return new ChartFile(Chart.Envelope("chart-" + id, (heading, sight, Describe(motifs, layout)), width, foot, body), heading, width);
    }

    private static void Draw(Paper paper, Ground ground, MotifLayout layout, int row, int at, long number)
    {
        var corners = ground.Corners(row, at);
        var beside = layout.Beside(row, at);
        var joined = beside.Count(static to => to is not null);
        paper.Svg.Open("path").With("d", "M" + string.Join(" L", corners.Select(static c => $"{Decimals.Of(c.X)} {Decimals.Of(c.Y)}")) + " Z")
            .With("fill", Fills[joined]).With("stroke", "currentColor").With("stroke-width", 0.8).Close();
        for (var side = 0; side < beside.Length; side++)
        {
            if (beside[side] is not null) Thickly(paper.Svg, corners[side], corners[(side + 1) % corners.Length]);
        }

        var (x, y) = ground.Middle(row, at);
        var kind = layout.KindAt(row, at);
        Frames(paper.Svg, ground.Middle(row, at), corners, kind);
        if (layout.Turns > 1) y -= Number * 0.6;
        paper.Write(x, y, Number, "middle", Invariant($"{number}"));
        if (layout.Turns > 1) paper.Write(x, y + (Number * 1.2), Number, "middle", Letter(kind), bold: true);
    }

    // Kinds are told apart by a letter, and by as many frames as there are kinds before it.
    private static void Frames(SvgWriter svg, Point middle, IReadOnlyList<Point> corners, int frames)
    {
        for (var n = 1; n <= Math.Min(frames, MostFrames); n++)
        {
            var part = 1 - (n * 0.13);
            svg.Open("path").With("d", "M" + string.Join(" L", corners.Select(c => $"{Decimals.Of(middle.X + ((c.X - middle.X) * part))} {Decimals.Of(middle.Y + ((c.Y - middle.Y) * part))}")) + " Z")
                .With("fill", "none").With("stroke", "currentColor").With("stroke-width", 0.8).Close();
        }
    }

    private static string Letter(int kind) => kind < 26 ? Invariant($"{(char)('A' + kind)}") : Invariant($"{kind + 1}");

    private static void Thickly(SvgWriter svg, Point from, Point to)
    {
        Point Part(double part) => new(from.X + ((to.X - from.X) * part), from.Y + ((to.Y - from.Y) * part));
        var (start, end) = (Part(0.12), Part(0.88));
        svg.Open("path").With("d", $"M{Decimals.Of(start.X)} {Decimals.Of(start.Y)} L{Decimals.Of(end.X)} {Decimals.Of(end.Y)}")
            .With("stroke", "currentColor").With("stroke-width", Thick).Close();
    }

    private static void Dot(SvgWriter svg, Point at) => svg.Open("circle").With("cx", at.X).With("cy", at.Y).With("r", 4.5).Close();

    private static double Notes(Paper paper, IReadOnlyList<string> motifs, MotifLayout layout, (int Wide, int High)? part, double y)
    {
        paper.Write(Margin, y, ChartScale.Label, "start", "The numbers are the order of working: from the lowest row up, each row from left to right.");
        foreach (var (joined, count) in Tally(layout))
        {
            y += Line;
            paper.Svg.Open("rect").With("x", Margin).With("y", y - 8).With("width", 26).With("height", 16).With("fill", Fills[joined]).With("stroke", "currentColor").With("stroke-width", 0.8).Close();
            paper.Write(Margin + 36, y, ChartScale.Label, "start", Invariant($"{On[joined]}: {count}"));
        }

        for (var kind = 0; kind < layout.Turns && layout.Turns > 1; kind++)
        {
            y += Line;
            var middle = new Point(Margin + 13, y);
            Point[] box = [new(middle.X - 11, y - 9), new(middle.X - 11, y + 9), new(middle.X + 11, y + 9), new(middle.X + 11, y - 9)];
            paper.Svg.Open("path").With("d", "M" + string.Join(" L", box.Select(static c => $"{Decimals.Of(c.X)} {Decimals.Of(c.Y)}")) + " Z").With("fill", "none").With("stroke", "currentColor").With("stroke-width", 0.8).Close();
            Frames(paper.Svg, middle, box, kind);
            paper.Write(Margin + 36, y, ChartScale.Label, "start", Invariant($"{Letter(kind)} is {Names.Title(motifs[kind])}: {layout.Of(kind)}"));
        }

        y += Line;
        Thickly(paper.Svg, new Point(Margin, y), new Point(Margin + 26, y));
        paper.Write(Margin + 36, y, ChartScale.Label, "start", "here the motif with the higher number is joined to the other one");
        y += Line;
        if (part is null || part.Value.High == layout.Down)
        {
            Dot(paper.Svg, new Point(Margin + 13, y));
            paper.Write(Margin + 36, y, ChartScale.Label, "start", "the rim begins here and goes round against the clock");
            y += Line;
        }

        if (part is var (wide, high))
        {
            paper.Write(Margin, y, ChartScale.Label, "start", Invariant($"Drawn: {Of("row", high, layout.Down)}, {Of("motif", wide, layout.Longest)} of each; the others lie as these do."));
            y += Line;
        }

        return y;
    }

    private static string Of(string what, int drawn, int all) => drawn == all ? Invariant($"all {all} {what}s") : Invariant($"the first {drawn} of {all} {what}s");

    private static IEnumerable<(int Joined, long Count)> Tally(MotifLayout layout)
    {
        yield return (0, 1);
        foreach (var kind in layout.Kinds().GroupBy(static k => k.To.Count(static to => to is not null)).OrderBy(static k => k.Key))
            yield return (kind.Key, kind.Sum(static k => k.Count));
    }

    private static string Describe(IReadOnlyList<string> motifs, MotifLayout layout)
    {
        var rows = layout.Across == layout.Between || layout.Down == 1 ? Invariant($"{layout.Down} rows of {layout.Across} motifs") : Invariant($"{layout.Down} rows of {layout.Across} and {layout.Between} motifs by turns, from the lowest up");
        var setOff = layout.IsSetOff && layout.Down > 1 ? layout.Across == layout.Between ? ", every second one half a motif further right" : ", the shorter ones half a motif further in" : string.Empty;
        var kinds = layout.Turns == 1 ? string.Empty : $"{string.Join(", ", motifs.Select((m, at) => Invariant($"{layout.Of(at)} {Names.Title(m)}")))}, by turns along each row and from row to row. ";
        return $"{rows}{setOff}. {kinds}{string.Join(", ", Tally(layout).Select(static t => Invariant($"{t.Count} {On[t.Joined]}")))}.";
    }

    /// <summary>Where each motif lies on the sheet.</summary>
    private sealed class Ground(MotifLayout layout, double left, double top, int rows)
    {
        // From a hexagon's middle to its tip; a square has none.
        private readonly double _tip = layout.IsSetOff ? 2 * Half / Math.Sqrt(3) : Half;

        private double Pitch => layout.IsSetOff ? 1.5 * _tip : 2 * Half;

        public double Foot => top + (2 * _tip) + ((rows - 1) * Pitch);

        public Point Middle(int row, int at) =>
            new(left + (Half * ((2 * at) - 1 + layout.Offset(row))), Foot - _tip - ((row - 1) * Pitch));

        // Against the clock from the upper end of the left side.
        public Point[] Corners(int row, int at)
        {
            var (x, y) = Middle(row, at);
            var flank = layout.IsSetOff ? _tip / 2 : Half;
            Point[] upright = [new(x - Half, y - flank), new(x - Half, y + flank), new(x + Half, y + flank), new(x + Half, y - flank)];
            return layout.IsSetOff ? [upright[0], upright[1], new(x, y + _tip), upright[2], upright[3], new(x, y - _tip)] : upright;
        }
    }
}
