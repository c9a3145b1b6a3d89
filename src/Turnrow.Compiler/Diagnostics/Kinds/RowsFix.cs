using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

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

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, int?[] rows) =>
        new(Kind, span, $"the number of rows is another: {context.Findings.Each(sizes, i => Invariant($"{rows[i]}"))}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "a number that is given is never changed; give another one, or take this out",
        };
}
