using Turnrow.Compiler.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A part that is wider than the row it is part of.</summary>
public static class PartTooWide
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "part-too-wide",
        "TR0341",
        Severity.Error,
        """
        A part takes some of the stitches of another piece's last row, and it wants more than that row has. The row may have become
        narrower than you think, by stitches left or decreased before. Take fewer for this part; if it happens in some sizes only, give
        each size its own number: `5 (6, 8) stitches at right edge`.
        """,
        SmallPattern.With("Bib",
            """
            piece bib
              begin with 20 stitches
              row 1 RS: dc across

            piece strap from bib: 25 stitches at right edge
              row 1: dc across
            """),
        SmallPattern.With("Bib",
            """
            piece bib
              begin with 20 stitches
              row 1 RS: dc across

            piece strap from bib: 5 stitches at right edge
              row 1: dc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, PieceState from, int[] sizes, int?[] counts, Func<int, int> there) =>
        new(Kind, span, Invariant($"the last row of {from.Name} has only {Counted.Stitches(there(sizes[0]))}{context.Findings.InSize(sizes[0])}, not {counts[sizes[0]]}"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = sizes.Length > 1 ? [context.Findings.Each(sizes, i => Invariant($"{counts[i]} of {there(i)}"))] : [],
            Help = "take fewer stitches for this part",
        };
}
