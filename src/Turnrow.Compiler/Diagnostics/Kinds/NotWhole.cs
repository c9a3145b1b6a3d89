using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A count that is not a whole number.</summary>
public static class NotWhole
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "not-whole",
        "TR0212",
        Severity.Error,
        """
        Stitches and rows come in whole numbers; half a stitch can't be worked. The arithmetic of this line gives a part of one, and a
        count is never rounded behind your back, since it is for you to say which way. In a `count` line say so at its end: `, rounded
        up`, `, rounded down`, `, odd` or `, even`. Or choose numbers that come out: half of 24 is 12, half of 25 is none.
        """,
        SmallPattern.With("Shawl",
            """
            count width is 25
            count half is width / 2

            piece shawl
              begin with half stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Shawl",
            """
            count width is 25
            count half is width / 2, rounded up

            piece shawl
              begin with half stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(TextSpan span, Findings findings, int[] sizes, Func<int, Rational> value) =>
        new(Kind, span, $"a count is a whole number, and this makes {findings.Each(sizes, i => value(i).ToString())}")
        {
            Sizes = findings.Names(sizes),
            Help = "choose numbers that come out, or say in a `count` line how to round: `count half is width / 2, rounded down`",
        };
}
