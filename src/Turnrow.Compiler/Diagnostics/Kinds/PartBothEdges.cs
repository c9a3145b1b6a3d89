using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A part that would begin at both edges.</summary>
public static class PartBothEdges
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "part-both-edges",
        "TR0340",
        Severity.Error,
        """
        A part of a row goes on by itself from one edge, as the strap of a bib does. Two parts at both edges are two pieces, each with its
        own yarn. Write one of them at `right edge` or `left edge`; the other one can be its mirror, `piece left-strap is right-strap
        mirrored`.
        """,
        SmallPattern.With("Bib",
            """
            piece bib
              begin with 20 stitches
              row 1 RS: dc across

            piece right-strap from bib: 5 stitches at both edges
              row 1: dc across
            """),
        SmallPattern.With("Bib",
            """
            piece bib
              begin with 20 stitches
              row 1 RS: dc across

            piece right-strap from bib: 5 stitches at right edge
              row 1: dc across

            piece left-strap is right-strap mirrored
            """));

    internal static Diagnostic At(TextSpan span) =>
        new(Kind, span, "a part begins at one edge; at both there are two parts")
        {
            Help = "say `right edge` or `left edge`; the other part is a piece of its own, or this one `mirrored`",
            Mends = [new Mend("right edge", span, "right edge"), new Mend("left edge", span, "left edge")],
        };
}
