using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A name that is given twice.</summary>
public static class DefinedTwice
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "defined-twice",
        "TR0206",
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

    internal static Diagnostic At(TextSpan span, string name, TextSpan? earlier) =>
        new(Kind, span, $"{Quoted(name)} is given twice")
        {
            Help = "give one of the two another name, or take one out",
            Related = earlier is { } first ? [new Related(first, "it is given here")] : [],
        };

    private static string Quoted(string name) => name.Contains(' ', StringComparison.Ordinal) ? name : $"`{name}`";
}
