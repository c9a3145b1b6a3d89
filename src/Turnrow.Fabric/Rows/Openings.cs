using Turnrow.Fabric.Places;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Rows;

/// <summary>Finds the chain that a row opens with: the first stitch worked decides it.</summary>
internal static class Openings
{
    /// <summary>The first stitch that words work; null if they begin with chains, or work none.</summary>
    public static Stitch? FirstStitch(IReadOnlyList<Word> words) => First(words, WorkedWords.IsIdleUnworked) is Work work ? StandsFor(work) : null;

    /// <summary>The opening of a row, by what it begins on and the step at its start.</summary>
    public static Opening Of(RowBegins begins, IReadOnlyList<Word> words, Func<Stitch, TurnRule> ruleOf, int places, Step? start)
    {
        if (begins is RowBegins.Foundation or RowBegins.BothSides) return OfChains(words, ruleOf, places);
        if (begins == RowBegins.FoundationStitches) return OfFoundationStitches(words, ruleOf, places);
        if (begins == RowBegins.Spiral) return new Opening(First(words, WorkedWords.IsIdle) is Work work ? StandsFor(work) : null, 0, false, 0, 0);
        return start is { Adds: true } ? OfChains(words, ruleOf, start.Count) : OfRow(words, ruleOf);
    }

    /// <summary>The places that chains give which the designer counted: the first stitch decides how many of them it takes.</summary>
    public static PlaceSequence PlacesOf(int chains, IReadOnlyList<Word> words, Func<Stitch, TurnRule> ruleOf)
    {
        var chain = new Place(PlaceKind.FoundationChain, null, 0);
        if (First(words, WorkedWords.IsIdleUnworked) is not Work first) return PlaceSequence.Of(chain, chains);
        var rule = RuleOf(first, ruleOf);
        var beside = rule.CountsInFoundation ? SpaceAfterFirst(words, WorkedWords.IsIdleUnworked) + (FirstPlace.TakesMore(words, WorkedWords.IsIdleUnworked) ? 1 : 0) : 0;
        return PlaceSequence.Of(chain, Math.Max(0, rule.StitchesOf(chains - beside)));
    }

    /// <summary>The places of a ring of chains that the designer counted: a round takes each of them.</summary>
    public static PlaceSequence RingOf(int chains) => PlaceSequence.Of(new Place(PlaceKind.FoundationChain, null, 0), chains);

    /// <summary>The opening of a row that is turned, joined, picked up or worked round.</summary>
    public static Opening OfRow(IReadOnlyList<Word> words, Func<Stitch, TurnRule> ruleOf)
    {
        switch (First(words, WorkedWords.IsIdle))
        {
            case Chains chains:
                return new Opening(null, chains.Count, false, 0, chains.Count);
            case Work work:
                var rule = RuleOf(work, ruleOf);
                if (rule.Chains == 0) return new Opening(StandsFor(work), 0, false, 0, 0);
                var space = rule.Counts ? SpaceAfterFirst(words, WorkedWords.IsIdle) : 0;
                // A decrease on the first stitches is a shorter chain and the rest of it.
                var shorter = rule.Counts && work.Takes > 1 && work.Makes == 1 ? 1 : 0;
                return new Opening(StandsFor(work), rule.Chains - shorter + space, rule.Counts, 0, space);
            default:
                return new Opening(null, 0, false, 0, 0);
        }
    }

    /// <summary>The opening of a row that is worked into a foundation, or into chains added where the hook is, over so many chains.</summary>
    public static Opening OfChains(IReadOnlyList<Word> words, Func<Stitch, TurnRule> ruleOf, int places)
    {
        if (First(words, WorkedWords.IsIdle) is not Work work) return new Opening(null, places, false, 2, 0);
        var rule = RuleOf(work, ruleOf);
        var space = rule.CountsInFoundation ? SpaceAfterFirst(words, WorkedWords.IsIdle) : 0;
        var shares = rule.CountsInFoundation && FirstPlace.TakesMore(words, WorkedWords.IsIdle);
        return new Opening(StandsFor(work), rule.ChainsFor(places) + space + (shares ? 1 : 0), rule.CountsInFoundation, rule.FirstStitchIn + space, space) { SharesPlace = shares };
    }

    // Of the foundation only so many chains are made beforehand as the first stitch needs.
    private static Opening OfFoundationStitches(IReadOnlyList<Word> words, Func<Stitch, TurnRule> ruleOf, int places)
    {
        if (First(words, WorkedWords.IsIdle) is not Work work) return new Opening(null, 0, false, 0, 0);
        var rule = RuleOf(work, ruleOf);
        return new Opening(StandsFor(work), Math.Min(rule.FirstStitchIn, rule.ChainsFor(places)), rule.CountsInFoundation, rule.FirstStitchIn, 0);
    }

    /// <summary>Marks the first place made as the top of the chain that stands for it.</summary>
    public static PlaceSequence MarkFirst(PlaceSequence tops, Opening opening, PlaceKind kind)
    {
        if (!opening.Counts || tops.Count == 0 || tops.First.Kind != PlaceKind.Stitch) return tops;
        var (chain, first) = (new PlaceRun(tops.First with { Kind = kind }, 1), tops.Segments[0]);
        if (first is not { Unit: [{ Count: > 1 } run], Times: 1 }) return Beginning(chain.Place, tops);
        // Nearly every row begins with a run, which the chain takes one place of.
        var segments = new PlaceSegment[tops.Segments.Count];
        for (var i = 1; i < segments.Length; i++) segments[i] = tops.Segments[i];
        segments[0] = new PlaceSegment([chain, run with { Count = run.Count - 1 }], 1);
        return new PlaceSequence(segments);
    }

    private static PlaceSequence Beginning(Place first, PlaceSequence tops)
    {
        var (builder, cursor) = (new PlaceSequenceBuilder(long.MaxValue), new PlaceCursor(tops));
        builder.Add(first, 1);
        cursor.Pass(1);
        builder.AddAhead(ref cursor, tops.Count - 1);
        return builder.Build();
    }

    /// <summary>The first word, if a chain that counts would have to stand for a stitch that does not go into the row's first place.</summary>
    public static Work? GoingBackFirst(IReadOnlyList<Word> words, Opening opening) =>
        opening.Counts
        && WordLists.First(words, static word => word is not Repeat, static word => word is SlipOver or RemoveCorners or ChangeYarn || WorkedWords.IsIdle(word))
            is Work { Stitch: { IsOne: false, Form.GoesBack: true } } work
            ? work
            : null;

    // The stitch by which the chain is made: of a cluster, the one that it is made of.
    private static Stitch StandsFor(Work work) => work.Stitch.IsCluster ? work.Stitch.Rule : work.Stitch;

    // No chain can stand for several stitches that end in one loop, nor for one that goes further down: beside them it is there for the height alone.
    private static TurnRule RuleOf(Work work, Func<Stitch, TurnRule> ruleOf)
    {
        var rule = ruleOf(work.Stitch);
        return (work.Stitch.IsCluster || work.Hook.RowsDown() > 0) && (rule.Counts || rule.CountsInFoundation) ? rule with { Counts = false, CountsInFoundation = false } : rule;
    }

    private static Word? First(IReadOnlyList<Word> words, Func<Word, bool> isIdle)
    {
        var (first, second) = ((Word?)null, (Word?)null);
        FindTwo(words, isIdle, ref first, ref second);
        return first;
    }

    // The first two words of a row, brackets opened, as far as they are worked at all.
    private static void FindTwo(IReadOnlyList<Word> words, Func<Word, bool> isIdle, ref Word? first, ref Word? second)
    {
        for (var i = 0; i < words.Count && second is null; i++)
        {
            switch (words[i])
            {
                case var idle when isIdle(idle):
                    break;
                case Work { Stitch: { IsOne: false, Form: { } form } }:
                    FindTwo(form.Words(), isIdle, ref first, ref second);
                    break;
                // A chain of another yarn is not made with the one that turns the row.
                case ChangeYarn when first is null:
                    break;
                case Work or Chains or ChangeYarn:
                    Take(words[i], ref first, ref second);
                    break;
                case Spread spread:
                    Take(Work.Plain(spread.Stitch, Amount.Once) with { Hook = spread.Hook }, ref first, ref second);
                    break;
                case ByPlace each:
                    Take(each.InStitch, ref first, ref second);
                    break;
                case Group group:
                    FindTwo(group.Words, isIdle, ref first, ref second);
                    break;
                case Repeat repeat:
                    FindTwo(repeat.Words, isIdle, ref first, ref second);
                    break;
            }
        }
    }

    private static void Take(Word word, ref Word? first, ref Word? second)
    {
        if (first is null) first = word;
        else second = word;
    }

    /// <summary>Chains of the space straight after a single first stitch, for which one chain is made with the turning chain's; of words that were worked.</summary>
    internal static int SpaceAfterFirst(IReadOnlyList<Word> worked) => SpaceAfterFirst(worked, WorkedWords.IsIdle);

    private static int SpaceAfterFirst(IReadOnlyList<Word> words, Func<Word, bool> isIdle)
    {
        var (first, second) = ((Word?)null, (Word?)null);
        FindTwo(words, isIdle, ref first, ref second);
        return first is Work { Makes: 1, Takes: 1, Amount: { Reach: Reach.Fixed, Times: 1 } } && second is Chains chains ? chains.Count : 0;
    }
}
