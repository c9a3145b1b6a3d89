using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A bracket without times and without a place.</summary>
public static class GroupNeither
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "bracket-alone",
        "TR0231",
        Severity.Error,
        """
        A bracket holds several stitches together because something is to be done with all of them: they are repeated, or they go into one
        place. Say which, right behind it: `(dc 4, inc) 4 times`, `(dc 4, inc) across`, `(2 dc, ch 1, 2 dc) in next sp`. If neither is
        meant, the bracket is not needed at all.
        """,
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2: (dc 4, inc)
            """),
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2: (dc 4, inc) 4 times
            """));

    internal static Diagnostic At(TextSpan span) =>
        new(Kind, span, "this bracket says neither how often nor where")
        {
            Help = "write how often behind it (`3 times`, `across`, `until 2 remain`), or where it goes (`in next st`)",
        };
}
