using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Two shapings at one edge in one row.</summary>
public static class ShapingsMeet
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "shapings-meet",
        "TR0331",
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

    internal static Diagnostic At(Context context, TextSpan span, int size, int row, string? edge, Hand hand) =>
        new(Kind, span, Invariant($"row {row} of these is shaped twice at {edge ?? (hand == Hand.Right ? "the right edge" : "the left edge")}{context.Findings.InSize(size)}"))
        {
            Help = "one edge has one schedule at a time: put both into one, or one after the other with `then`",
        };
}
