using CsCheck;
using Turnrow.Fabric.Numbers;
using Xunit;

namespace Turnrow.Fabric.Tests.Numbers;

public sealed class RationalTests
{
    private static readonly Gen<Rational> _small =
        Gen.Select(Gen.Int[-1000, 1000], Gen.Int[1, 1000], static (n, d) => Rational.Of(n, d)!.Value);

    [Fact]
    public void It_is_kept_in_lowest_terms_with_the_sign_on_top()
    {
        Assert.Equal(Rational.Of(1, 2), Rational.Of(-50, -100));
        var half = Rational.Of(3, -6)!.Value;
        Assert.Equal((-1L, 2L), (half.Numerator, half.Denominator));
    }

    [Fact]
    public void What_was_never_set_is_zero() => Assert.Equal((0L, 1L), (default(Rational).Numerator, default(Rational).Denominator));

    [Fact]
    public void Three_thirds_are_one_exactly() =>
        Assert.Equal(Rational.One, (Rational.Of(1, 3)!.Value + Rational.Of(1, 3)!.Value)!.Value + Rational.Of(1, 3)!.Value);

    [Fact]
    public void What_is_added_can_be_taken_away_and_what_is_multiplied_divided() => Gen.Select(_small, _small).Sample((a, b) =>
        (a + b)!.Value - b == a && (b == Rational.Zero || (a * b)!.Value / b == a));

    [Fact]
    public void Its_order_is_the_order_of_the_numbers() => Gen.Select(_small, _small).Sample((a, b) =>
        a.CompareTo(b) == Math.Sign((double)((decimal)a.Numerator / a.Denominator - ((decimal)b.Numerator / b.Denominator))));

    [Fact]
    public void Floor_and_ceiling_close_it_in() => _small.Sample(a =>
        a.Floor() <= a && a.Ceiling() >= a && a.Ceiling() - a.Floor() == (a.IsWhole ? 0 : 1));

    [Fact]
    public void A_result_that_does_not_fit_is_none_and_never_a_wrong_number()
    {
        Rational most = long.MaxValue;
        Assert.Null(most + 1);
        Assert.Null(most * 2);
        Assert.Null(most / Rational.Of(1, 2)!.Value);
        Assert.Null(Rational.Of(1, long.MaxValue)!.Value * Rational.Of(1, 2)!.Value);
        Assert.Null(Rational.Of((Int128)long.MaxValue + 1, 1));
        Assert.Equal(Rational.Zero, most - most);
    }

    [Fact]
    public void Division_by_zero_is_none()
    {
        Assert.Null(Rational.Of(1, 0));
        Assert.Null(Rational.One / Rational.Zero);
    }

    [Theory]
    [InlineData(12, 1, "12")]
    [InlineData(15, 2, "7 1/2")]
    [InlineData(1, 3, "1/3")]
    [InlineData(-15, 2, "-7 1/2")]
    [InlineData(0, 5, "0")]
    public void It_is_written_as_print_writes_fractions(int numerator, int denominator, string text) =>
        Assert.Equal(text, Rational.Of(numerator, denominator)!.Value.ToString());

    [Fact]
    public void The_largest_numbers_fit()
    {
        Assert.Equal(long.MaxValue, Rational.Of(long.MaxValue, 1)?.Numerator);
        Assert.Equal(-long.MaxValue, Rational.Of(-long.MaxValue, 1)?.Numerator);
        Assert.Equal(long.MaxValue, Rational.Of(1, long.MaxValue)?.Denominator);
        Assert.Null(Rational.Of(long.MinValue, 1));
    }

    [Theory]
    [InlineData(200, 11, "18.2")]
    [InlineData(20, 1, "20")]
    [InlineData(1, 20, "0.1")]
    [InlineData(1, 21, "0")]
    [InlineData(-5, 2, "-2.5")]
    [InlineData(long.MaxValue, 1, "9223372036854775807")]
    public void Tenths_are_rounded_once_and_a_tie_goes_up(long numerator, long denominator, string text) =>
        Assert.Equal(text, Rational.Of(numerator, denominator)!.Value.ToTenths());
}
