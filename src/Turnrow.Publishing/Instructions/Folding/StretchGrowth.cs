using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Instructions.Telling;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Folding;

/// <summary>
/// Rows that come round and differ in the plain stitches before each decrease alone, so many fewer each time, as in a toe or a crown that draws in.
/// </summary>
internal static class StretchGrowth
{
    /// <summary>What all rows have in common that differ in how many plain stitches stand side by side.</summary>
    public static RowDescription Skeleton(RowDescription row) => row with { Working = Skeleton(row.Working) };

    /// <summary>What is fewer from one row to the next of several that have one skeleton; null if there is nothing, or not one thing that can be said.</summary>
    /// <param name="rows">The rows as they come round.</param>
    /// <param name="run">Their run.</param>
    public static RepeatGrowth? Of(IReadOnlyList<RowDescription> rows, int run)
    {
        var stretches = rows.Select(static row => Stretches(row.Working).ToList()).ToList();
        var first = stretches[0];
        if (first.FindIndex(s => s.Decrease is not null) is not (>= 0 and var at)) return null;
        var (stitches, decrease) = (first[at].Stitches, first[at].Decrease!);
        var step = first[at].Count - stretches[1][at].Count;
        if (step < 1) return null;
        for (var i = 0; i < rows.Count; i++)
        {
            for (var s = 0; s < first.Count; s++)
            {
                // It is said of each such decrease, so it has to be so before each, and nowhere else.
                var isThis = first[s].Decrease is { } own && own.Equals(decrease) && first[s].Stitches.Stitch == stitches.Stitch && first[s].Stitches.Hook == stitches.Hook;
                if (stretches[i][s].Count != first[s].Count - (isThis ? i * step : 0)) return null;
            }
        }

        return new RepeatGrowth(new PhraseList([new BareStitches(stitches.Stitch, stitches.Hook, Sized.Of(step))]), Sized.Of(step), run, at, 1) { Before = decrease };
    }

    private static PhraseList Skeleton(PhraseList phrases) => new([.. phrases.Phrases.Select(static phrase => phrase switch
    {
        Repeated repeated => repeated with { Words = Skeleton(repeated.Words) },
        StitchesIn { Where: NextPlaces next } stitches => stitches with { Where = next with { Count = Sized.Of(1) } },
        _ => phrase,
    })]);

    private static IEnumerable<(StitchesIn Stitches, int Count, Together? Decrease)> Stretches(PhraseList phrases)
    {
        for (var i = 0; i < phrases.Count; i++)
        {
            if (phrases.Phrases[i] is Repeated repeated)
            {
                foreach (var inner in Stretches(repeated.Words)) yield return inner;
            }
            else if (phrases.Phrases[i] is StitchesIn { Where: NextPlaces next } stitches)
            {
                yield return (stitches, next.Count.First, i + 1 < phrases.Count ? phrases.Phrases[i + 1] as Together : null);
            }
        }
    }
}
