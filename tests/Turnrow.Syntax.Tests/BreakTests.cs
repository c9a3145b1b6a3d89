using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;
using Xunit;

namespace Turnrow.Syntax.Tests;

/// <summary>
/// One wrong token costs its own line and nothing else. Every token of a pattern is deleted, doubled and replaced by each kind of
/// token, and every line is cut at every character; all other lines must say what they said before.
/// </summary>
public sealed class BreakTests
{
    public static TheoryData<string> Paths => [.. Patterns.All];

    // How many times as many breaks a thorough run makes of the patterns that are broken in samples.
    private const int ThoroughShare = 10;

    [Theory]
    [MemberData(nameof(Paths))]
    public void A_token_deleted_costs_its_own_line(string path) => Break(path, 3, Breaks.Deleted);

    [Theory]
    [MemberData(nameof(Paths))]
    public void A_token_doubled_costs_its_own_line(string path) => Break(path, 3, Breaks.Doubled);

    [Theory]
    [MemberData(nameof(Paths))]
    public void A_token_replaced_costs_its_own_line(string path) => Break(path, 97, Breaks.Replaced);

    [Theory]
    [MemberData(nameof(Paths))]
    public void A_line_cut_anywhere_costs_itself(string path)
    {
        var before = SyntaxReader.Read(Patterns.Read(path));
        foreach (var cut in Breaks.Cuts(before, Step(path, 31))) Check(before, cut);
    }

    private static void Break(string path, int sample, Func<SyntaxTree, Token, IEnumerable<Edit>> edits)
    {
        var before = SyntaxReader.Read(Patterns.Read(path));
        for (var i = 0; i < before.Tokens.Count; i += Step(path, sample))
        {
            if (before.Tokens[i].Kind == TokenKind.WhiteSpace && !Breaks.Thorough) i++;
            if (i == before.Tokens.Count) return;
            foreach (var edit in edits(before, before.Tokens[i])) Check(before, edit);
        }
    }

    // The waistcoat is always broken everywhere, the others in samples.
    private static int Step(string path, int sample) => path == WaistcoatTests.Path ? 1 : Breaks.Thorough ? Math.Max(1, sample / ThoroughShare) : sample;

    private static void Check(SyntaxTree before, Edit edit)
    {
        var after = SyntaxReader.Read(new SourceText(before.Source.FileName, edit.Text));
        var byStart = after.Lines.ToDictionary(line => line.Span.Start);
        foreach (var line in before.Lines)
        {
            if (edit.Touches(Extent(before.Source, line.Span))) continue;
            var shift = line.Span.Start >= edit.Span.End ? edit.Shift : 0;
            Assert.True(byStart.TryGetValue(line.Span.Start + shift, out var now), Message(before, line, edit, "is lost"));
            Assert.True(IsSame(line, now!, shift), Message(before, line, edit, "has changed"));
        }

        AssertTidy(after);
    }

    private static bool IsSame(LineSyntax before, LineSyntax after, int shift) =>
        before.Keyword == after.Keyword && before.Broken == after.Broken && before.Span.Length == after.Span.Length
        && TreeShape.Same(before.Statement, after.Statement, shift);

    // The whole lines of the file that a statement stands on.
    private static TextSpan Extent(SourceText source, TextSpan span) =>
        source.LineSpan(source.PositionOf(span.Start).Line).To(source.LineSpan(source.PositionOf(span.End).Line));

    private static void AssertTidy(SyntaxTree tree)
    {
        Tiling.AssertTiles(tree);
        var lines = tree.Diagnostics.Select(diagnostic => tree.Source.PositionOf(diagnostic.Span.Start).Line).ToList();
        Assert.Equal(lines.Count, lines.Distinct().Count());
        Assert.Equal(tree.Diagnostics.Count, tree.Lines.Count(line => line.Broken));
    }

    private static string Message(SyntaxTree before, LineSyntax line, Edit edit, string what) =>
        $"`{before.Source.ToString(line.Span)}` {what} when `{before.Source.ToString(edit.Span)}` at {before.Source.PositionOf(edit.Span.Start)} becomes `{edit.NewText}`";
}
