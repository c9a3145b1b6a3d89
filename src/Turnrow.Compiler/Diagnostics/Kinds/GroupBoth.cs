using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A bracket with times and a place.</summary>
public static class GroupBoth
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "bracket-both",
        "TR0230",
        Severity.Error,
        """
        A bracket does one of two things. With a number of times (`3 times`, `across`) it is worked again and again along the row. With a
        place (`in next sp`) all that is in it goes into that one place, as a shell does. Here it has both. For shells along a row put one
        bracket into another: the inner one says the shell and its place, the outer one how often, with what is skipped between.
        """,
        SmallPattern.With("Baby blanket",
            """
            piece blanket
              begin with 21 stitches
              row 1 RS: dc across
              row 2: (2 dc, ch 1, 2 dc) 7 times in next
            """),
        SmallPattern.With("Baby blanket",
            """
            piece blanket
              begin with 21 stitches
              row 1 RS: dc across
              row 2: ((2 dc, ch 1, 2 dc) in next, skip 2) 7 times
            """));

    internal static Diagnostic At(TextSpan span) =>
        new(Kind, span, "this bracket is to be repeated and to go into one place, and it can do only one of them")
        {
            Help = "put one bracket into another: `((2 dc, ch 1, 2 dc) in next, skip 2) 7 times`",
        };
}
