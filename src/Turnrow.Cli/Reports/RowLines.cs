using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;

namespace Turnrow.Cli.Reports;

/// <summary>One line of the table of rows: the same row of the source in every size that reaches it.</summary>
/// <param name="Line">Line of the source.</param>
/// <param name="InSizes">The row, a size; null where a size has fewer.</param>
internal sealed record RowLine(int Line, IReadOnlyList<Row?> InSizes);

/// <summary>Lays a piece's rows in several sizes side by side, by the line that made them and not by number.</summary>
internal static class RowLines
{
    /// <summary>The lines in the order of working.</summary>
    public static IEnumerable<RowLine> Of(IReadOnlyList<Piece> inSizes, Func<Row, int> lineOf)
    {
        var next = new int[inSizes.Count];
        while (true)
        {
            (int Line, int Ordinal)? first = null;
            for (var i = 0; i < next.Length; i++)
            {
                if (next[i] >= inSizes[i].Rows.Count) continue;
                var key = KeyOf(inSizes[i].Rows[next[i]], lineOf);
                if (first is null || key.CompareTo(first.Value) < 0) first = key;
            }

            if (first is not { } wanted) yield break;
            var rows = new Row?[next.Length];
            for (var i = 0; i < next.Length; i++)
            {
                if (next[i] < inSizes[i].Rows.Count && KeyOf(inSizes[i].Rows[next[i]], lineOf) == wanted) rows[i] = inSizes[i].Rows[next[i]++];
            }

            yield return new RowLine(wanted.Line, rows);
        }
    }

    private static (int Line, int Ordinal) KeyOf(Row row, Func<Row, int> lineOf) => (lineOf(row), row.Ordinal);
}
