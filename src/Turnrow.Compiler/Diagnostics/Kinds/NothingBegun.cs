using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Rows in a piece that has not begun.</summary>
public static class NothingBegun
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "nothing-begun",
        "TR0315",
        Severity.Error,
        """
        A piece needs something to work its first row into. Begin it with `begin with 20 stitches`, and the chains are found for you, or
        with `chain 22` if you count in chains. A piece may also go on from another (`piece strap from bib: 6 stitches at right edge`), be
        picked up along an edge, or be the mirror of one.
        """,
        SmallPattern.With("Coaster",
            """
            piece coaster
              row 1 RS: dc across
            """),
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(TextSpan span, string piece) =>
        new(Kind, span, $"{piece} has not begun, so there is nothing to work into")
        {
            Help = "begin it above: `begin with 40 stitches`, or `chain 42`",
        };
}
