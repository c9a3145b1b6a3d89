using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Tests.Pieces;
using Turnrow.Fabric.Tests.Words;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Patterns;

public sealed class GaugeBookTests
{
    private static readonly Gauge _dc = new(StitchBook.Double, 19, 10, 10, 10);
    private static readonly Gauge _sc = new(StitchBook.Single, 20, 10, 20, 10);
    private static readonly GaugeBook _book = new([_dc, _sc]);

    [Fact]
    public void Width_is_stitches_over_the_gauge_exactly()
    {
        Assert.Equal(Rational.Of(770, 19), _dc.WidthOf(77));
        Assert.Equal((Rational)77, _dc.StitchesFor(Rational.Of(770, 19)!.Value));
        Assert.Equal((Rational)20, _dc.RowsFor(20));
    }

    // 18 stitches to 4 in, 11 rows to 3 in: each has a span of its own.
    [Fact]
    public void Stitches_and_rows_may_be_counted_over_lengths_of_their_own()
    {
        var gauge = new Gauge(StitchBook.HalfDouble, 18, Rational.Of(1016, 100)!.Value, 11, Rational.Of(762, 100)!.Value);
        Assert.Equal((Rational)45, gauge.StitchesFor(Rational.Of(254, 10)!.Value));
        Assert.Equal((Rational)22, gauge.RowsFor(Rational.Of(1524, 100)!.Value));
    }

    // Source: designyourownsweater.blogspot.com, 2007/01: 28 stitches and 40 rows to 10 cm; 26 cm = 72.8, 49 cm = 196 rows, 56 cm = 156.8.
    [Fact]
    public void A_published_sleeve_has_these_exact_numbers()
    {
        var gauge = new Gauge(StitchBook.Single, 28, 10, 40, 10);
        Assert.Equal(Rational.Of(728, 10), gauge.StitchesFor(26));
        Assert.Equal((Rational)196, gauge.RowsFor(49));
        Assert.Equal(Rational.Of(1568, 10), gauge.StitchesFor(56));
    }

    // Sources: a knitwear blog of 2014: 5 stitches and 7 rows to the inch, 7.75 in = 38.75, 15.5 in = 108.5 rows. knittingunplugged.com,
    // 2016/05: 5.5 to the inch, 9 in = 49.5, printed as 50. papermoonknits.com, "Math Monday: increasing": 6.75 rounds, 13 in = 87.75,
    // the nearest even 88.
    [Fact]
    public void Published_roundings_come_out()
    {
        Assert.Equal(Rational.Of(3875, 100), new Gauge(StitchBook.Single, 5, 1, 7, 1).StitchesFor(Rational.Of(31, 4)!.Value));
        Assert.Equal(Rational.Of(1085, 10), new Gauge(StitchBook.Single, 5, 1, 7, 1).RowsFor(Rational.Of(31, 2)!.Value));
        Assert.Equal(50, Allowed.Any.Nearest(new Gauge(StitchBook.Single, Rational.Of(11, 2)!.Value, 1, 7, 1).StitchesFor(9)!.Value));
        Assert.Equal(88, Allowed.Even.Nearest(new Gauge(StitchBook.Single, 1, 1, Rational.Of(27, 4)!.Value, 1).RowsFor(13)!.Value));
    }

    [Fact]
    public void Height_is_the_sum_of_the_rows_each_by_its_own_gauge()
    {
        var rows = Made.Begun(20, 4).Rows(6, ShapedPlan.Plain(StitchBook.Single)).Finish().Rows;
        Assert.Equal((Rational)7, _book.HeightOf(rows));
        Assert.Equal((Rational)3, _book.HeightOf(rows, 4));
        Assert.Equal(Rational.Zero, _book.HeightOf(rows, 10));
    }

    [Fact]
    public void A_row_is_as_high_as_its_tallest_stitch()
    {
        var row = Made.Begun(20).Row(Work.Plain(StitchBook.Single, Amount.Of(12)), Say.Stitches(8)).Rows[0];
        Assert.Same(StitchBook.Double, GaugeBook.TallestOf(row));
        Assert.Equal(Rational.One, _book.HeightOf([row]));
    }

    [Fact]
    public void A_row_is_as_wide_as_what_most_of_it_is_made_of()
    {
        var row = Made.Begun(20).Row(Work.Plain(StitchBook.Single, Amount.Of(12)), Say.Stitches(8)).Rows[0];
        Assert.Same(StitchBook.Single, GaugeBook.WidthFabricOf(row));
        Assert.Equal((Rational)10, _book.WidthOf(row));
        Assert.Equal([(StitchBook.Single, 1)], GaugeBook.WidthFabricsOf([row]));
    }

    // Of as many of each the tallest is taken, wherever it stands.
    [Fact]
    public void Of_stitches_that_come_as_often_the_tallest_is_as_wide_as_the_row()
    {
        foreach (var words in new Word[][] { [Work.Plain(StitchBook.Single, Amount.Of(10)), Say.Stitches(10)], [Say.Stitches(10), Work.Plain(StitchBook.Single, Amount.Of(10))] })
            Assert.Same(StitchBook.Double, GaugeBook.WidthFabricOf(Made.Begun(20).Row(words).Rows[0]));
    }

    // A bobble is made of dc: it lifts the row of sc that it stands in, and does not make it as wide as a row of dc.
    [Fact]
    public void One_bobble_does_not_make_a_row_wide()
    {
        var bobble = SpecialStitches.Bobble.Of(5)!;
        var row = Made.Begun(40).Row(Work.Plain(StitchBook.Single, Amount.Of(5)), Work.Plain(bobble, Amount.Once), Work.Plain(StitchBook.Single, Amount.Across)).Rows[0];
        Assert.Equal((Rational)20, _book.WidthOf(row));
        Assert.Equal(Rational.One, _book.HeightOf([row]));
    }

    [Fact]
    public void Bobbles_among_dc_count_as_dc()
    {
        var bobble = SpecialStitches.Bobble.Of(5)!;
        var row = Made.Begun(19).Row(Work.Plain(StitchBook.Single, Amount.Of(8)), Work.Plain(bobble, Amount.Of(5)), Say.Stitches(6)).Rows[0];
        Assert.Same(StitchBook.Double, GaugeBook.WidthFabricOf(row));
    }

    [Fact]
    public void A_stitch_without_a_gauge_has_no_height()
    {
        var rows = Made.Begun(20, 2).Rows(1, ShapedPlan.Plain(StitchBook.Treble)).Finish().Rows;
        Assert.Null(_book.HeightOf(rows));
        Assert.Null(_book.Of(StitchBook.Treble));
        Assert.Null(_book.WidthOf(rows[^1]));
    }

    [Fact]
    public void A_row_over_spaces_is_as_wide_as_its_stitches_and_chains()
    {
        var row = Made.Begun(19).Row(Say.Stitches(1), Say.Times(Amount.Across, new Chains(2), new Skip(2), Say.Stitches(1))).Rows[0];
        Assert.Equal((Rational)10, _book.WidthOf(row));
    }

    [Fact]
    public void The_widest_row_is_found_and_the_fabrics_are_counted()
    {
        var rows = Made.Begun(20, 4).Rows(6, ShapedPlan.Plain(StitchBook.Single)).Finish().Rows;
        var widest = _book.WidestOf(rows)!.Value;
        // 20 stitches of dc are wider than 20 of sc.
        Assert.Equal((1, Rational.Of(200, 19)), (widest.Row.Number, widest.Width));
        Assert.Equal([(StitchBook.Double, 4), (StitchBook.Single, 6)], GaugeBook.FabricsOf(rows));
        Assert.Null(new GaugeBook([_dc]).WidestOf(rows));
        Assert.Null(_book.WidestOf([]));
        Assert.Empty(GaugeBook.FabricsOf([]));
    }

    [Fact]
    public void One_gauge_takes_the_place_of_another()
    {
        var other = _sc with { Stitches = 18 };
        Assert.Equal([_dc, other], _book.With(other).Gauges);
        Assert.Equal([_dc, _sc], _book.Gauges);
    }

    // More than 2 in 100 and more than half a centimetre.
    [Theory]
    [InlineData(20, 205, false)]
    [InlineData(20, 206, true)]
    [InlineData(20, 194, true)]
    [InlineData(100, 1020, false)]
    [InlineData(100, 1021, true)]
    public void A_length_is_another_one_from_a_bound_on(int planned, int tenthsMeasured, bool passed) =>
        Assert.Equal(passed, Tolerance.IsPassed(Rational.Of(tenthsMeasured, 10)!.Value, planned));
}
