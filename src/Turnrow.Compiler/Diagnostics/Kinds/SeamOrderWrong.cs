using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A seam that would join a piece inside out.</summary>
public static class SeamOrderWrong
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "seam-order",
        "TR0351",
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

    internal static Diagnostic At(TextSpan span, bool opposite, Hand first, Hand second) =>
        new(Kind, span, $"a {Word(first)} edge and a {Word(second)} edge can only lie side by side in {(opposite ? "opposite" : "the same")} row order")
        {
            Help = opposite
                ? "the first row of one meets the last row of the other; the other way one piece would be joined inside out"
                : "first row meets first row; the other way one piece would be joined inside out",
        };

    private static string Word(Hand hand) => hand == Hand.Right ? "right" : "left";
}
