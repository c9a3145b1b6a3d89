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
        A turning chain lifts the hook to the height of the next row, so it has a few chains: customary are 1 for sc, 2 for hdc, 3 for dc
        and 4 for tr (US terms). The number here is none that a row could be turned with. Write a whole number; 0 says that the row is
        turned without a chain.
        """,
        SmallPattern.With("Coaster",
            """
            turn dc: ch 300 counts

            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Coaster",
            """
            turn dc: ch 3 counts

            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(TextSpan span, int longest) =>
        new(Kind, span, Invariant($"a turning chain is 0 to {longest} whole chains"))
        {
            Help = "customary are 1 for sc, 2 for hdc, 3 for dc, 4 for tr (US terms)",
        };
}
