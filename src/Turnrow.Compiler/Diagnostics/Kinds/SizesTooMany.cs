using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>More sizes than a pattern can have.</summary>
public static class SizesTooMany
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "sizes-too-many",
        "TR0211",
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

    internal static Diagnostic At(TextSpan span, int most) =>
        new(Kind, span, Invariant($"a pattern can have {most} sizes at most"))
        {
            Help = "make two patterns of it",
        };
}
