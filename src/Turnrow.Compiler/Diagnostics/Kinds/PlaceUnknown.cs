using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A kind of place that is not known.</summary>
public static class PlaceUnknown
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "place-unknown",
        "TR0237",
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

    internal static Diagnostic At(TextSpan span) =>
        new(Kind, span, "this names no kind of place")
        {
            Help = "places are: st, sp, st and sp, a stitch (dc), or a space by its chains (ch-3 sp)",
        };
}
