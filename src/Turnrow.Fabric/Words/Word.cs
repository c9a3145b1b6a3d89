using Turnrow.Fabric.Places;
using Turnrow.Fabric.Stitches;

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

/// <summary>Where the hook goes in a stitch.</summary>
public enum HookInto : byte
{
    /// <summary>Under both loops.</summary>
    BothLoops,

    /// <summary>Under the back loop.</summary>
    BackLoop,

    /// <summary>Under the front loop.</summary>
    FrontLoop,

    /// <summary>Round the post, from the front.</summary>
    FrontPost,

    /// <summary>Round the post, from the back.</summary>
    BackPost,

    /// <summary>A row further down than the row below: over the stitch, into what that one was worked into.</summary>
    OneDown,

    /// <summary>Two rows further down.</summary>
    TwoDown,

    /// <summary>Three rows further down.</summary>
    ThreeDown,
}

/// <summary>What follows from where the hook goes.</summary>
public static class HookPlaces
{
    /// <summary>How many rows further down than the row below the hook goes; 0 for none.</summary>
    public static int RowsDown(this HookInto hook) => hook < HookInto.OneDown ? 0 : hook - HookInto.OneDown + 1;
}

/// <summary>One thing that a row says to do.</summary>
public abstract record Word
{
    /// <summary>What it was made from.</summary>
    public Origin Origin { get; init; }
}

/// <summary>
/// Stitches: <see cref="Makes"/> of them over <see cref="Takes"/> places, <see cref="Amount"/> times. One each in the next five is
/// 1 over 1, five times; an increase 2 over 1, a decrease 1 over 2, dc3tog 1 over 3.
/// </summary>
public sealed record Work(Stitch Stitch, int Takes, int Makes, Amount Amount, Target Target, HookInto Hook) : Word
{
    /// <summary>Places passed over to get to the kind of place named, all times together; known once the row is worked.</summary>
    public int Passed { get; init; }

    /// <summary>Of those passed over, the ones before the first place of the kind.</summary>
    public int PassedBefore { get; init; }

    /// <summary>Corners among the places worked into; known once the row is worked.</summary>
    public int Corners { get; init; }

    /// <summary>Of a stitch that joins the piece to another, where it goes there; null for all others.</summary>
    public JoinTo? To { get; init; }

    /// <summary>One in each of so many.</summary>
    public static Work Plain(Stitch stitch, Amount amount) => new(stitch, 1, 1, amount, Target.Next, HookInto.BothLoops);

    /// <summary>So many increases, two in one place each.</summary>
    public static Work Increase(Stitch stitch, int times) =>
        new(stitch, 1, 2, Amount.Of(times), Target.Next, HookInto.BothLoops);

    /// <summary>So many decreases, two together each.</summary>
    public static Work Decrease(Stitch stitch, int times) =>
        new(stitch, 2, 1, Amount.Of(times), Target.Next, HookInto.BothLoops);
}

/// <summary>Stitches and chains in one place, worked so many times: <c>(2 dc, ch 2, 2 dc) in next sp</c>.</summary>
public sealed record Group(IReadOnlyList<Word> Words, Target Target) : Word
{
    /// <summary>Places passed over to get there; known once the row is worked.</summary>
    public int Passed { get; init; }

    /// <summary>Of those passed over, the ones before the first place of the kind.</summary>
    public int PassedBefore { get; init; }

    /// <summary>Corners among the places worked into; known once the row is worked.</summary>
    public int Corners { get; init; }

    /// <summary>The special stitch that it is, written out; null for none.</summary>
    public Stitch? Special { get; init; }

    /// <summary>How often it was worked: once, or of <see cref="Aim.EachOfKind"/> as many as there are.</summary>
    public int Times { get; init; } = 1;

    // What its words make, kept with the words that it was found for: a group is worked in every corner of every round.
    internal (IReadOnlyList<Word>? For, PlaceSequence? Made) Known { get; set; }

    /// <inheritdoc/>
    public bool Equals(Group? other) =>
        other is not null && Target == other.Target && Passed == other.Passed && PassedBefore == other.PassedBefore && Times == other.Times
        && Corners == other.Corners
        && WordLists.Same(Words, other.Words);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Target, Passed, Times, WordLists.Hash(Words));
}

/// <summary>Chains over the work: a space.</summary>
public sealed record Chains(int Count) : Word;

/// <summary>A marker in the place made last: from here on it is a corner.</summary>
public sealed record MarkCorner : Word;

/// <summary>The markers are taken out with this row: no stitch of it carries a corner up.</summary>
public sealed record RemoveCorners : Word;

/// <summary>
/// At the end of a round of a spiral: its marker is moved here. The places of the round below that are left come first in the next round.
/// </summary>
public sealed record MarkerHere : Word;

/// <summary>Another yarn is taken up: what follows, in the row and after it, is worked with it. No place knows of it.</summary>
public sealed record ChangeYarn(string Yarn) : Word;

/// <summary>Places passed over.</summary>
public sealed record Skip(int Count) : Word
{
    /// <summary>True of what is left at the end of a round whose last word names a kind of place: nobody says so, as nobody does of what is passed over before it.</summary>
    public bool IsUnsaid { get; init; }
}

/// <summary>Slip stitches to get past places at the beginning of the row; not counted, and what is passed is left for good.</summary>
public sealed record SlipOver(int Count) : Word;

/// <summary>Places at the end of the row that stay unworked; <see cref="Count"/> below 0 for all that remain.</summary>
public sealed record Leave(int Count) : Word
{
    /// <summary>True if they wait for a later row, false if they are left for good.</summary>
    public bool ForLater { get; init; }
}

/// <summary>Places inside the row that are not worked but kept, with a name, for another piece to take up.</summary>
public sealed record Hold(int Count, string Name) : Word;

/// <summary>
/// Chains over a gap, most often over stitches held: the next row is worked into each of them. Their other side is an edge; it may have a name.
/// </summary>
public sealed record Bridge(int Count, string? Name) : Word;

/// <summary>Words worked one after the other so many times.</summary>
public sealed record Repeat(IReadOnlyList<Word> Words, Amount Amount) : Word
{
    /// <summary>
    /// Where the times are not all alike (places passed over differ), each way with its number of times; else empty. Known once the
    /// row is worked.
    /// </summary>
    public IReadOnlyList<Repeat> Ways { get; init; } = [];

    /// <inheritdoc/>
    public bool Equals(Repeat? other) =>
        other is not null && Amount == other.Amount && WordLists.Same(Words, other.Words) && WordLists.Same(Ways, other.Ways);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Amount, WordLists.Hash(Words));
}
