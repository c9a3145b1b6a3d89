using Turnrow.Fabric.Patterns;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Shaping in a stitch pattern that has no rule for it.</summary>
public static class PatternShape
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "pattern-shape",
        "TR0487",
        Severity.Error,
        """
        `shape` goes on plainly, and a stitch pattern comes out over whole repeats only: one stitch more or less at an edge leaves a part of a
        repeat, and what that part is to be is yours to say. Work a plain row and shape in plain rows, or shape before the pattern begins.
        """,
        SmallPattern.With("Scarf",
            """
            stitch pattern moss over multiple of 2
              row 1: sc, dc in next, (sc, dc) across

            piece scarf
              begin with 24 stitches
              straight 4 rows, in moss
              shape 20 rows: dec 1 at both edges every 4 rows
            """),
        SmallPattern.With("Scarf",
            """
            stitch pattern moss over multiple of 2
              row 1: sc, dc in next, (sc, dc) across

            piece scarf
              begin with 24 stitches
              straight 4 rows, in moss
              row: sc across
              shape 20 rows: dec 1 at both edges every 4 rows
            """));

    internal static Diagnostic NoRule(TextSpan span, StitchPattern pattern) =>
        new(Kind, span, $"the last row is of {pattern.Name}, and what stands beside its whole repeats is not said")
        {
            Help = "work a plain row first, and shape in plain rows",
        };
}
