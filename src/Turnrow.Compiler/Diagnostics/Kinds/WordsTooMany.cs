using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Words behind a stitch that mean nothing there.</summary>
public static class WordsTooMany
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "words-too-many",
        "TR0236",
        Severity.Error,
        """
        Behind a stitch there can be one number, or one name of a count, or a word like `across`; here is more than that. A comma may be
        missing between two things to do. What says how the stitch is worked stands in front of it, and two words of it make one with a
        hyphen: `back-loop dc across`, `front-post dc 2`.
        """,
        SmallPattern.With("Ribbed cuff",
            """
            piece cuff
              begin with 12 stitches
              row 1 RS: dc across
              row 2: dc back loop across
            """),
        SmallPattern.With("Ribbed cuff",
            """
            piece cuff
              begin with 12 stitches
              row 1 RS: dc across
              row 2: back-loop dc across
            """));

    internal static Diagnostic At(TextSpan span, string stitch) =>
        new(Kind, span, $"after `{stitch}` there can be one number or one name of a count")
        {
            Help = "put a comma between two things to do",
        };
}
