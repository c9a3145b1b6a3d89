namespace Turnrow.Publishing.Tables;

/// <summary>One row of one piece in one size, flat: what the machine-readable table holds.</summary>
/// <param name="Piece">The piece's name as written.</param>
/// <param name="Size">The size's name; empty for a pattern without sizes.</param>
/// <param name="Row">The row's number in the piece, from 1.</param>
/// <param name="Side"><c>RS</c> or <c>WS</c>.</param>
/// <param name="Stitches">Stitches made; null if not known because of an error before it.</param>
/// <param name="Counts">Stitches and spaces by kind, in the pattern's own terms and in the order in which the row first makes them: <c>dc</c>, <c>ch-3 sp</c>; null if not known.</param>
/// <param name="Start">The edge where it starts, hand and name: <c>right neck</c>, or <c>right</c> where it has no name.</param>
/// <param name="End">The edge where it ends.</param>
/// <param name="WidthCm">Its width in centimetres, to two decimals; null without a gauge.</param>
/// <param name="HeightCm">Height in centimetres from the piece's beginning to this row's top; null without a gauge.</param>
/// <param name="Line">The line of the file that made it; null if that was not asked for.</param>
public sealed record RowRecord(
    string Piece,
    string Size,
    int Row,
    string Side,
    int? Stitches,
    IReadOnlyList<KeyValuePair<string, int>>? Counts,
    string Start,
    string End,
    decimal? WidthCm,
    decimal? HeightCm,
    int? Line)
{
    /// <summary>Of a pattern in several yarns, the stitches made with each, in the order in which they come up; else null.</summary>
    public IReadOnlyList<KeyValuePair<string, long>>? Yarns { get; init; }
}
