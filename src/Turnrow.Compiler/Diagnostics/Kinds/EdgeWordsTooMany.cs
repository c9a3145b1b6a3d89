using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>More words than an edge has.</summary>
public static class EdgeWordsTooMany
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "edge-words",
        "TR0346",
        Severity.Error,
        """
        An edge of a piece is said in up to three words: the piece, `right` or `left`, and the name of the edge. Here a word is too many.
        Mostly a name of two words was written without its hyphen: `side-seam` is one name, `side seam` would be two.
        """,
        SmallPattern.With("Cushion",
            """
            piece front
              begin with 12 stitches
              right edge is side-seam
              row 1 RS: dc across
              straight 9 rows

            piece back
              begin with 12 stitches
              row 1 RS: dc across
              straight 9 rows

            seam front right side seam with back left edge: 2 sc in each row
            """),
        SmallPattern.With("Cushion",
            """
            piece front
              begin with 12 stitches
              right edge is side-seam
              row 1 RS: dc across
              straight 9 rows

            piece back
              begin with 12 stitches
              row 1 RS: dc across
              straight 9 rows

            seam front right side-seam with back left edge: 2 sc in each row
            """));

    internal static Diagnostic At(IReadOnlyList<NameSyntax> words, bool joinedIsKnown)
    {
        var joined = string.Join('-', words.Select(w => w.Text));
        return new(Kind, words[1].Span.To(words[^1].Span), $"after `{words[0].Text}` nothing more can name an edge")
        {
            Help = joinedIsKnown ? $"did you mean `{joined}`?" : "an edge is the piece, `right` or `left` if need be, and one name; a name of two words has a hyphen",
            Mends = joinedIsKnown ? [new Mend($"write {joined}", words[0].Span.To(words[^1].Span), joined)] : [],
        };
    }
}
