using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A number that is too large.</summary>
public static class TooLarge
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "too-large",
        "TR0214",
        Severity.Error,
        """
        A count is larger than any garment, blanket or tent needs. Mostly a digit was typed twice, or a length was multiplied where it was
        to be divided. Correct the number. If it comes out of arithmetic, look at each number that it is made of.
        """,
        SmallPattern.With("Blanket",
            """
            piece blanket
              begin with 20000000 stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Blanket",
            """
            piece blanket
              begin with 200 stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(TextSpan span, Findings findings, IReadOnlyList<int> sizes, int most) =>
        new(Kind, span, Invariant($"this is more than {most:N0}, the most that can stand here{findings.InSizes(sizes)}"))
        {
            Sizes = findings.Names(sizes),
            Help = "look for a digit too many",
        };
}
