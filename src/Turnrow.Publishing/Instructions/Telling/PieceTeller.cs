using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>Tells a piece's rows; rows that share their work, as like rows do, are told once.</summary>
/// <param name="piece">The piece.</param>
/// <param name="yarns">Tells of yarns; null where one alone is worked with.</param>
internal sealed class PieceTeller(Piece piece, YarnTeller? yarns = null)
{
    private readonly Dictionary<object, List<(Surroundings At, RowDescription Told)>> _told = new(ReferenceEqualityComparer.Instance);

    /// <summary>The description of the row at an index.</summary>
    public RowDescription Tell(int index) => yarns is null ? Worked(index) : yarns.Tell(Worked(index), index);

    private RowDescription Worked(int index)
    {
        var row = piece.Rows[index];
        if (index == 0 || !row.Short.IsNone || row.Unworked is not null || piece.Rows[index - 1].Unworked is not null || row is not { Work: { } work, Start: null, End: null } || piece.Rows[index - 1] is not { Start: null, Work: { } above })
            return RowTeller.Tell(piece, index);
        var at = new Surroundings(above.Opening, RowContext.BeginsWithDecrease(above), row.Plan, EdgeNames.At(piece, Hand.Right, row.Number), EdgeNames.At(piece, Hand.Left, row.Number))
        {
            Rounds = (piece.Rows[index - 1].IsRound, row.IsRound, row.IsRound && Joins.IsLeftOpen(piece, index)),
            Begins = (row.Begins, row.Way, piece.Rows[index - 1].Way),
        };
        if (!_told.TryGetValue(work, out var known)) _told[work] = known = [];
        foreach (var (there, told) in known)
        {
            if (there == at) return told;
        }

        var description = RowTeller.Tell(piece, index);
        known.Add((at, description));
        return description;
    }

    // All besides its work that a row is told by.
    private sealed record Surroundings(Opening Above, bool Decreased, RowPlan Plan, string? Right, string? Left)
    {
        /// <summary>Whether the row above is a round, whether this is one, and whether its end is left open.</summary>
        public (bool Above, bool This, bool Open) Rounds { get; init; }

        /// <summary>How it begins, and how rounds follow this one and the one above.</summary>
        public (RowBegins Begins, RoundWay Way, RoundWay Above) Begins { get; init; }
    }
}

/// <summary>The names of a piece's edges, row by row.</summary>
internal static class EdgeNames
{
    /// <summary>The name of an edge at a row; null if it has none.</summary>
    public static string? At(Piece piece, Hand hand, int row)
    {
        foreach (var stretch in piece.At(hand).Stretches)
        {
            if (stretch.Kind == StretchKind.RowEnds && stretch.FirstRow <= row && row <= stretch.LastRow) return stretch.Name;
        }

        return null;
    }
}
