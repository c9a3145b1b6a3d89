using System.Globalization;
using System.Text.RegularExpressions;
using Turnrow.Compiler;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Instructions;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>What is published reads back: a maker with the page in hand arrives at the row model's counts and at the hook's place.</summary>
public sealed partial class ReaderTests
{
    public static TheoryData<string, Terms> Patterns
    {
        get
        {
            var data = new TheoryData<string, Terms>();
            foreach (var name in Repository.PatternNames)
            {
                data.Add(name, Terms.US);
                data.Add(name, Terms.UK);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Patterns))]
    public void A_pattern_reads_back_in_every_size(string name, Terms terms)
    {
        var (pattern, page) = Published(name, terms);
        var found = ReadBack.Differences(pattern, page);
        Assert.True(found.Count == 0, string.Join('\n', found));
    }

    [Theory]
    [InlineData(Terms.US)]
    [InlineData(Terms.UK)]
    public void Loops_left_free_and_tubes_closed_flat_read_back(Terms terms)
    {
        var compilation = Compilation.Of(new SourceText("doll.turnrow", Doll));
        Assert.Equal(0, compilation.Pattern.Errors);
        Assert.Empty(ReadBack.Differences(compilation.Pattern, WrittenInstructions.Write(compilation.Pattern, terms)));
    }

    [Theory]
    [InlineData("claims without turning chain\n")]
    [InlineData("claims with chains\n")]
    public void Counts_read_back_however_they_are_counted(string counting)
    {
        var pattern = Compilation.Of(new SourceText("net.turnrow", counting + Net)).Pattern;
        Assert.Equal(0, pattern.Errors);
        Assert.Empty(ReadBack.Differences(pattern, WrittenInstructions.Write(pattern, Terms.US)));
    }

    [Theory]
    [InlineData("the ch that a round began with is a st of its side", "turn sc: ch 1 counts", """
        piece tile
          begin with ring of 5 chains
          round: (3 sc, mark corner) 3 times in ring
          round: (5 sc in corner, sc to corner) across
        piece strap
          begin with 19 stitches
          round: (sc, join to tile third side) 8 times, sc across
        """)]
    [InlineData("a round worked with the wrong side facing lies the other way round", "", """
        piece tile
          begin with ring of 5 chains
          rounds are joined and turned
          round: (2 sc, mark corner) 5 times in ring
          round: (5 sc in corner, sc to corner) across
        piece strap
          begin with 12 stitches
          round: (sc, join to tile second side) 7 times, sc across
        """)]
    [InlineData("a stitch turned over has two words wherever it is named", "stitch lean is (dc, sc) together", """
        piece panel
          begin with 9 stitches
          row: sc across
          row: sc 2, lean 3, sc
          row: sc across
          row: sc 2, lean 2, sc across
          row: dc in next lean, sc in next lean, sc across
        piece other is panel mirrored
        """)]
    [InlineData("on the way to a space the ch of a spiral's round is passed over", "turn sc: ch 1 counts", """
        piece crown
          begin with ring of 4 chains
          rounds are spiral
          round: (3 sc, ch 3) 7 times in ring
          round: sc in each sp
        """)]
    [InlineData("a space behind the chain is said where another yarn comes before any stitch", "yarn navy\nyarn rust", """
        piece panel
          begin with 9 stitches
          row: dc, ch 2, mark corner, with rust, dc across
          row: (dc to corner, dc in corner) across, dc across
        """)]
    public void What_is_seldom_met_reads_back_as_well(string what, string header, string pieces)
    {
        var pattern = Compilation.Of(new SourceText("sample.turnrow", $"pattern \"Sample\"\nterms US\n{header}\n{pieces}\n")).Pattern;
        Assert.Equal(0, pattern.Errors);
        foreach (var terms in new[] { Terms.US, Terms.UK })
        {
            var page = WrittenInstructions.Write(pattern, terms);
            var found = ReadBack.Differences(pattern, page);
            Assert.True(found.Count == 0, $"{what}:\n{string.Join('\n', found)}\n{page}");
        }
    }

    [Fact]
    public void A_strip_that_is_folded_and_sewn_to_itself_reads_back()
    {
        var pattern = Compilation.Of(new SourceText("tote.turnrow", Tote)).Pattern;
        Assert.Equal(0, pattern.Errors);
        Assert.Empty(ReadBack.Differences(pattern, WrittenInstructions.Write(pattern, Terms.US)));
        Assert.Empty(ReadBack.Differences(pattern, WrittenInstructions.Write(pattern, Terms.UK)));
    }

    /// <summary>The reader would be worth nothing if it read whatever stands there.</summary>
    [Fact]
    public void A_number_that_is_one_off_is_noticed()
    {
        var (pattern, page) = Published("fenland-wrap-waistcoat", Terms.US);
        var from = page.IndexOf("## Instructions", StringComparison.Ordinal);
        var unnoticed = new List<string>();
        var tried = 0;
        foreach (var number in NumberInWork().Matches(page[from..]).Where((_, i) => i % 5 == 0))
        {
            var at = from + number.Index;
            var more = (int.Parse(number.Value, CultureInfo.InvariantCulture) + 1).ToString(CultureInfo.InvariantCulture);
            var changed = page[..at] + more + page[(at + number.Length)..];
            tried++;
            if (ReadBack.Agrees(pattern, changed)) unnoticed.Add(page[(at - 40)..(at + 20)].Replace('\n', ' '));
        }

        Assert.True(tried > 100, $"only {tried} numbers");
        // "As Row 4" is no mistake where Row 4 is as Row 3.
        unnoticed.RemoveAll(where => where.Contains("As Row ", StringComparison.Ordinal));
        Assert.True(unnoticed.Count == 0, $"{unnoticed.Count} of {tried}:\n{string.Join('\n', unnoticed)}");
    }

    private static (Pattern Pattern, string Page) Published(string name, Terms terms)
    {
        var file = new SourceText(name + ".turnrow", File.ReadAllText(Repository.PathOf($"patterns/{name}.turnrow")));
        var pattern = Compilation.Of(file, Repository.Beside).Pattern;
        return (pattern, Publisher.Publish(pattern, new PublishOptions(name, terms, 0)).Single(f => f.Name == name + ".md").Text);
    }

    // A skirt in the loops of a doll, an arm closed flat, a hem on its own loops.
    private const string Doll = """
        pattern "Doll"
        terms US
        sizes S, M
        piece doll
          begin with ring
          round 1: 6 sc in ring
          round 2: (inc) around
          round 3: back-loop sc around
          round 4: (front-loop sc 2, 2 front-loop sc in next) around
          round 5: sc around
          fasten off
        piece skirt picked up around doll round 2: 2 dc in each st
          round 2: dc around
          fasten off
        piece lining picked up around doll round 3, WS facing: 1 sc in each st
          round 2: sc around
          fasten off
        piece arm, make 2
          begin with 9 (10) stitches
          round 1: sc around
          fasten off
        piece flap
          begin with 12 stitches
          row 1 RS: sc across
          row 2: back-loop sc across
          row 3: sc across
          fasten off
        piece hem picked up along flap row 1, WS facing: 1 sc in each st
          row 2: sc across
          fasten off
        seam arm last row with itself, from stitch 4: 1 sc in each st
        seam doll last row with itself, WS together
        weave in ends
        """;

    private const string Net = """
        pattern "Net"
        terms US
        sizes S, M
        piece net
          begin with 21 (25) stitches
          row 1 RS: dc across
          row: dc, (ch 1, skip 1, dc) across
          row: dc in each st and sp
          row: (dc, ch 1, skip 1) until 1 remain, dc
          row: dc, (ch 1, dc in next dc) across
        """;

    // Shells: the rows of a round have the same total, of other kinds.
    private const string Tote = """
        pattern "Tote"
        terms US
        sizes S, M
        piece strip
          begin with 19 (25) stitches
          both edges are side
          row 1 RS: sc across
          row 2: sc, (skip 2, 5 dc in next, skip 2, sc in next) across
          row 3: dc 3, sc, (skip 2, 5 dc in next, skip 2, sc) until 3 remain, dc 3
          repeat rows 2 to 3, 6 (8) more times
          row: sc across
        seam strip right side, first 6 rows, with strip right side, last 6 rows
        seam strip left side, last 5 rows, with strip left side, rows 3 to 7: 1 sc in each row
        weave in ends
        """;

    // Numbers, but not those of a length, which the maker measures and does not count.
    [GeneratedRegex(@"(?<![\d./])\d+(?![\d.]|/| \d+/| (?:cm|in)\b|(?:, [^()]*)?\) (?:cm|in)\b| \([^()]*\) (?:cm|in)\b)")]
    private static partial Regex NumberInWork();
}
