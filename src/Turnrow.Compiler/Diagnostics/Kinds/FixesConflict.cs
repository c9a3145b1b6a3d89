using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;
using static System.FormattableString;

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

    internal static Diagnostic At(TextSpan span, Allowed before, CountFix asked) =>
        new(Kind, span, Invariant($"what is asked before this allows only {before.From}, {before.From + (long)before.Every}, {before.From + (2L * before.Every)} and so on, and {(asked == CountFix.Multiple ? "this allows none of them" : $"none of them is {(asked == CountFix.Odd ? "odd" : "even")}")}"))
        {
            Help = "take one of the two out",
        };

    internal static Diagnostic OfRows(TextSpan span, bool odd) =>
        new(Kind, span, $"what is asked before this takes an {(odd ? "even" : "odd")} number of rows from here, and this takes an {(odd ? "odd" : "even")} one")
        {
            Help = "take one of the two out",
        };
}
