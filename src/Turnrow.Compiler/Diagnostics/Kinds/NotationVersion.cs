using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A notation that this program does not know.</summary>
public static class NotationVersion
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "notation-version",
        "TR0221",
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
        new(Kind, span, "this program reads notation 1")
        {
            Help = "write `notation 1`, or take a newer turnrow",
            Mends = [new Mend("write 1", span, "1")],
        };
}
