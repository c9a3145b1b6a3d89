using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A piece that is not there.</summary>
public static class UnknownPiece
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "unknown-piece",
        "TR0204",
        Severity.Error,
        """
        This line begins from a piece, mirrors it, joins it or says what it measures, and no line opens a piece of that name. The line can't be
        used before, and a part or a seam of the garment would be missing. Look for a slip of spelling in the name; it is written here exactly as behind
        `piece`.

        Tip: a name of two words needs a hyphen, `left-front`.
        """,
        SmallPattern.With("Mitten",
            """
            piece palm
              begin with 24 stitches
              row 1 RS: dc across

            piece thumb from pallm: 8 stitches at right edge
              row 1: dc across
            """),
        SmallPattern.With("Mitten",
            """
            piece palm
              begin with 24 stitches
              row 1 RS: dc across

            piece thumb from palm: 8 stitches at right edge
              row 1: dc across
            """));

    internal static Diagnostic At(TextSpan span, string name, IEnumerable<string> known)
    {
        var near = Spelling.Nearest(name, known);
        return new(Kind, span, $"there is no piece called `{name}`")
        {
            Help = near is null ? $"open it above with a line `piece {name}`, or look how the piece you mean is called there" : $"did you mean `{near}`?",
            Mends = near is null ? [] : [new Mend($"write {near}", span, near)],
        };
    }
}
