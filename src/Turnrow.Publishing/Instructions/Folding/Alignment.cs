using Turnrow.Publishing.Instructions.Phrases;

namespace Turnrow.Publishing.Instructions.Folding;

/// <summary>Lays the phrases of one more size beside parts, so that the fewest of them are worked in some sizes only.</summary>
/// <param name="parts">The parts of the sizes so far.</param>
/// <param name="sizes">How many sizes they are of.</param>
internal sealed class Alignment(List<AlignedPart> parts, int sizes)
{
    // Rows longer than this are told size by size: laying them side by side would take longer than a maker would read.
    private const int MostPhrases = 200;
    private const int Never = 1_000_000;
    private const int Bracket = 1;
    private const int Absent = 2;

    private readonly Dictionary<(int Part, int Phrase), (int Cost, Step Step)> _known = [];
    private IReadOnlyList<Phrase> _phrases = [];

    private enum Kind : byte
    {
        End,
        Same,
        OnceAsRepeat,
        RepeatOfOnce,
        PartAbsent,
        PhraseNew,
    }

    /// <summary>The parts with the phrases of one more size; null if they can't be laid beside each other.</summary>
    public List<AlignedPart>? With(IReadOnlyList<Phrase> phrases)
    {
        if (parts.Count > MostPhrases || phrases.Count > MostPhrases) return null;
        _phrases = phrases;
        for (var part = parts.Count; part >= 0; part--)
        {
            for (var phrase = phrases.Count; phrase >= 0; phrase--) _known[(part, phrase)] = Best(part, phrase);
        }

        return _known[(0, 0)].Cost >= Never ? null : Laid();
    }

    private readonly record struct Step(Kind Kind, int Parts, int Phrases);

    private (int Cost, Step Step) Best(int part, int phrase)
    {
        if (part == parts.Count && phrase == _phrases.Count) return (0, new Step(Kind.End, 0, 0));
        var best = (Cost: Never, Step: new Step(Kind.End, 0, 0));
        foreach (var (cost, step) in Steps(part, phrase))
        {
            var all = cost + _known[(part + step.Parts, phrase + step.Phrases)].Cost;
            if (all < best.Cost) best = (all, step);
        }

        return best;
    }

    private IEnumerable<(int Cost, Step Step)> Steps(int part, int phrase)
    {
        if (part < parts.Count && phrase < _phrases.Count)
        {
            var words = AlignedPart.Of(_phrases[phrase]).Sample;
            var isRepeat = _phrases[phrase] is Repeated;
            var here = parts[part].Sample;
            if (Fits(here, words)) yield return (isRepeat == !parts[part].IsOnce ? 0 : Bracket, new Step(Kind.Same, 1, 1));
            if (!isRepeat && here.Count > 1 && Slice(phrase, here.Count) is { } once && Fits(here, once)) yield return (Bracket, new Step(Kind.OnceAsRepeat, 1, here.Count));
            if (isRepeat && words.Count > 1 && OnceFrom(part, words.Count) is { } several && Fits(several, words)) yield return (Bracket, new Step(Kind.RepeatOfOnce, words.Count, 1));
        }

        // A row begins in all sizes with the same.
        if (part > 0 && part < parts.Count && CanBeAbsent(parts[part].Sample)) yield return (Absent, new Step(Kind.PartAbsent, 1, 0));
        if (part > 0 && phrase > 0 && phrase < _phrases.Count && CanBeAbsent(AlignedPart.Of(_phrases[phrase]).Sample)) yield return (Absent, new Step(Kind.PhraseNew, 0, 1));
    }

    // True if both can be said as one. So many in each place is the same in all sizes, and a rate along
    // row-ends is: else the numbers would be those of different things.
    private static bool Fits(PhraseList one, PhraseList other)
    {
        if (one.Count != other.Count || one.And(other) is null) return false;
        for (var i = 0; i < one.Count; i++)
        {
            if (one.Phrases[i] is not StitchesIn stitches) continue;
            if (!stitches.Each.Equals(((StitchesIn)other.Phrases[i]).Each)) return false;
            if (one.Count > 1 && stitches.Where is NextPlaces next && next.Place == PlaceName.RowEnd && stitches != other.Phrases[i]) return false;
        }

        return true;
    }

    // What ends a row or leads to another edge is not worked "0 times".
    private static bool CanBeAbsent(PhraseList words) => words.Phrases.All(static p =>
        p is { Shaping: null } and (StitchesIn { Where: NextPlaces { FromFirst: false } } or ChainSpace or SkipPlaces { FromFirst: false } or Together { At: TogetherAt.Next, Top: null }));

    private PhraseList? Slice(int from, int count) =>
        from + count <= _phrases.Count ? new PhraseList([.. Enumerable.Range(from, count).Select(i => _phrases[i])]) : null;

    // Parts that are each worked once in every size, as the phrases that they are.
    private PhraseList? OnceFrom(int from, int count)
    {
        if (from + count > parts.Count) return null;
        var phrases = new List<Phrase>();
        for (var i = from; i < from + count; i++)
        {
            if (parts[i] is not { IsOptional: false, IsOnce: true, Sample: { Count: 1 } only }) return null;
            phrases.Add(only.Phrases[0]);
        }

        return new PhraseList(phrases);
    }

    private List<AlignedPart> Laid()
    {
        var laid = new List<AlignedPart>();
        for (var (part, phrase) = (0, 0); part < parts.Count || phrase < _phrases.Count;)
        {
            var step = _known[(part, phrase)].Step;
            laid.Add(One(step.Kind, part, phrase, step));
            (part, phrase) = (part + step.Parts, phrase + step.Phrases);
        }

        return laid;
    }

    private AlignedPart One(Kind kind, int part, int phrase, Step step)
    {
        switch (kind)
        {
            case Kind.PartAbsent:
                return parts[part].With(null, 0);
            case Kind.PhraseNew:
                var added = AlignedPart.Of(_phrases[phrase]);
                return AlignedPart.New(sizes, added.Sample, added.Times[0]);
            case Kind.OnceAsRepeat:
                return parts[part].With(Slice(phrase, step.Phrases), 1);
            case Kind.RepeatOfOnce:
                var joined = parts[part];
                for (var i = 1; i < step.Parts; i++) joined = Behind(joined, parts[part + i]);
                var repeat = AlignedPart.Of(_phrases[phrase]);
                return joined.With(repeat.Sample, repeat.Times[0]);
            default:
                var same = AlignedPart.Of(_phrases[phrase]);
                return parts[part].With(same.Sample, same.Times[0]);
        }
    }

    private static AlignedPart Behind(AlignedPart before, AlignedPart part) =>
        before with { Words = [.. before.Words.Zip(part.Words, static (a, b) => new PhraseList([.. a!.Phrases, .. b!.Phrases]))] };
}
