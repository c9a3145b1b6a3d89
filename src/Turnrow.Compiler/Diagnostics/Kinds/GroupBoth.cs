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
        PAGE
        """,
        """
        BAD
        """,
        """
        GOOD
        """);

    internal static Diagnostic At(TextSpan span) =>
        new(Kind, span, "a bracket is either repeated or goes into one place, not both")
        {
            Help = "put one bracket in the other: ((2 dc, ch 1, 2 dc) in next sp, skip 1) 4 times",
        };
}
