using System.Globalization;
using System.Text;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Rows;

namespace Turnrow.Publishing.Tables;

/// <summary>
/// The stitches of every row, as the pattern counts them, as a table: a line a piece, row and side, a column a size; of a blanket, each kind of motif that is joined is a piece. A size that has no such row, or whose
/// count is not known, leaves its field empty. Quoted as RFC 4180 says; lines end in \n.
/// </summary>
public static class CountsCsv
{
    /// <summary>The whole text.</summary>
    public static string Write(Pattern pattern)
    {
        var text = new StringBuilder();
        var sizes = pattern.Sizes is [""] ? ["stitches"] : pattern.Sizes;
        AppendLine(text, ["piece", "row", "side", .. sizes]);
        foreach (var piece in TabledPieces.Of(pattern)) AppendPiece(text, piece, pattern.Counting);
        return text.ToString();
    }

    private static void AppendPiece(StringBuilder text, PieceInSizes piece, Counting counting)
    {
        var rows = piece.InSizes.Count == 0 ? 0 : piece.InSizes.Max(static size => size.Rows.Count);
        for (var row = 0; row < rows; row++)
        {
            // Sizes may disagree on the side of a row; then each side has a line of its own.
            foreach (var rightSide in (ReadOnlySpan<bool>)[true, false])
            {
                var inSizes = piece.InSizes.Select(size => row < size.Rows.Count && size.Rows[row].RightSide == rightSide ? size.Rows[row] : null);
                IReadOnlyList<Row?> found = [.. inSizes];
                if (found.All(static r => r is null)) continue;
                AppendLine(text, [piece.Name, Number(row + 1), rightSide ? "RS" : "WS", .. found.Select(r => CountOf(r, counting))]);
            }
        }
    }

    private static string CountOf(Row? row, Counting counting) => row?.Work is { } work ? Number(work.Count(counting)) : string.Empty;

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);

    private static void AppendLine(StringBuilder text, IReadOnlyList<string> fields)
    {
        for (var i = 0; i < fields.Count; i++)
        {
            if (i > 0) text.Append(',');
            var field = fields[i];
            if (field.AsSpan().IndexOfAny("\",\r\n") < 0 && field.Trim().Length == field.Length) text.Append(field);
            else text.Append('"').Append(field.Replace("\"", "\"\"", StringComparison.Ordinal)).Append('"');
        }

        text.Append('\n');
    }
}
