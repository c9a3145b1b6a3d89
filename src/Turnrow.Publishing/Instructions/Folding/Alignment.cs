using Turnrow.Publishing.Instructions.Phrases;

namespace Turnrow.Publishing.Instructions.Folding;

/// <summary>
/// Lays the phrases of one more size beside parts. Every size works every part, since nothing is to be read as "0 times": a size with a part
/// of its own is told apart.
/// </summary>
/// <param name="parts">The parts of the sizes so far.</param>
internal sealed class Alignment(List<AlignedPart> parts)
{
    // Rows longer than this are told size by size: laying them side by side would take longer than a maker would read.
    private const int MostPhrases = 200;
    private const int Never = 1_000_000;
    private const int Bracket = 1;

    private readonly Dictionary<(int Part, int Phrase), (int Cost, Step Step)> _known = [];
    private IReadOnlyList<Phrase> _phrases = [];

    private enum Kind : byte
    {
        End,
        Same,
        OnceAsRepeat,
        RepeatOfOnce,
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

    private PhraseList? Slice(int from, int count) =>
        from + count <= _phrases.Count ? new PhraseList([.. Enumerable.Range(from, count).Select(i => _phrases[i])]) : null;

    // Parts that are each worked once in every size, as the phrases that they are.
    private PhraseList? OnceFrom(int from, int count)
    {
        if (from + count > parts.Count) return null;
        var phrases = new List<Phrase>();
        for (var i = from; i < from + count; i++)
        {
            if (parts[i] is not { IsOnce: true, Sample: { Count: 1 } only }) return null;
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
            case Kind.OnceAsRepeat:
                return parts[part].With(Slice(phrase, step.Phrases)!, 1);
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
        before with { Words = [.. before.Words.Zip(part.Words, static (a, b) => new PhraseList([.. a.Phrases, .. b.Phrases]))] };
}
