using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A row goes over pieces that end on different sides.</summary>
public static class AcrossSides
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "across-sides",
        "TR0338",
        Severity.Error,
        """
        One row is to go over the last rows of several pieces. All of them have to face the same way then: where one ends on a right-side
        row and the next on a wrong-side row, one of them would show its back for good. Work one row more, or one fewer, in one of them;
        `even rows` or `end WS` behind a `straight` sees to it.
        """,
        SmallPattern.With("Pullover",
            """
            piece left-front
              begin with 10 stitches
              row 1 RS: dc across
              straight 3 rows

            piece back
              begin with 20 stitches
              row 1 RS: dc across
              straight 4 rows

            piece body across left-front, back
              row 1: dc across
            """),
        SmallPattern.With("Pullover",
            """
            piece left-front
              begin with 10 stitches
              row 1 RS: dc across
              straight 3 rows

            piece back
              begin with 20 stitches
              row 1 RS: dc across
              straight 3 rows

            piece body across left-front, back
              row 1: dc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string first, string second, bool firstRightSide) =>
        new(Kind, span, Invariant($"{first} ends on a {Side(firstRightSide)} row and {second} on a {Side(!firstRightSide)} row{context.Findings.InSizes(sizes)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = "work one row more or fewer in one of them, so that one row can go over both",
        };

    private static string Side(bool rightSide) => rightSide ? "right-side" : "wrong-side";
}
