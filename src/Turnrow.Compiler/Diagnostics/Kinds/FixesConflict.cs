using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Wishes that no count can meet together.</summary>
public static class FixesConflict
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "fixes-conflict",
        "TR0219",
        Severity.Error,
        """
        Two wishes are made about one number, and no number can meet both: none is odd and even at once, and no multiple of 4 is odd. Take
        the wish out that matters less. If a stitch pattern needs a multiple and one stitch to balance it, say it in one: `multiple of 4 +
        1`.
        """,
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm
            count width is stitches for 20 cm, multiple of 4, odd

            piece scarf
              begin with width stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm
            count width is stitches for 20 cm, multiple of 4 + 1

            piece scarf
              begin with width stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(TextSpan span) =>
        new(Kind, span, "no number can be this and also what is asked before it")
        {
            Help = "take one of the two out",
        };
}
