using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A number of rows that is not what its own words ask for.</summary>
public static class RowsFix
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "rows-fix",
        "TR0324",
        Severity.Error,
        """
        The line gives a number of rows and a wish about it that the number does not meet: 5 rows are not even, and from a right-side row
        on an odd number ends on a right-side row again. A number that is given is never changed for you. Write a number that fits, or
        take the wish out. It is meant for lengths: `straight for 12 cm, even rows` finds the nearest even number.

        Rounds are not turned: all of them are worked with the right side facing, so `end RS` asks nothing of them and `end WS` can't be had.
        """,
        SmallPattern.With("Scarf",
            """
            piece scarf
              begin with 24 stitches
              row 1 RS: dc across
              straight 5 rows, even rows
            """),
        SmallPattern.With("Scarf",
            """
            piece scarf
              begin with 24 stitches
              row 1 RS: dc across
              straight 6 rows, even rows
            """));

    internal static Diagnostic At(Context context, RowFixSyntax fix, int[] sizes, int?[] rows)
    {
        var count = rows[sizes[0]]!.Value;
        var first = Counted.Rows(count);
        var are = count == 1 ? "is" : "are";
        return new(Kind, fix.Span, (fix.Fix switch
        {
            RowFix.EvenRows => $"{first} {are} not an even number",
            RowFix.OddRows => $"{first} {are} not an odd number",
            RowFix.EndRightSide => $"after {first} more the last is a wrong-side row",
            _ => $"after {first} more the last is a right-side row",
        }) + context.Findings.InSizes(sizes))
        {
            Sizes = context.Findings.Names(sizes),
            Help = "a number that you give is never changed for you: write one more or one fewer, or take this out",
        };
    }

    internal static Diagnostic InRounds(Context context, RowFixSyntax fix, int[] sizes, bool rightSide) =>
        new(Kind, fix.Span, $"rounds are not turned here, and each ends on the {(rightSide ? "right" : "wrong")} side{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "take this out; `even rounds` and `odd rounds` ask for their number",
        };
}
