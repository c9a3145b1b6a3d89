using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Charts.Layout;
using Turnrow.Publishing.Charts.Symbols;

namespace Turnrow.Publishing.Charts.Drawing;

/// <summary>Draws the stitches and spaces of one row, each over the place that it is worked into.</summary>
/// <param name="ground">Where the row lies.</param>
/// <param name="legend">What is drawn.</param>
/// <param name="ink">Where to.</param>
internal sealed class CellPainter(CellGround ground, Legend legend, Ink ink)
{
    private const double BelowHead = 4;
    private const double BowPerChain = 1.4;
    private const double LeastBow = 2.5;
    private const double MostBow = 8;
    private const double SteepestBow = 15;
    private const double LeastChain = 8;
    private const double BowOfLegs = 5;

    private readonly RowLayout _row = ground.Row;

    /// <summary>Draws what is not folded.</summary>
    public void Draw()
    {
        if (_row.Strip is not { } strip) return;
        foreach (var within in ground.Open) strip.Visit(within.From, within.To, Draw);

        if (_row.StandingChains > 0 && !_row.ChainIsStitch && ground.IsOpen(0)) DrawUncountedChain();
        ink.Stand = new Stand(default, Stand.Upright);
    }

    private static double HeadOf(Stitch stitch) => ChartScale.HeightOf(stitch) - BelowHead;

    private void Draw(PlacedCell cell)
    {
        if (cell.Cell.Stitch is { } stitch) DrawStitch(cell, stitch);
        else DrawSpace(cell);
    }

    private void DrawStitch(PlacedCell placed, Stitch stitch)
    {
        var cell = placed.Cell;
        if (cell.Joins)
        {
            DrawJoin(placed, stitch);
            return;
        }

        if (cell.Tops == 0)
        {
            DrawOnTop(placed, stitch);
            return;
        }

        var chainFirst = placed.Top == 0 && _row.ChainIsStitch;
        var lastHead = -1;
        for (var leg = 0; leg < cell.Legs; leg++)
        {
            var one = stitch.Symbol.Shape == SymbolShape.Parts ? PartAt(stitch, leg) : stitch;
            var symbol = Symbol.Of(one.Symbol);
            var top = leg * cell.Tops / cell.Legs;
            var column = placed.Column + top + 0.5;
            ink.Stand = ground.Head(column, HeadOf(stitch));
            var head = ink.Stand.At;
            var foot = ink.Stand.FromSheet(ground.FootAt(placed.Foot + (leg * cell.Feet / cell.Legs), column, cell.Hook));
            if (leg == 0 && chainFirst)
            {
                OvalSymbol.Chain(ink, foot, head, _row.StandingChains);
                legend.Add(cell.Tops < cell.Legs ? LegendSign.DecreasingChain : LegendSign.CountedChain, _row.Row.Work!.Opening.Stitch, count: _row.StandingChains);
                if (cell.Tops == cell.Legs) lastHead = top;
            }
            else if (cell.Legs > cell.Feet && cell.Legs > cell.Tops)
            {
                var bow = new Point((leg - ((cell.Legs - 1) / 2.0)) * BowOfLegs, 0);
                ink.Line(foot, foot.Towards(head, 0.4) + bow);
                symbol.Leg(ink, foot.Towards(head, 0.4) + bow, head, Math.Min(1, one.Symbol.Bars));
            }
            else
            {
                symbol.Leg(ink, foot, head, one.Symbol.Bars);
            }

            if (top == lastHead) continue;
            symbol.Head(ink, head, Math.Min(1, ground.Pitch));
            lastHead = top;
        }

        for (var foot = 0; foot < cell.Feet && cell.Hook != HookInto.BothLoops; foot++)
        {
            ink.Stand = ground.Foot(placed.Foot + foot, placed.Middle, cell.Hook);
            HookMark.Draw(ink, ink.Stand.At, cell.Hook);
        }

        AddToLegend(cell, stitch, chainFirst);
    }

    // Stitches that end together are drawn as the stitches that they are, in their order.
    private static Stitch PartAt(Stitch stitch, int leg)
    {
        foreach (var part in stitch.Form!.Parts)
        {
            if (leg < part.Count) return part.Stitch ?? stitch;
            leg -= part.Count;
        }

        return stitch;
    }

    // What takes no place of its own sits on the stitch before it.
    private void DrawOnTop(PlacedCell placed, Stitch stitch)
    {
        // A spur stands between this stitch and the next, so that what is worked behind it can be seen.
        ink.Stand = ground.Head(placed.Column - (stitch.Making == StitchMaking.Spur ? 0 : 0.5), ground.Height - BelowHead);
        var at = ink.Stand.At;
        if (stitch.Making == StitchMaking.Spur) SpurSymbol.Draw(ink, at, stitch.Form!);
        else Symbol.Of(stitch.Symbol).Leg(ink, at, at - new Point(0, HeadOf(stitch) / 2), 0);
        legend.Add(LegendSign.Stitch, stitch);
    }

    // It goes into what lies beside: behind a row's end, outside a round.
    private void DrawJoin(PlacedCell placed, Stitch stitch)
    {
        const double Outside = 9;
        if (_row.Row.IsRound)
        {
            ink.Stand = ground.Head(placed.Column - 0.5, ground.Height);
            var at = ink.Stand.At;
            ink.Line(at, at - new Point(0, Outside));
            ink.Dot(at - new Point(0, Outside), DotSymbol.Radius);
        }
        else
        {
            var end = ground.Head(placed.Column, ground.Height / 2);
            ink.Stand = ground.Head(placed.Column + 0.5, ground.Height / 2);
            ink.Line(ink.Stand.FromSheet(end.At), ink.Stand.At);
            ink.Dot(ink.Stand.At, DotSymbol.Radius);
        }

        legend.Add(LegendSign.JoinBeside, stitch);
    }

    private void AddToLegend(Cell cell, Stitch stitch, bool chainFirst)
    {
        // A spike is one sign, however far down it goes: its foot shows that.
        if (cell.Hook != HookInto.BothLoops) legend.Add(LegendSign.Hook, hook: cell.Hook.RowsDown() > 0 ? HookInto.OneDown : cell.Hook);
        if (chainFirst) legend.Add(LegendSign.Chain);
        if (cell.Special is { } special)
        {
            legend.Add(LegendSign.Special, special);
            legend.Add(LegendSign.Stitch, stitch);
        }
        else if (cell.Legs == 1 || ground.IsInRing || stitch.Symbol.Shape == SymbolShape.Parts)
        {
            if (!chainFirst) legend.Add(LegendSign.Stitch, stitch);
        }
        else if (cell.Feet == 1 && cell.Tops > 1)
        {
            legend.Add(LegendSign.Increase, stitch, count: cell.Tops);
        }
        else
        {
            legend.Add(cell.Feet > 1 ? LegendSign.Decrease : LegendSign.Cluster, stitch, count: cell.Legs);
        }
    }

    private void DrawSpace(PlacedCell placed)
    {
        var height = ground.Height - BelowHead;
        ink.Stand = ground.Head(placed.Middle, height);
        var from = ink.Stand.FromSheet(ground.Head(placed.Column, height).At);
        var to = ink.Stand.FromSheet(ground.Head(placed.Column + placed.Cell.Columns, height).At);
        OvalSymbol.Arc(ink, from, to, placed.Cell.Chains, BowOf(placed.Cell.Chains, (to - from).Length));
        legend.Add(LegendSign.Chain);
    }

    // Where chains have little room they arch more steeply, as a shallow arc of that length does.
    private static double BowOf(int chains, double width)
    {
        var needed = (chains * LeastChain) - width;
        var steep = needed <= 0 ? 0 : Math.Sqrt(3 * width * needed / 8);
        return Math.Clamp(steep, Math.Clamp(chains * BowPerChain, LeastBow, MostBow), SteepestBow);
    }

    private void DrawUncountedChain()
    {
        var stitch = _row.Row.Work!.Opening.Stitch!;
        ink.Stand = ground.Beside(ChartScale.HeightOf(stitch));
        OvalSymbol.Chain(ink, ink.Stand.FromSheet(ground.Beside(0).At), ink.Stand.At, _row.StandingChains);
        legend.Add(LegendSign.Chain);
        legend.Add(LegendSign.UncountedChain, stitch.Rule, count: _row.StandingChains);
    }
}
