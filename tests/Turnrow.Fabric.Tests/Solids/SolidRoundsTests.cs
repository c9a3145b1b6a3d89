using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Solids;
using Turnrow.Fabric.Stitches;
using Xunit;

namespace Turnrow.Fabric.Tests.Solids;

/// <summary>Counts of bodies of revolution against the published formula and against arithmetic.</summary>
public sealed class SolidRoundsTests
{
    private static readonly Gauge Square = new(StitchBook.Single, 10, 10, 10, 10);

    // "The ideal crochet sphere", mspremiseconclusion.wordpress.com, 14 March 2010: stitches go as the sine; "Perfect crochet sphere, part 1",
    // tacomagic.wordpress.com, 23 Nov 2011: 2N at the middle. For 10 rounds 3.1, 9.1, 14.1, 17.8, 19.8 and back.
    [Fact]
    public void A_sphere_of_ten_rounds_has_the_published_counts() =>
        Assert.Equal([3, 9, 14, 18, 20, 20, 18, 14, 9, 3], CountsOf("sphere", 20 / Math.PI, 0, 1));

    // tacomagic.wordpress.com, 23 Nov 2011: about 40 stitches round the middle, 20 rounds tall.
    [Fact]
    public void Forty_round_the_middle_are_twenty_rounds()
    {
        var counts = CountsOf("sphere", 40 / Math.PI, 0, 6);
        Assert.Equal((20, 40), (counts.Count, counts.Max()));
    }

    [Fact]
    public void A_point_is_closed_from_as_many_as_were_asked_for() =>
        Assert.Equal([6, 9, 14, 18, 20, 20, 18, 14, 9, 6], CountsOf("sphere", 20 / Math.PI, 0, 6));

    [Fact]
    public void Counts_are_multiples_where_that_is_asked() =>
        Assert.Equal([6, 12, 12, 18, 18, 18, 18, 12, 12, 6], Counts("sphere", 20 / Math.PI, 0, 6, Allowed.Multiple(6, 0)));

    [Fact]
    public void A_dome_is_the_lower_half_of_a_sphere()
    {
        var sphere = CountsOf("sphere", 20 / Math.PI, 0, 1);
        Assert.Equal(sphere.Take(5), CountsOf("dome", 20 / Math.PI, 0, 1));
    }

    [Fact]
    public void A_round_egg_is_a_sphere() =>
        Assert.Equal(CountsOf("sphere", 12, 0, 4), CountsOf("egg", 12, 12, 4));

    [Fact]
    public void A_cone_grows_by_the_same_each_round()
    {
        // 3-4-5: 3 wide from the axis, 4 high, 5 along its side.
        var counts = CountsOf("cone", 6, 4, 1);
        Assert.Equal(5, counts.Count);
        for (var i = 0; i < counts.Count; i++) Assert.Equal((int)Math.Round(2 * Math.PI * 3 * (i + 0.5) / 5), counts[i]);
    }

    [Fact]
    public void A_cylinder_is_a_flat_circle_and_a_wall()
    {
        var counts = CountsOf("cylinder", 10, 6, 1);
        Assert.Equal(11, counts.Count);
        Assert.Equal([3, 9, 16, 22, 28], counts.Take(5));
        Assert.All(counts.Skip(5), count => Assert.Equal(31, count));
    }

    [Fact]
    public void A_ring_begins_and_ends_at_its_inner_side()
    {
        var counts = CountsOf("ring", 16, 4, 1);
        Assert.Equal(13, counts.Count);
        Assert.Equal(counts, counts.Reverse());
        // Its middle round lies outside: 16 cm across are 50.3 round.
        Assert.Equal(50, counts[6]);
        Assert.InRange(counts[0], 25, 26);
    }

    [Fact]
    public void A_gauge_that_is_not_square_gives_fewer_higher_rounds()
    {
        var tall = new Gauge(StitchBook.Double, 20, 10, 10, 10);
        var counts = SolidRounds.Counts(SolidShape.Find("dome")!.MeridianOf(10, 0, false), tall, Allowed.Any, 1, 100)!;
        Assert.Equal(8, counts.Count);
        Assert.Equal(63, counts[^1]);
    }

    [Fact]
    public void More_rounds_than_may_be_are_none() =>
        Assert.Null(SolidRounds.Counts(SolidShape.Find("sphere")!.MeridianOf(1000, 0, false), Square, Allowed.Any, 6, 20));

    // 6 for sc, 8 for hdc, 12 for dc: "All things round", thecrochetbag.blogspot.com, 2013/05, and craftymaria.blogspot.com, 2009/06; a page of 2009 says
    // that 8 sc ruffle. 16 for tr is common practice, no source. The heights over the widths are those of square sc and of 1, 1.5, 2 and 2.5 chains.
    [Theory]
    [InlineData(6, 20, true)]
    [InlineData(8, 20, false)]
    [InlineData(4, 20, false)]
    [InlineData(8, 13.5, true)]
    [InlineData(12, 10, true)]
    [InlineData(11, 10, true)]
    [InlineData(16, 8, true)]
    public void The_customary_growth_lies_flat(int growth, double rowsTo20Stitches, bool flat)
    {
        var gauge = new Gauge(StitchBook.Single, 20, 10, Rational.Of((int)(rowsTo20Stitches * 2), 2)!.Value, 10);
        Assert.Equal(flat, Flatness.IsFlat(growth, Flatness.Needed(gauge)));
    }

    // Geometry: the way round a regular shape of n corners is 2 n tan(pi / n) times its radius to the middle of a side.
    [Theory]
    [InlineData(FlatShape.Circle, 0, 6.283)]
    [InlineData(FlatShape.Oval, 0, 6.283)]
    [InlineData(FlatShape.Polygon, 3, 10.392)]
    [InlineData(FlatShape.Polygon, 4, 8)]
    [InlineData(FlatShape.Polygon, 6, 6.928)]
    [InlineData(FlatShape.HalfCircle, 0, 3.142)]
    [InlineData(FlatShape.HalfPolygon, 1, 4)]
    [InlineData(FlatShape.HalfPolygon, 2, 3.464)]
    public void The_way_round_gets_longer_by_the_shape(FlatShape shape, int corners, double expected) =>
        Assert.Equal(expected, Flatness.AroundOf(shape, corners), 3);

    private static IReadOnlyList<int> CountsOf(string shape, double across, double other, int least) => Counts(shape, across, other, least, Allowed.Any);

    private static IReadOnlyList<int> Counts(string shape, double across, double other, int least, Allowed allowed) =>
        SolidRounds.Counts(SolidShape.Find(shape)!.MeridianOf(across, other, false), Square, allowed, least, 10_000)!;
}
