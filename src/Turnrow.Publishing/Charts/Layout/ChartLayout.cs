using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Charts.Symbols;

namespace Turnrow.Publishing.Charts.Layout;

/// <summary>A band of the chart: a row, or rows that are not drawn.</summary>
/// <param name="Bottom">Where it begins, in pixels above the foot of the first row.</param>
/// <param name="Height">How high it is.</param>
internal abstract record Band(double Bottom, double Height);

/// <summary>A row that is drawn.</summary>
internal sealed record RowBand(RowLayout Row, double Bottom, double Height) : Band(Bottom, Height);

/// <summary>Rows that are not drawn, between two that are.</summary>
/// <param name="Rows">Which.</param>
/// <param name="Before">The row drawn below it.</param>
/// <param name="First">The first row not drawn.</param>
/// <param name="Last">The last row not drawn.</param>
/// <param name="After">The row drawn above it.</param>
/// <param name="Bottom">Where it begins.</param>
/// <param name="Height">How high it is.</param>
internal sealed record HiddenBand(
    HiddenRows Rows, RowLayout Before, RowLayout First, RowLayout Last, RowLayout After, double Bottom, double Height) : Band(Bottom, Height);

/// <summary>A piece as a chart shows it, in data: which rows, in which columns, how high.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Rows">All of its rows in their columns.</param>
/// <param name="Bands">What is drawn, first row first.</param>
/// <param name="Axis">Where each column is drawn.</param>
internal sealed record ChartLayout(Piece Piece, IReadOnlyList<RowLayout> Rows, IReadOnlyList<Band> Bands, ColumnAxis Axis)
{
    private const double TextInFold = 12;
    private const double NarrowestFold = 4;

    /// <summary>Height of all bands, with what stands on the last row; on any other the next row is worked behind it.</summary>
    public double Height => Bands.Count == 0 ? 0 : Bands[^1].Bottom + Bands[^1].Height + (Bands[^1] is RowBand { Row.Row.Work: { } work } ? SpurSymbol.RoomFor(work.Words) : 0);

    /// <summary>Lays a piece out in bands; null if it has no rows.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="terms">The terms of what is written in gaps.</param>
    /// <param name="from">How many rounds are drawn round their middle; the bands are those that follow.</param>
    public static ChartLayout? Of(Piece piece, Terms terms, int from = 0)
    {
        if (piece.Rows.Count <= from) return null;
        var rows = RowStack.Of(piece, from);
        IReadOnlyList<Row> banded = from == 0 ? piece.Rows : [.. piece.Rows.Skip(from)];
        var bands = BandsOf(rows, LikeRows.Of(banded), from);
        IReadOnlyList<RowLayout> drawn = [.. bands.OfType<RowBand>().Select(static band => band.Row)];
        return new ChartLayout(piece, rows, bands, ColumnFolds.AxisFor(drawn, columns => FoldWidth(drawn, columns, terms)));
    }

    private static List<Band> BandsOf(IReadOnlyList<RowLayout> rows, IReadOnlyList<HiddenRows> hidden, int from)
    {
        var bands = new List<Band>();
        var bottom = 0.0;
        var next = 0;
        for (var i = 0; i < rows.Count;)
        {
            Band band;
            if (next < hidden.Count && hidden[next].First == i)
            {
                var rest = hidden[next++];
                band = new HiddenBand(rest with { First = i + from }, rows[i - 1], rows[i], rows[rest.Next - 1], rows[rest.Next], bottom, ChartScale.HiddenRows);
                i = rest.Next;
            }
            else
            {
                band = new RowBand(rows[i], bottom, rows[i].Height);
                i++;
            }

            bands.Add(band);
            bottom += band.Height;
        }

        return bands;
    }

    private static double FoldWidth(IReadOnlyList<RowLayout> drawn, Columns columns, Terms terms)
    {
        var widest = NarrowestFold;
        foreach (var row in drawn)
        {
            if (row.Strip is not { } strip) continue;
            var within = row.InWorkingOrder(columns);
            var text = strip.Count(within.From, within.To).In(terms);
            widest = Math.Max(widest, 1 + (ChartScale.TextWidth(text, TextInFold) / ChartScale.Column));
        }

        return Math.Ceiling(widest);
    }
}
