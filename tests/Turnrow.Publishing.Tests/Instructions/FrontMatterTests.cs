using Turnrow.Compiler;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Instructions;
using Turnrow.Publishing.Trade;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Publishing.Tests.Instructions;

/// <summary>All that stands round the rows: only what the pattern gives, rounded as print does.</summary>
public class FrontMatterTests
{
    [Theory]
    [InlineData(2000, "20 cm (7 3/4 in)")]
    [InlineData(1000, "10 cm (4 in)")]
    [InlineData(1025, "10.5 cm (4 in)")]
    [InlineData(1016, "10 cm (4 in)")]
    [InlineData(0, "0 cm (0 in)")]
    public void Lengths_are_rounded_to_the_half_centimetre_and_the_quarter_inch(int hundredths, string expected) =>
        Assert.Equal(expected, Lengths.Both(Sized.Of(Rational.Of(hundredths, 100)!.Value), false));

    [Theory]
    [InlineData(350, "E-4")]
    [InlineData(500, "H-8")]
    [InlineData(650, "K-10 1/2")]
    [InlineData(300, null)]
    public void Hooks_have_the_US_name_of_the_published_table(int hundredths, string? expected) =>
        Assert.Equal(expected, HookSizes.UsName(Rational.Of(hundredths, 100)!.Value));

    [Fact]
    public void What_the_pattern_does_not_give_is_left_out()
    {
        var text = WrittenInstructions.Write(new Pattern { Title = "Bare", Sizes = [string.Empty] }, Terms.US);
        Assert.Equal("# Bare\n\nWritten in US terms.\n\n## Notes\n\n- The count of a row stands in square brackets at its end.\n", text);
    }

    [Fact]
    public void A_designers_inches_come_first() =>
        Assert.Contains("measure 4 in (10 cm)", Written.Of("pattern \"P\"\ngauge sc: 16 stitches and 20 rows to 4 in\npiece panel\nbegin with 4 stitches\nrow 1 RS: sc across"), StringComparison.Ordinal);

    [Fact]
    public void Only_abbreviations_that_are_used_are_listed()
    {
        var text = Written.Of("pattern \"P\"\npiece panel\nbegin with 4 stitches\nrow 1 RS: sc across");
        Assert.Contains("- **sc:** single crochet", text, StringComparison.Ordinal);
        Assert.DoesNotContain("**dc:**", text, StringComparison.Ordinal);
        Assert.DoesNotContain("**WS:**", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_title_is_text_and_nothing_else() =>
        Assert.StartsWith("# \\<b\\>\\[x\\]\\*\n", WrittenInstructions.Write(new Pattern { Title = "<b>[x]*" }, Terms.US), StringComparison.Ordinal);

    [Fact]
    public void A_pattern_with_errors_is_a_draft()
    {
        var pattern = Compilation.Of(new SourceText("p", "pattern \"P\"\npiece panel\nbegin with 4 stitches\nrow 1 RS: sc 5\nrow: sc across")).Pattern;
        var text = WrittenInstructions.Write(pattern, Terms.US);
        Assert.Contains("**Draft: not to be worked from.** The pattern's file has 1 error", text, StringComparison.Ordinal);
        Assert.Contains("Not known yet", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("finished bust is 90 cm", "- Bust: 90 cm (35 1/2 in); to fit 86 cm, with 4 cm of ease\n")]
    [InlineData("finished neck-opening is 60 cm", "- Neck opening: 60 cm (23 1/2 in); to go over a head of 57 cm\n")]
    [InlineData("finished neck-opening is 55 cm, stretches by 12.5 %", "- Neck opening: 55 cm (21 3/4 in); to go over a head of 57 cm, it stretches by 12.5%\n")]
    [InlineData("finished neck-opening is 40 cm, opens", "- Neck opening: 40 cm (15 3/4 in)\n")]
    [InlineData("finished hip-length is 60 cm", "- Hip length: 60 cm (23 1/2 in)\n")]
    [InlineData("finished hip-length is 60 cm", "- Hip length: 58 cm (22 3/4 in) (length chart of the same standard)\n")]
    public void What_is_finished_is_told_beside_the_body(string finished, string line) =>
        Assert.Contains(line, Written.Of($"sizes S\nbody women, cm\npiece panel\nbegin with 4 stitches\nrow 1 RS: sc across\n{finished}"), StringComparison.Ordinal);

    [Fact]
    public void A_size_is_chosen_by_a_width() =>
        Assert.Contains("Choose the size made for the bust", Written.Of("sizes S, M\nbody women, cm\npiece panel\nbegin with 4 stitches\nrow 1 RS: sc across\nfinished hip-length is 60 cm\nfinished neck-opening is 60 cm\nfinished bust is 90 (100) cm"), StringComparison.Ordinal);
}
