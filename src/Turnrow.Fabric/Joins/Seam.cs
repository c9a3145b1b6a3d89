using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Joins;

/// <summary>Two edges that are joined, in one size.</summary>
/// <param name="First">One edge.</param>
/// <param name="Second">The other.</param>
/// <param name="Eased">True if unequal lengths are meant.</param>
/// <param name="Rate">How it is worked; null if it is sewn.</param>
public sealed record Seam(JoinSide First, JoinSide Second, bool Eased, SeamRate? Rate)
{
    /// <summary>
    /// True if the first edge's first row meets the second's last: two edges of the same hand can only lie side by side that way, two of
    /// opposite hands only the other way.
    /// </summary>
    public bool OppositeOrder => First.Hand == Second.Hand;

    /// <summary>True if both edges have as many row-ends and as many stitches.</summary>
    public bool IsEven => First.RowEnds == Second.RowEnds && First.Stitches == Second.Stitches;
}

/// <summary>So many stitches in so many rows (or stitches) of a seam.</summary>
public sealed record SeamRate(int Stitches, Stitch Stitch, int Per, bool OfStitches);
