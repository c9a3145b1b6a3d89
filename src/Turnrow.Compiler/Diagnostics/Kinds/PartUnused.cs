using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A part that no piece goes on from.</summary>
public static class PartUnused
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "part-unused",
        "TR0371",
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

    internal static Diagnostic At(TextSpan span, string name, string piece) =>
        new(Kind, span, $"no piece goes on from the part `{name}`: its stitches would ravel out of nothing")
        {
            Help = $"go on from it (piece {name} from {piece}: {name}), or skip these stitches",
        };
}
