using Turnrow.Fabric.Places;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Phrases;

/// <summary>What a place is called.</summary>
internal enum PlaceNameKind : byte
{
    /// <summary>A stitch of any kind.</summary>
    AnyStitch,

    /// <summary>A stitch of one kind.</summary>
    Stitch,

    /// <summary>A chain.</summary>
    Chain,

    /// <summary>Chains and stitches of one kind.</summary>
    ChainAndStitch,

    /// <summary>Chains and stitches of any kind.</summary>
    ChainAndAnyStitch,

    /// <summary>A space under so many chains.</summary>
    Space,

    /// <summary>A space of any size.</summary>
    AnySpace,

    /// <summary>Stitches and spaces.</summary>
    StitchAndSpace,

    /// <summary>Chains, stitches and spaces.</summary>
    ChainStitchAndSpace,

    /// <summary>The end of a row.</summary>
    RowEnd,

    /// <summary>Ends of rows and what steps between them left or added.</summary>
    RowEndOrStitch,

    /// <summary>A place of a special stitch.</summary>
    OfSpecial,

    /// <summary>The ring that the piece begins with.</summary>
    Ring,
}

/// <summary>A name for like places, in the singular and the plural.</summary>
/// <param name="Kind">What they are.</param>
/// <param name="Stitch">The one kind of stitch; else null.</param>
/// <param name="Chains">Of a space, the chains over it; else 0.</param>
internal readonly record struct PlaceName(PlaceNameKind Kind, Stitch? Stitch = null, int Chains = 0)
{
    /// <summary>Of a place of a special stitch, that stitch.</summary>
    public Stitch? Special { get; init; }

    /// <summary>Which of its kind in the special stitch; 0 for the centre, below 0 for the only one of its kind.</summary>
    public int Nth { get; init; }

    public static PlaceName AnyStitch => new(PlaceNameKind.AnyStitch);

    public static PlaceName Chain => new(PlaceNameKind.Chain);

    public static PlaceName RowEnd => new(PlaceNameKind.RowEnd);

    /// <summary>The name of one place.</summary>
    public static PlaceName Of(Place place) => place.Kind switch
    {
        PlaceKind.FoundationChain or PlaceKind.AddedChain or PlaceKind.BridgeChain => Chain,
        PlaceKind.Space => new(PlaceNameKind.Space, null, place.Chains),
        PlaceKind.Ring => new(PlaceNameKind.Ring),
        _ when place.Stitch is { } stitch => new(PlaceNameKind.Stitch, stitch),
        _ => AnyStitch,
    };

    /// <summary>The name of a place by what it is in the special stitch that it belongs to.</summary>
    public static PlaceName InSpecial(Place place, PlaceFilter filter)
    {
        var part = place.Part!;
        var special = part.Special;
        var only = special.Tops.CountWhere(p => p.Kind == place.Kind && p.Stitch == place.Stitch) == 1;
        return new(PlaceNameKind.OfSpecial, place.Stitch, place.Chains)
        {
            Special = special,
            // Only what a maker sees to be the middle is called so; a centre that the designer chose is counted.
            Nth = only ? -1 : filter.Kind == PlaceFilterKind.CentreOf && (2 * part.Index) + 1 == special.Tops.Count ? 0 : part.Nth,
        };
    }

    /// <summary>Of a place of a special stitch, the place alone: <c>3rd dc</c>, <c>centre dc</c>, <c>ch-1 sp</c>.</summary>
    public string PartAlone(Wording words)
    {
        var name = Stitch is { } stitch ? words.Stitch(stitch) : $"{words.Ch}-{Numbers.Plain(Chains)} {words.Sp}";
        return Nth < 0 ? name : Nth == 0 ? $"{words.Terms.Centre} {name}" : $"{Numbers.Nth(Nth)} {name}";
    }

    /// <summary>A name for both.</summary>
    public PlaceName With(PlaceName other)
    {
        if (this == other) return this;
        var chains = HasChains || other.HasChains;
        if (IsOnlySpace && other.IsOnlySpace) return new(PlaceNameKind.AnySpace);
        if (IsSpace || other.IsSpace) return new(chains ? PlaceNameKind.ChainStitchAndSpace : PlaceNameKind.StitchAndSpace);
        var one = Stitch == other.Stitch || other.Kind == PlaceNameKind.Chain ? Stitch
            : Kind == PlaceNameKind.Chain ? other.Stitch
            : null;
        return one is null ? new(chains ? PlaceNameKind.ChainAndAnyStitch : PlaceNameKind.AnyStitch)
            : new(chains ? PlaceNameKind.ChainAndStitch : PlaceNameKind.Stitch, one);
    }

    /// <summary>The same with stitches of whatever kind.</summary>
    public PlaceName OfAnyStitch() => Kind == PlaceNameKind.ChainAndStitch ? new(PlaceNameKind.ChainAndAnyStitch) : this;

    /// <summary>A name that holds in both of two sizes: stitches of different kinds are just stitches. Null if there is none.</summary>
    public PlaceName? And(PlaceName other)
    {
        if (this == other) return this;
        return IsStitch && other.IsStitch ? AnyStitch : null;
    }

    /// <summary>One of them: <c>dc</c>, <c>st</c>, <c>ch-2 sp</c>.</summary>
    public string One(Wording words) => Kind switch
    {
        PlaceNameKind.Stitch => words.Stitch(Stitch!),
        PlaceNameKind.Chain => words.Ch,
        PlaceNameKind.ChainAndStitch => $"{words.Ch} and {words.Stitch(Stitch!)}",
        PlaceNameKind.ChainAndAnyStitch => $"{words.Ch} and {words.St}",
        PlaceNameKind.Space => $"{words.Ch}-{Numbers.Plain(Chains)} {words.Sp}",
        PlaceNameKind.AnySpace => words.Sp,
        PlaceNameKind.StitchAndSpace => $"{words.St} and {words.Sp}",
        PlaceNameKind.ChainStitchAndSpace => $"{words.Ch}, {words.St} and {words.Sp}",
        PlaceNameKind.RowEnd => "row-end",
        PlaceNameKind.RowEndOrStitch => $"row-end or {words.St}",
        PlaceNameKind.OfSpecial => $"{PartAlone(words)} of {words.Stitch(Special!)}",
        PlaceNameKind.Ring => "ring",
        _ => words.St,
    };

    /// <summary>Several: <c>dc</c>, <c>blocks</c>, <c>sts</c>, <c>row-ends</c>.</summary>
    public string Many(Wording words) => Kind switch
    {
        PlaceNameKind.AnyStitch => words.Sts,
        PlaceNameKind.Stitch => words.Stitches(Stitch!),
        PlaceNameKind.Space => One(words) + "s",
        PlaceNameKind.AnySpace => One(words) + "s",
        PlaceNameKind.ChainAndAnyStitch => $"{words.Ch} and {words.Sts}",
        PlaceNameKind.StitchAndSpace => $"{words.Sts} and {words.Sp}s",
        PlaceNameKind.ChainStitchAndSpace => $"{words.Ch}, {words.Sts} and {words.Sp}s",
        PlaceNameKind.RowEnd => "row-ends",
        PlaceNameKind.RowEndOrStitch => $"row-ends and {words.Sts}",
        _ => One(words),
    };

    /// <summary>So many of them: <c>4 sts</c>, <c>1 st</c>.</summary>
    public string Counted(Sized<int> number, Wording words) =>
        $"{number.Written()} {(number.All(static n => n == 1) ? One(words) : IsMixed ? words.Sts : Many(words))}";

    // "2 ch and dc" might be three: chains and stitches counted together are sts.
    private bool IsMixed => Kind is PlaceNameKind.ChainAndStitch or PlaceNameKind.ChainAndAnyStitch;

    private bool IsStitch => Kind is PlaceNameKind.Stitch or PlaceNameKind.AnyStitch;

    /// <summary>True if a space is among what it names.</summary>
    public bool IsSpace => IsOnlySpace || Kind is PlaceNameKind.StitchAndSpace or PlaceNameKind.ChainStitchAndSpace;

    private bool IsOnlySpace => Kind is PlaceNameKind.Space or PlaceNameKind.AnySpace;

    /// <summary>True if some of them are chains.</summary>
    public bool HasChains => Kind is PlaceNameKind.Chain or PlaceNameKind.ChainAndStitch or PlaceNameKind.ChainAndAnyStitch or PlaceNameKind.ChainStitchAndSpace;
}
