using System.Globalization;
using Turnrow.Fabric.Rows;
using Turnrow.Publishing.Charts.Layout;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Charts.Drawing;

/// <summary>Draws the break that stands for rows that are like others.</summary>
internal sealed class HiddenPainter(Sheet sheet)
{
    private const double Wave = 10;
    private const double Swing = 2.5;
    private const double FromRow = 5;
    private const double TextSize = 13;

    /// <summary>Draws it.</summary>
    public void Draw(HiddenBand band)
    {
        var ink = new Ink();
        Break(ink, band.Before, sheet.Y(band.Bottom + FromRow));
        Break(ink, band.After, sheet.Y(band.Bottom + band.Height - FromRow));
        sheet.Svg.Open("g").With("class", "hidden-rows");
        ink.WriteTo(sheet.Svg);
        var (from, to) = (sheet.X(band.Before.Tops.To), sheet.X(band.Before.Tops.From));
        sheet.Write((from + to) / 2, sheet.Y(band.Bottom + (band.Height / 2)), TextSize, "middle", Sentence(band, sheet.Counting));
        sheet.Svg.Close();
        sheet.Legend.Add(LegendSign.HiddenRows);
    }

    /// <summary>What is not drawn, in words.</summary>
    public static string Sentence(HiddenBand band, Counting counting)
    {
        var culture = CultureInfo.InvariantCulture;
        var first = band.Rows.First + 1;
        var rows = Names.Row(band.First.Row) + "s";
        var hidden = string.Create(culture, $"{rows} {first}–{first + band.Rows.Count - 1}");
        if (band.Rows.Period == 0) return $"{hidden}: see the written {rows}";
        var (from, to) = (band.First.Row.Work?.Count(counting), band.Last.Row.Work?.Count(counting));
        var grow = from == to ? string.Empty : string.Create(culture, $", from {from} to {to} sts");
        if (LikeRows.AreOne(band.Before.Row, band.First.Row)) return string.Create(culture, $"{hidden} like {Names.Row(band.First.Row)} {first - 1}");
        return band.Rows.Period == 2
            ? string.Create(culture, $"{hidden} like {rows} {first - 2} and {first - 1}{grow}")
            : string.Create(culture, $"{hidden}: repeat {rows} {first - band.Rows.Period}–{first - 1}{grow}");
    }

    private void Break(Ink ink, RowLayout row, double y)
    {
        var (from, to) = (sheet.X(row.Tops.To), sheet.X(row.Tops.From));
        var points = new List<Point>();
        for (var i = 0; from + (i * Wave) <= to + 0.01; i++) points.Add(new Point(from + (i * Wave), y + (i % 2 == 0 ? -Swing : Swing)));
        ink.Lines([.. points]);
    }
}
