using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>More rows taken of an edge than it has.</summary>
public static class SelectionRows
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "selection-rows",
        "TR0348",
        Severity.Error,
        """
        Some rows of an edge are chosen here, and the edge does not have so many, or the rows named lie outside it. An edge that changes
        its name further up ends there: an armhole of 18 rows has no last 30. Take fewer rows, or leave the choice out for the whole edge.
        """,
        SmallPattern.With("Mitten",
            """
            piece cuff
              begin with 12 stitches
              row 1 RS: dc across
              straight 9 rows

            piece border picked up along cuff right edge, last 12 rows: 2 sc in each row
              row 2: sc across
            """),
        SmallPattern.With("Mitten",
            """
            piece cuff
              begin with 12 stitches
              row 1 RS: dc across
              straight 9 rows

            piece border picked up along cuff right edge, last 6 rows: 2 sc in each row
              row 2: sc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, Func<int, int> there, string piece) =>
        new(Kind, span, Invariant($"this edge of {piece} does not have all of these rows{context.Findings.InSize(sizes[0])}: it has {there(sizes[0])}"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = sizes.Length > 1 ? ["rows: " + context.Findings.Each(sizes, i => Invariant($"{there(i)}"))] : [],
            Help = "take fewer rows, or leave the choice out for the whole edge",
        };
}
