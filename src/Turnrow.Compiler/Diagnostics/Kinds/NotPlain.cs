using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>`straight` or `shape` after a row that is not plain.</summary>
public static class NotPlain
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "not-plain",
        "TR0313",
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

    internal static Diagnostic At(TextSpan span, string word, int row) =>
        new(Kind, span, Invariant($"row {row} is not one plain stitch into each place, so `{word}` can't go on with it"))
        {
            Help = "write the rows (row: dc across), or repeat the ones you mean (repeat rows 3 to 4, 5 more times)",
        };
}
