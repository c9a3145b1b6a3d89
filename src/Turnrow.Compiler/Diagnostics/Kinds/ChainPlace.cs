using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Chains that go somewhere.</summary>
public static class ChainPlace
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "chain-place",
        "TR0234",
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
        new(Kind, span, "chains go over the work and into nothing")
        {
            Help = "write how many: ch 3; the places below them are skipped with `skip 3`",
        };
}
