using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>What is worked in each stitch, or in each space beside it, does not go into one place.</summary>
public static class EachOther
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "each-other",
        "TR0570",
        Severity.Error,
        """
        `sc in each st and 2 sc in each sp` goes to the end of the row, with one stitch for the stitches and one for the spaces. Each of the two is
        one stitch that goes into one place, several of it if you like: no bracket, no chain, and nothing that is worked over several places or stands on the stitch
        before it. What is more than that is said place by place: `((sc, hdc) in next, 2 sc in next sp) across`.
        """,
        SmallPattern.With("Mesh cloth",
            """
            piece cloth
              begin with 21 stitches
              row 1 RS: sc across
              row 2: dc, (ch 1, skip 1, dc) across
              row 3: (sc, hdc) in each st and 2 sc in each sp
            """),
        SmallPattern.With("Mesh cloth",
            """
            piece cloth
              begin with 21 stitches
              row 1 RS: sc across
              row 2: dc, (ch 1, skip 1, dc) across
              row 3: ((sc, hdc) in next, 2 sc in next sp) until 1 remain, sc
            """));

    internal static Diagnostic Bracket(TextSpan span) =>
        new(Kind, span, "a bracket can't stand in front of `in each st and … in each sp`")
        {
            Help = "say it place by place: `((sc, hdc) in next, 2 sc in next sp) across`",
        };

    internal static Diagnostic Stitch(TextSpan span, string word) =>
        new(Kind, span, $"`{word}` can't be worked in each place of a kind: it is no stitch that goes into one place")
        {
            Help = "one stitch for the stitches and one for the spaces: `sc in each st and 2 sc in each sp`",
        };
}
