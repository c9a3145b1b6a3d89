using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Tests.Words;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Rows;

/// <summary>The chain that a row opens with: the first stitch worked decides it.</summary>
public sealed class OpeningTests
{
    // Worked: so many times it came to.
    private static readonly Amount s_across = Amount.Across with { Times = 20 };

    private static Opening Of(params Word[] words) => Openings.OfRow(words, TurnRule.CustomOf);

    private static Opening Uncounted(params Word[] words) => Openings.OfRow(words, static s => TurnRule.Of(s.Height, false));

    [Fact]
    public void A_row_of_dc_opens_with_three_chains_that_count() => Assert.Equal(new Opening(StitchBook.Double, 3, true, 0, 0), Of(Say.Stitches(s_across)));

    [Fact]
    public void A_row_of_sc_opens_with_one_that_does_not() =>
        Assert.Equal(new Opening(StitchBook.Single, 1, false, 0, 0), Of(Work.Plain(StitchBook.Single, s_across)));

    [Fact]
    public void Slip_stitches_need_none() => Assert.Equal(0, Of(Work.Plain(StitchBook.Slip, s_across)).Chains);

    // "Ch 5" read as 1 dc and ch 2: "Turning chains when working crochet in rows", a crochet blog, 2009/03.
    [Fact]
    public void A_row_that_opens_with_a_space_turns_with_one_chain_for_both() =>
        Assert.Equal(new Opening(StitchBook.Double, 5, true, 0, 2), Of(Say.Stitches(1), new Chains(2), new Skip(2), Say.Stitches(s_across)));

    [Fact]
    public void A_space_after_two_stitches_is_one_of_its_own() => Assert.Equal(3, Of(Say.Stitches(2), new Chains(2)).Chains);

    [Fact]
    public void A_chain_that_does_not_count_is_not_made_in_one_with_a_space() =>
        Assert.Equal(new Opening(StitchBook.Double, 3, false, 0, 0), Uncounted(Say.Stitches(1), new Chains(2)));

    [Fact]
    public void A_decrease_on_the_first_stitches_is_a_shorter_chain() => Assert.Equal(2, Of(Work.Decrease(StitchBook.Double, 1)).Chains);

    [Fact]
    public void A_decrease_under_a_chain_that_does_not_count_leaves_it_whole() => Assert.Equal(3, Uncounted(Work.Decrease(StitchBook.Double, 1)).Chains);

    [Fact]
    public void Slipping_over_comes_before_the_chain_and_does_not_decide_it() => Assert.Equal(3, Of(new SlipOver(4), Say.Stitches(s_across)).Chains);

    [Fact]
    public void The_first_stitch_inside_a_group_or_a_repeat_decides()
    {
        Assert.Equal(StitchBook.Double, Of(new Group([Say.In(Aim.Next), new Chains(1)], Target.Next)).Stitch);
        Assert.Equal(StitchBook.Double, Of(Say.Times(s_across, Say.Stitches(1), new Chains(1))).Stitch);
    }

    [Fact]
    public void What_is_worked_no_times_decides_nothing() =>
        Assert.Equal(StitchBook.Double, Of(Work.Plain(StitchBook.Treble, Amount.Of(0)), Say.Times(Amount.Of(0), Work.Plain(StitchBook.Treble, Amount.Once)), Say.Stitches(1)).Stitch);

    [Fact]
    public void A_row_that_begins_with_chains_is_turned_with_these() => Assert.Equal(new Opening(null, 3, false, 0, 3), Of(new Chains(3), new Skip(1), Say.Stitches(1)));

    [Fact]
    public void A_foundation_has_the_row_s_places_and_the_chain_s()
    {
        Assert.Equal(new Opening(StitchBook.Double, 79, true, 4, 0), Openings.OfChains([Say.Stitches(s_across)], TurnRule.CustomOf, 77));
        Assert.Equal(new Opening(StitchBook.Double, 84, true, 6, 2), Openings.OfChains([Say.Stitches(1), new Chains(2), Say.Stitches(1)], TurnRule.CustomOf, 80));
    }

    [Fact]
    public void The_chain_that_counts_is_the_first_place_made()
    {
        var tops = Openings.MarkFirst(Say.Plain(5), Of(Say.Stitches(5)), PlaceKind.TurningChain);
        Assert.Equal([(PlaceKind.TurningChain, 1), (PlaceKind.Stitch, 4)], tops.Kinds().Select(k => (k.Place.Kind, k.Count)));
        Assert.Equal(Say.Plain(5), Openings.MarkFirst(Say.Plain(5), Uncounted(Say.Stitches(5)), PlaceKind.TurningChain));
    }

    [Fact]
    public void What_needs_no_chain_has_none()
    {
        Assert.Equal(new Opening(StitchBook.Slip, 0, false, 0, 0), Of(Work.Plain(StitchBook.Slip, Amount.Once), new Chains(2)));
        Assert.Equal(new Opening(null, 0, false, 0, 0), Of());
        Assert.Equal(new Opening(null, 0, false, 0, 0), Of(new Skip(4)));
    }

    [Fact]
    public void Only_a_space_straight_after_one_stitch_is_made_in_one_with_the_chain()
    {
        Assert.Equal(new Opening(StitchBook.Double, 3, true, 0, 0), Of(Say.Stitches(1)));
        Assert.Equal(new Opening(StitchBook.Double, 3, true, 0, 0), Of(Say.Stitches(1), Say.Stitches(4), new Chains(2)));
        Assert.Equal(new Opening(StitchBook.Double, 3, true, 0, 0), Of(Work.Increase(StitchBook.Double, 1), new Chains(2)));
        Assert.Equal(new Opening(StitchBook.Double, 3, true, 0, 0), Of(Say.Stitches(s_across), new Chains(2)));
    }

    [Fact]
    public void What_takes_two_and_makes_two_is_no_decrease() =>
        Assert.Equal(3, Of(new Work(StitchBook.Double, 2, 2, Amount.Once, Target.Next, HookInto.BothLoops)).Chains);

    [Fact]
    public void Chains_that_a_row_begins_with_stand_over_all_of_its_foundation() =>
        Assert.Equal(new Opening(null, 20, false, 2, 0), Openings.OfChains([new Chains(3), new Skip(20)], TurnRule.CustomOf, 20));

    [Fact]
    public void Where_nothing_is_made_or_a_space_is_made_first_no_place_is_the_chain_s()
    {
        Assert.Equal(PlaceSequence.Empty, Openings.MarkFirst(PlaceSequence.Empty, Of(Say.Stitches(1)), PlaceKind.TurningChain));
        Assert.Equal(Say.Of((Say.Space(2), 1), (Say.Dc, 1)), Openings.MarkFirst(Say.Of((Say.Space(2), 1), (Say.Dc, 1)), Of(Say.Stitches(1)), PlaceKind.TurningChain));
    }
}
