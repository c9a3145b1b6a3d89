using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A kind of place that is not known.</summary>
public static class PlaceUnknown
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "place-unknown",
        "TR0237",
        Severity.Error,
        """
        A stitch can go into a stitch (`in next st`, `in next dc`), into a space (`in next sp`, `in next ch-3 sp`), or into each of them
        (`in each st and sp`). What stands here is none of these. Name the place by what it is made of, not by where it lies.
        """,
        SmallPattern.With("Granny cloth",
            """
            piece cloth
              begin with 21 stitches
              row 1 RS: dc across
              row 2: dc, (ch 1, skip 1, dc) across
              row 3: dc, (dc in next little sp, dc in next dc) across
            """),
        SmallPattern.With("Granny cloth",
            """
            piece cloth
              begin with 21 stitches
              row 1 RS: dc across
              row 2: dc, (ch 1, skip 1, dc) across
              row 3: dc, (dc in next sp, dc in next dc) across
            """));

    internal static Diagnostic At(TextSpan span) =>
        new(Kind, span, "this names no kind of place")
        {
            Help = "places are: st, sp, st and sp, a stitch (dc), or a space by its chains (ch-3 sp)",
        };
}
