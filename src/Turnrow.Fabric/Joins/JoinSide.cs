using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;

namespace Turnrow.Fabric.Joins;

/// <summary>A part of a piece's edge that is joined to another, or picked up along.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Hand">The edge; null for the foundation or the last row.</param>
/// <param name="Stretches">The stretches, first row first (of foundation and last row: from the right edge).</param>
public sealed record JoinSide(Piece Piece, Hand? Hand, IReadOnlyList<Stretch> Stretches)
{
    /// <summary>Of pieces that are made several times, their common name where each of them is meant; else null.</summary>
    public string? OfEach { get; init; }

    /// <summary>Row-ends in it.</summary>
    public int RowEnds => Count(true);

    /// <summary>Stitches and chains in it.</summary>
    public int Stitches => Count(false);

    private int Count(bool rowEnds)
    {
        var count = 0;
        for (var i = 0; i < Stretches.Count; i++)
        {
            if (Stretches[i].Kind == StretchKind.RowEnds == rowEnds) count += Stretches[i].Count;
        }

        return count;
    }
}

/// <summary>Finds the part of an edge that words mean.</summary>
public static class EdgeSelection
{
    /// <summary>The stretches of an edge with a name, or all of them.</summary>
    public static JoinSide ByName(Piece piece, Hand hand, string? name)
    {
        var all = piece.At(hand).Stretches;
        if (name is null) return new(piece, hand, all);
        var named = new List<Stretch>();
        for (var i = 0; i < all.Count; i++)
        {
            if (string.Equals(all[i].Name, name, StringComparison.OrdinalIgnoreCase)) named.Add(all[i]);
        }

        return new(piece, hand, named);
    }

    /// <summary>The foundation edge.</summary>
    public static JoinSide Foundation(Piece piece)
    {
        var places = piece.Rows.Count > 0 ? piece.Rows[0].Work?.Below.Count ?? 0 : 0;
        return new(piece, null, [new Stretch(StretchKind.Foundation, 0, places, null, null)]);
    }

    /// <summary>The last row's stitches, as far as no part goes on from them.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="parts">The parts: stitches from the right edge, and how many.</param>
    public static JoinSide LastRow(Piece piece, IReadOnlyCollection<(int FromRight, int Count)> parts)
    {
        if (parts.Count == 0) return new(piece, null, [Of(StretchKind.LastRow, piece.LastStitches)]);
        var open = new List<Stretch>();
        var reached = 0;
        foreach (var (from, count) in parts.OrderBy(static p => p.FromRight))
        {
            if (from > reached) open.Add(Of(StretchKind.OpenStitches, from - reached));
            reached = Math.Max(reached, from + count);
        }

        if (piece.LastStitches > reached) open.Add(Of(StretchKind.OpenStitches, piece.LastStitches - reached));
        return new(piece, null, open.Count > 0 ? open : [Of(StretchKind.OpenStitches, 0)]);

        Stretch Of(StretchKind kind, int count) => new(kind, piece.Rows.Count, count, null, null);
    }

    /// <summary>A part of the last row that was divided off under a name.</summary>
    public static JoinSide Part(Piece piece, string name, int fromRight, int count) =>
        new(piece, null, [new Stretch(StretchKind.OpenStitches, piece.Rows.Count, count, null, name) { FromRight = fromRight }]);

    /// <summary>Stitches held inside a row, or the other side of a bridge, by their name; null if there are none.</summary>
    public static JoinSide? Inner(Piece piece, string name)
    {
        var found = piece.Inner.Where(s => string.Equals(s.Name, name, StringComparison.OrdinalIgnoreCase)).ToList();
        return found.Count > 0 ? new(piece, null, found) : null;
    }

    /// <summary>Only the row-ends from <paramref name="skip"/> on, so many; what lies between them stays in. Null if there are fewer.</summary>
    public static JoinSide? Rows(JoinSide side, int skip, int take)
    {
        if (skip < 0 || take < 0 || skip + take > side.RowEnds) return null;
        var result = new List<Stretch>();
        var passed = 0;
        foreach (var stretch in side.Stretches)
        {
            if (stretch.Kind != StretchKind.RowEnds)
            {
                // A step between two taken rows belongs to them; one at the rim does not.
                if (passed > skip && passed < skip + take) result.Add(stretch);
                continue;
            }

            var from = Math.Max(0, skip - passed);
            var to = Math.Min(stretch.Count, skip + take - passed);
            if (to > from) result.Add(stretch with { FirstRow = stretch.FirstRow + from, Count = to - from });
            passed += stretch.Count;
        }

        return side with { Stretches = result };
    }
}
