using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A name used above its definition.</summary>
public static class DefinedBelow
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "defined-below",
        "TR0208",
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

    internal static Diagnostic At(TextSpan span, string name, TextSpan later) =>
        new(Kind, span, $"`{name}` is defined further down")
        {
            Help = "move its line above this one",
            Related = [new Related(later, $"`{name}` is defined here")],
        };
}
