using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Joins;

/// <summary>Two edges that are joined, in one size.</summary>
/// <param name="First">One edge, or the first part of it.</param>
/// <param name="Second">The other, or the first part of it.</param>
/// <param name="Eased">True if unequal lengths are meant.</param>
/// <param name="Rate">How it is worked; null if it is sewn.</param>
public sealed record Seam(JoinSide First, JoinSide Second, bool Eased, SeamRate? Rate)
{
    /// <summary>What the first edge goes on along, part by part: a cap's top and its other slope.</summary>
    public IReadOnlyList<JoinSide> FirstGoesOn { get; init; } = [];

    /// <summary>What the second edge goes on along.</summary>
    public IReadOnlyList<JoinSide> SecondGoesOn { get; init; } = [];

    /// <summary>The yarn that it is worked or sewn with; null if the pattern does not say.</summary>
    public string? Yarn { get; init; }

    /// <summary>True if the right sides lie together, false if the wrong sides do; null if the pattern does not say.</summary>
    public bool? RightSidesTogether { get; init; }

    /// <summary>How long both edges are, where the pattern says by how much they differ; null where not.</summary>
    public SeamLengths? Lengths { get; init; }

    /// <summary>Where the stitches of one edge are folded and joined to each other; null if it joins two edges. Then the second is the first once more.</summary>
    public SeamFold? Fold { get; init; }

    /// <summary>True if an edge is put together of several.</summary>
    public bool GoesOn => FirstGoesOn.Count + SecondGoesOn.Count > 0;

    /// <summary>
    /// True if the first edge's first row meets the second's last: two edges of the same hand can only lie side by side that way, two of
    /// opposite hands only the other way.
    /// </summary>
    public bool OppositeOrder => First.Hand == Second.Hand;

    /// <summary>The whole first edge.</summary>
    public IReadOnlyList<JoinSide> WholeFirst => [First, .. FirstGoesOn];

    /// <summary>The whole second edge.</summary>
    public IReadOnlyList<JoinSide> WholeSecond => [Second, .. SecondGoesOn];

    /// <summary>True if both edges have as many row-ends and as many stitches.</summary>
    public bool IsEven =>
        RowEnds(WholeFirst) == RowEnds(WholeSecond) && Stitches(WholeFirst) == Stitches(WholeSecond);

    /// <summary>Row-ends in all of an edge.</summary>
    public static int RowEnds(IReadOnlyList<JoinSide> edge) => edge.Sum(static side => side.RowEnds);

    /// <summary>Stitches and chains in all of an edge.</summary>
    public static int Stitches(IReadOnlyList<JoinSide> edge) => edge.Sum(static side => side.Stitches);
}

/// <summary>How long the two edges of a seam are, in centimetres.</summary>
public sealed record SeamLengths(Rational First, Rational Second);

/// <summary>So many stitches in so many rows (or stitches) of a seam.</summary>
public sealed record SeamRate(int Stitches, Stitch Stitch, int Per, bool OfStitches);
