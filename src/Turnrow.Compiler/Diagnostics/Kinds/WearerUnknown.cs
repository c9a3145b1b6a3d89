using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A wearer that is not known.</summary>
public static class WearerUnknown
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "wearer-unknown",
        "TR0223",
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

    internal static Diagnostic At(TextSpan span, string word) =>
        new(Kind, span, $"the wearer is an adult, a child or a baby, not `{word}`")
        {
            Help = "write `wearer child` or `wearer baby` so that the cautions for children are printed",
        };
}
