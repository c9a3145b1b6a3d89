using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Values;
using Turnrow.Fabric;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Rows;

/// <summary>
/// Makes the words of a row of what the designer wrote, in all sizes at once. A size in which a number is not known has no words.
/// </summary>
/// <param name="context">What the file says.</param>
/// <param name="piece">The piece that the row is in; null where it is in none.</param>
internal sealed partial class RowBinder(Context context, PieceState? piece = null)
{
    private readonly HashSet<Stitch> _stitches = [];

    /// <summary>True of the key of a picture: its words are one square, and no row ends with it.</summary>
    public bool OfKey { get; init; }

    /// <summary>The words, a size; null in a size where they are not known.</summary>
    /// <param name="items">What was written.</param>
    /// <param name="fabric">The one stitch that the row below is made of, which a row goes on with that names none; null if there is none.</param>
    public IReadOnlyList<Word>?[] Bind(IReadOnlyList<RowItemSyntax> items, Stitch? fabric)
    {
        AddStitches(items);
        if (_stitches.Count == 0 && fabric is not null) _stitches.Add(fabric);
        CheckEdges(items);
        return List(items, false);
    }

    // What is held or bridged lies between stitches. The words are kept as they are: how many stitches there are is not in doubt.
    private void CheckEdges(IReadOnlyList<RowItemSyntax> items)
    {
        var worked = items.Where(static item => item is not (RemoveCornersItem or MarkCornerItem or MoveMarkerItem or YarnItem)).ToList();
        CheckYarns(items);
        if (worked is [HoldItem or BridgeItem, ..]) context.Findings.Add(HoldAtEdge.At(worked[0].Span, worked[0] is BridgeItem, false));
        else if (worked is [.., HoldItem or BridgeItem]) context.Findings.Add(HoldAtEdge.At(worked[^1].Span, worked[^1] is BridgeItem, true));
    }

    // A yarn at the end of a bracket is for its next time; at the end of a row it is for nothing.
    private void CheckYarns(IReadOnlyList<RowItemSyntax> items)
    {
        for (var i = 0; i < items.Count; i++)
        {
            if (items[i] is YarnItem yarn && i + 1 < items.Count && items[i + 1] is YarnItem next) context.Findings.Add(YarnNothing.Twice(yarn.Span, yarn.Yarn.Text, next.Yarn.Text));
        }

        if (items is not [.., YarnItem last]) return;
        context.Findings.Add(OfKey ? YarnNothing.AtKeyEnd(last.Span, last.Yarn.Text) : YarnNothing.AtEnd(last.Span, last.Yarn.Text));
        context.Yarns.Misname();
    }

    // The row's stitches: a bare `inc` or `dec` means that one, if there is only one; a row that names none goes on with the fabric's.
    private void AddStitches(IReadOnlyList<RowItemSyntax> items)
    {
        foreach (var item in items)
        {
            if (item is GroupItem group) AddStitches(group.Items);
            if (item is SpreadItem spread) AddStitches([spread.Plain, .. spread.Items]);
            if (item is not StitchItem stitch) continue;
            foreach (var word in stitch.Words)
            {
                if (StitchWord.Read(word.Text, context) is { Stitch: { Base: null } basic } && basic != StitchBook.Chain) _stitches.Add(basic);
            }
        }
    }

    private IReadOnlyList<Word>?[] List(IReadOnlyList<RowItemSyntax> items, bool inOnePlace)
    {
        var lists = new List<Word>?[context.Sizes];
        for (var i = 0; i < lists.Length; i++) lists[i] = [];
        Word?[]? before = null;
        for (var at = 0; at < items.Count; at++)
        {
            var words = One(items[at], inOnePlace);
            if (before is not null && !inOnePlace) NothingLeftCheck.Add(context, items[at - 1], before, items[at], words);
            before = words;
            for (var i = 0; i < lists.Length; i++)
            {
                if (words[i] is Repeat again && inOnePlace) lists[i]?.AddRange(LaidOut(again));
                else if (words[i] is { } word) lists[i]?.Add(word);
                else lists[i] = null;
            }
        }

        return lists;
    }

    private Word?[] One(RowItemSyntax item, bool inOnePlace)
    {
        var words = item switch
        {
            StitchItem stitch => StitchWords(stitch, inOnePlace),
            GroupItem group => GroupWords(group, inOnePlace),
            SpreadItem spread => SpreadWords(spread, inOnePlace),
            SkipItem skip => OfCount(skip.Count, n => new Skip(n)),
            SlipOverItem slip => OfCount(slip.Count, n => new SlipOver(n)),
            HoldItem hold => context.Evaluate.Counts(hold.Count, 1).Select(n => n is { } x ? (Word?)new Hold(x, context.AsFirstSpelt(hold.Name)) : null),
            BridgeItem bridge => context.Evaluate.Counts(bridge.Count, 1).Select(n => n is { } x ? (Word?)new Bridge(x, bridge.Name is { } name ? context.AsFirstSpelt(name) : null) : null),
            YarnItem yarn => Sized.Same<Word?>(context.Sizes, new ChangeYarn(context.Yarns.Use(yarn.Yarn) ?? yarn.Yarn.Text)),
            JoinItem join => JoinedWords(join),
            MarkCornerItem => Sized.Same<Word?>(context.Sizes, new MarkCorner()),
            MoveMarkerItem => Sized.Same<Word?>(context.Sizes, new MarkerHere()),
            RemoveCornersItem => Sized.Same<Word?>(context.Sizes, new RemoveCorners()),
            LeaveItem { Count: null } => Sized.Same<Word?>(context.Sizes, new Leave(-1) { ForLater = item is LeaveItem { ForLater: true } }),
            LeaveItem leave => OfCount(leave.Count, n => new Leave(n) { ForLater = leave.ForLater }),
            _ => None(),
        };
        if (item is TogetherItem or CentreItem) return Refuse(StitchInRow.Words(item.Span));
        if (inOnePlace && item is YarnItem { Yarn.Text: var taken }) return Refuse(NotInOnePlace.Yarn(item.Span, taken));
        if ((inOnePlace || _ring > 0) && item is not (StitchItem or GroupItem or MarkCornerItem or JoinItem)) return Refuse(NotInOnePlace.At(item.Span));
        return words.Select(w => w is null ? null : w with { Origin = new Origin(item) });
    }

    private Word?[] None() => Sized.Same<Word?>(context.Sizes, null);

    private Word?[] Refuse(Turnrow.Syntax.Diagnostics.Diagnostic diagnostic)
    {
        context.Findings.Add(diagnostic);
        return None();
    }

    private Word?[] OfCount(ExpressionSyntax? count, Func<int, Word> word) =>
        count is null ? Sized.Same<Word?>(context.Sizes, word(1)) : context.Evaluate.Counts(count).Select(n => n is { } x ? word(x) : null);

    private Word?[] GroupWords(GroupItem group, bool inOnePlace)
    {
        if (group.Place?.Word == PlaceWord.Ring || _ring > 0) return RingWords(group);
        if (group.Place is not null && group.Times is not null) return Refuse(GroupBoth.At(group.Span));
        if (group.Place is null && group.Times is null) return Refuse(GroupNeither.At(group.Span));
        if (group.Place?.Other is not null) return Refuse(EachOther.Bracket(group.Span));
        if (inOnePlace) return AgainInPlace(group);
        foreach (var item in group.Items)
        {
            if (item is HoldItem or BridgeItem) return Refuse(HoldInBracket.At(item.Span, item is BridgeItem));
        }

        var inside = List(group.Items, group.Place is not null);
        if (group.Place is { } place)
        {
            var targets = TargetsOf(place);
            var groups = new Word?[context.Sizes];
            for (var i = 0; i < groups.Length; i++) groups[i] = inside[i] is { } list && targets[i] is { } target ? new Group(list, target) : null;
            return groups;
        }

        var amounts = AmountsOf(group.Times!);
        var words = new Word?[context.Sizes];
        for (var i = 0; i < words.Length; i++)
        {
            words[i] = inside[i] is { } list && amounts[i] is { } amount ? new Repeat(list, amount) : null;
        }

        return words;
    }

    private Amount?[] AmountsOf(AmountSyntax amount) => amount switch
    {
        AcrossAmount => Sized.Same<Amount?>(context.Sizes, Amount.Across),
        UntilAmount until => context.Evaluate.Counts(until.Remain).Select(n => n is { } x ? (Amount?)Amount.Until(x) : null),
        CornerAmount { Remain: null } => Sized.Same<Amount?>(context.Sizes, Amount.ToCorner(0)),
        CornerAmount corner => context.Evaluate.Counts(corner.Remain!).Select(n => n is { } x ? (Amount?)Amount.ToCorner(x) : null),
        TurnAmount { Remain: null } => Sized.Same<Amount?>(context.Sizes, Amount.ToTurn(0)),
        TurnAmount turn => context.Evaluate.Counts(turn.Remain!).Select(n => n is { } x ? (Amount?)Amount.ToTurn(x) : null),
        CountAmount count => context.Evaluate.Counts(count.Count).Select(n => n is { } x ? (Amount?)Amount.Of(x) : null),
        _ => Sized.Same<Amount?>(context.Sizes, null),
    };

    private Target?[] TargetsOf(PlaceSyntax? place)
    {
        if (place is null) return Sized.Same<Target?>(context.Sizes, Target.Next);
        if (place.Word is PlaceWord.One or PlaceWord.Skipped)
        {
            context.Findings.Add(StitchInRow.Place(place.Span));
            return Sized.Same<Target?>(context.Sizes, null);
        }

        if (new PlaceBinder(context).Bind(place) is not { } target) return Sized.Same<Target?>(context.Sizes, null);
        target = target with { ToCorner = place.ToCorner };
        return place.Remain is null
            ? Sized.Same<Target?>(context.Sizes, target)
            : context.Evaluate.Counts(place.Remain).Select(n => n is { } remain ? (Target?)(target with { Remain = remain }) : null);
    }

    private Word?[] StitchWords(StitchItem item, bool inOnePlace)
    {
        if (ReadStitch(item) is not { } read) return None();
        if (read.Stitch == StitchBook.Chain) return ChainWords(item, read);
        if (read.AmountIsNumber) item = item with { Amount = null };
        if (IsSentNowhere(item, read)) return None();
        if ((inOnePlace || _ring > 0) && LeadsOut(item, read)) return Refuse(NotInOnePlace.At(item.Span));
        if (item.Change is not null) return ChangeWords(item, read);
        var targets = _ring > 0 ? Sized.Same<Target?>(context.Sizes, Target.Ring) : TargetsOf(item.Place);
        var before = BeforeOf(item, read);
        var amounts = read.CountWord is { } name ? AmountsOf(new CountAmount(new NameExpression(name, name.Span), name.Span))
            : item.Amount is { } said ? AmountsOf(said)
            : Sized.Same<Amount?>(context.Sizes, Amount.Once);
        // A name that is not known may have been meant for anything.
        if (before is not null && Array.TrueForAll(before, static n => n is null)) return None();
        if (before is not null && (item.Amount is not null || read.CountWord is not null)) return Refuse(StitchBoth.At(item));
        if (item.Place is not null && (item.Amount is not null || read.CountWord is not null)) return Refuse(StitchBoth.At(item));
        if (before is not null && item.Place is null && !inOnePlace && _ring == 0) return None();
        if (item.Place?.Other is { } other) return ByPlaceWords(item.Place, other, read, before);
        var words = new Word?[context.Sizes];
        for (var i = 0; i < words.Length; i++)
        {
            var many = before is null ? 1 : before[i];
            if (amounts[i] is not { } amount || many is not { } n || targets[i] is not { } target) continue;
            words[i] = _ring > 0 ? InRing(read, i, n * amount.Count) : WorkOf(read, i, n, amount, target);
        }

        return words;
    }

    // Of a special stitch the places that it takes are its own; what stands on the stitch before it takes none.
    private static Work? WorkOf(StitchReading read, int size, int many, Amount amount, Target target) => read.In(size) is not { } stitch ? null
        : new Work(stitch, read.Together > 1 ? read.Together : stitch.Takes, many, amount, target, read.Hook);

    // A decrease needs several places, `across` all of them, and a place of its own is another one.
    private static bool LeadsOut(StitchItem item, StitchReading read) =>
        item.Change is not null || item.Place is not null || read.Together > 1 || read.Stitch.Takes > 1 || item.Amount is AcrossAmount or UntilAmount or CornerAmount or TurnAmount;

    private int?[]? BeforeOf(StitchItem item, StitchReading read)
    {
        if (item.Before is { } said) return context.Evaluate.Counts(said, 1);
        return read.NameBefore is { } name ? context.Evaluate.Counts(new NameExpression(name, name.Span), 1) : null;
    }

    private Word?[] ChainWords(StitchItem item, StitchReading read)
    {
        if (item.Place is not null || item.Before is not null || item.Change is not null || item.Amount is AcrossAmount or UntilAmount or CornerAmount or TurnAmount)
            return Refuse(ChainPlace.At(item));
        var count = read.CountWord is { } name ? new NameExpression(name, name.Span) : (item.Amount as CountAmount)?.Count;
        return count is null
            ? Sized.Same<Word?>(context.Sizes, new Chains(1))
            : context.Evaluate.Counts(count, 1).Select(n => n is { } x ? (Word?)new Chains(x) : null);
    }

    private Word?[] ChangeWords(StitchItem item, StitchReading read)
    {
        var increase = item.Change!.Change == Change.Increase;
        if (read.Stitch.Form is not null) return Refuse(StitchHere.Change(item.Span, read.Stitch.Id, increase));
        if (item.Place is not null || item.Before is not null) return Refuse(StitchBoth.At(item));
        if (item.Amount is EvenlyAmount evenly)
        {
            return context.Evaluate.Counts(evenly.Count).Select(n => n is { } x ? (Word?)Spread.Of(read.Stitch, increase ? x : -x, read.Hook) : null);
        }

        var amounts = item.Amount is null ? Sized.Same<Amount?>(context.Sizes, Amount.Once) : AmountsOf(item.Amount);
        return amounts.Select(a => a is { } amount
            ? (Word?)new Work(read.Stitch, increase ? 1 : 2, increase ? 2 : 1, amount, Target.Next, read.Hook)
            : null);
    }

    private StitchReading? ReadStitch(StitchItem item)
    {
        var words = item.Words;
        var at = 0;
        var hook = HookInto.BothLoops;
        NameSyntax? before = null;
        if (at < words.Count && StitchWord.HookOf(words[at].Text) is { } said)
        {
            hook = said;
            at++;
        }

        if (item.Words is [{ Text: "turn" }, { Text: "back" }, ..])
        {
            context.Findings.Add(StitchInRow.TurnBack(item.Span));
            return null;
        }

        // `n dc in next`: a count's name in front of the stitch.
        if (at + 1 < words.Count && StitchWord.Read(words[at].Text, context) is null && StitchWord.Read(words[at + 1].Text, context) is not null)
        {
            before = words[at++];
            if (context.Yarns.Has(before.Text) && context.Scope.Find(before.Text) is null)
            {
                context.ReportUnknown(before);
                return null;
            }

            if (item.Place is null && context.Scope.Find(before.Text) is null && !context.Scope.InDoubt && !context.Stitches.InDoubt)
            {
                context.Findings.Add(UnknownStitch.Manner(before.Span, before.Text));
                return null;
            }
        }

        if (at == words.Count && item.Change is not null) return BareChange(item, hook);
        if (at == words.Count || Stitch(words[at]) is not { } read) return null;
        if (Numbered(item, read, ref at) is not { } numbered) return null;
        if (numbered.AmountIsNumber) item = item with { Amount = null };
        read = numbered;
        var rest = words.Count - at - 1;
        if (rest > 1 || (rest == 1 && item.Amount is not null))
        {
            context.Findings.Add(WordsTooMany.At(words, at));
            return null;
        }

        if (rest == 1 && context.Scope.Use(words[^1].Text) is null && StitchWord.Read(words[^1].Text, context) is not null)
        {
            context.Findings.Add(WordsTooMany.TwoStitches(words[at].Span.To(words[^1].Span), words[at].Text, words[^1].Text));
            return null;
        }

        return read with
        {
            Hook = read.Hook == HookInto.BothLoops ? hook : read.Hook,
            NameBefore = before,
            CountWord = rest == 1 ? words[^1] : null,
        };
    }

    private StitchReading? BareChange(StitchItem item, HookInto hook)
    {
        if (_stitches.Count == 1) return new StitchReading(_stitches.First(), 1, hook, null, null);
        if (!context.StitchPatterns.InDoubt) context.Findings.Add(ChangeWithoutStitch.At(item.Change!.Span, item.Change.Change == Change.Increase, [.. _stitches.Select(context.Word)]));
        return null;
    }

    private StitchReading? Stitch(NameSyntax word)
    {
        if (StitchWord.Read(word.Text, context) is { } read) return read;
        context.ReportUnknown(word);
        return null;
    }
}
