using Turnrow.Fabric.Words;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Phrases;

/// <summary>Where the hook goes.</summary>
internal abstract record Where
{
    /// <summary>Both over the sizes of both; null if they are not alike.</summary>
    public abstract Where? And(Where other);

    /// <summary>The place, as it stands behind "in".</summary>
    public abstract string Written(Wording words);

    /// <summary>The place with the words before it. A post is gone round, and a chain as well: the hook does not go in its top.</summary>
    public string Into(HookInto hook, Wording words) =>
        $"{Wording.Into(hook)} {(hook is HookInto.FrontPost or HookInto.BackPost && this is ChainTop top ? top.Chain(words) : Written(words))}";
}

/// <summary><c>next dc</c>, <c>each of next 5 dc</c>; of a row's beginning <c>first dc</c>.</summary>
internal sealed record NextPlaces(Sized<int> Count, PlaceName Place, bool FromFirst) : Where
{
    public override Where? And(Where other) => other is NextPlaces next && Place.And(next.Place) is { } place && next.FromFirst == FromFirst
        ? this with { Count = Count.And(next.Count), Place = place }
        : null;

    public override string Written(Wording words)
    {
        var at = FromFirst ? "first" : "next";
        if (Place.Special is { } special && Count.All(static n => n == 1)) return $"{Place.PartAlone(words)} of {at} {words.Stitch(special)}";
        return Count.All(static n => n == 1)
            ? $"{at} {Place.One(words)}"
            : $"each of {at} {Place.Counted(Count, words)}";
    }
}

/// <summary>All there are, to the row's end or the chain that stands for its last stitch.</summary>
/// <param name="Place">What they are.</param>
/// <param name="IsRound">True in a round.</param>
internal sealed record EachAcross(PlaceName Place, bool IsRound = false) : Where
{
    public override Where? And(Where other) =>
        other is EachAcross where && where.IsRound == IsRound && Place.And(where.Place) is { } place ? new EachAcross(place, IsRound) : null;

    public override string Written(Wording words) => $"each {Place.One(words)} {(IsRound ? "around" : "across")}";
}

/// <summary>All but the last so many stitches, chains that stand for one included.</summary>
internal sealed record EachToLast(PlaceName Place, Sized<int> Last) : Where
{
    public override Where? And(Where other) =>
        other is EachToLast to && Place.And(to.Place) is { } place ? new EachToLast(place, Last.And(to.Last)) : null;

    public override string Written(Wording words)
    {
        var name = Place == PlaceName.Chain ? Place : PlaceName.AnyStitch;
        var last = Last.All(static n => n == 1) ? name.One(words) : name.Counted(Last, words);
        return $"each {Place.One(words)} to last {last}";
    }
}

/// <summary>All up to a space.</summary>
internal sealed record EachToSpace(PlaceName Place, PlaceName Space) : Where
{
    public override Where? And(Where other) =>
        other is EachToSpace to && Place.And(to.Place) is { } place && Space.And(to.Space) is { } space ? new EachToSpace(place, space) : null;

    public override string Written(Wording words) => $"each {Place.One(words)} to next {Space.One(words)}";
}

/// <summary>All up to a marked place, or to so many before it.</summary>
internal sealed record EachToMarked(PlaceName Place, PlaceName Marked, Sized<int> Before) : Where
{
    public override Where? And(Where other) =>
        other is EachToMarked to && Place.And(to.Place) is { } place && Marked.And(to.Marked) is { } marked && IsShort == to.IsShort
            ? new EachToMarked(place, marked, Before.And(to.Before))
            : null;

    private bool IsShort => Before.First > 0;

    public override string Written(Wording words)
    {
        var before = IsShort ? $"{PlaceName.AnyStitch.Counted(Before, words)} before " : string.Empty;
        return $"each {Place.One(words)} to {before}the marked {Marked.One(words)}";
    }
}

/// <summary>The marked place.</summary>
internal sealed record MarkedPlace(PlaceName Place) : Where
{
    /// <summary>True if others of its kind are passed over on the way.</summary>
    public bool IsNext { get; init; }

    public override Where? And(Where other) => other is MarkedPlace where && where.IsNext == IsNext && Place.And(where.Place) is { } place ? this with { Place = place } : null;

    public override string Written(Wording words) => $"{(IsNext ? "next" : "the")} marked {Place.One(words)}";
}

/// <summary>All chains of a separate length added at the row's end.</summary>
internal sealed record AddedChains(Sized<int> Count) : Where
{
    public override Where? And(Where other) => other is AddedChains added ? new AddedChains(Count.And(added.Count)) : null;

    public override string Written(Wording words) =>
        Count.All(static n => n == 1) ? $"the added {words.Ch}" : $"each of the {Count.Written()} added {words.Ch}";
}

/// <summary>The place just worked into.</summary>
internal sealed record SamePlace(PlaceName Place) : Where
{
    public override Where? And(Where other) => other is SamePlace where && Place.And(where.Place) is { } place ? new SamePlace(place) : null;

    public override string Written(Wording words) => $"same {Place.One(words)}";
}

/// <summary>The row's last places: <c>last dc</c>, <c>each of last 3 dc</c>.</summary>
internal sealed record LastPlaces(Sized<int> Count, PlaceName Place) : Where
{
    public override Where? And(Where other) => other is LastPlaces where && Place.And(where.Place) is { } place
        ? new LastPlaces(Count.And(where.Count), place)
        : null;

    public override string Written(Wording words) => Count.All(static n => n == 1)
        ? $"last {Place.One(words)}"
        : $"each of last {Place.Counted(Count, words)}";
}

/// <summary>The first stitch that a row made: <c>the first st of Row 4</c>.</summary>
internal sealed record FirstOfRow(Sized<int> Row, bool IsRound) : Where
{
    public override Where? And(Where other) => other is FirstOfRow first && first.IsRound == IsRound ? this with { Row = Row.And(first.Row) } : null;

    public override string Written(Wording words) => $"the first {words.St} of {(IsRound ? "Round" : "Row")} {Row.Written()}";
}

/// <summary>The top of a chain that stands for a stitch.</summary>
/// <param name="Beginning">True for the chains skipped at the beginning of a chain, false for a turning chain.</param>
/// <param name="Nth">Where the chain is longer than the stitch that it stands for, which of its chains is that stitch's top; else 0.</param>
/// <param name="Of">Its length, where it is longer; else 0.</param>
internal sealed record ChainTop(bool Beginning, int Nth, int Of) : Where
{
    /// <summary>True of the chain that a round began with.</summary>
    public bool OfRound { get; init; }

    public override Where? And(Where other) => Equals(other) ? this : null;

    /// <summary>The chain itself, to go round it.</summary>
    public string Chain(Wording words) => OfRound ? $"the round's {words.Ch}-{Numbers.Plain(Of)}" : words.ChainAtStart(Beginning);

    public override string Written(Wording words)
    {
        if (OfRound) return $"{(Nth == 0 ? "top" : $"{Numbers.Nth(Nth)} {words.Ch}")} of the round's {words.Ch}-{Numbers.Plain(Of)}";
        return Nth == 0
            ? $"top of {words.ChainAtStart(Beginning)}"
            : $"{Numbers.Nth(Nth)} {words.Ch} of {words.ChainAtStart(Beginning)}-{Numbers.Plain(Of)}";
    }
}

/// <summary>A chain counted from the hook, and what the chains before it stand for.</summary>
/// <param name="Nth">Which chain.</param>
/// <param name="CountsAs">The stitch that the chains before it stand for; null if they do not count.</param>
/// <param name="Space">Chains of a space that the row opens with; else 0.</param>
/// <param name="Passed">Chains passed over on purpose.</param>
internal sealed record ChainFromHook(Sized<int> Nth, Fabric.Stitches.Stitch? CountsAs, int Space, Sized<int> Passed) : Where
{
    public override Where? And(Where other) =>
        other is ChainFromHook chain && chain.CountsAs == CountsAs && chain.Space == Space && IsPassing == chain.IsPassing
            ? this with { Nth = Nth.And(chain.Nth), Passed = Passed.And(chain.Passed) }
            : null;

    public override string Written(Wording words) => $"{Place(words)} ({Before(words)})";

    /// <summary>The place alone.</summary>
    public string Place(Wording words) => $"{Nth.WrittenNth()} {words.Ch} from hook";

    /// <summary>How many chains are before it.</summary>
    public string Chains => Nth.Select(static n => n - 1).Written();

    private bool IsPassing => Passed.First > 0;

    private string Before(Wording words)
    {
        var before = $"{words.Terms.Skipped} {Chains} {words.Ch}";
        var one = Nth.All(static n => n == 2);
        if (CountsAs is null) return one ? $"{words.Terms.Skipped} {words.Ch} does not count as a {words.St}" : $"{before} do not count as {words.Sts}";
        var parts = new List<string> { $"1 {words.Stitch(CountsAs)}" };
        if (Space > 0) parts.Add($"{words.Ch} {Numbers.Plain(Space)}");
        if (IsPassing) parts.Add($"{Passed.Written()} {words.Terms.Skipped} {words.Ch}");
        return $"{before} {(one ? "counts" : "count")} as {Wording.List(parts)}";
    }
}
