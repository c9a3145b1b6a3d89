using Turnrow.Fabric.Places;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Words;

/// <summary>Which place a word goes to.</summary>
public enum Aim : byte
{
    /// <summary>The next one, whatever it is (but a stitch does not go into a space unasked).</summary>
    Next,

    /// <summary>The next one of a kind, passing over what is not of that kind.</summary>
    NextOfKind,

    /// <summary>The first of the row.</summary>
    First,

    /// <summary>The last of the row.</summary>
    Last,

    /// <summary>The one just worked into.</summary>
    Same,

    /// <summary>Each of a kind to the end of the row.</summary>
    EachOfKind,

    /// <summary>The corner, which has to be the next place.</summary>
    Corner,

    /// <summary>The ring that the piece begins with, which any number of words go into.</summary>
    Ring,
}

/// <summary>Which places a word means.</summary>
public enum PlaceFilterKind : byte
{
    /// <summary>Any stitch or chain.</summary>
    AnyStitch,

    /// <summary>Any space.</summary>
    AnySpace,

    /// <summary>Stitches and spaces alike.</summary>
    StitchOrSpace,

    /// <summary>
    /// Tops of one stitch, the chain that stands for it included; of the chain stitch, the chains of a foundation or of an added length.
    /// </summary>
    OneStitch,

    /// <summary>Spaces of so many chains.</summary>
    SpaceOf,

    /// <summary>The place of a special stitch that its name alone means.</summary>
    CentreOf,

    /// <summary>The nth stitch of a kind, or the nth space, in a special stitch.</summary>
    NthOf,

    /// <summary>A stitch or a space that is a corner.</summary>
    Corner,
}

/// <summary>A kind of place, as <c>in next ch-3 sp</c> names it.</summary>
public readonly record struct PlaceFilter(PlaceFilterKind Kind, Stitch? Stitch, int Chains)
{
    /// <summary>True of an nth that is counted from the last on.</summary>
    public bool FromLast { get; init; }

    /// <summary>Of <see cref="PlaceFilterKind.CentreOf"/> and <see cref="PlaceFilterKind.NthOf"/>, the special stitch.</summary>
    public Stitch? Special { get; init; }

    /// <summary>The place that a special stitch's name alone means.</summary>
    public static PlaceFilter CentreOf(Stitch special) => new(PlaceFilterKind.CentreOf, null, 0) { Special = special };

    /// <summary>The nth stitch of a kind, or the nth space if that is null, in a special stitch.</summary>
    public static PlaceFilter NthOf(int nth, Stitch? stitch, Stitch special) => new(PlaceFilterKind.NthOf, stitch, nth) { Special = special };

    /// <summary>The same places met from the other end of the row.</summary>
    internal PlaceFilter FromOtherEnd() => Kind == PlaceFilterKind.NthOf ? this with { FromLast = !FromLast } : this;

    /// <summary>Any stitch or chain.</summary>
    public static PlaceFilter AnyStitch => new(PlaceFilterKind.AnyStitch, null, 0);

    /// <summary>True if a place is of this kind.</summary>
    public bool Has(Place place) => Kind switch
    {
        PlaceFilterKind.AnyStitch => place.TakesStitches,
        PlaceFilterKind.AnySpace => place.Kind == PlaceKind.Space,
        PlaceFilterKind.StitchOrSpace => place.Kind != PlaceKind.Ring,
        PlaceFilterKind.Corner => place.IsCorner,
        PlaceFilterKind.OneStitch when Stitch == StitchBook.Chain => place.TakesStitches && place.Kind is not (PlaceKind.Stitch or PlaceKind.TurningChain),
        PlaceFilterKind.OneStitch => place.IsStitch && place.Stitch!.IsLike(Stitch!),
        PlaceFilterKind.CentreOf => place.Part is { IsCentre: true } part && part.Special.IsLike(Special!),
        PlaceFilterKind.NthOf => place.Stitch == Stitch && place.Part is { } part && part.Special.IsLike(Special!) && (FromLast ? part.FromOtherEnd : part).Nth == Chains,
        _ => place.Kind == PlaceKind.Space && place.Chains == Chains,
    };
}

/// <summary>Where a word goes, and of which kind the place is.</summary>
/// <param name="Aim">Which place.</param>
/// <param name="Filter">Of which kind.</param>
/// <param name="OverOthers">
/// True if the way to a space of so many chains may lead over other spaces, as it does with <see cref="Aim.EachOfKind"/>.
/// </param>
public readonly record struct Target(Aim Aim, PlaceFilter Filter, bool OverOthers = false)
{
    /// <summary>Of <see cref="Aim.EachOfKind"/>, how many places at the row's end it stays away from.</summary>
    public int Remain { get; init; }

    /// <summary>Of <see cref="Aim.EachOfKind"/>, true if it goes to the next corner and no further; the places that it stays away from lie before that.</summary>
    public bool ToCorner { get; init; }

    /// <summary>The next stitch.</summary>
    public static Target Next => new(Aim.Next, PlaceFilter.AnyStitch);

    /// <summary>The corner, be it a stitch or a space.</summary>
    public static Target Corner => new(Aim.Corner, new PlaceFilter(PlaceFilterKind.StitchOrSpace, null, 0));

    /// <summary>The next corner, what is before it being passed over.</summary>
    public static Target NextCorner => new(Aim.NextOfKind, new PlaceFilter(PlaceFilterKind.Corner, null, 0));

    /// <summary>The ring.</summary>
    public static Target Ring => new(Aim.Ring, default);
}
