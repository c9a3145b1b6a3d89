using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A number that is too large.</summary>
public static class TooLarge
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "too-large",
        "TR0214",
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

    internal static Diagnostic At(TextSpan span, Findings findings, IReadOnlyList<int> sizes, int most) =>
        new(Kind, span, Invariant($"no count in crochet is above {most}, and this is{findings.InSizes(sizes)}"))
        {
            Sizes = findings.Names(sizes),
            Help = "look for a digit too many",
        };
}
