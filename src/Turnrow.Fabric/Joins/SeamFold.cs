namespace Turnrow.Fabric.Joins;

/// <summary>A row of stitches that is folded flat, each stitch of one half on one of the other: how a tube is closed.</summary>
/// <param name="From">The stitch at the fold, counted from the beginning of the row or round; it meets the one before it.</param>
/// <param name="Stitches">All stitches.</param>
public sealed record SeamFold(int From, int Stitches)
{
    /// <summary>How many times two stitches meet.</summary>
    public int Pairs => Stitches / 2;

    /// <summary>Of an odd number, the stitch that lies in the fold at the other end and meets no other; null of an even one.</summary>
    public int? Alone => Stitches % 2 == 0 ? null : At(Pairs);

    /// <summary>The two that meet, so many pairs from the fold.</summary>
    public (int First, int Second) Pair(int at) => (At(at), At(-1 - at));

    private int At(int steps) => (((From - 1 + steps) % Stitches) + Stitches) % Stitches + 1;
}
