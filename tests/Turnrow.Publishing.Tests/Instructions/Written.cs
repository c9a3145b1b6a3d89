using Turnrow.Compiler;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Instructions;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Publishing.Tests.Instructions;

/// <summary>Small patterns, compiled and written.</summary>
internal static class Written
{
    /// <summary>The instructions of a pattern that has no errors.</summary>
    public static string Of(string notation, Terms terms = Terms.US)
    {
        var compilation = Compilation.Of(new SourceText("test.turnrow", notation));
        Assert.Empty(compilation.Diagnostics.Where(d => d.Kind.Severity == Severity.Error).Select(d => $"{compilation.Tree.Source.PositionOf(d.Span.Start).Line}: {d.Message}"));
        return WrittenInstructions.Write(compilation.Pattern, terms);
    }

    /// <summary>The paragraphs of one piece, without the bold and italic marks.</summary>
    public static string Piece(string notation, Terms terms = Terms.US, string piece = "Panel")
    {
        var text = Of(notation, terms);
        var from = text.IndexOf($"### {piece}\n", StringComparison.Ordinal);
        Assert.True(from >= 0, text);
        var rest = text[(from + piece.Length + 6)..];
        var to = rest.IndexOf("\n#", StringComparison.Ordinal);
        return (to < 0 ? rest : rest[..to]).Replace("*", string.Empty, StringComparison.Ordinal).Replace("\n\n", "\n", StringComparison.Ordinal).Trim();
    }
}
