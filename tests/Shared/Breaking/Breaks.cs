using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Tests;

/// <summary>All the ways in which one slip can break a text: a token deleted, doubled or replaced by each kind, a line cut anywhere.</summary>
internal static class Breaks
{
    /// <summary>A token of each kind, slips included.</summary>
    private static readonly string[] Kinds =
    [
        "word", "row", "piece", "leave", "at", "edge", "RS", "cm", "7", "1/2", "5th", "1.2.3", "\"text\"", ",", ";", ":", "(", ")", "=",
        "+", "-", "x", "/", "> prose", "# comment", "&", "\"open", "12,5", "\n", "\n\n", "\u0000", "\U0001F9F6",
    ];

    /// <summary>True where all of it is wanted, and not only a sample.</summary>
    public static bool Thorough { get; } = Environment.GetEnvironmentVariable("TURNROW_THOROUGH") == "1";

    /// <summary>Every break of a text.</summary>
    public static IEnumerable<Edit> Of(SyntaxTree tree) =>
        tree.Tokens.SelectMany(token => Deleted(tree, token).Concat(Doubled(tree, token)).Concat(Replaced(tree, token))).Concat(Cuts(tree, 1));

    public static IEnumerable<Edit> Deleted(SyntaxTree tree, Token token) => [Edit.Of(tree.Source.Text, token.Span, "")];

    public static IEnumerable<Edit> Doubled(SyntaxTree tree, Token token)
    {
        var (text, after) = (tree.Source.ToString(token.Span), new TextSpan(token.Span.End, 0));
        return [Edit.Of(tree.Source.Text, after, text), Edit.Of(tree.Source.Text, after, " " + text)];
    }

    public static IEnumerable<Edit> Replaced(SyntaxTree tree, Token token) =>
        Kinds.Select(kind => Edit.Of(tree.Source.Text, token.Span, kind));

    /// <summary>Every line without its end, from each character on, or from each so many.</summary>
    public static IEnumerable<Edit> Cuts(SyntaxTree tree, int step)
    {
        for (var line = 1; line <= tree.Source.LineCount; line++)
        {
            var span = tree.Source.LineSpan(line);
            for (var cut = span.Start; cut < span.End; cut += step) yield return Edit.Of(tree.Source.Text, TextSpan.FromBounds(cut, span.End), "");
        }
    }
}
