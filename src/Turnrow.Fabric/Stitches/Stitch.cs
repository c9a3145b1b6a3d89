using System.Runtime.CompilerServices;
using Turnrow.Fabric.Places;

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
    private PlaceSequence? _tops;
    private Stitch? _mirrored;

    /// <summary>The stitch whose turning chain and gauge it goes by where it has none of its own; null for a stitch that stands for itself.</summary>
    public Stitch? Base { get; init; }

    /// <summary>What it is made of; null for a stitch that is not made of others.</summary>
    public StitchForm? Form { get; init; }

    /// <summary>The stitches of which it is one by a number; null for a stitch that has none.</summary>
    public StitchFamily? Family { get; internal set; }

    /// <summary>That number; 0 for a stitch that has none.</summary>
    public int Number { get; internal set; }

    /// <summary>True for the same stitch, its mirror image, and one of the same family.</summary>
    public bool IsLike(Stitch other) => ReferenceEquals(MirrorOf ?? this, other.MirrorOf ?? other) || (Family is not null && (ReferenceEquals(Family, other.Family) || ReferenceEquals(Family.Mirrored?.Invoke(), other.Family)));

    /// <summary>How it comes about.</summary>
    public StitchMaking Making { get; init; }

    /// <summary>The stitch that this one is the mirror image of; null if it is none.</summary>
    public Stitch? MirrorOf { get; private init; }

    /// <summary>True if it makes one place that is a stitch of its own name.</summary>
    public bool IsOne => Form is null or { Together: true };

    /// <summary>True if several stitches end in its one loop: no chain can stand for it.</summary>
    public bool IsCluster => Form is { Together: true };

    /// <summary>Places that it takes.</summary>
    public int Takes => Form?.Takes ?? 1;

    /// <summary>Stitches that a count takes for one of it.</summary>
    public int Stitches => IsOne ? 1 : Tops.CountWhere(static p => p.IsStitch);

    /// <summary>The places that it makes.</summary>
    public PlaceSequence Tops
    {
        get
        {
            // Two threads may ask for those of a standard stitch at once; its places must be the same objects for both.
            if (_tops is null) Interlocked.CompareExchange(ref _tops, IsOne ? PlaceSequence.Of(Place.TopOf(this), 1) : Form!.TopsOf(this), null);
            return _tops;
        }
    }

    /// <summary>The same stitch worked from its other end.</summary>
    public Stitch Mirrored
    {
        get
        {
            // What stands on a stitch, as a spur does, is worked alike from either side of it.
            if (Form is null or { Takes: 0 } or { IsSymmetric: true }) return this;
            if (Family?.Mirrored is { } other && other().Of(Number) is { } known) return known;
            if (_mirrored is null) Interlocked.CompareExchange(ref _mirrored, MirrorImage(), null);
            return _mirrored;
        }
    }

    private Stitch MirrorImage() => new($"{Id} mirrored", Mirror(Us), Mirror(Uk), Height, TurningChainCounts, PickUp, Symbol)
    {
        Base = Form!.Parts.LastOrDefault(static p => p.Worked is not null).Worked?.Rule ?? Base,
        Form = Form!.Reversed(),
        Making = Making,
        MirrorOf = this,
        Family = Family,
        _mirrored = this,
    };

    private static StitchName Mirror(StitchName name) => new($"mirrored {name.Abbreviation}", $"mirrored {name.Name}");

    /// <summary>The stitch whose turning chain its rows go by.</summary>
    public Stitch Rule => Base ?? this;

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
public readonly record struct StitchSymbol(SymbolShape Shape, int Bars)
{
    /// <summary>Stems that meet at both ends, of a bobble, a puff or a popcorn; else 0.</summary>
    public int Legs { get; init; }

    /// <summary>Of a variant, the shape that it is a variant of.</summary>
    public SymbolShape Of { get; init; }
}

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

    /// <summary>Stems that meet at their feet and at their tops: a bobble or a cluster.</summary>
    Cluster,

    /// <summary>Bowed stems without bars that meet at both ends: a puff.</summary>
    Puff,

    /// <summary>Stems with an oval across their tops: a popcorn.</summary>
    Popcorn,

    /// <summary>T whose stem has a link: an extended stitch.</summary>
    Extended,

    /// <summary>T with a link to the stitch beside it.</summary>
    Linked,

    /// <summary>Cross with a wave above it.</summary>
    Reversed,

    /// <summary>Ovals in a ring, closed by a dot.</summary>
    Picot,

    /// <summary>A chain that stands out, with stitches along it.</summary>
    Spur,

    /// <summary>What is made of others is drawn as they are.</summary>
    Parts,
}
