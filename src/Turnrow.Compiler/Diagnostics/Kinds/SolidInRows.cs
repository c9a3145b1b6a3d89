using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A body that is to be worked in rows.</summary>
public static class SolidInRows
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "solid-in-rows",
        "TR0472",
        Severity.Error,
        """
        A body is worked round and round, and this piece is worked back and forth in rows. Write its first round before it: the body goes on from
        there. The half of a body in rows is shaped with `shape` lines.
        """,
        SmallPattern.With("Ball",
            """
            gauge sc: 20 stitches and 20 rows to 10 cm

            piece ball
              begin with 6 stitches
              row 1 RS: sc across
              solid sphere 10 cm across
            """),
        SmallPattern.With("Ball",
            """
            gauge sc: 20 stitches and 20 rows to 10 cm

            piece ball
              begin with 6 stitches
              round 1: sc around
              solid sphere 10 cm across
            """));

    internal static Diagnostic At(TextSpan span, string piece) =>
        new(Kind, span, $"{piece} is worked in rows, and a body in rounds")
        {
            Help = "write its first round before this line (`round 1: 6 sc in ring`)",
        };
}
