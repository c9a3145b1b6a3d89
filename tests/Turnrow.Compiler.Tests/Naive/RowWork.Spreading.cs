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
