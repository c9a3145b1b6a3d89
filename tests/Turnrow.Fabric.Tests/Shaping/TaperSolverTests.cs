using CsCheck;
using Turnrow.Fabric.Shaping;
using Xunit;

namespace Turnrow.Fabric.Tests.Shaping;

public sealed class TaperSolverTests
{
    private static readonly Taper _plain = new(0, 0, 0, 0, false, false, false, true);

    private static readonly Gen<Taper> _any = Gen.Select(
        Gen.Select(Gen.Int[0, 60], Gen.Int[0, 200], Gen.Int[0, 10], Gen.Int[0, 10]), Gen.Select(Gen.Bool, Gen.Bool, Gen.Bool, Gen.Bool),
        static (n, b) => new Taper(n.Item1, n.Item2, n.Item3, n.Item4, b.Item1, b.Item2, b.Item3, b.Item4));

    // Sources: 36 over 140, every 3rd row 4 times and every 4th 32 times: "Magic formula", apparel-analysis.blogspot.com, 2013/06.
    // 42 over 176, every 4th 34 times and every 5th 8 times: designyourownsweater.blogspot.com, 2007/01. 11 over 108: a knitwear blog of
    // 2014 gives 9 (rest 9); every 9th twice and every 10th 9 times follows by the same rule.
    [Theory]
    [InlineData(36, 140, 3, 4, 4, 32)]
    [InlineData(42, 176, 4, 34, 5, 8)]
    [InlineData(11, 108, 9, 2, 10, 9)]
    public void Published_tapers_come_out(int changes, int rows, int shorter, int shorterTimes, int longer, int longerTimes)
    {
        var schedule = TaperSolver.Solve(_plain with { Changes = changes, Rows = rows })!;
        Assert.Equal([new Frequency(shorter, 0, shorterTimes), new Frequency(longer, 0, longerTimes)], schedule.Frequencies);
        Assert.Equal(rows, schedule.RowsNeeded());
    }

    // What a schedule costs does not grow with the rows that it is for.
    [Fact]
    public void A_taper_over_two_million_rows_takes_no_more_than_one_over_two_hundred()
    {
        Assert.Equal(Taken(200), Taken(2_000_000));
        Assert.InRange(TaperSolver.Solve(_plain with { Changes = 77_777, Rows = 2_000_000 })!.Frequencies.Count, 1, 2);
    }

    private static long Taken(int rows)
    {
        var taper = _plain with { Changes = 77, Rows = rows };
        TaperSolver.Solve(taper);
        var before = GC.GetAllocatedBytesForCurrentThread();
        TaperSolver.Solve(taper);
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    [Fact]
    public void Longer_intervals_come_first_if_that_is_said() => Assert.Equal(
        [new Frequency(4, 0, 32), new Frequency(3, 0, 4)],
        TaperSolver.Solve(_plain with { Changes = 36, Rows = 140, LongerFirst = true })!.Frequencies);

    [Fact]
    public void By_turns_short_and_long_alternate_as_far_as_they_can() => Assert.Equal(
        [3, 7, 10, 14, 18, 22], TaperSolver.Solve(_plain with { Changes = 6, Rows = 22, ByTurns = true })!.RowsWithin(22));

    [Fact]
    public void Rows_can_be_kept_plain_at_both_ends() => Assert.Equal(
        [4, 6, 8], TaperSolver.Solve(_plain with { Changes = 3, Rows = 12, PlainFirst = 2, PlainLast = 4 })!.RowsWithin(12));

    [Fact]
    public void Twenty_two_times_do_not_fit_in_eighteen_rows()
    {
        var taper = _plain with { Changes = 22, Rows = 18 };
        Assert.Null(TaperSolver.Solve(taper));
        Assert.Equal(18, TaperSolver.MostChanges(taper));
    }

    [Fact]
    public void No_change_at_all_is_plain_rows() => Assert.Empty(TaperSolver.Solve(_plain with { Rows = 10 })!.RowsWithin(10));

    [Fact]
    public void As_many_changes_are_made_as_were_asked_within_the_rows_there_are() => _any.Sample(taper =>
    {
        if (TaperSolver.Solve(taper) is not { } schedule) return TaperSolver.MostChanges(taper) < taper.Changes;
        var rows = schedule.RowsWithin(taper.Rows);
        return rows.Count == taper.Changes && rows.All(r => taper.Changes == 0 || (r > taper.PlainFirst && r <= taper.Rows - taper.PlainLast));
    });

    [Fact]
    public void There_are_two_intervals_at_most_and_as_even_as_can_be() => _any.Sample(taper =>
    {
        if (TaperSolver.Solve(taper) is not { } schedule) return true;
        var intervals = schedule.Frequencies.SelectMany(f => f.SecondInterval > 0 ? new[] { f.Interval, f.SecondInterval } : [f.Interval]).Distinct().ToList();
        return intervals.Count <= 2 && (intervals.Count < 2 || intervals.Max() - intervals.Min() == (taper.EveryOtherRow ? 2 : 1));
    });

    [Fact]
    public void Right_side_rows_alone_shape_where_that_is_said() => _any.Sample(taper =>
    {
        if (!taper.EveryOtherRow || TaperSolver.Solve(taper) is not { } schedule) return true;
        return schedule.RowsWithin(taper.Rows).All(r => r % 2 == 1 == taper.FirstIsRightSide);
    });

    [Fact]
    public void It_is_refused_only_where_it_can_not_be_done() => _any.Sample(taper =>
    {
        var there = 0;
        for (var row = taper.PlainFirst + 1; row <= taper.Rows - taper.PlainLast; row++)
        {
            if (!taper.EveryOtherRow || row % 2 == 1 == taper.FirstIsRightSide) there++;
        }

        return TaperSolver.MostChanges(taper) == there && TaperSolver.Solve(taper) is null == taper.Changes > there;
    });

    [Fact]
    public void As_many_changes_as_rows_are_one_in_every_row() =>
        Assert.Equal([new Frequency(1, 0, 18)], TaperSolver.Solve(_plain with { Changes = 18, Rows = 18 })!.Frequencies);

    [Fact]
    public void By_turns_as_many_short_as_long_alternate_to_the_end()
    {
        Assert.Equal([new Frequency(3, 4, 6)], TaperSolver.Solve(_plain with { Changes = 6, Rows = 21, ByTurns = true })!.Frequencies);
        Assert.Equal([new Frequency(4, 3, 6)], TaperSolver.Solve(_plain with { Changes = 6, Rows = 21, ByTurns = true, LongerFirst = true })!.Frequencies);
        Assert.Equal([new Frequency(3, 4, 4), new Frequency(3, 0, 2)], TaperSolver.Solve(_plain with { Changes = 6, Rows = 20, ByTurns = true })!.Frequencies);
    }

    [Fact]
    public void No_change_at_all_has_no_frequency_and_keeps_all_rows_plain()
    {
        var schedule = TaperSolver.Solve(_plain with { Rows = 10 })!;
        Assert.Equal(10, schedule.After);
        Assert.Empty(schedule.Frequencies);
    }

    [Fact]
    public void Where_more_is_kept_plain_than_there_is_nothing_fits()
    {
        var taper = _plain with { Changes = 1, Rows = 10, PlainFirst = 8, PlainLast = 8 };
        Assert.Null(TaperSolver.Solve(taper));
        Assert.Equal(0, TaperSolver.MostChanges(taper));
        Assert.Equal(0, TaperSolver.MostChanges(taper with { EveryOtherRow = true }));
    }

    [Fact]
    public void On_right_side_rows_alone_the_intervals_are_two_rows_apart()
    {
        var schedule = TaperSolver.Solve(_plain with { Changes = 3, Rows = 10, EveryOtherRow = true })!;
        Assert.Equal([new Frequency(2, 0, 1), new Frequency(4, 0, 2)], schedule.Frequencies);
        Assert.Equal([1, 5, 9], schedule.RowsWithin(10));
    }
}
