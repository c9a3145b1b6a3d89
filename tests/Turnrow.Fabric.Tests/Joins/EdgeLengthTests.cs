using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Tests.Pieces;
using Xunit;

namespace Turnrow.Fabric.Tests.Joins;

public sealed class EdgeLengthTests
{
    // A stitch is 1 cm wide and a row 1 cm high, so that slopes can be reckoned by hand.
    private static readonly GaugeBook s_gauges = new([new Gauge(StitchBook.Double, 10, 10, 10, 10)]);

    private static double Of(params JoinSide[] edge) => EdgeLength.Of(edge, s_gauges)!.Value.ToDouble();

    [Fact]
    public void A_straight_edge_is_as_long_as_its_rows_are_high() =>
        Assert.Equal(7, Of(EdgeSelection.ByName(Made.Begun(30).Plain(7).Finish(), Hand.Right, null)));

    [Fact]
    public void A_step_is_as_long_as_its_stitches_are_wide() =>
        Assert.Equal(7 + 4 + 5, Of(EdgeSelection.ByName(Made.Begun(30).Plain(7).Leave(Hand.Right, 4).Plain(5).Finish(), Hand.Right, null)));

    [Fact]
    public void A_slope_is_measured_from_one_shaped_row_to_the_next()
    {
        var shaped = new ShapedPlan(StitchBook.Double, new EdgeChange(-4, 0), default);
        var piece = Made.Begun(30).Plain(2).Rows(1, shaped).Plain(2).Rows(1, shaped).Plain(1).Finish();
        Assert.Equal(5 + 5 + 1, Of(EdgeSelection.ByName(piece, Hand.Right, null)), 3);
        Assert.Equal(7, Of(EdgeSelection.ByName(piece, Hand.Left, null)));
    }

    [Fact]
    public void Edges_end_to_end_are_added_up()
    {
        var piece = Made.Begun(30).Plain(7).Finish();
        Assert.Equal(7 + 30 + 7, Of(EdgeSelection.ByName(piece, Hand.Right, null), EdgeSelection.LastRow(piece, []), EdgeSelection.ByName(piece, Hand.Left, null)));
    }

    [Fact]
    public void Without_a_gauge_there_is_no_length()
    {
        var edge = EdgeSelection.ByName(Made.Begun(30).Plain(7).Finish(), Hand.Right, null);
        Assert.Null(EdgeLength.Of([edge], new GaugeBook([])));
        Assert.Equal(StitchBook.Double, EdgeLength.WithoutGauge([edge], new GaugeBook([])));
        Assert.Null(EdgeLength.WithoutGauge([edge], s_gauges));
    }
}
