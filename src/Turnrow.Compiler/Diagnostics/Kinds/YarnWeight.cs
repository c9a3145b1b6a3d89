using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A yarn weight that is none of the trade's.</summary>
public static class YarnWeight
{
    /// <summary>The heaviest yarn's number: 7 is jumbo.</summary>
    public const int Heaviest = 7;

    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "yarn-weight",
        "TR0229",
        Severity.Error,
        """
        How thick a yarn is stands on its band as one whole number from 0 (lace) to 7 (jumbo): 4 is a worsted, 3 a light one. Print gives
        the number with its word. For a yarn between two of them take the one on the band, and describe it in the yarn's own words.
        """,
        SmallPattern.With("Scarf",
            """
            yarn main "soft wool", weight 3.5

            piece scarf
              begin with 20 stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Scarf",
            """
            yarn main "soft wool, a little thicker than sport", weight 3

            piece scarf
              begin with 20 stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(TextSpan span) =>
        new(Kind, span, "a yarn's weight is a whole number from 0 to 7")
        {
            Help = "write the number from the yarn's band, such as `weight 3`",
        };
}
