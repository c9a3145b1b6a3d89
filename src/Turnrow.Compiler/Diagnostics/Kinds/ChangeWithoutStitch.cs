using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>`inc` or `dec` in a row of several stitches.</summary>
public static class ChangeWithoutStitch
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "change-without-stitch",
        "TR0235",
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

    internal static Diagnostic At(TextSpan span, bool increase) =>
        new(Kind, span, $"the row has several stitches, or none yet: of which is this {(increase ? "inc" : "dec")}?")
        {
            Help = $"name the stitch: dc {(increase ? "inc" : "dec")}",
        };
}
