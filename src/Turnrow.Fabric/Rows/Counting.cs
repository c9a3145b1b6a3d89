using Turnrow.Fabric.Places;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Rows;

/// <summary>What a count of stitches takes in.</summary>
public enum Counting
{
    /// <summary>The trade's way: a turning chain if its rule says so, no chains of spaces.</summary>
    Usual,

    /// <summary>A turning chain is left out even where it stands for a stitch.</summary>
    WithoutTurningChain,

    /// <summary>Chains of spaces and bridges are taken in.</summary>
    WithChains,
}

/// <summary>Counts of a worked row.</summary>
public static class RowCounts
{
    /// <summary>Stitches of a row, or of one kind in it.</summary>
    /// <param name="work">The row.</param>
    /// <param name="counting">What the count takes in.</param>
    /// <param name="stitch">The kind; null for all.</param>
    public static int Count(this RowWork work, Counting counting, Stitch? stitch = null)
    {
        var count = stitch is null ? work.Stitches : Of(stitch, work);
        if (counting == Counting.WithoutTurningChain && work.Opening.Counts && (stitch is null || stitch == work.Opening.Stitch)) count--;
        if (counting != Counting.WithChains || stitch is not null) return count;
        foreach (var kind in work.Tops.Kinds()) count += (kind.Place.Kind == PlaceKind.BridgeChain ? 1 : kind.Place.Chains) * kind.Count;
        return count;
    }

    private static int Of(Stitch stitch, RowWork work) => work.Tops.CountOf(stitch);

    /// <summary>How many of a stitch there are among places: of a special stitch the whole ones, else its tops.</summary>
    public static int CountOf(this PlaceSequence places, Stitch stitch) =>
        stitch.IsOne ? places.CountWhere(p => p.IsStitch && p.Stitch!.IsLike(stitch)) : places.CountWhere(p => p.Begins(stitch));
}
