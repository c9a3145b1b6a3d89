using Turnrow.Publishing.Charts.Layout;

namespace Turnrow.Publishing.Charts.Drawing;

/// <summary>
/// Draws what short rows leave and take up: two dashes over each stitch that waits, and from a later row's stitches dots that lead down to the
/// stitches that they stand on.
/// </summary>
internal sealed class WaitingPainter(Sheet sheet, RowBand band)
{
    private const double MarkHeight = 5;
    private const double HalfDash = 4;
    private const double BetweenDashes = 3;
    private const double AboveMark = 6;
    private const double BelowFoot = 2;
    private const double Dot = 1.5;
    private const double BetweenDots = 6;

    private readonly RowLayout _row = band.Row;

    /// <summary>The mark of a stitch that waits.</summary>
    public static void Mark(Ink ink, Point at)
    {
        foreach (var up in (ReadOnlySpan<double>)[0, BetweenDashes])
            ink.Line(at - new Point(HalfDash, up), at + new Point(HalfDash, -up));
    }

    /// <summary>Draws the dots from the stitches that stand on stitches left before; before the rows, so that their numbers lie over the dots.</summary>
    public void DrawLeaders()
    {
        if (_row.Row.Short.Over.Count == 0) return;
        var ink = new Ink();
        var place = _row.BelowScale.Count - _row.Row.Short.Taken;
        foreach (var part in _row.Row.Short.Over)
        {
            if (BandOf(part.LeftBy) is { } from)
            {
                for (var i = 0; i < part.Count; i++) Lead(ink, _row.FootColumn(place + i), from);
                sheet.Legend.Add(LegendSign.OverWaiting);
            }

            place += part.Count;
        }

        sheet.Svg.Open("g").With("class", "waiting");
        ink.WriteTo(sheet.Svg);
        sheet.Svg.Close();
    }

    private RowBand? BandOf(int row) => sheet.Layout.Bands.OfType<RowBand>().FirstOrDefault(b => b.Row.Row.Number == row);

    private void Lead(Ink ink, double column, RowBand from)
    {
        if (!sheet.Layout.Axis.Open(_row.Extent).Any(open => open.From <= column && column <= open.To)) return;
        var x = sheet.X(column);
        for (var up = from.Bottom + MarkHeight + AboveMark; up + Dot < band.Bottom - BelowFoot; up += BetweenDots)
            ink.Line(new Point(x, sheet.Y(up)), new Point(x, sheet.Y(up + Dot)));
    }
}
