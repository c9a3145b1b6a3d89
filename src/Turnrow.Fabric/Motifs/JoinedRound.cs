using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Motifs;

/// <summary>
/// The last round of a motif where it is joined: the words of the plain round, with a stitch into the neighbour in each corner and in the places
/// between that are meant. A space of one chain gives way to it; of more, half of the chains stand before it and half behind.
/// </summary>
/// <param name="edges">The neighbour's edge along each side, from the first one; null where none lies.</param>
/// <param name="stitch">The stitch that joins.</param>
/// <param name="between">What is joined between the corners; null for nothing.</param>
/// <param name="origin">The line that says so.</param>
internal sealed class JoinedRound(IReadOnlyList<JoinedEdge?> edges, Stitch stitch, PlaceFilter? between, Origin origin)
{
    /// <summary>What can't be joined; null as long as all can.</summary>
    public BlanketFaultKind? Fault { get; private set; }

    /// <summary>True once anything between two corners is joined.</summary>
    public bool JoinsBetween { get; private set; }

    /// <summary>The words of the joined round.</summary>
    /// <param name="worked">The words of the plain round, worked.</param>
    public IReadOnlyList<Word> Of(IReadOnlyList<Word> worked)
    {
        var words = new List<Word>();
        LayOut(worked, words);
        var parts = new List<List<Word>> { new() };
        for (var i = 0; i < words.Count; i++)
        {
            var corner = parts.Count - 2;
            var marked = i + 1 < words.Count && words[i + 1] is MarkCorner;
            if (IsCorner(words[i]) || marked) parts.Add(InCorner(words[i], corner + 1));
            else if (EdgeOf(corner) is { } edge) parts[^1].AddRange(Along([words[i]], edge));
            else parts[^1].Add(words[i]);
        }

        return Together(parts);
    }

    // From corner to corner; parts that are alike are a repeat again.
    private static List<Word> Together(List<List<Word>> parts)
    {
        var result = new List<Word>();
        for (var i = 0; i < parts.Count; i++)
        {
            var times = 1;
            while (i + 1 < parts.Count && WordLists.Same(parts[i], parts[i + 1])) (i, times) = (i + 1, times + 1);
            if (times == 1) result.AddRange(parts[i]);
            else if (parts[i].Count > 0) result.Add(new Repeat(parts[i], Amount.Of(times)));
        }

        return result;
    }

    // The side behind so many corners; before the first corner it is the last side.
    private JoinedEdge? EdgeOf(int corner) => edges[((corner % edges.Count) + edges.Count) % edges.Count];

    // Each corner by itself: repeats that go round corners are laid out, those along a side stay.
    private static void LayOut(IReadOnlyList<Word> words, List<Word> result)
    {
        for (var i = 0; i < words.Count; i++)
        {
            if (words[i] is not Repeat repeat || !HasCorner(repeat.Words))
            {
                result.Add(words[i]);
                continue;
            }

            foreach (var way in repeat.WorkedWays)
            {
                for (var time = 0; time < way.Amount.Times; time++) LayOut(way.Words, result);
            }
        }
    }

    private static bool HasCorner(IReadOnlyList<Word> words) => WordLists.Any(words, static word => word is MarkCorner or Work { Corners: > 0 } or Group { Corners: > 0 });

    private static bool IsCorner(Word word) => word is Work or Group && HasCorner([word]);

    // At a corner the side before it ends and the one behind it begins; what is made there beside the corner itself lies along the one or the other.
    private List<Word> InCorner(Word word, int corner)
    {
        var (ends, begins) = (EdgeOf(corner - 1), EdgeOf(corner));
        var joins = new List<Word>();
        if (ends is not null) joins.Add(Join(ends, Target.NextCorner));
        if (begins is not null) joins.Add(Join(begins, Target.Corner));
        if (joins.Count == 0) return [word];
        switch (word)
        {
            case Chains chains:
                return Split(chains, joins);
            case Work { Makes: var makes, Amount.Times: 1, Stitch.IsOne: true, Takes: 1 } work when makes % 2 != 0:
                if (makes == 1) return [work, .. joins];
                return [new Group([.. Beside([Bare(work, makes / 2)], ends), Bare(work, 1), .. joins, .. Beside([Bare(work, makes / 2)], begins)], work.Target) { Origin = work.Origin }];
            case Group { Times: 1 } group when AroundMiddle(group.Words) is var (before, middle, after):
                List<Word> joined = middle is Chains space ? Split(space, joins) : [middle, .. joins];
                return [group with { Words = [.. Beside(before, ends), .. joined, .. Beside(after, begins)] }];
            default:
                Fault ??= BlanketFaultKind.CornersPassed;
                return [word];
        }
    }

    private List<Word> Beside(List<Word> words, JoinedEdge? edge)
    {
        List<Word> made = [.. words.Where(static word => word is not Work { Amount: { Reach: Reach.Fixed, Times: 0 } })];
        return edge is null ? made : InGroup(made, edge);
    }

    // The corner has as many stitches before it as behind it: it is the chain there, or the middle one of an odd number.
    private static (List<Word> Before, Word Middle, List<Word> After)? AroundMiddle(IReadOnlyList<Word> words)
    {
        var marked = IndexOf(words, static w => w is MarkCorner);
        var stitches = words.Sum(static w => w is Work work ? work.Makes * work.Amount.Count : 0);
        var seen = 0;
        for (var i = 0; i < words.Count; i++)
        {
            var isMiddle = marked >= 0 ? i == marked - 1 : words[i] is Chains && 2 * seen == stitches;
            if (isMiddle && words[i] is Chains chains) return ([.. words.Take(i)], chains, [.. words.Skip(i + 1)]);
            if (words[i] is not Work work) continue;
            var makes = work.Makes * work.Amount.Count;
            if (marked < 0 && stitches % 2 != 0 && seen <= stitches / 2 && stitches / 2 < seen + makes)
            {
                var before = (stitches / 2) - seen;
                return ([.. words.Take(i), Bare(work, before)], Bare(work, 1), [Bare(work, makes - before - 1), .. words.Skip(i + 1)]);
            }

            seen += makes;
        }

        return null;
    }

    private static int IndexOf(IReadOnlyList<Word> words, Func<Word, bool> isIt)
    {
        for (var i = 0; i < words.Count; i++)
        {
            if (isIt(words[i])) return i;
        }

        return -1;
    }

    private static List<Word> Split(Chains chains, List<Word> joins)
    {
        var before = Math.Max(1, chains.Count / 2);
        return [chains with { Count = before }, .. joins, .. chains.Count > before ? (Word[])[chains with { Count = chains.Count - before }] : []];
    }

    private static Work Bare(Work work, int count) => Work.Plain(work.Stitch, Amount.Of(count)) with { Hook = work.Hook, Origin = work.Origin };

    private List<Word> Along(IReadOnlyList<Word> words, JoinedEdge edge)
    {
        var result = new List<Word>();
        for (var i = 0; i < words.Count; i++)
        {
            switch (words[i])
            {
                case Chains chains when Means(Places.Place.SpaceOf(chains.Count)):
                    JoinsBetween = true;
                    if (chains.Count == 1) result.Add(JoinHere(edge));
                    else result.AddRange(Split(chains, [JoinHere(edge)]));
                    break;
                case Work { Takes: > 0, Amount.Times: > 0 } work when Means(Places.Place.TopOf(work.Stitch)):
                    result.Add(OneByOne(work, edge));
                    break;
                case Group group:
                    result.Add(group with { Words = InGroup(group.Words, edge) });
                    break;
                case Repeat repeat:
                    foreach (var way in repeat.WorkedWays)
                        result.Add(way with { Words = Along(way.Words, edge), Amount = Amount.Of(way.Amount.Times), Ways = [] });
                    break;
                default:
                    result.Add(words[i]);
                    break;
            }
        }

        return result;
    }

    private List<Word> InGroup(IReadOnlyList<Word> words, JoinedEdge edge)
    {
        var result = new List<Word>();
        for (var i = 0; i < words.Count; i++)
        {
            if (words[i] is not Work { Stitch.IsOne: true } work || !Means(Places.Place.TopOf(work.Stitch)))
            {
                result.AddRange(words[i] is Chains ? Along([words[i]], edge) : [words[i]]);
                continue;
            }

            JoinsBetween = true;
            for (var n = 0; n < work.Makes * work.Amount.Count; n++) result.AddRange([Bare(work, 1), JoinHere(edge)]);
        }

        return result;
    }

    private Word OneByOne(Work work, JoinedEdge edge)
    {
        JoinsBetween = true;
        if (work.Makes > 1 || !work.Stitch.IsOne) Fault ??= BlanketFaultKind.SeveralAtOnce;
        var target = work.Target.Aim == Aim.EachOfKind ? work.Target with { Aim = Aim.NextOfKind, OverOthers = true, Remain = 0 } : work.Target;
        var once = work with { Amount = Amount.Once, Target = target };
        return new Repeat([once, JoinHere(edge)], Amount.Of(work.Amount.Times)) { Origin = work.Origin };
    }

    private bool Means(Places.Place place) => between is { } filter && filter.Has(place);

    private Work JoinHere(JoinedEdge edge) => Join(edge, between is { Kind: PlaceFilterKind.StitchOrSpace } all ? new Target(Aim.Next, all) : new Target(Aim.NextOfKind, between!.Value, OverOthers: true));

    private Work Join(JoinedEdge edge, Target target) => JoinWords.Of(stitch, new JoinTo(edge, target, 0)) with { Origin = origin };
}
