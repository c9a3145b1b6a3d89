using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;
using Xunit;

namespace Turnrow.Syntax.Tests;

/// <summary>Where lines begin and end, and what is kept of broken ones.</summary>
public sealed class LineTests
{
    [Theory]
    [InlineData("row 1: dc 5,\ndc 6", 1)]
    [InlineData("row 1: (dc 5\n, dc 6\n) 3 times", 1)]
    [InlineData("row 1: dc 5,\n# a note\ndc 6", 1)]
    [InlineData("row 1: dc 5,  # a note\ndc 6", 1)]
    [InlineData("row 1: dc 5,\n\ndc 6", 2)]
    [InlineData("row 1: dc 5,\n \t \ndc 6", 2)]
    [InlineData("row 1: dc 5,\nrow 2: dc 6", 2)]
    [InlineData("row 1: (dc 5\nfasten off", 2)]
    [InlineData("row 1: dc 5,\n> prose", 2)]
    [InlineData("row 1: dc 5,\nleave 5", 1)]
    [InlineData("row 1: dc 5,\nleave 5, dc 3", 1)]
    [InlineData("row 1: dc 5,\nleave 5 at neck", 2)]
    [InlineData("straight 5 rows,\nleave 5", 2)]
    [InlineData("shape 5 rows: inc 1 at neck every row;\ndec 1 at armhole every row", 1)]
    [InlineData("seam back left with front left,\nrows 5 to 9", 1)]
    [InlineData("seam back left with front left,\nrows 5 to 9: dc across", 2)]
    [InlineData("sizes S,\nM", 1)]
    [InlineData("row 1: dc\n, dc", 2)]
    public void A_line_goes_on_only_where_it_may(string text, int lines) => Assert.Equal(lines, Read(text).Lines.Count);

    [Theory]
    [InlineData("piece back from from", "Piece(Name: back)")]
    [InlineData("piece back & = 77", "Piece(Name: back, Claim: Claim(Parts: [ClaimPart(Count: Number(Number: 77))]))")]
    [InlineData("piece (back", "-")]
    [InlineData("terms US UK", "Terms(Terms: US)")]
    [InlineData("sizes XS, 6-9 months, \"a b\", L", "Sizes(Names: [XS; 6-9 months; a b; L])")]
    [InlineData("sizes", "Sizes()")]
    [InlineData("count hem is", "Unfinished(Names: [hem])")]
    [InlineData("measure bust 5 cm", "Unfinished(Names: [bust])")]
    [InlineData("mark next row armhole 5", "Unfinished(Names: [armhole])")]
    [InlineData("from here both edges are armhole neck", "Unfinished(Names: [armhole])")]
    [InlineData("divide: 22 for left, 5 5 for back", "Unfinished(Names: [left; back])")]
    [InlineData("yarn main main", "Unfinished(Names: [main])")]
    [InlineData("row 5: dc dc 5 5 = 61 sts", "Unfinished(Claim: Claim(Parts: [ClaimPart(Count: Number(Number: 61), Kind: sts)]))")]
    [InlineData("row 5: dc dc 5 5 = 61 sts sts sts,", "-")]
    [InlineData("row 5: dc dc 5 5 = 6-1", "-")]
    [InlineData("row 5: dc 5 5", "-")]
    public void What_can_be_made_out_of_a_broken_line_is_kept(string text, string kept)
    {
        var line = Assert.Single(Read(text).Lines);
        Assert.True(line.Broken);
        Assert.Equal(kept, TreeText.Of(line.Statement));
    }

    [Theory]
    [InlineData("Row 1: dc across", "row")]
    [InlineData("BOTH edges are neck", null)]
    [InlineData("  from here right edge is neck", "from")]
    [InlineData("> prose", null)]
    [InlineData("raw 1: dc", null)]
    [InlineData("rows", "rows")]
    public void A_line_knows_the_word_that_it_begins_with(string text, string? keyword) =>
        Assert.Equal(keyword, Assert.Single(Read(text).Lines).Keyword);

    [Fact]
    public void Tokens_are_the_text_whatever_is_done_to_it()
    {
        var text = File.ReadAllText(Repository.PathOf(WaistcoatTests.Path));
        var random = new Random(20260);
        const string letters = "abx019 \t\n\r,;:()=+-/\"“>#&½я漢\0\uD83E\uDDF6\uFEFF";
        for (var i = 0; i < 2000; i++)
        {
            var start = random.Next(text.Length);
            var length = random.Next(Math.Min(20, text.Length - start));
            var put = new string([.. Enumerable.Range(0, random.Next(8)).Select(_ => letters[random.Next(letters.Length)])]);
            text = Edit.Of(text, new TextSpan(start, length), put).Text;
            Tiling.AssertTiles(Read(text));
            if (text.Length < 200) text = File.ReadAllText(Repository.PathOf(WaistcoatTests.Path));
        }
    }

    private static SyntaxTree Read(string text) => SyntaxReader.Read(new SourceText("lines", text));
}
