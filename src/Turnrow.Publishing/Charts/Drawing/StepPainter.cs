using System.Globalization;
using Turnrow.Publishing.Charts.Layout;
using Turnrow.Publishing.Charts.Symbols;

namespace Turnrow.Publishing.Charts.Drawing;

/// <summary>
/// Draws what lies at a row's ends: the chains it is worked into, chains added, slip stitches over stitches that are left, and the
/// stitches left at its end.
/// </summary>
internal sealed class StepPainter(Sheet sheet, RowBand band, Ink ink)
{
    private const double BelowRow = 5;
    private const double DotHeight = 5;
    private const double HalfDash = 4;
    private const double HalfChain = 8.6;
    private const double TextSize = 12;

    private readonly RowLayout _row = band.Row;

    /// <summary>Draws them.</summary>
    public void Draw()
    {
        var counted = _row.ChainIsStitch ? 1 : 0;
        if (_row.ChainsAtStart > 0) DrawChains(counted, _row.ChainsAtStart);
        if (_row.Row.End is { Adds: true } added) DrawSeparateLength(_row.BelowScale.Count - added.Count);
        if (_row.LeftAtStart.Length > 0) DrawSlipStitches(counted > 0);
        if (_row.LeftAtEnd.Length > 0) DrawLeft(_row.Row.Short.Left > 0);
    }

    private void DrawSlipStitches(bool andUnderChain)
    {
        Each(_row.LeftAtStart, column => ink.Dot(At(column, DotHeight), DotSymbol.Radius), "sl st");
        if (andUnderChain) ink.Dot(At(_row.BelowStart + (_row.Direction * 0.5), 0), DotSymbol.Radius);
        sheet.Legend.Add(LegendSign.SlipOver);
    }

    private void DrawLeft(bool forLater)
    {
        Each(_row.LeftAtEnd, Dash, forLater ? "left for now" : "left");
        sheet.Legend.Add(forLater ? LegendSign.Waiting : LegendSign.Unworked);

        void Dash(double column)
        {
            var at = At(column, DotHeight);
            if (forLater) WaitingPainter.Mark(ink, at);
            else ink.Line(at - new Point(HalfDash, 0), at + new Point(HalfDash, 0));
        }
    }

    private void DrawChains(int from, int to)
    {
        var columns = Columns.Between(Edge(from), Edge(to));
        Each(columns, column => ink.Oval(At(column, -BelowRow), new Point(1, 0), HalfChain, OvalSymbol.Across), "ch", -BelowRow);
        sheet.Legend.Add(LegendSign.Chain);
    }

    private void DrawSeparateLength(int from)
    {
        DrawChains(from, _row.BelowScale.Count);
        Marks.JoinAbove(ink, At(Edge(from), -BelowRow - 5));
        Marks.Cut(ink, At(Edge(_row.BelowScale.Count) + (_row.Direction * 0.4), -BelowRow), towardsRight: _row.Direction < 0);
        sheet.Legend.Add(LegendSign.Join);
        sheet.Legend.Add(LegendSign.Cut);
    }

    private double Edge(int place) => _row.BelowStart + (_row.Direction * _row.BelowScale.Edge(place));

    // One mark a column where columns are drawn, their number where they are folded.
    private void Each(Columns columns, Action<double> draw, string name, double textAbove = double.NaN)
    {
        foreach (var open in sheet.Layout.Axis.Open(columns))
        {
            var first = Math.Ceiling(open.From - columns.From - 0.01);
            for (var column = columns.From + first + 0.5; column < open.To; column++) draw(column);
        }

        foreach (var fold in sheet.Layout.Axis.Folds)
        {
            var folded = Math.Min(columns.To, fold.Columns.To) - Math.Max(columns.From, fold.Columns.From);
            if (folded <= 0) continue;
            var middle = (sheet.X(fold.Columns.From) + sheet.X(fold.Columns.To)) / 2;
            var above = double.IsNaN(textAbove) ? DotHeight + 2 : textAbove;
            var text = ((int)Math.Round(folded)).ToString(CultureInfo.InvariantCulture) + " " + name;
            sheet.Write(middle, sheet.Y(band.Bottom + above), TextSize, "middle", text);
        }
    }

    private Point At(double column, double above) => new(sheet.X(column), sheet.Y(band.Bottom + above));
}
