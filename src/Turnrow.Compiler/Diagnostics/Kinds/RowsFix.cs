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
        PAGE
        """,
        """
        BAD
        """,
        """
        GOOD
        """);

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, int?[] rows) =>
        new(Kind, span, $"the number of rows is another: {context.Findings.Each(sizes, i => Invariant($"{rows[i]}"))}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "a number that is given is never changed; give another one, or take this out",
        };
}
