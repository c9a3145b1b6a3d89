using Turnrow.Compiler.Grading;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A word for a fit that is not known.</summary>
public static class EaseWord
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "ease-word",
        "TR0404",
        Severity.Error,
        """
        Ease is how much wider than the body a garment is meant to be. It is a length, `ease bust is 5 cm`, or one of the words that the trade
        has printed for it: `very-close` (no ease, or less), `close` (2.5 to 5 cm, 1 to 2 in), `standard` or `classic` (5 to 10 cm, 2 to 4 in),
        `loose` (10 to 15 cm, 4 to 6 in), `oversized` (15 cm, 6 in, and more). Newer charts use some of these words for less; where it matters,
        write the number.
        """,
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure bust is 86 (97) cm
            ease bust is snug
            count hem is stitches for bust / 2 + 1.5 cm

            piece back
              begin with hem stitches
              row 1 RS: dc across
            finished bust is 2 x hem stitches
            """),
        SmallPattern.With("Top",
            """
            sizes S, M
            gauge dc: 18 stitches and 9 rows to 10 cm
            measure bust is 86 (97) cm
            ease bust is close
            count hem is stitches for bust / 2 + 1.5 cm

            piece back
              begin with hem stitches
              row 1 RS: dc across
            finished bust is 2 x hem stitches
            """));

    internal static Diagnostic At(TextSpan span, string word)
    {
        var near = Spelling.Nearest(word, EaseBinder.Words);
        return new(Kind, span, $"`{word}` is no length and no fit that is known")
        {
            Help = (near is null ? string.Empty : $"did you mean `{near}`? ") + $"the fits are {Findings.Join(EaseBinder.Words)}; or write a length, `5 cm`",
            Mends = near is null ? [] : [new Mend($"write {near}", span, near)],
        };
    }
}
