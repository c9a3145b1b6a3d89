using Xunit;

namespace Turnrow.Compiler.Tests.Values;

/// <summary>Numbers that are out of line with the others.</summary>
public sealed class OddNumberTests
{
    private const string Header = "terms US\nsizes 1, 2, 3, 4, 5\ngauge dc: 20 stitches and 10 rows to 10 cm\nturn dc: ch 3 counts\n";
    private const string Piece = "\npiece back\nbegin with 20 stitches\nrow 1 RS: dc across\n";

    private static IEnumerable<string> Found(string lines) => Compiled.Whole(Header + lines + Piece).Found;

    [Theory]
    [InlineData("1 (2, 3, 4, 5)", false)]
    [InlineData("5 (4, 3, 3, 1)", false)]
    [InlineData("1 (1, 2, 1, 2)", true)]
    [InlineData("76 (97, 86, 107, 117)", true)]
    [InlineData("5 (4, 3, 2, 6)", true)]
    [InlineData("16.5 (17.5, 18, 18 1/2, 18.25)", true)]
    [InlineData("1 (2, 1, 2, 1)", false)]
    [InlineData("2 (1, 1, 1, 2)", false)]
    public void A_list_in_sizes_that_goes_the_other_way_once_is_told(string list, bool told)
    {
        Assert.Equal(told ? ["sizes-dip"] : [], Compiled.Whole($"{Header}{Piece}straight for {list} cm").Found);
    }

    [Fact]
    public void The_size_is_named() => Assert.Equal(
        "the list grows from size to size, and from 2 to 3 it goes down",
        Compiled.Whole(Header + Piece + "straight for 76 (97, 86, 107, 117) cm").Compilation.Diagnostics.Single().Message);

    [Theory]
    [InlineData("measure a is 5 cm\nmeasure b is 6 cm\nmeasure c is 7 cm\nmeasure d is 8 in", true)]
    [InlineData("measure a is 5 in\nmeasure b is 6 in\nmeasure c is 7 mm\nmeasure d is 8 in", true)]
    [InlineData("measure a is 5 cm\nmeasure b is 6 cm\nmeasure d is 8 in", false)]
    [InlineData("measure a is 5 cm\nmeasure b is 6 cm\nmeasure c is 7 cm\nmeasure d is 8 in\nmeasure e is 9 in", false)]
    public void One_length_in_another_kind_of_unit_is_told(string lines, bool told) => Assert.Equal(told ? ["unit-alone"] : [], Found(lines));

    [Theory]
    [InlineData("10 in", true)]
    [InlineData("4 cm", true)]
    [InlineData("10 mm", true)]
    [InlineData("1/2 in", true)]
    [InlineData("4 in", false)]
    [InlineData("1 in", false)]
    [InlineData("5 cm", false)]
    [InlineData("100 mm", false)]
    public void A_gauge_over_a_length_that_nobody_measures_is_told(string length, bool told) =>
        Assert.Equal(told ? ["gauge-span"] : [], Found($"gauge sc: 20 stitches and 10 rows to {length}"));
}
