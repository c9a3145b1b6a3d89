using CsCheck;
using Turnrow.Fabric.Numbers;
using Xunit;

namespace Turnrow.Fabric.Tests.Numbers;

public sealed class AllowedTests
{
    private static readonly Gen<Allowed> _allowed = Gen.Select(Gen.Int[1, 12], Gen.Int[-5, 20], Allowed.Multiple);
    private static readonly Gen<Rational> _exact = Gen.Select(Gen.Int[0, 5000], Gen.Int[1, 40], static (n, d) => Rational.Of(n, d)!.Value);

    [Theory]
    [InlineData(764, 10, 77)] // 76.4: rounded first to 76 and then to odd it would be 75 or 77 by chance
    [InlineData(755, 10, 75)]
    [InlineData(7599, 100, 75)]
    [InlineData(76, 1, 77)] // a tie: the larger
    [InlineData(77, 1, 77)]
    public void The_nearest_odd_count_is_found_in_one_step(int numerator, int denominator, long expected) =>
        Assert.Equal(expected, Allowed.Odd.Nearest(Rational.Of(numerator, denominator)!.Value));

    [Fact]
    public void Half_a_stitch_goes_up() => Assert.Equal(8, Allowed.Any.Nearest(Rational.Of(15, 2)!.Value));

    [Fact]
    public void A_multiple_of_6_plus_1_allows_7_13_and_19()
    {
        var allowed = Allowed.Multiple(6, 1);
        Assert.Equal([1L, 7L, 13L, 19L], Enumerable.Range(0, 20).Select(n => (long)n).Where(n => allowed.Has(n)));
        Assert.Equal(97, allowed.Nearest(99));
        Assert.Equal(103, allowed.Nearest(100));
    }

    [Fact]
    public void The_nearest_is_allowed_and_no_other_is_nearer() => Gen.Select(_allowed, _exact).Sample((allowed, exact) =>
    {
        var nearest = allowed.Nearest(exact);
        var off = (nearest - exact)!.Value.Magnitude();
        return allowed.Has(nearest)
            && (nearest + allowed.Every - exact)!.Value.Magnitude() > off
            && (nearest - allowed.Every - exact)!.Value.Magnitude() >= off;
    });

    [Fact]
    public void At_most_is_allowed_and_not_above() => Gen.Select(_allowed, _exact).Sample((allowed, exact) =>
        allowed.AtMost(exact) is var count && allowed.Has(count) && count <= exact && count + allowed.Every > exact);

    [Fact]
    public void Both_together_allow_what_each_allows() => Gen.Select(_allowed, _allowed).Sample((a, b) =>
        Enumerable.Range(0, 300).All(n => (a.Has(n) && b.Has(n)) == (a.And(b) is { } both && both.Has(n))));

    [Fact]
    public void Odd_and_even_can_not_both_be()
    {
        Assert.Null(Allowed.Odd.And(Allowed.Even));
        Assert.Null(Allowed.Multiple(4, 1).And(Allowed.Even));
        Assert.Equal(Allowed.Multiple(6, 3), Allowed.Multiple(3, 0).And(Allowed.Odd));
    }

    [Fact]
    public void The_widest_step_is_allowed_together_with_any()
    {
        var widest = new Allowed(int.MaxValue, 5);
        Assert.Equal(widest, widest.And(Allowed.Any));
        Assert.Null(widest.And(Allowed.Even));
    }
}
