using Xunit;

namespace Turnrow.Compiler.Tests.Grading;

/// <summary>Numbers from size to size, ease, and how far a count may lie from its length.</summary>
public sealed class GradeTests
{
    [Theory]
    [InlineData("count n is 4 (7, 9, 12)")]
    [InlineData("count n is 4 (4, 4, 4)")]
    [InlineData("count n is 3 (3, 3, 7)", "grade-jumps")]
    [InlineData("count n is 40 (45, 50, 95)", "grade-jumps")]
    [InlineData("count n is 10 (45, 50, 55)", "grade-jumps")]
    [InlineData("count n is 40 (45, 54, 50)", "grade-falls")]
    [InlineData("measure n is 76 (86, 97, 170) cm", "grade-jumps")]
    [InlineData("measure n is 76 (86, 79, 107) cm", "grade-falls")]
    [InlineData("measure n is 16.5 (17.5, 18.5, 19.5) cm")]
    // Whole pairs of rows, and what is made of them, grow every second size: no step is out of line with the others.
    [InlineData("count high is 20 (20, 22, 22)\ncount n is high x 5 / 2")]
    [InlineData("count pairs is 8 (8, 9, 10)\ncount neck is 3 (4, 5, 6)\ncount n is neck + 5 x pairs")]
    [InlineData("count n is stitches for 30 (30, 33, 33) cm, multiple of 12")]
    [InlineData("count n is 8 (8, 12, 12)", "grade-jumps")]
    [InlineData("count n is 100 - 10 (12, 14, 40)", "grade-falls")]
    [InlineData("count n is 100 + 10 (12, 14, 40)", "grade-jumps")]
    public void A_number_out_of_line_is_told(string line, params string[] found) => Assert.Equal(found, Sizes(line).Found);

    [Fact]
    public void The_message_shows_the_row_of_numbers()
    {
        var warning = Assert.Single(Sizes("count n is 40 (45, 54, 50)").Compilation.Diagnostics);
        Assert.Equal(["S 40, M 45, L 54, 1X 50"], warning.Ledger);
        Assert.Equal(["1X"], warning.Sizes);
    }

    // The older fit chart: very close 0, close 1-2 in, standard 2-4 in, loose 4-6 in, oversized 6 in and more; Lion Brand's guide as
    // quoted in gratefullyinhisgrace.blogspot.com, August 2011. knittingmagic.biz: a chest of 40 in has 42 to 44 in for a standard fit.
    [Theory]
    [InlineData("standard", 42, true)]
    [InlineData("standard", 44, true)]
    [InlineData("classic", 44, true)]
    [InlineData("standard", 46, false)]
    [InlineData("close", 41, true)]
    [InlineData("close", 44, false)]
    [InlineData("loose", 45, true)]
    [InlineData("very-close", 40, true)]
    [InlineData("very-close", 41, false)]
    [InlineData("oversized", 47, true)]
    [InlineData("oversized", 45, false)]
    public void A_fit_by_name_has_the_published_ease(string fit, int finished, bool fits)
    {
        var found = Compiled.Whole($"gauge dc: 10 stitches and 5 rows to 1 in\nmeasure bust is 40 in\nease bust is {fit}\npiece back\nbegin with {finished * 5} stitches\nrow 1: dc across\nfinished bust is {finished * 10} stitches\n").Found;
        Assert.Equal(fits ? [] : ["ease-off"], found);
    }

    [Theory]
    [InlineData("ease bust is 10 cm less", "finished bust is 2 x back stitches")]
    [InlineData("ease bust is 5 cm", "finished bust is 2 x back stitches + 2", "ease-off")]
    [InlineData("ease bust is 8 cm", "finished bust is 98 cm")]
    [InlineData("ease bust is 8 cm", "finished bust is 100.5 cm", "ease-off")]
    [InlineData("ease bust is snug", "finished bust is 98 cm", "ease-word")]
    [InlineData("ease bust is 8 cm\nease bust is 9 cm", "finished bust is 98 cm", "defined-twice")]
    [InlineData("", "finished bust is 98 cm\nfinished bust is 99 cm", "defined-twice")]
    public void Ease_is_held_against_what_is_finished(string ease, string finished, params string[] found)
    {
        Assert.Equal(found, Compiled.Whole($"gauge dc: 10 stitches and 5 rows to 10 cm\nmeasure bust is 90 cm\n{ease}\npiece back\nbegin with 40 stitches\nrow 1: dc across\n{finished}\n").Found);
    }

    [Fact]
    public void A_piece_is_finished_as_it_was_made()
    {
        var pattern = Compiled.Whole("gauge dc: 10 stitches and 5 rows to 10 cm\ngauge sc: 10 stitches and 12 rows to 10 cm\npiece back\nbegin with 40 stitches\nrow 1: dc across\nstraight 4 rows\nrow: sc across\nstraight 5 rows\nfinished length is back rows\nfinished width is back stitches\n").Clean().Pattern;
        Assert.Equal("15 40", string.Join(' ', pattern.Finished.Select(f => f.Centimetres[0].ToString())));
    }

    [Fact]
    public void A_count_too_far_from_its_length_names_its_neighbours()
    {
        var found = Assert.Single(Compiled.Whole("gauge dc: 18 stitches and 9 rows to 10 cm\ncount n is stitches for 56 cm, multiple of 24 + 1, within 1 cm\npiece a\nbegin with n stitches\nrow 1: dc across\n").Compilation.Diagnostics);
        Assert.Equal("count-far", found.Kind.Name);
        Assert.Contains("97 stitches measure 53.89 cm", found.Message, StringComparison.Ordinal);
        Assert.Contains("121, measures 67.22 cm", found.Help, StringComparison.Ordinal);
        Assert.Contains("101 stitches, which do not fit, would measure 56.11 cm", found.Help, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_accepted_is_told_no_more_and_kept_with_its_reason()
    {
        var compilation = Sizes("count n is 40 (45, 54, 50)\naccept grade-falls: \"a trial\"").Clean().Compilation;
        Assert.Equal("a trial", Assert.Single(compilation.Accepted).Reason);
    }

    [Theory]
    [InlineData("accept grade-falls of n: \"a trial\"", "grade-falls")]
    [InlineData("accept grade-falls of N: \"a trial\"\naccept grade-falls of strap: \"too\"")]
    [InlineData("accept grade-falls of strap: \"a trial\"\naccept grade-falls: \"the rest\"")]
    [InlineData("accept TR0406 of n: \"a trial\"", "grade-falls")]
    [InlineData("accept grade-falls of k: \"a trial\"", "grade-falls", "grade-falls", "accept-unused")]
    [InlineData("accept grade-falls: \"all\"\naccept grade-falls of n: \"one\"")]
    public void One_count_among_several_can_be_accepted(string lines, params string[] found) =>
        Assert.Equal(found, Sizes($"count n is 40 (45, 54, 50)\ncount strap is 4 (5, 6, 5)\n{lines}").Found);

    [Fact]
    public void Each_has_its_own_reason()
    {
        var compilation = Sizes("count n is 40 (45, 54, 50)\ncount strap is 4 (5, 6, 5)\naccept grade-falls: \"the rest\"\naccept grade-falls of strap: \"a strap\"").Clean().Compilation;
        Assert.Equal(["the rest", "a strap"], compilation.Accepted.Select(a => a.Reason));
    }

    [Theory]
    [InlineData("", "sizes-dip")]
    [InlineData("accept sizes-dip of front: \"a trial\"")]
    [InlineData("accept sizes-dip of front-edge: \"a trial\"", "sizes-dip", "accept-unused")]
    public void A_warning_in_a_piece_is_accepted_of_the_piece(string line, params string[] found) =>
        Assert.Equal(found, Compiled.Whole($"sizes S, M, L, 1X\npiece front\nbegin with 40 (45, 54, 50) stitches\nrow 1 RS: dc across\n{line}\n").Found);

    [Fact]
    public void A_slip_in_the_name_of_what_is_accepted_is_told()
    {
        var warning = Sizes("count strap is 40 (45, 54, 50)\naccept grade-falls of srap: \"one\"").Compilation.Diagnostics[^1];
        Assert.Equal("did you mean `strap`?", warning.Help);
        Assert.Equal("strap", Assert.Single(warning.Mends).NewText);
    }

    [Theory]
    [InlineData("accept grade-falls: \"no\"", "accept-unused")]
    [InlineData("accept row-count: \"no\"", "accept-unknown")]
    [InlineData("accept grade-fals: \"no\"", "accept-unknown")]
    public void An_accept_line_without_a_warning_is_told(string line, string name) => Assert.Equal([name], Sizes(line).Found);

    private static Compiled Sizes(string line) =>
        Compiled.Whole($"sizes S, M, L, 1X\ngauge dc: 18 stitches and 9 rows to 10 cm\n{line}\npiece back\nbegin with 20 stitches\nrow 1 RS: dc across\n");
}
