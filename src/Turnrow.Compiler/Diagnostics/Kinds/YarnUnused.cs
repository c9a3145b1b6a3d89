using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A yarn that nothing is worked with.</summary>
public static class YarnUnused
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "yarn-unused",
        "TR0496",
        Severity.Warning,
        """
        The pattern says which rows are worked with which yarn, and none is worked with this one: a maker would buy it for nothing. A piece begins
        with the first yarn of the file, unless `with …` above its first row says otherwise.
        """,
        SmallPattern.With("Scarf",
            """
            yarn navy "soft wool"
            yarn cream "soft wool"
            yarn rust "soft wool"

            piece scarf
              begin with 24 stitches
              row 1 RS: sc across
              row 2: with cream, sc across
            """),
        SmallPattern.With("Scarf",
            """
            yarn navy "soft wool"
            yarn cream "soft wool"

            piece scarf
              begin with 24 stitches
              row 1 RS: sc across
              row 2: with cream, sc across
            """));

    internal static Diagnostic At(TextSpan span, string yarn) => new(Kind, span, $"nothing is worked with {yarn}")
    {
        Help = $"say where, `with {yarn}`, or take its line out",
    };
}
