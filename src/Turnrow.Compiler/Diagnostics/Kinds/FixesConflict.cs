using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Wishes that no count can meet together.</summary>
public static class FixesConflict
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "fixes-conflict",
        "TR0219",
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

    internal static Diagnostic At(TextSpan span) =>
        new(Kind, span, "no number meets this and what is asked before it")
        {
            Help = "take one of the two out",
        };
}
