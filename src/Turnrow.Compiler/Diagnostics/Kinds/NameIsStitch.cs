using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A name that is a stitch.</summary>
public static class NameIsStitch
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "name-is-stitch",
        "TR0207",
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

    internal static Diagnostic At(TextSpan span, string name) =>
        new(Kind, span, $"`{name}` is a stitch, so it can't be a name too")
        {
            Help = $"call it {name}-count, or anything that is not a stitch",
            Mends = [new Mend($"call it {name}-count", span, $"{name}-count")],
        };
}
