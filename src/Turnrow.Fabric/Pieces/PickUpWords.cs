using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Pieces;

/// <summary>The row of stitches that is picked up: plain, but for the markers in its corners.</summary>
internal static class PickUpWords
{
    private const int Square = 4;

    /// <summary>The row's plan.</summary>
    public static RowPlan PlanOf(PickUpStart pickUp, Stitch stitch)
    {
        var corners = pickUp.CornersMade();
        if (corners.Count == 0) return ShapedPlan.Plain(stitch);
        var words = new List<Word>();
        var gaps = Gaps(corners);
        for (var at = 0; at < gaps.Count;)
        {
            // A rim that goes in and out has one way from corner to corner again and again, or two by turns.
            var (once, twice) = (TimesFrom(gaps, at, 1), TimesFrom(gaps, at, 2));
            var (period, times) = 2 * twice > once && twice > 1 ? (2, twice) : (1, once);
            var part = new List<Word>();
            for (var i = at; i < at + period; i++) part.AddRange([Work.Plain(stitch, Amount.Of(gaps[i])), new MarkCorner()]);
            if (times > 1 && gaps.Count > Square) words.Add(new Repeat(part, Amount.Of(times)));
            else for (var i = 0; i < times; i++) words.AddRange(part);
            at += period * times;
        }

        words.Add(Work.Plain(stitch, Amount.Across));
        return new WordsPlan(words);
    }

    // So many stitches up to each corner, its own among them.
    private static List<int> Gaps(IReadOnlyList<int> corners)
    {
        var gaps = new List<int>();
        for (var i = 0; i < corners.Count; i++) gaps.Add(i == 0 ? corners[0] + 1 : corners[i] - corners[i - 1]);
        return gaps;
    }

    private static int TimesFrom(List<int> gaps, int at, int period)
    {
        var end = at + period;
        while (end < gaps.Count && gaps[end] == gaps[end - period]) end++;
        return end > gaps.Count ? 0 : (end - at) / period;
    }
}
