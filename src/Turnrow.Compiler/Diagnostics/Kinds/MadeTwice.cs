using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A measurement of the sample that is given twice.</summary>
public static class MadeTwice
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "made-twice",
        "TR0422",
        Severity.Error,
        """
        A piece of the finished sample has one width and one height in a size, and the `made` lines give one of them again, or the same piece
        in the same size on a second line. Which of the two is right can't be told; the first is used for now. Write both lengths of a piece
        on one line, and take the other out.

        Tip: a second sample of the same size, made after a change of hook, takes the place of the first.
        """,
        SmallPattern.With("Scarf",
            """
            sizes Short, Long
            gauge dc: 18 stitches and 9 rows to 10 cm

            piece scarf
              begin with 36 stitches
              row 1 RS: dc across
              straight to 120 (160) cm

            made Short: scarf 20 cm wide
            made Short: scarf 120 cm high
            """),
        SmallPattern.With("Scarf",
            """
            sizes Short, Long
            gauge dc: 18 stitches and 9 rows to 10 cm

            piece scarf
              begin with 36 stitches
              row 1 RS: dc across
              straight to 120 (160) cm

            made Short: scarf 20 cm wide, 120 cm high
            """));

    internal static Diagnostic At(TextSpan span, MadeStatement line, TextSpan earlier) =>
        Of(span, $"what {line.Piece.Text} measures in {line.Size.Text} is given a second time", earlier);

    internal static Diagnostic At(TextSpan span, MadePartSyntax part, TextSpan earlier) =>
        Of(span, $"how {(part.Wide ? "wide" : "high")} the piece is, is given a second time", earlier);

    private static Diagnostic Of(TextSpan span, string message, TextSpan earlier) =>
        new(Kind, span, message)
        {
            Help = "write one line for a piece and size, with a width and a height; take the other out",
            Related = [new Related(earlier, "it is given here")],
        };
}
