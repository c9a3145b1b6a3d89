using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A list that has not one value a size.</summary>
public static class SizesList
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "sizes-list",
        "TR0210",
        Severity.Error,
        """
        A number in sizes is written as in print: the first size, then the others in brackets, `20 (24, 28)`. There has to be one number
        for each size of the `sizes` line, no more and no fewer; otherwise a size would get none, or another size's. Count them off
        against the `sizes` line. A number that is the same in all sizes is written once, without brackets.

        Tip: a comma inside a number makes two of it; write 12.5, not 12,5.
        """,
        SmallPattern.With("Hat",
            """
            sizes Baby, Child, Adult

            piece brim
              begin with 60 (72) stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Hat",
            """
            sizes Baby, Child, Adult

            piece brim
              begin with 60 (72, 84) stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(TextSpan span, Findings findings, int values)
    {
        var inOneSize = findings.SizeNames is [""];
        return new(Kind, span, inOneSize
            ? Invariant($"{values} numbers are given, and the pattern has no sizes")
            : Invariant($"{Counted.Numbers(values)} for {Counted.Sizes(findings.Sizes)}: {Findings.Join(findings.SizeNames)}"))
        {
            Help = inOneSize
                ? "name the sizes at the top, `sizes S, M, L`, or write one number"
                : "write one number for all sizes, or one for each: the first size's, then the others' in brackets",
        };
    }
}
