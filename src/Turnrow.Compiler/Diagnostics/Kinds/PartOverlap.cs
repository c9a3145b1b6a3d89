using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A part that takes stitches another has taken.</summary>
public static class PartOverlap
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "part-overlap",
        "TR0342",
        Severity.Error,
        """
        Two parts want the same stitches of one row, and a stitch can be worked on only once. Together they are wider than the row, or
        both are taken at the same edge. Take fewer stitches for one of them, or take it at the other edge. What no part takes in the
        middle stays open, as the neck between two straps.
        """,
        SmallPattern.With("Bib",
            """
            piece bib
              begin with 20 stitches
              row 1 RS: dc across

            piece right-strap from bib: 12 stitches at right edge
              row 1: dc across

            piece left-strap from bib: 12 stitches at left edge
              row 1: dc across
            """),
        SmallPattern.With("Bib",
            """
            piece bib
              begin with 20 stitches
              row 1 RS: dc across

            piece right-strap from bib: 5 stitches at right edge
              row 1: dc across

            piece left-strap from bib: 5 stitches at left edge
              row 1: dc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string other, Func<int, int> taken, int?[] counts, Func<int, int> there, string? another = null) =>
        new(Kind, span, Invariant($"{taken(sizes[0])} of these {Counted.Stitches(counts[sizes[0]]!.Value)} {(taken(sizes[0]) == 1 ? "belongs" : "belong")} to {other} already{context.Findings.InSize(sizes[0])}: the row has only {there(sizes[0])}"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = sizes.Length > 1 ? ["taken already: " + context.Findings.Each(sizes, i => Invariant($"{taken(i)}"))] : [],
            Help = another is not null ? $"write `{another}`, which nothing goes on from yet"
                : "take fewer stitches for one of the two, or take this part at the other edge",
        };

    internal static Diagnostic InOneRow(Context context, TextSpan span, int[] sizes, string piece, string? another) =>
        new(Kind, span, $"this row goes over {piece} already{context.Findings.InSizes(sizes)}, and a stitch can be worked on only once")
        {
            Sizes = context.Findings.Names(sizes),
            Help = another is not null ? $"write `{another}` for one of the two" : "take it out, or write the piece that was meant",
            Mends = another is not null ? [new Mend($"write {another}", span, another)] : [],
        };

    internal static Diagnostic Mirrored(Context context, TextSpan span, int[] sizes, string original) =>
        new(Kind, span, $"the mirror of {original} would begin on stitches that a part has taken already{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = $"{original} and its mirror have to lie side by side in the row: take fewer stitches for {original}",
        };
}
