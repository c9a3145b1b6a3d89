namespace Turnrow.Compiler.Tests.Naive;

/// <content>What is spread over a row, gap by gap.</content>
public sealed partial class RowWork
{
    private void SpreadOut(SpreadOver spread)
    {
        var (times, ends) = (spread.Times[size], spread.AtEachEnd?[size]);
        var plain = Remaining - times * spread.Takes - 2 * (ends ?? 0);
        if (plain < 0 || (ends is not null && times == 1 && plain > 0))
            throw new UnworkableException("so many do not fit in the row");
        if (times > 1 && plain < (ends is null ? times : times - 1) && spread.Words.Any(word => word is Space))
            throw new UnworkableException("two holes would be one");
        if (plain > 0 && plain < times - 1)
        {
            Grouped(spread, times, plain, ends);
            return;
        }
        var between = Between(times, ends is null ? plain / times * (times - 1) + plain % times : plain);
        var first = ends ?? plain / times / 2;
        Many(first, () => OneInNext(spread.Stitch));
        for (var i = 0; i < times; i++)
        {
            WorkAll(spread.Words);
            if (i < between.Length)
                Many(between[i], () => OneInNext(spread.Stitch));
        }
        Many(Remaining, () => OneInNext(spread.Stitch));
    }

    /// <summary>
    /// More words than plain stitches: the plain ones stand one by one, each between two lots of words; the larger lots nearest the middle, the
    /// larger half of one at the start.
    /// </summary>
    private void Grouped(SpreadOver spread, int times, int plain, int? ends)
    {
        var lots = new List<int>();
        if (ends is null)
        {
            var atStart = (times / plain + 1) / 2;
            lots.Add(atStart);
            lots.AddRange(Between(plain, times - times / plain));
            lots.Add(times / plain - atStart);
        }
        else
        {
            var more = times % (plain + 1);
            for (var lot = 0; lot <= plain; lot++)
                lots.Add(times / (plain + 1) + (lot >= (plain - more) / 2 && lot < (plain - more) / 2 + more ? 1 : 0));
        }
        Many(ends ?? 0, () => OneInNext(spread.Stitch));
        for (var lot = 0; lot < lots.Count; lot++)
        {
            if (lot > 0)
                OneInNext(spread.Stitch);
            Many(lots[lot], () => WorkAll(spread.Words));
        }
        Many(Remaining, () => OneInNext(spread.Stitch));
    }

    /// <summary>So many stitches in the gaps between, one more in those nearest the middle.</summary>
    private static int[] Between(int times, int stitches)
    {
        var gaps = new int[times - 1];
        for (var one = 0; one < stitches && gaps.Length > 0; one++)
        {
            var low = gaps.Min();
            var open = Enumerable.Range(0, gaps.Length).Where(i => gaps[i] == low);
            var over = stitches % gaps.Length;
            var first = one < stitches - over ? 0 : (gaps.Length - over) / 2;
            gaps[open.First(i => i >= first)]++;
        }
        return gaps;
    }

    private void ByKind(EachByKind each)
    {
        var isSpace = below[_at].IsSpace;
        _at++;
        Many(isSpace ? each.InSpace : 1, () => Make(each.Stitch));
    }
}
