using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Stripes that have no rows, or too many.</summary>
public static class StripesEmpty
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "stripes-empty",
        "TR0497",
        Severity.Error,
        """
        `stripes are navy 2 rows, cream 4 rows` says which yarn each row has from here on, over and over. One of them may have no rows in some
        size, but not all of them, and together they have no more rows than a piece may have.
        """,
        SmallPattern.With("Scarf",
            """
            yarn navy "soft wool"
            yarn cream "soft wool"

            piece scarf
              begin with 24 stitches
              stripes are navy 0 rows, cream 0 rows
              row 1 RS: sc across
              straight 11 rows
            """),
        SmallPattern.With("Scarf",
            """
            yarn navy "soft wool"
            yarn cream "soft wool"

            piece scarf
              begin with 24 stitches
              stripes are navy 2 rows, cream 4 rows
              row 1 RS: sc across
              straight 11 rows
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, int most) =>
        new(Kind, span, Invariant($"these stripes have no rows, or more than {most}{context.Findings.InSizes(sizes)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = "give each stripe its rows, `stripes are navy 2 rows, cream 4 rows`",
        };

    internal static Diagnostic Many(TextSpan span, int most) => new(Kind, span, Invariant($"stripes can be of {most} parts"))
    {
        Help = "write those that come once as `with …` lines between the rows",
    };

    internal static Diagnostic Floats(TextSpan span) => new(Kind, span, "this is a whole number of stitches, at least 1")
    {
        Help = "write such as `floats at most 7 stitches`",
    };
}
