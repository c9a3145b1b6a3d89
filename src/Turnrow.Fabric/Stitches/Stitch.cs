using System.Runtime.CompilerServices;

namespace Turnrow.Fabric.Stitches;

/// <summary>Whose words are used: the same stitch has one name in the US and another in the UK.</summary>
public enum Terms
{
    /// <summary>US terms.</summary>
    US,

    /// <summary>UK terms.</summary>
    UK,
}

/// <summary>A stitch's names in one set of terms.</summary>
/// <param name="Abbreviation">As in a row: <c>dc</c>.</param>
/// <param name="Name">In full: double crochet.</param>
public sealed record StitchName(string Abbreviation, string Name);

/// <summary>
/// A stitch. Everything the program knows about it is here; a new one is one entry in <see cref="StitchBook"/>.
/// </summary>
/// <param name="Id">US abbreviation, used as the stitch's own key.</param>
/// <param name="Us">Names in US terms.</param>
/// <param name="Uk">Names in UK terms.</param>
/// <param name="Height">Height in chains, which is also the customary turning chain's length.</param>
/// <param name="TurningChainCounts">Whether that chain customarily counts as a stitch; null where print does both.</param>
/// <param name="PickUp">Stitches customarily picked up along its row-ends: so many in <see cref="PickUpRate.Rows"/> rows.</param>
/// <param name="Symbol">How a chart draws it.</param>
public sealed record Stitch(
    string Id, StitchName Us, StitchName Uk, int Height, bool? TurningChainCounts, PickUpRate PickUp, StitchSymbol Symbol)
{
    /// <summary>There is one object for each stitch: comparing two asks for no more than that.</summary>
    public bool Equals(Stitch? other) => ReferenceEquals(this, other);

    /// <inheritdoc/>
    public override int GetHashCode() => RuntimeHelpers.GetHashCode(this);

    /// <summary>Its names in the terms asked for.</summary>
    public StitchName In(Terms terms) => terms == Terms.US ? Us : Uk;

    /// <inheritdoc/>
    public override string ToString() => Id;
}

/// <summary>So many stitches along so many row-ends.</summary>
public readonly record struct PickUpRate(int Stitches, int Rows);

/// <summary>How a stitch is drawn, in the symbols in international use: a stem with a head and a number of bars.</summary>
/// <param name="Shape">Its shape.</param>
/// <param name="Bars">Slashes across the stem: none for hdc, and one more for each taller stitch, so dc 1, tr 2, dtr 3.</param>
public readonly record struct StitchSymbol(SymbolShape Shape, int Bars);

/// <summary>The shapes of stitch symbols.</summary>
public enum SymbolShape
{
    /// <summary>Open oval: a chain.</summary>
    Oval,

    /// <summary>Filled dot: a slip stitch.</summary>
    Dot,

    /// <summary>Upright cross: a single crochet (US).</summary>
    Cross,

    /// <summary>T with bars: the taller stitches.</summary>
    Stem,
}
