namespace Turnrow.Fabric.Words;

/// <summary>How far a word of a row goes.</summary>
public enum Reach : byte
{
    /// <summary>So many times.</summary>
    Fixed,

    /// <summary>To the end of the row.</summary>
    Across,

    /// <summary>Until so many places remain.</summary>
    Until,

    /// <summary>Until so many places remain before the next corner.</summary>
    ToCorner,

    /// <summary>Until so many places remain before the turn of the row below, behind which stitches wait.</summary>
    ToTurn,
}

/// <summary>How often a word is worked, and how that was said.</summary>
/// <param name="Reach">How it was said.</param>
/// <param name="Count">
/// With <see cref="Reach.Fixed"/> the number of times; with <see cref="Reach.Until"/>, <see cref="Reach.ToCorner"/> and <see cref="Reach.ToTurn"/> the places to leave.
/// </param>
/// <param name="Times">The number of times; known once the row is worked.</param>
public readonly record struct Amount(Reach Reach, int Count, int Times)
{
    /// <summary>Once.</summary>
    public static Amount Once => Of(1);

    /// <summary>To the end of the row.</summary>
    public static Amount Across => new(Reach.Across, 0, 0);

    /// <summary>So many times.</summary>
    public static Amount Of(int times) => new(Reach.Fixed, times, times);

    /// <summary>Until so many places remain.</summary>
    public static Amount Until(int remain) => new(Reach.Until, remain, 0);

    /// <summary>Until so many places remain before the next corner.</summary>
    public static Amount ToCorner(int remain) => new(Reach.ToCorner, remain, 0);

    /// <summary>Until so many places remain before the turn of the row below.</summary>
    public static Amount ToTurn(int remain) => new(Reach.ToTurn, remain, 0);
}
