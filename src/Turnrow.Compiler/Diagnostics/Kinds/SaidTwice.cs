using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A line of the header that stands twice.</summary>
public static class SaidTwice
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "said-twice",
        "TR0220",
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

    internal static Diagnostic At(TextSpan span, TextSpan first) =>
        new(Kind, span, "this was said before")
        {
            Help = "a pattern has one of these lines; take one out",
            Related = [new Related(first, "here")],
        };
}
