using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A mark that is not there.</summary>
public static class MarkUnknown
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "mark-unknown",
        "TR0323",
        Severity.Error,
        """
        Rows are to be counted or measured from a marked row, and no row of this piece is marked with that name. A mark is set where it is
        to be, above this line and in the same piece: `mark next row armhole`. On the hook it is the stitch marker that the maker puts
        there.
        """,
        SmallPattern.With("Vest",
            """
            piece back
              begin with 30 stitches
              row 1 RS: dc across
              mark next row armhole
              straight 6 rows from armhol
            """),
        SmallPattern.With("Vest",
            """
            piece back
              begin with 30 stitches
              row 1 RS: dc across
              mark next row armhole
              straight 6 rows from armhole
            """));

    internal static Diagnostic InSizes(Context context, TextSpan span, string name, int[] sizes) =>
        new(Kind, span, $"no row before this is marked `{name}`{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "mark one in those sizes too, or say the line for the sizes that have it (`for L to 3X: …`)",
        };

    internal static Diagnostic At(TextSpan span, string name, IEnumerable<string> known)
    {
        var near = Spelling.Nearest(name, known);
        return new(Kind, span, $"no row before this is marked `{name}`")
        {
            Help = near is null ? $"mark the row where it comes: `mark next row {name}`" : $"did you mean `{near}`?",
            Mends = near is null ? [] : [new Mend($"write {near}", span, near)],
        };
    }
}
