using System.Text.RegularExpressions;
using System.Xml.Linq;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Charts;
using Xunit;

namespace Turnrow.Publishing.Tests.Charts;

public sealed class RoundChartTests
{
    [Theory]
    [InlineData("circle", SampleRounds.Circle)]
    [InlineData("square", SampleRounds.Square)]
    [InlineData("from-corner", SampleRounds.FromCorner)]
    [InlineData("hexagon", SampleRounds.Hexagon)]
    [InlineData("oval", SampleRounds.Oval)]
    [InlineData("turned", SampleRounds.Turned)]
    [InlineData("hat", SampleRounds.Hat)]
    [InlineData("doily", SampleRounds.Doily)]
    [InlineData("circle-to-square", SampleRounds.CircleToSquare)]
    [InlineData("wedge", SampleRounds.WideLace)]
    [InlineData("wedge-turned", SampleRounds.WideTurned)]
    public void Rounds_look_as_they_did(string name, string lines) =>
        Golden.Matches($"tests/Turnrow.Publishing.Tests/Golden/rounds-{name}.svg", Svg(lines));

    [Fact]
    public void It_says_in_words_what_it_shows()
    {
        var svg = Svg(SampleRounds.Turned);
        Assert.StartsWith("<!-- To be seen: 4 rounds from the middle out, 12 stitches in the first and 48 stitches in the last", svg, StringComparison.Ordinal);
        Assert.Contains("Begins: an adjustable ring. Round 1: 12 dc. Round 2, wrong side: 24 dc.", svg, StringComparison.Ordinal);
        Assert.Contains(">Stitches: round 1 (12), 2 WS (24), 3 (36), 4 WS (48)<", svg, StringComparison.Ordinal);
        Assert.Contains("wrong-side round (WS), read clockwise", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void What_goes_into_a_ring_is_no_increase()
    {
        var svg = Svg(SampleRounds.Turned);
        Assert.Contains("2 dc in one place", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("12 dc in one place", svg, StringComparison.Ordinal);
    }

    [Fact]
    public void A_spiral_is_not_joined()
    {
        Assert.DoesNotContain("joins the round", Svg(SampleRounds.Hat), StringComparison.Ordinal);
        Assert.Contains("joins the round", Svg(SampleRounds.Circle), StringComparison.Ordinal);
    }

    [Fact]
    public void Rounds_without_room_are_left_out_and_it_is_said()
    {
        var clock = System.Diagnostics.Stopwatch.StartNew();
        var svg = Svg(SampleRounds.Blanket);
        Assert.Matches(@"Not drawn: rounds \d+–200, from \d+ to 2400 stitches: see the written rounds\.", svg);
        Assert.True(svg.Length < 120_000, svg.Length.ToString(System.Globalization.CultureInfo.InvariantCulture));
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(3), clock.Elapsed.ToString());
    }

    [Fact]
    public void Yarns_lie_behind_the_stitches_as_in_bands()
    {
        var piece = SampleRounds.Piece("  begin with ring\n  with navy\n  round 1: 12 dc in ring\n  round 2: (with navy, dc, with cream, dc in same) around\n", "yarn navy \"wool\"\nyarn cream \"wool\"\n");
        var svg = Chart.Of(piece, "motif", string.Empty, Terms.US, yarns: ["navy", "cream"])!.Svg;
        Assert.Equal(12, Regex.Count(svg, "<path [^>]*fill=\"#cfe0f2\""));
        Assert.Contains(">cream<", svg, StringComparison.Ordinal);
    }

    private static string Svg(string lines)
    {
        var svg = Chart.Of(SampleRounds.Piece(lines), "motif", string.Empty, Terms.US)!.Svg;
        Assert.NotNull(XDocument.Parse(svg).Root);
        return svg;
    }
}
