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
    private static readonly bool Thorough = Environment.GetEnvironmentVariable("TURNROW_THOROUGH") == "1";

    /// <summary>A token of each kind, slips included.</summary>
    private static readonly string[] Kinds =
    [
        "word", "row", "piece", "leave", "at", "edge", "RS", "cm", "7", "1/2", "5th", "1.2.3", "\"text\"", ",", ";", ":", "(", ")", "=",
        "+", "-", "x", "/", "> prose", "# comment", "&", "\"open", "12,5", "\n", "\n\n", "\u0000", "\U0001F9F6",
    ];

    public static TheoryData<string> Paths => [.. Patterns.All];

    [Theory]
    [MemberData(nameof(Paths))]
    public void A_token_deleted_costs_its_own_line(string path) => Break(path, 3, (text, span) => [Edit.Of(text, span, "")]);

    [Theory]
    [MemberData(nameof(Paths))]
    public void A_token_doubled_costs_its_own_line(string path) => Break(path, 3, (text, span) =>
    [
        Edit.Of(text, new TextSpan(span.End, 0), text.Substring(span.Start, span.Length)),
        Edit.Of(text, new TextSpan(span.End, 0), $" {text.AsSpan(span.Start, span.Length)}"),
    ]);

    [Theory]
    [MemberData(nameof(Paths))]
    public void A_token_replaced_costs_its_own_line(string path) =>
        Break(path, 97, (text, span) => Kinds.Select(kind => Edit.Of(text, span, kind)));

    [Theory]
    [MemberData(nameof(Paths))]
    public void A_line_cut_anywhere_costs_itself(string path)
    {
        var before = SyntaxReader.Read(Patterns.Read(path));
        var source = before.Source;
        for (var line = 1; line <= source.LineCount; line++)
        {
            var span = source.LineSpan(line);
            for (var cut = span.Start; cut < span.End; cut += Step(path, 31))
                Check(before, Edit.Of(source.Text, TextSpan.FromBounds(cut, span.End), ""));
        }
    }

    private static void Break(string path, int sample, Func<string, TextSpan, IEnumerable<Edit>> edits)
    {
        var before = SyntaxReader.Read(Patterns.Read(path));
        for (var i = 0; i < before.Tokens.Count; i += Step(path, sample))
        {
            if (before.Tokens[i].Kind == TokenKind.WhiteSpace && !Thorough) i++;
            if (i == before.Tokens.Count) return;
            foreach (var edit in edits(before.Source.Text, before.Tokens[i].Span)) Check(before, edit);
        }
    }

    // The waistcoat is always broken everywhere, the others in samples.
    private static int Step(string path, int sample) => Thorough || path == WaistcoatTests.Path ? 1 : sample;

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
