using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A stitch that joins, in a line where nothing can be joined, or to what can't be joined to.</summary>
public static class JoinHere
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "join-here",
        "TR0428",
        Severity.Error,
        """
        `join to front right edge` puts a stitch of a row into another piece that is finished: into its row-ends, its last row, its foundation, or the
        side of a motif. It stands in the rows of a piece. A stitch pattern is worked in many pieces and knows of no other one, and a round
        that goes into a ring has nothing beside it yet. A piece is not joined to itself as it is worked; that is a seam.
        """,
        SmallPattern.With("Cuff",
            """
            piece band
              begin with 5 stitches
              row 1 RS: sc across, join to band right edge
              row 2: sc across
            """),
        SmallPattern.With("Cuff",
            """
            piece back
              begin with 12 stitches
              row 1 RS: sc across
            piece band
              begin with 5 stitches
              row 1 RS: sc across, join to back right edge
              row 2: sc across
            """));

    internal static Diagnostic At(TextSpan span) => new(Kind, span, "nothing can be joined here")
    {
        Help = "`join` stands in a row of a piece",
    };

    internal static Diagnostic Itself(TextSpan span, string piece) => new(Kind, span, $"{piece} can't be joined to itself while it is worked")
    {
        Help = "join it with a seam when it is done",
    };

    internal static Diagnostic Edge(TextSpan span) => new(Kind, span, "along this edge there is nothing that a piece could be joined to as it is worked")
    {
        Help = "name row-ends, a last row, a foundation or the side of a motif; pick up stitches along what was held",
    };

    internal static Diagnostic Place(TextSpan span) => new(Kind, span, "a piece is joined place by place, in the order in which they lie along the edge")
    {
        Help = "say `in next`, `in next sp`, `in corner` or `in next corner`, or nothing for whatever comes next",
    };
}
