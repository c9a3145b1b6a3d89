using System.Text;
using Turnrow.Syntax.Diagnostics.Kinds;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;
using Xunit;

namespace Turnrow.Syntax.Tests;

/// <summary>Bytes, lines and positions: every kind of line end, marks and encodings as they come.</summary>
public sealed class SourceTextTests
{
    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    [InlineData("\r")]
    public void Every_line_end_gives_the_same_statements(string end)
    {
        var text = File.ReadAllText(Repository.PathOf(WaistcoatTests.Path));
        var before = SyntaxReader.Read(new SourceText("a", text));
        var after = SyntaxReader.Read(new SourceText("a", text.Replace("\n", end, StringComparison.Ordinal)));
        Tiling.AssertTiles(after);
        Assert.Empty(after.Diagnostics);
        Assert.Equal(before.Lines.Select(line => TreeText.Of(line.Statement)), after.Lines.Select(line => TreeText.Of(line.Statement)));
    }

    [Fact]
    public void A_byte_order_mark_is_a_token_and_takes_no_column()
    {
        var tree = SyntaxReader.Read(SourceText.FromBytes("a", [0xEF, 0xBB, 0xBF, .. "piece back"u8]));
        Assert.Equal(new Token(TokenKind.ByteOrderMark, new TextSpan(0, 1)), tree.Tokens[0]);
        Assert.Empty(tree.Diagnostics);
        Assert.Equal((1, 1), tree.Source.PositionOf(Assert.Single(tree.Lines).Span.Start));
    }

    [Fact]
    public void Bytes_that_are_no_text_are_reported_once_a_line()
    {
        var bytes = Encoding.Latin1.GetBytes("# \u00E9t\u00E9\npiece b\u00EAte\nfasten off\n> na\u00EFve \u00E9\n");
        var tree = SyntaxReader.Read(SourceText.FromBytes("a", bytes));
        Assert.Equal([1, 2, 4], tree.Diagnostics.Select(found => tree.Source.PositionOf(found.Span.Start).Line));
        Assert.All(tree.Diagnostics, found => Assert.Equal(WrongBytes.Kind, found.Kind));
        Assert.Equal([true, false, false], tree.Lines.Select(line => line.Broken));
        Tiling.AssertTiles(tree);
    }

    [Theory]
    [InlineData(new byte[] { 0xC3 })]
    [InlineData(new byte[] { 0xED, 0xA0, 0x80 })]
    [InlineData(new byte[] { 0xF8, 0x88 })]
    [InlineData(new byte[] { 0xC0, 0xAF })]
    public void Broken_bytes_never_throw(byte[] bytes)
    {
        var source = SourceText.FromBytes("a", [.. "# "u8, .. bytes, .. "\n"u8]);
        Assert.Single(source.WrongBytes);
        Assert.EndsWith("\uFFFD\n", source.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Letters_of_any_alphabet_and_pictures_are_read_as_they_are()
    {
        const string text = "piece Rücken-漢字 # 🧶\n> 🧶 ß\npattern \"🧶 漢\"\n";
        var tree = SyntaxReader.Read(SourceText.FromBytes("a", Encoding.UTF8.GetBytes(text)));
        Assert.Equal(text, tree.Source.Text);
        Assert.Empty(tree.Diagnostics);
        Assert.Equal("Rücken-漢字", Assert.IsType<PieceStatement>(tree.Lines[0].Statement).Name.Text);
        Assert.Equal("🧶 漢", Assert.IsType<PatternStatement>(tree.Lines[2].Statement).Title.Text);
    }

    [Fact]
    public void No_break_spaces_form_feeds_and_curly_quotes_are_accepted()
    {
        var tree = SyntaxReader.Read(new SourceText("a", "row\u00A01:\fdc\u202Facross\n\f\npattern \u201Ca\u201D\npattern \u201Eb\u201C\n"));
        Assert.Empty(tree.Diagnostics);
        Assert.Equal(3, tree.Lines.Count);
    }

    [Fact]
    public void Positions_count_lines_and_units_from_one()
    {
        var source = new SourceText("a", "ab\r\n\rc\n");
        Assert.Equal(4, source.LineCount);
        Assert.Equal([(1, 1), (1, 3), (2, 1), (3, 1), (4, 1)], new[] { 0, 2, 4, 5, 7 }.Select(source.PositionOf));
        Assert.Equal(["ab", "", "c", ""], Enumerable.Range(1, 4).Select(line => source.ToString(source.LineSpan(line))));
    }
}
