using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Publishing.Instructions.Folding;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions;

/// <summary>How long a piece is after plain rows: <c>Piece measures 20 cm (7 3/4 in).</c></summary>
internal static class PieceMeasure
{
    // After so many plain rows a maker likes to know how long the piece should be.
    private const int RowsToMeasure = 4;

    /// <summary>The length after the last of the rows; null where there is none to be told.</summary>
    public static string? After(FoldedRows rows, Pattern pattern)
    {
        if (rows.Sizes.Max(static s => s.Rows.Count) < RowsToMeasure) return null;
        var heights = new List<Rational>();
        var atEdges = false;
        foreach (var size in rows.Sizes)
        {
            if (size.Rows[^1].Row is not { Plan: ShapedPlan { IsPlain: true }, Short.IsNone: true }) return null;
            IReadOnlyList<Row> done = [.. size.Piece.Rows.Take(size.Rows[^1].Row.Number)];
            if (HeightAt(done, Hand.Right, pattern) is not { } height || HeightAt(done, Hand.Left, pattern) != height) return null;
            atEdges |= done.Any(static row => !row.Short.IsNone);
            heights.Add(height);
        }

        return $"{Measured(rows.Sizes[0].Piece)} measures {Lengths.Both(Sized.Over(heights), pattern.InInches)}{(atEdges ? " at its edges" : string.Empty)}.";
    }

    // What grows on another piece is no piece to a maker with a tape: she would measure from that one's beginning.
    private static string Measured(Piece piece) => piece.Start is FoundationStart or RingStart or BothSidesStart
        ? "Piece"
        : $"From its {(piece.Rows[0].IsRound ? "Round" : "Row")} 1, {Names.Title(piece.Name)}";

    // Short rows do not reach an edge: where the edges differ, there is no one height to be told.
    private static Rational? HeightAt(IReadOnlyList<Row> rows, Hand hand, Pattern pattern) => pattern.Gauges.HeightOf([.. rows.Where(row => row.Reaches(hand))]);
}
