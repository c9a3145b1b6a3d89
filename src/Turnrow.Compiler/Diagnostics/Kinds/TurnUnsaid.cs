using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A stitch that print turns in two ways.</summary>
public static class TurnUnsaid
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "turn-unsaid",
        "TR0373",
        Severity.Warning,
        """
        PAGE
        """,
        """
        BAD
        """,
        """
        GOOD
        """);

    internal static Diagnostic At(TextSpan span, string stitch, int chains) =>
        new(Kind, span, Invariant($"print turns {stitch} in two ways: the ch {chains} counts as a stitch in older books, and does not in many newer patterns"))
        {
            Help = Invariant($"say which at the top: turn {stitch}: ch {chains} counts, or turn {stitch}: ch {chains} does not count; here it is taken to count"),
        };
}
