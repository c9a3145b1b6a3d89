using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A name that both edges of the piece have.</summary>
public static class WalkAmbiguous
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "edge-both",
        "TR0347",
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

    internal static Diagnostic At(TextSpan span, string piece, string name) =>
        new(Kind, span, $"both edges of {piece} are called `{name}`")
        {
            Help = $"say which: {piece} right {name}, or {piece} left {name}",
            Mends = [new Mend($"right {name}", span, $"right {name}"), new Mend($"left {name}", span, $"left {name}")],
        };
}
