using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>More rows since a mark than asked for.</summary>
public static class RowsPassed
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "rows-passed",
        "TR0326",
        Severity.Error,
        """
        `straight 6 rows from armhole` works until there are 6 rows since the marked row, that row included, and there are more than 6
        already. Give a greater number, or work fewer rows in between. If you meant 6 rows more from here, take `from` and the mark's name
        out.
        """,
        SmallPattern.With("Vest",
            """
            piece back
              begin with 30 stitches
              row 1 RS: dc across
              mark next row armhole
              straight 8 rows
              straight 6 rows from armhole
            """),
        SmallPattern.With("Vest",
            """
            piece back
              begin with 30 stitches
              row 1 RS: dc across
              mark next row armhole
              straight 8 rows
              straight 16 rows from armhole
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, Func<int, int> over, Func<int, int> there) =>
        new(Kind, span, Invariant($"there are {Counted.Rows(there(sizes[0]))} from the mark already{context.Findings.InSize(sizes[0])}, {over(sizes[0])} too many"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = sizes.Length > 1 ? ["rows from the mark: " + context.Findings.Each(sizes, i => Invariant($"{there(i)}"))] : [],
            Help = "the number counts from the marked row on; for so many more rows from here take `from` and the name out",
        };
}
