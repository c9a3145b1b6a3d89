using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Words;

/// <summary>Words in a bracket spread over plain stitches, and what goes into each stitch and each space.</summary>
public sealed class SpreadWordsTests
{
    private static readonly Word[] Hole = [new Chains(2), new Skip(2)];

    [Theory]
    [InlineData(93, 7, 3, 93 - 14)]
    [InlineData(26, 7, 3, 12)]
    [InlineData(8, 1, 3, 6)]
    [InlineData(12, 4, 0, 4)]
    [InlineData(9, 0, 3, 9)]
    public void So_many_stay_at_each_end(int places, int times, int ends, int stitches) =>
        Assert.Equal(stitches, Say.Good(Say.Plain(places), Holes(times, ends)).Stitches);

    [Fact]
    public void The_longer_gaps_lie_in_the_middle()
    {
        // 7 x 2 + 2 x 3 = 20 of 93: 73 in 6 gaps are 12 and one of 13.
        var words = Spreading.Over(Holes(7, 3), 93)!;
        Assert.Equal(
            [
                Say.Stitches(3),
                new Repeat([.. Hole, Say.Stitches(12)], Amount.Of(2)), .. Hole, Say.Stitches(13), new Repeat([.. Hole, Say.Stitches(12)], Amount.Of(3)),
                .. Hole, Say.Stitches(3),
            ],
            words);
    }

    [Theory]
    [InlineData(25, 7, 3, 25)]
    [InlineData(9, 1, 3, 9)]
    public void More_than_fit_are_a_fault(int places, int times, int ends, int there)
    {
        var fault = Say.Bad(Say.Plain(places), Holes(times, ends));
        Assert.Equal((RowFaultKind.SpreadTooMany, times, there), (fault.Kind, fault.Needed, fault.There));
    }

    [Theory]
    [InlineData(Reach.Until, 4, 16)]
    [InlineData(Reach.Fixed, 16, 16)]
    public void It_goes_as_far_as_it_says(Reach reach, int count, int before)
    {
        var over = reach == Reach.Until ? Amount.Until(count) : Amount.Of(count);
        var row = Say.Good(Say.Plain(20), new Spread(StitchBook.Double, Hole, 4, over), Say.Stitches(20 - before));
        Assert.Equal(12, row.Stitches);
    }

    [Fact]
    public void A_stretch_that_is_not_there_is_a_fault() =>
        Assert.Equal(RowFaultKind.NotEnough, Say.Bad(Say.Plain(20), new Spread(StitchBook.Double, Hole, 4, Amount.Of(21))).Kind);

    [Fact]
    public void Only_words_that_take_the_next_places_can_be_spread()
    {
        Assert.True(Spread.CanTake([.. Hole, Say.Stitches(2), new Repeat([Say.Stitches(1)], Amount.Of(2))]));
        Assert.False(Spread.CanTake([Work.Plain(StitchBook.Double, Amount.Across)]));
        Assert.False(Spread.CanTake([new Leave(2)]));
        Assert.False(Spread.CanTake([new Repeat([Say.Stitches(1)], Amount.Across)]));
        Assert.False(Spread.CanTake([new Group([Say.Stitches(1)], new Target(Aim.NextOfKind, new PlaceFilter(PlaceFilterKind.AnySpace, null, 0)))]));
    }

    [Fact]
    public void Each_stitch_gets_one_thing_and_each_space_another()
    {
        var holes = Say.Good(Say.Plain(20), Holes(4, 3));
        var filled = Say.Good(holes.Tops, ByPlace(2));
        Assert.Equal(20, filled.Stitches);
        Assert.Equal(RowFaultKind.NoneOfKind, Say.Bad(Say.Plain(20), ByPlace(2)).Kind);
        Assert.Equal(RowFaultKind.NotEnough, Say.Bad(Say.Plain(2), ByPlace(2) with { Remain = 3 }).Kind);
    }

    [Fact]
    public void A_space_of_another_length_is_not_meant()
    {
        var holes = Say.Good(Say.Plain(20), Holes(4, 3));
        var three = ByPlace(2) with { InSpace = ByPlace(2).InSpace with { Target = new Target(Aim.NextOfKind, new PlaceFilter(PlaceFilterKind.SpaceOf, null, 3)) } };
        Assert.Equal(RowFaultKind.SpaceAhead, Say.Bad(holes.Tops, three).Kind);
    }

    private static Spread Holes(int times, int ends) => new(StitchBook.Double, Hole, times, Amount.Across) { AtEachEnd = ends };

    private static ByPlace ByPlace(int inSpace) => new(
        Say.Stitches(1),
        new Work(StitchBook.Double, 1, inSpace, Amount.Once, new Target(Aim.NextOfKind, new PlaceFilter(PlaceFilterKind.AnySpace, null, 0)), HookInto.BothLoops),
        0);
}
