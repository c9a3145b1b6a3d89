using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A list in sizes that once goes the other way.</summary>
public static class SizesDip
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "sizes-dip",
        "TR0379",
        Severity.Warning,
        """
        From size to size the numbers of this list grow, and at one place they go down (or they go down, and once up). Mostly two of them were
        changed round or a digit is wrong, and that size would not fit. Look at the number that is marked and at the one before it. If it is
        meant, because a number had to come out even, say, leave it so.
        """,
        SmallPattern.With("Hat",
            """
            sizes Baby, Child, Teen, Adult

            piece brim
              begin with 60 (72, 94, 90) stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Hat",
            """
            sizes Baby, Child, Teen, Adult

            piece brim
              begin with 60 (72, 84, 90) stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(Findings findings, TextSpan span, int size, bool grows) =>
        new(Kind, span, $"the list {(grows ? "grows" : "falls")} from size to size, and from {findings.SizeNames[size - 1]} to {findings.SizeNames[size]} it goes {(grows ? "down" : "up")}")
        {
            Help = "look whether two numbers are changed round or a digit is wrong; if it is meant, leave it so",
        };
}
