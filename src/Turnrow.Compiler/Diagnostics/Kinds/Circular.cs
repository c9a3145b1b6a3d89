using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Definitions that need each other.</summary>
public static class Circular
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "circular",
        "TR0209",
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

    internal static Diagnostic At(TextSpan span, IReadOnlyList<string> circle, TextSpan later) =>
        new(Kind, span, circle.Count == 1
            ? $"`{circle[0]}` is defined by itself"
            : $"{Findings.Join([.. circle.Select(n => $"`{n}`")])} are each defined by the next, and the last by the first")
        {
            Help = "give one of them a number",
            Related = circle.Count == 1 ? [] : [new Related(later, "one of them is here")],
        };
}
