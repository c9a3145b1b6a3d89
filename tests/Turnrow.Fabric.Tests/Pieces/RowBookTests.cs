using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Xunit;

namespace Turnrow.Fabric.Tests.Pieces;

/// <summary>Rows are worked once for all pieces that are turned by the same rules, and anew for those that are not.</summary>
public sealed class RowBookTests
{
    private readonly RowBook _book = new();

    private RowWork Third(params (Stitch Stitch, TurnRule Rule)[] rules)
    {
        var builder = new PieceBuilder("back", rules.ToDictionary(r => r.Stitch, r => r.Rule), _book);
        builder.BeginWithStitches(20);
        return builder.Plain(3).Rows[2].Work!;
    }

    [Fact]
    public void Pieces_with_the_same_rules_share_their_rows() => Assert.Same(Third(), Third());

    [Fact]
    public void Pieces_with_other_rules_have_rows_of_their_own()
    {
        var two = (StitchBook.Double, TurnRule.Of(2, true));
        var four = (StitchBook.Double, TurnRule.Of(4, true));
        var single = (StitchBook.Single, TurnRule.Of(0, false));
        Assert.Equal([3, 2, 4, 3, 2], new[] { Third(), Third(two), Third(four), Third(single), Third(two, single) }.Select(work => work.Opening.Chains));
        Assert.Same(Third(two), Third(two));
        Assert.Same(Third(), Third());
        Assert.NotSame(Third(), Third(single));
        Assert.NotSame(Third(two), Third(two, single));
    }

    [Fact]
    public void A_piece_that_says_a_rule_of_its_own_leaves_the_others_rows_as_they_are()
    {
        var before = Third();
        var builder = new PieceBuilder("front", new Dictionary<Stitch, TurnRule>(), _book);
        builder.BeginWithStitches(20);
        builder.Plain(1).SetRule(StitchBook.Double, TurnRule.Of(2, true), true);
        Assert.Equal([2, 3], builder.Plain(2).Rows.Skip(1).Select(row => row.Work!.Opening.Chains));
        Assert.Same(before, Third());
        Assert.Equal(3, Third().Opening.Chains);
    }

    [Fact]
    public void A_piece_by_itself_shares_nothing() => Assert.NotSame(Made.Begun(20, 3).Rows[2].Work, Made.Begun(20, 3).Rows[2].Work);

    [Fact]
    public void Rows_shaped_alike_from_where_they_start_share_their_words_whichever_edge_that_is()
    {
        var (increase, plain) = (new EdgeChange(1, 0), default(EdgeChange));
        var cache = new RowCache();
        var fromRight = cache.WordsOf(new ShapedPlan(StitchBook.Double, increase, plain), Hand.Right);
        Assert.Same(fromRight, cache.WordsOf(new ShapedPlan(StitchBook.Double, plain, increase), Hand.Left));
        Assert.NotSame(fromRight, cache.WordsOf(new ShapedPlan(StitchBook.Double, increase, plain), Hand.Left));
        Assert.NotSame(fromRight, cache.WordsOf(new ShapedPlan(StitchBook.Single, increase, plain), Hand.Right));
    }
}
