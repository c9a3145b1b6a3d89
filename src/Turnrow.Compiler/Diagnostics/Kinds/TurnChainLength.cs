using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A turning chain of a length that can't be.</summary>
public static class TurnChainLength
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "turn-chain-length",
        "TR0227",
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

    internal static Diagnostic At(TextSpan span, int longest) =>
        new(Kind, span, Invariant($"a turning chain has 0 to {longest} chains"))
        {
            Help = "customary are 1 for sc, 2 for hdc, 3 for dc, 4 for tr (US terms)",
        };
}
