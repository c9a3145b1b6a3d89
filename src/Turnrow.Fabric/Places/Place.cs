using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Places;

/// <summary>What a hook can go into.</summary>
public enum PlaceKind : byte
{
    /// <summary>The top of a stitch.</summary>
    Stitch,

    /// <summary>The top of a turning chain that counts as a stitch.</summary>
    TurningChain,

    /// <summary>The top of the chains skipped at the beginning of a foundation or of an added length, counted as a stitch.</summary>
    SkippedChains,

    /// <summary>A chain of the foundation.</summary>
    FoundationChain,

    /// <summary>A chain added at an edge.</summary>
    AddedChain,

    /// <summary>A chain of a bridge inside a row.</summary>
    BridgeChain,

    /// <summary>A space under chains.</summary>
    Space,

    /// <summary>The ring that a piece begins with: one place, however much goes into it.</summary>
    Ring,

    /// <summary>The end of a row, at an edge that another piece is joined to while it is worked.</summary>
    RowEnd,
}

/// <summary>One place of a row: what later stitches are worked into.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Stitch">The stitch whose top it is, or that the chain stands for; null for chains and spaces.</param>
/// <param name="Chains">Of a space, the number of chains over it; else 0.</param>
public readonly record struct Place(PlaceKind Kind, Stitch? Stitch, int Chains)
{
    /// <summary>True if a marker is in it: what is worked into it makes the corner of the next row.</summary>
    public bool IsCorner { get; init; }

    /// <summary>Which place of a special stitch it is; null if it belongs to none.</summary>
    public PartOfStitch? Part { get; init; }

    /// <summary>True if it is the first place of a special stitch, so that such stitches can be counted.</summary>
    public bool Begins(Stitch special) => Part is { Index: 0 } part && part.Special.IsLike(special);

    /// <summary>True if a count of stitches includes it.</summary>
    public bool IsStitch => Kind is PlaceKind.Stitch or PlaceKind.TurningChain or PlaceKind.SkippedChains;

    /// <summary>True if <c>in next st</c> can mean it: a stitch, or a chain that is worked like one.</summary>
    public bool TakesStitches => Kind is not (PlaceKind.Space or PlaceKind.Ring);

    /// <summary>The top of a stitch.</summary>
    public static Place TopOf(Stitch stitch) => new(PlaceKind.Stitch, stitch, 0);

    /// <summary>A space under so many chains.</summary>
    public static Place SpaceOf(int chains) => new(PlaceKind.Space, null, chains);
}

/// <summary>Like places side by side.</summary>
public readonly record struct PlaceRun(Place Place, int Count);

/// <summary>Runs that come <paramref name="Times"/> times, one after the other.</summary>
/// <param name="Unit">The runs; at least one.</param>
/// <param name="Times">How often, at least 1.</param>
public sealed record PlaceSegment(IReadOnlyList<PlaceRun> Unit, int Times)
{
    /// <summary>Places of one unit.</summary>
    public int UnitCount { get; } = CountOf(Unit);

    /// <summary>Places in all.</summary>
    public int Count => UnitCount * Times;

    /// <summary>How much one unit adds to the length of a row: a place each, and of a space its chains.</summary>
    internal long LengthOfUnit()
    {
        var length = 0L;
        for (var i = 0; i < Unit.Count; i++) length += (long)Unit[i].Count * Math.Max(1, Unit[i].Place.Chains);
        return length;
    }

    /// <summary>True if any of them is a corner.</summary>
    public bool HasCorner { get; } = HasCornerIn(Unit);

    /// <summary>True if any of them belongs to a special stitch.</summary>
    public bool HasPart { get; } = HasPartIn(Unit);

    /// <summary>True if both are repeats of the same runs.</summary>
    internal bool HasSameUnit(PlaceSegment other)
    {
        if (ReferenceEquals(Unit, other.Unit)) return true;
        if (Unit.Count != other.Unit.Count) return false;
        for (var i = 0; i < Unit.Count; i++)
        {
            if (Unit[i] != other.Unit[i]) return false;
        }

        return true;
    }

    private static bool HasPartIn(IReadOnlyList<PlaceRun> unit)
    {
        for (var i = 0; i < unit.Count; i++)
        {
            if (unit[i].Place.Part is not null) return true;
        }

        return false;
    }

    private static bool HasCornerIn(IReadOnlyList<PlaceRun> unit)
    {
        for (var i = 0; i < unit.Count; i++)
        {
            if (unit[i].Place.IsCorner) return true;
        }

        return false;
    }

    private static int CountOf(IReadOnlyList<PlaceRun> unit)
    {
        var count = 0;
        for (var i = 0; i < unit.Count; i++) count += unit[i].Count;
        return count;
    }
}
