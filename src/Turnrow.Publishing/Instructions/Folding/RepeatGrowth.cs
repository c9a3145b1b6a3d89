using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Instructions.Telling;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Folding;

/// <summary>A repeat within a row that is worked so many times more in each row that comes round, while all else of the row stays as it is.</summary>
/// <param name="Words">What is repeated.</param>
/// <param name="Step">How many times more.</param>
/// <param name="Run">In which run of a round the row is.</param>
/// <param name="At">Which of the row's repeats it is; the first of them, where it stands in several places.</param>
/// <param name="Places">In how many places of the row it is repeated, each so many times.</param>
internal sealed record RepeatGrowth(PhraseList Words, Sized<int> Step, int Run, int At, int Places)
{
    /// <summary>Of plain stitches that are fewer each time, the decrease that they come before each time; null for a repeat that is worked more often.</summary>
    public Together? Before { get; init; }

    /// <summary>Both over the sizes of both; null if they are not alike.</summary>
    public RepeatGrowth? And(RepeatGrowth other) =>
        other.Run == Run && other.At == At && other.Places == Places && Equals(Before, other.Before) && Words.And(other.Words) is { } words ? this with { Words = words, Step = Step.And(other.Step) } : null;

    /// <summary>What all rows have in common that differ in the times of their repeats alone.</summary>
    public static RowDescription Skeleton(RowDescription row) => row with { Working = Skeleton(row.Working) };

    /// <summary>The growth from one row to the next of several that have one skeleton; null if there is none, or not one that can be said.</summary>
    /// <param name="rows">The rows as they come round.</param>
    /// <param name="run">Their run.</param>
    public static RepeatGrowth? Of(IReadOnlyList<RowDescription> rows, int run)
    {
        var repeats = rows.Select(static row => Repeats(row.Working).ToList()).ToList();
        var first = repeats[0];
        var grows = Enumerable.Range(0, first.Count).Where(at => first[at].Times.First != repeats[1][at].Times.First).ToList();
        if (grows.Count == 0) return null;
        var (words, times) = (first[grows[0]].Words, first[grows[0]].Times.First);
        var step = repeats[1][grows[0]].Times.First - times;
        if (step < 1) return null;
        for (var i = 0; i < rows.Count; i++)
        {
            for (var at = 0; at < first.Count; at++)
            {
                // Whatever is repeated in these words is what grows, and nothing else does: else the maker could not tell which is meant.
                var isThis = repeats[i][at].Words.Equals(words);
                if (isThis != grows.Contains(at)) return null;
                if (repeats[i][at].Times.First != (isThis ? times + (i * step) : first[at].Times.First)) return null;
            }
        }

        return new RepeatGrowth(words, Sized.Of(step), run, grows[0], grows.Count);
    }

    /// <summary>How often a row of one size works it.</summary>
    public int TimesIn(RowDescription row) => Repeats(row.Working).ElementAt(At).Times.First;

    private static PhraseList Skeleton(PhraseList phrases) => new([.. phrases.Phrases.Select(static phrase =>
        phrase is Repeated repeated ? repeated with { Words = Skeleton(repeated.Words), Times = Sized.Of(0) } : phrase)]);

    private static IEnumerable<Repeated> Repeats(PhraseList phrases)
    {
        foreach (var phrase in phrases.Phrases)
        {
            if (phrase is not Repeated repeated) continue;
            yield return repeated;
            foreach (var inner in Repeats(repeated.Words)) yield return inner;
        }
    }
}
