using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Words of a row for which nothing can be left.</summary>
public static class NothingLeft
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "nothing-left",
        "TR0380",
        Severity.Warning,
        """
        The words before these go to the same place of the row already, so nothing is left for these in any size, and the maker would read
        words that she can't do. Mostly they stand there twice, or the first should stop earlier: `until 5 remain`. Take one of the two out.
        """,
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dc across, dc across
            """),
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dc until 5 remain, dc across
            """));

    internal static Diagnostic At(TextSpan span, string before, string word, TextSpan whole) =>
        new(Kind, span, $"nothing is ever left for `{word}`: `{before}` goes as far")
        {
            Help = "take one of the two out, or let the first stop earlier, such as `until 5 remain`",
            Mends = [new Mend("take it out", whole, string.Empty)],
        };
}
