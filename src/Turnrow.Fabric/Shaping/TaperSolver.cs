namespace Turnrow.Fabric.Shaping;

/// <summary>What a taper is to be.</summary>
/// <param name="Changes">Changes at the edge, at least 0.</param>
/// <param name="Rows">Rows there are.</param>
/// <param name="PlainFirst">Rows kept plain at the beginning.</param>
/// <param name="PlainLast">Rows kept plain at the end.</param>
/// <param name="LongerFirst">True if the longer intervals come first.</param>
/// <param name="ByTurns">True if short and long intervals alternate as far as they can.</param>
/// <param name="EveryOtherRow">True if only right-side rows may shape.</param>
/// <param name="FirstIsRightSide">True if the first row is a right-side row; only used with <paramref name="EveryOtherRow"/>.</param>
public sealed record Taper(
    int Changes, int Rows, int PlainFirst, int PlainLast, bool LongerFirst, bool ByTurns, bool EveryOtherRow, bool FirstIsRightSide);

/// <summary>Solves a taper: so many changes over so many rows, in at most two intervals, as even as they come.</summary>
public static class TaperSolver
{
    /// <summary>The schedule; null if the changes do not fit even at the closest.</summary>
    public static Schedule? Solve(Taper taper)
    {
        if (taper.Changes == 0) return new Schedule(taper.Rows, []);
        var rows = taper.Rows - taper.PlainFirst - taper.PlainLast;
        return taper.EveryOtherRow ? OnRightSideRows(taper, rows) : OnAnyRow(taper, rows);
    }

    /// <summary>The most changes that fit, one at a time.</summary>
    public static int MostChanges(Taper taper)
    {
        var rows = Math.Max(0, taper.Rows - taper.PlainFirst - taper.PlainLast);
        return taper.EveryOtherRow ? RightSideRowsWithin(taper, rows) : rows;
    }

    private static Schedule? OnAnyRow(Taper taper, int rows)
    {
        if (rows < taper.Changes) return null;
        var interval = rows / taper.Changes;
        var longer = rows % taper.Changes;
        return new Schedule(taper.PlainFirst, Intervals(taper, interval, interval + 1, taper.Changes - longer, longer));
    }

    // Counted in pairs of rows, of which each has one right-side row: then the intervals are even numbers, i and i + 2.
    private static Schedule? OnRightSideRows(Taper taper, int rows)
    {
        var there = RightSideRowsWithin(taper, rows);
        if (there < taper.Changes) return null;
        var interval = there / taper.Changes;
        var longer = there % taper.Changes;
        var frequencies = Intervals(taper, 2 * interval, 2 * (interval + 1), taper.Changes - longer, longer);
        // The first change falls in a right-side row: an even interval from a beginning that makes it one.
        var firstIsRightSide = taper.PlainFirst % 2 == 0 ? taper.FirstIsRightSide : !taper.FirstIsRightSide;
        return new Schedule(taper.PlainFirst - (firstIsRightSide ? 1 : 0), frequencies);
    }

    private static int RightSideRowsWithin(Taper taper, int rows)
    {
        var firstIsRightSide = taper.PlainFirst % 2 == 0 ? taper.FirstIsRightSide : !taper.FirstIsRightSide;
        return firstIsRightSide ? (rows + 1) / 2 : rows / 2;
    }

    // There is always a shorter one: what is left over is less than the number of changes.
    private static IReadOnlyList<Frequency> Intervals(Taper taper, int shorter, int longer, int shorterTimes, int longerTimes)
    {
        if (longerTimes == 0) return [new Frequency(shorter, 0, shorterTimes)];
        var (first, second) = taper.LongerFirst ? (longer, shorter) : (shorter, longer);
        var (firstTimes, secondTimes) = taper.LongerFirst ? (longerTimes, shorterTimes) : (shorterTimes, longerTimes);
        if (!taper.ByTurns) return [new Frequency(first, 0, firstTimes), new Frequency(second, 0, secondTimes)];
        var turns = Math.Min(firstTimes, secondTimes);
        var rest = Math.Max(firstTimes, secondTimes) - turns;
        var restInterval = firstTimes > secondTimes ? first : second;
        return rest == 0
            ? [new Frequency(first, second, 2 * turns)]
            : [new Frequency(first, second, 2 * turns), new Frequency(restInterval, 0, rest)];
    }
}
