using System.Globalization;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Publishing.Charts.Layout;

namespace Turnrow.Publishing.Charts.Drawing;

/// <summary>Draws a row: the shade of a wrong-side row, its stitches, its gaps, its number where it starts and its count where it ends.</summary>
internal sealed class RowPainter(Sheet sheet)
{
    public const double JoinRadius = 2;
    private const double BesideRound = 3;
    private const double TextInFold = 12;
    private const double Beside = 9;
    private const double BesideChain = 20;
    private const double Tooth = 3;
    private const double CutRoom = 13;
    private const double JoinRoom = 9;
    private const double Halo = 2;

    /// <summary>Shades the row if it is a wrong-side row; before anything else is drawn. Where yarns have fields of their own, the label alone says the side.</summary>
    public void Shade(RowBand band)
    {
        if (band.Row.Row.RightSide || sheet.Yarns.Count > 1) return;
        var extent = band.Row.Tops.With(band.Row.Below);
        var (left, right) = (sheet.X(extent.To), sheet.X(extent.From));
        sheet.Svg.Open("rect").With("x", left - 4).With("y", sheet.Y(band.Bottom + band.Height)).With("width", right - left + 8)
            .With("height", band.Height).With("fill", "#e4e4e4").Close();
    }

    /// <summary>Draws the row.</summary>
    /// <param name="band">The row.</param>
    /// <param name="cutAfter">True if the yarn is cut after it.</param>
    public void Draw(RowBand band, bool cutAfter)
    {
        var row = band.Row;
        var ink = new Ink();
        sheet.Svg.Open("g").With("class", "row").With("data-row", row.Row.Number.ToString(CultureInfo.InvariantCulture));
        new StepPainter(sheet, band, ink).Draw();
        new CellPainter(new BandGround(sheet, band), sheet.Legend, ink).Draw();
        foreach (var fold in sheet.Layout.Axis.Folds) DrawFold(band, fold, ink);
        if (IsJoined(sheet.Layout.Piece, row.Row)) DrawJoin(band, ink);
        if (cutAfter) DrawCut(band, ink);
        ink.WriteTo(sheet.Svg);
        Number(band, cutAfter);
        sheet.Svg.Close();
    }

    private void DrawFold(RowBand band, ColumnGap fold, Ink ink)
    {
        if (band.Row.Strip is not { } strip) return;
        var within = band.Row.InWorkingOrder(fold.Columns);
        var count = strip.Count(within.From, within.To);
        if (count.IsEmpty) return;
        var (right, left) = (sheet.X(fold.Columns.From), sheet.X(fold.Columns.To));
        Break(ink, right - Tooth, band);
        Break(ink, left + Tooth, band);
        sheet.Write((left + right) / 2, sheet.Y(band.Bottom + (band.Height / 2)), TextInFold, "middle", count.In(sheet.Terms));
        sheet.Legend.Add(LegendSign.Fold);
    }

    private void Break(Ink ink, double x, RowBand band)
    {
        var (bottom, height) = (band.Bottom, band.Height);
        ink.Lines(
            new Point(x, sheet.Y(bottom + 1)),
            new Point(x, sheet.Y(bottom + (height * 0.35))),
            new Point(x - Tooth, sheet.Y(bottom + (height * 0.45))),
            new Point(x + Tooth, sheet.Y(bottom + (height * 0.55))),
            new Point(x, sheet.Y(bottom + (height * 0.65))),
            new Point(x, sheet.Y(bottom + height - 1)));
    }

    /// <summary>True for a round whose end is joined to its beginning: not in a spiral, and not where rows go back over it.</summary>
    public static bool IsJoined(Piece piece, Row row) =>
        row is { IsRound: true, Way: not RoundWay.Spiral } && !(row.Number < piece.Rows.Count && piece.Rows[row.Number].Begins == RowBegins.Turned);

    private void DrawJoin(RowBand band, Ink ink)
    {
        var end = band.Row.TopColumn(band.Row.Strip?.Columns ?? 0);
        ink.Dot(new Point(sheet.X(end) - (band.Row.Direction * BesideRound), sheet.Y(band.Bottom + band.Height - BesideRound)), JoinRadius);
        sheet.Legend.Add(LegendSign.RoundJoin);
    }

    private void DrawCut(RowBand band, Ink ink)
    {
        var row = band.Row;
        var end = row.TopColumn(row.Strip?.Columns ?? 0);
        var beside = row.Row.IsRound ? 3 + (2 * BesideRound) : 3;
        var at = new Point(sheet.X(end) - (row.Direction * beside), sheet.Y(band.Bottom + band.Height - 8));
        Marks.Cut(ink, at, towardsRight: row.Direction < 0);
        sheet.Legend.Add(LegendSign.Cut);
    }

    private void Number(RowBand band, bool cutAfter)
    {
        var row = band.Row;
        var toRight = row.Direction > 0;
        var middle = sheet.Y(band.Bottom + (band.Height * 0.45));
        var name = row.Row.Number.ToString(CultureInfo.InvariantCulture) + (row.Row.IsRound ? string.Empty : row.Row.RightSide ? " RS" : " WS");
        var beside = row.StandingChains > 0 && !row.ChainIsStitch ? BesideChain : Beside;
        if (row.Row.Short.StartsAtTurn) Clear(Outside(toRight, beside), middle, toRight, ChartScale.TextWidth(name, ChartScale.Label));
        sheet.Write(Outside(toRight, beside), middle, ChartScale.Label, toRight ? "start" : "end", name, bold: true);
        sheet.Legend.AddOnce(LegendSign.Number, row.Row.Work?.Count(sheet.Counting) ?? 0);
        if (!row.Row.RightSide && !row.Row.IsRound && sheet.Yarns.Count < 2) sheet.Legend.Add(LegendSign.Sides);
        var room = Beside + (cutAfter ? CutRoom : 0) + (row.Row is { IsRound: false, Work.Joins: true } ? JoinRoom : 0);
        var count = CountOf(row.Row);
        if (row.Row.Short.Waiting > 0) Clear(Outside(!toRight, room), middle, !toRight, ChartScale.TextWidth(count, TextInFold));
        sheet.Write(Outside(!toRight, room), middle, TextInFold, toRight ? "end" : "start", count);

        double Outside(bool right, double by) => right ? sheet.X(row.Extent.From) + by : sheet.X(row.Extent.To) - by;
    }

    // Beside a short row dots may lead down: what is written there stands on white.
    private void Clear(double x, double y, bool toRight, double width) =>
        sheet.Svg.Open("rect").With("x", (toRight ? x : x - width) - Halo).With("y", y - (ChartScale.Label / 2)).With("width", width + (2 * Halo))
            .With("height", ChartScale.Label).With("fill", "#fff").Close();

    private string CountOf(Row row) => row.Work is { } work ? "(" + work.Count(sheet.Counting).ToString(CultureInfo.InvariantCulture) + ")" : "(?)";
}
