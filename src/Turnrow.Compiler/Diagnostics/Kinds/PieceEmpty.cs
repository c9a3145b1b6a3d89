using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A piece without a row.</summary>
public static class PieceEmpty
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "piece-empty",
        "TR0329",
        Severity.Error,
        """
        A piece is opened, but no row of it is written: the maker would find a heading and nothing below it. Write its rows, or take the `piece`
        line out.
        """,
        SmallPattern.With("Purse",
            """
            piece flap
              begin with 20 stitches
            """),
        SmallPattern.With("Purse",
            """
            piece flap
              begin with 20 stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(TextSpan span, string piece) =>
        new(Kind, span, $"{piece} has no rows")
        {
            Help = "write its first row below: row 1 RS: dc across",
        };
}
