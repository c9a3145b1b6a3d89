using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Charts.Layout;
using Turnrow.Publishing.Charts.Symbols;

namespace Turnrow.Publishing.Charts.Drawing;

/// <summary>Draws the stitches and spaces of one row, each over the place that it is worked into.</summary>
internal sealed class CellPainter(Sheet sheet, RowBand band, Ink ink)
{
    private const double AboveFoot = 3;
    private const double BelowHead = 4;
    private const double RoomForHookMark = 5;
    private const double RoomForSpike = 12;
    private const double BesideFirst = 0.55;
    private const double BowPerChain = 1.4;
    private const double LeastBow = 2.5;
    private const double MostBow = 8;
    private const double BowOfLegs = 5;

    private readonly RowLayout _row = band.Row;

    /// <summary>Draws what is not folded.</summary>
    public void Draw()
    {
        if (_row.Strip is not { } strip) return;
        foreach (var open in sheet.Layout.Axis.Open(_row.Extent))
        {
            var within = _row.InWorkingOrder(open);
            strip.Visit(within.From, within.To, Draw);
        }

        if (_row.StandingChains > 0 && !_row.ChainIsStitch) DrawUncountedChain();
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
            var foot = FootAt(placed.Foot + (leg * cell.Feet / cell.Legs), cell.Hook);
            var top = leg * cell.Tops / cell.Legs;
            var head = At(_row.TopColumn(placed.Column + top + 0.5), HeadOf(stitch));
            if (leg == 0 && chainFirst)
            {
                OvalSymbol.Chain(ink, foot, head, _row.StandingChains);
                sheet.Legend.Add(cell.Tops < cell.Legs ? LegendSign.DecreasingChain : LegendSign.CountedChain, _row.Row.Work!.Opening.Stitch, count: _row.StandingChains);
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
            symbol.Head(ink, head, Math.Min(1, _row.Pitch));
            lastHead = top;
        }

        for (var foot = 0; foot < cell.Feet; foot++) HookMark.Draw(ink, FootAt(placed.Foot + foot, cell.Hook), cell.Hook);
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
        var at = At(_row.TopColumn(placed.Column - 0.5), band.Height - BelowHead);
        Symbol.Of(stitch.Symbol).Leg(ink, at, at - new Point(0, HeadOf(stitch) / 2), 0);
        sheet.Legend.Add(LegendSign.Stitch, stitch);
    }

    private void AddToLegend(Cell cell, Stitch stitch, bool chainFirst)
    {
        if (cell.Hook != HookInto.BothLoops) sheet.Legend.Add(LegendSign.Hook, hook: cell.Hook);
        if (chainFirst) sheet.Legend.Add(LegendSign.Chain);
        if (cell.Legs == 1 || stitch.Symbol.Shape == SymbolShape.Parts)
        {
            if (!chainFirst) sheet.Legend.Add(LegendSign.Stitch, stitch);
        }
        else if (cell.Feet == 1 && cell.Tops > 1)
        {
            sheet.Legend.Add(LegendSign.Increase, stitch, count: cell.Tops);
        }
        else
        {
            sheet.Legend.Add(cell.Feet > 1 ? LegendSign.Decrease : LegendSign.Cluster, stitch, count: cell.Legs);
        }
    }

    private void DrawSpace(PlacedCell placed)
    {
        var height = band.Height - BelowHead;
        var from = At(_row.TopColumn(placed.Column), height);
        var to = At(_row.TopColumn(placed.Column + placed.Cell.Columns), height);
        OvalSymbol.Arc(ink, from, to, placed.Cell.Chains, Math.Clamp(placed.Cell.Chains * BowPerChain, LeastBow, MostBow));
        sheet.Legend.Add(LegendSign.Chain);
    }

    private void DrawUncountedChain()
    {
        var outer = _row.Direction > 0 ? Math.Min(_row.TopStart, _row.BelowStart) : Math.Max(_row.TopStart, _row.BelowStart);
        var column = outer - (_row.Direction * BesideFirst);
        var stitch = _row.Row.Work!.Opening.Stitch!;
        OvalSymbol.Chain(ink, At(column, 0), At(column, ChartScale.HeightOf(stitch)), _row.StandingChains);
        sheet.Legend.Add(LegendSign.Chain);
        sheet.Legend.Add(LegendSign.UncountedChain, stitch, count: _row.StandingChains);
    }

    private Point FootAt(int place, HookInto hook) =>
        hook.RowsDown() is > 0 and var down
            ? new Point(sheet.X(_row.FootColumn(place)), sheet.Y(BottomOf(_row.Row.Number - down)))
            : At(_row.FootColumn(place), AboveFoot + (hook == HookInto.BothLoops ? 0 : RoomForHookMark));

    // The foot of a row further down; where that is not drawn, a little below this one.
    private double BottomOf(int number)
    {
        foreach (var other in sheet.Layout.Bands)
        {
            if (other is RowBand { Row.Row.Number: var known } below && known == number) return below.Bottom + AboveFoot;
        }

        return band.Bottom - RoomForSpike;
    }

    private Point At(double column, double above) => new(sheet.X(column), sheet.Y(band.Bottom + above));
}
