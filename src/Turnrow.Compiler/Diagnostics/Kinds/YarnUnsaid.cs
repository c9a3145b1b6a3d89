using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A yarn's name where a stitch or a number should stand.</summary>
public static class YarnUnsaid
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "yarn-unsaid",
        "TR0607",
        Severity.Error,
        """
        A yarn is taken up in a row by `with` and its name, which are a part of the row by themselves: sc 3, with cream, sc 3. A name alone would be a
        stitch or a number.
        """,
        SmallPattern.With("Scarf",
            """
            yarn navy "soft wool"
            yarn cream "soft wool"

            piece scarf
              begin with 24 stitches
              row 1 RS: sc 12, cream sc 12
            """),
        SmallPattern.With("Scarf",
            """
            yarn navy "soft wool"
            yarn cream "soft wool"

            piece scarf
              begin with 24 stitches
              row 1 RS: sc 12, with cream, sc 12
            """));

    internal static Diagnostic At(TextSpan span, string yarn) => new(Kind, span, $"`{yarn}` is a yarn, and stands where a stitch should")
    {
        Help = $"take it up by `with {yarn}`, a part of the row by itself: `sc 3, with {yarn}, sc 3`",
    };
}
