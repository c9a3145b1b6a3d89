using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A length that is already passed.</summary>
public static class LengthPassed
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "length-passed",
        "TR0325",
        Severity.Error,
        """
        `straight to 20 cm` works until the piece measures 20 cm from its beginning, and it is longer than that already. If you meant 20
        cm more from here, write `straight for 20 cm`. Otherwise give a greater length, or work fewer rows before. With several sizes this
        happens in the large ones first, where the shaping before takes more rows.

        Tip: `to 20 cm from armhole` measures from a row that you have marked.
        """,
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm

            piece scarf
              begin with 24 stitches
              row 1 RS: dc across
              straight 30 rows
              straight to 20 cm
            """),
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm

            piece scarf
              begin with 24 stitches
              row 1 RS: dc across
              straight 30 rows
              straight for 20 cm
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, Func<int, Rational> there, Func<int, Rational> asked, bool fromMark) =>
        new(Kind, span, $"{context.Length(there(sizes[0]))} are worked already{(fromMark ? " from the mark" : string.Empty)}{context.Findings.InSize(sizes[0])}, more than {context.Length(asked(sizes[0]))}")
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = sizes.Length > 1 ? ["worked: " + context.Findings.Each(sizes, i => context.Length(there(i)))] : [],
            Help = "`to` measures from the beginning of the piece or from a mark; for so much more from here write `for`",
        };
}
