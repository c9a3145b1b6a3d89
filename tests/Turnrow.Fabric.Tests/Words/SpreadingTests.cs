using CsCheck;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Words;

/// <summary>
/// Increases and decreases spread over a row. The sources put the odd gaps and the half gap in different places, so totals and the
/// largest spread are held to them, not one order.
/// </summary>
public sealed class SpreadingTests
{
    private static readonly Work _increase = Work.Increase(StitchBook.Double, 1);

    // Sources: 51 + 4, 112 + 16: woolpackyarn.com, "calculating where to place the increases"; 40 + 4: Dummies, "how to increase at
    // several points in the same row"; 60 + 6: neasesneedlework.com; 100 + 16, 140 + 21, 48 + 12, 100 - 16: a published lesson "How to
    // increase / decrease evenly" (seen as a repost); 55 - 17: papermoonknits.com, "Math Monday: decreasing, part II"; 30 - 10: a knitting
    // book page; 131 - 39: spincraftpatterns.com (its groups are a page error, the total is right); the rest: published leaflets, named
    // by their codes BRK0502-035370M, PAK0116-005442M, PAK0129-003407M, CAK0129-010186M, PAK0116-001086M, CAK0116-008819M, PAK0416-030197M.
    [Theory]
    [InlineData(51, 4, 55)]
    [InlineData(112, 16, 128)]
    [InlineData(40, 4, 44)]
    [InlineData(60, 6, 66)]
    [InlineData(100, 16, 116)]
    [InlineData(140, 21, 161)]
    [InlineData(48, 12, 60)]
    [InlineData(100, -16, 84)]
    [InlineData(55, -17, 38)]
    [InlineData(30, -10, 20)]
    [InlineData(131, -39, 92)]
    [InlineData(129, 17, 146)]
    [InlineData(48, 24, 72)]
    [InlineData(87, 17, 104)]
    [InlineData(93, 19, 112)]
    [InlineData(99, 19, 118)]
    [InlineData(111, 17, 128)]
    [InlineData(76, 5, 81)]
    [InlineData(90, 5, 95)]
    [InlineData(104, 5, 109)]
    [InlineData(62, 1, 63)]
    [InlineData(63, -7, 56)]
    [InlineData(98, -8, 90)]
    [InlineData(64, 8, 72)]
    [InlineData(72, 8, 80)]
    [InlineData(80, 8, 88)]
    public void Published_totals_come_out(int stitches, int change, int expected)
    {
        Assert.Equal(expected, Say.Good(Say.Plain(stitches), Spread.Of(StitchBook.Double, change)).Stitches);
        Assert.InRange(LargestSpread(stitches, change), 0, 1);
    }

    [Fact]
    public void Any_that_fit_come_out_with_gaps_that_differ_by_one_at_most() =>
        Gen.Select(Gen.Int[1, 300], Gen.Int[-150, 300]).Sample((stitches, change) =>
        {
            var fits = change >= 0 ? change <= stitches : -2 * change <= stitches;
            var row = RowWorker.Work([Spread.Of(StitchBook.Double, change)], Say.Plain(stitches));
            Assert.Equal(fits, row.Fault is null);
            if (!fits) return;
            Assert.Equal(stitches + change, row.Stitches);
            Assert.Equal(stitches, row.Words.Sum(WordCounts.Takes));
            if (change != 0) Assert.InRange(LargestSpread(stitches, change), 0, 1);
        });

    [Fact]
    public void Half_a_gap_stands_at_each_end() => Gen.Select(Gen.Int[1, 300], Gen.Int[1, 100]).Sample((stitches, change) =>
    {
        if (change > stitches) return true;
        var gaps = Gaps(stitches, change);
        return Math.Abs(gaps[0] - gaps[^1]) <= 1 && (change == 1 || gaps[^1] <= 1 + (gaps[1..^1].Max() / 2));
    });

    [Fact]
    public void More_than_there_is_room_for_are_refused() =>
        Assert.Equal(RowFaultKind.SpreadTooMany, Say.Bad(Say.Plain(7), Spread.Of(StitchBook.Double, -4)).Kind);

    [Fact]
    public void None_at_all_is_a_plain_row() => Assert.Equal([Say.Stitches(7)], Say.Good(Say.Plain(7), Spread.Of(StitchBook.Double, 0)).Words);

    [Fact]
    public void It_takes_what_is_left_of_the_row() =>
        Assert.Equal(58, Say.Good(Say.Plain(53), Say.Stitches(3), Spread.Of(StitchBook.Double, 5)).Stitches);

    private static int LargestSpread(int stitches, int change)
    {
        var between = Gaps(stitches, change)[1..^1];
        return between.Count == 0 ? 0 : between.Max() - between.Min();
    }

    // Plain stitches before, between and after the changes.
    private static List<int> Gaps(int stitches, int change)
    {
        List<int> gaps = [0];
        foreach (var work in Single(Spreading.Over(Spread.Of(StitchBook.Double, change), stitches)!))
        {
            if (work.Takes == 1 && work.Makes == 1) gaps[^1] += work.Amount.Count;
            else for (var i = 0; i < work.Amount.Count; i++) gaps.Add(0);
        }

        return gaps;
    }

    private static IEnumerable<Work> Single(IEnumerable<Word> words) => words.SelectMany(word => word switch
    {
        Repeat repeat => Enumerable.Repeat(repeat.Words, repeat.Amount.Count).SelectMany(w => w).OfType<Work>(),
        _ => [(Work)word],
    });

    [Fact]
    public void The_longer_gaps_lie_in_the_middle() => Assert.Equal(
        [
            Say.Stitches(2), _increase, Say.Stitches(4), _increase, Say.Stitches(5),
            Say.Times(Amount.Of(2), _increase, Say.Stitches(4)), _increase, Say.Stitches(2),
        ],
        Spreading.Over(Spread.Of(StitchBook.Double, 5), 26));

    [Fact]
    public void Without_gaps_they_stand_side_by_side()
    {
        Assert.Equal([6, 1], Spreading.Over(Spread.Of(StitchBook.Double, 7), 7)!.Select(word => Assert.IsType<Work>(word).Amount.Count));
        Assert.Equal([3, 1], Spreading.Over(Spread.Of(StitchBook.Double, -4), 8)!.Select(word => Assert.IsType<Work>(word).Amount.Count));
        Assert.All(Spreading.Over(Spread.Of(StitchBook.Double, -4), 8)!, word => Assert.Equal(2, Assert.IsType<Work>(word).Takes));
    }

    // More changes than plain stitches: no third of the round takes the most of them.
    [Fact]
    public void Above_one_in_two_the_plain_stitches_are_spread_and_not_the_changes() => Assert.Equal(
        [Say.Times(Amount.Of(20), _increase with { Amount = Amount.Of(2) }, Say.Stitches(1))],
        Spreading.Over(Spread.Of(StitchBook.Double, 40), 60, isRound: true));

    [Fact]
    public void In_a_row_half_a_group_stands_at_each_end() => Assert.Equal(
        [_increase, Say.Stitches(1), Say.Times(Amount.Of(9), _increase with { Amount = Amount.Of(2) }, Say.Stitches(1)), _increase],
        Spreading.Over(Spread.Of(StitchBook.Double, 20), 30));

    // The words fill the row, the changes come out, and no stretch of the row has two more of them than another of its length.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Changes_above_one_in_two_are_balanced(bool round) => Gen.Select(Gen.Int[2, 200], Gen.Int[1, 199], Gen.Bool, Gen.Bool).Sample((stitches, change, fewer, shifted) =>
    {
        change = fewer ? -(change % ((stitches / 2) + 1)) : Math.Min(change, stitches);
        var words = Spreading.Over(Spread.Of(StitchBook.Double, change) with { Shifted = shifted }, stitches, round)!;
        var plain = stitches - (Math.Abs(change) * (fewer ? 2 : 1));
        if (plain <= 0) return;
        Assert.Equal(stitches, words.Sum(WordCounts.Takes));
        Assert.Equal(Math.Abs(change), Changes(words));
        if (Math.Abs(change) <= plain + 1) return;
        var lots = Lots(words);
        Assert.InRange(lots[1..^1].DefaultIfEmpty(0).Max() - lots[1..^1].DefaultIfEmpty(0).Min(), 0, 1);
        Assert.Equal(plain, lots.Count - 1);
    });

    // Changes before, between and behind the plain stitches.
    private static List<int> Lots(IReadOnlyList<Word> words)
    {
        List<int> lots = [0];
        foreach (var work in Single(words))
        {
            if (work.Takes != work.Makes) lots[^1] += work.Amount.Count;
            else for (var i = 0; i < work.Amount.Count; i++) lots.Add(0);
        }

        return lots;
    }

    private static int Changes(IReadOnlyList<Word> words) => Single(words).Where(static work => work.Takes != work.Makes).Sum(static work => work.Amount.Times);

    [Fact]
    public void One_alone_stands_in_the_middle() =>
        Assert.Equal([Say.Stitches(3), _increase, Say.Stitches(3)], Spreading.Over(Spread.Of(StitchBook.Double, 1), 7));

    [Fact]
    public void One_that_takes_all_there_is_stands_alone() => Assert.Equal([_increase], Spreading.Over(Spread.Of(StitchBook.Double, 1), 1));
}
