using Turnrow.Fabric.Shaping;
using Xunit;

namespace Turnrow.Fabric.Tests.Shaping;

public sealed class ScheduleTests
{
    private static IReadOnlyList<int> Rows(int within, int after, params Frequency[] frequencies) => new Schedule(after, frequencies).RowsWithin(within);

    [Fact]
    public void Each_change_falls_in_the_last_row_of_its_interval() =>
        Assert.Equal([2, 4, 6, 8, 10, 12, 14, 16, 18, 20], Rows(20, 0, new Frequency(2, 0, -1)));

    [Fact]
    public void One_frequency_follows_another() =>
        Assert.Equal([6, 12, 18, 22, 26, 30, 34, 38], Rows(40, 0, new Frequency(6, 0, 3), new Frequency(4, 0, 5)));

    [Fact]
    public void By_turns_means_one_and_then_the_other() => Assert.Equal([3, 7, 10, 14], Rows(14, 0, new Frequency(3, 4, -1)));

    [Fact]
    public void After_ten_rows_it_begins() => Assert.Equal([14, 18, 22, 26, 30], Rows(30, 10, new Frequency(4, 0, -1)));

    [Fact]
    public void One_that_has_run_out_leaves_its_edge_even() => Assert.Equal([2, 4], Rows(20, 0, new Frequency(2, 0, 2)));

    [Fact]
    public void What_does_not_fit_any_more_is_not_done() => Assert.Equal([4, 8], Rows(11, 0, new Frequency(4, 0, -1)));

    [Fact]
    public void It_knows_the_rows_that_all_its_changes_need()
    {
        Assert.Equal(38, new Schedule(0, [new(6, 0, 3), new(4, 0, 5)]).RowsNeeded());
        Assert.Equal(10 + 3 + 4 + 3, new Schedule(10, [new(3, 4, 3)]).RowsNeeded());
        Assert.Null(new Schedule(0, [new(4, 0, -1)]).RowsNeeded());
    }

    [Fact]
    public void Huge_numbers_end_at_once() => Assert.Empty(Rows(20_000, int.MaxValue, new Frequency(int.MaxValue, 0, int.MaxValue)));

    [Fact]
    public void No_times_is_never_and_not_for_ever()
    {
        Assert.Equal([4, 8], Rows(20, 0, new Frequency(2, 0, 0), new Frequency(4, 0, 2)));
        Assert.Equal(8, new Schedule(0, [new(2, 0, 0), new(4, 0, 2)]).RowsNeeded());
    }

    [Fact]
    public void By_turns_one_may_be_every_row()
    {
        Assert.Equal([3, 4, 7, 8], Rows(8, 0, new Frequency(3, 1, 4)));
        Assert.Equal(8, new Schedule(0, [new(3, 1, 4)]).RowsNeeded());
        Assert.Equal((6 * 3) + (5 * 1), new Schedule(0, [new(3, 1, 11)]).RowsNeeded());
    }
}
