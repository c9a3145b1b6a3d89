using Xunit;

namespace Turnrow.Publishing.Tests.Instructions;

/// <summary>What goes back passes in front of what was worked since, or behind it: a cable crosses to one side or to the other.</summary>
public sealed class CrossingTests
{
    private const string Front = "FPtr around each of the 2 skipped sts, working in front of the sts just made";
    private const string Behind = "FPtr around each of the 2 skipped sts, working behind the sts just made";

    [Theory]
    [InlineData("cable", "**cable:**", Front)]
    [InlineData("cable-behind", "**cable-behind:**", Behind)]
    [InlineData("rope", "**rope:**", Front)]
    [InlineData("rope-back", "**rope-back:**", Behind)]
    public void Print_says_how_a_cable_crosses(string stitch, string title, string crossing)
    {
        var line = Line(Written.Of(Panel(stitch, "fasten off")), title);
        Assert.Contains(crossing, line, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("cable", "cable-behind over next 4 dc")]
    [InlineData("cable-behind", "cable over next 4 dc")]
    [InlineData("rope", "mirrored rope over next 4 dc")]
    public void A_mirrored_piece_crosses_the_other_way(string stitch, string told)
    {
        var text = Written.Of(Panel(stitch, "fasten off\npiece other is panel mirrored"));
        Assert.Contains(told, text[text.IndexOf("### Other", StringComparison.Ordinal)..], StringComparison.Ordinal);
    }

    [Fact]
    public void The_mirror_image_of_a_designer_s_own_passes_behind_what_it_passed_in_front_of()
    {
        var text = Written.Of(Panel("rope", "fasten off\npiece other is panel mirrored"));
        Assert.Contains(Behind, Line(text, "**mirrored rope:**"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_mirrored_row_finds_the_cable_that_is_now_crossed_the_other_way()
    {
        var text = Written.Of(Panel("cable", "row 3: dc across\nrow 4: dc 3, cable, dc across\nrow 5: sc in each st\nfasten off\npiece other is panel mirrored"));
        Assert.Contains("cable-behind over next 4 dc", text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_said_is_not_printed() =>
        Assert.DoesNotContain("working", Line(Written.Of(Panel("crossed 2", "fasten off")), "**crossed dc:**"), StringComparison.Ordinal);

    private static string Line(string text, string title) => text.Split('\n').Single(line => line.Contains(title, StringComparison.Ordinal));

    private static string Panel(string stitch, string more) => $"""
        notation 1
        pattern "Rope"
        terms US
        hook 4 mm
        turn dc: ch 3 counts
        stitch rope is skip 2, FPtr 2, FPtr 2 in skipped in front
        stitch rope-back is skip 2, FPtr 2, FPtr 2 in skipped behind

        piece panel
        begin with 12 stitches
        row 1 RS: dc across
        row 2: dc 3, {stitch}, dc across
        {more}
        """;
}
