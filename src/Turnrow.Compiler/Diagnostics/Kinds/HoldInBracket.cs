using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Stitches held, or a bridge, in a bracket.</summary>
public static class HoldInBracket
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "hold-in-bracket",
        "TR0337",
        Severity.Error,
        """
        Stitches that are held, and a bridge of chains, are edges that another piece takes up later by their name. In a bracket that is worked
        several times there would be several of one name. Write them in the row itself, each with its own name. For spaces that are worked
        into again and again, write `ch 3, skip 3`.
        """,
        SmallPattern.With("Yoke",
            """
            piece yoke
              begin with 40 stitches
              row 1 RS: dc across
              row 2: (dc 5, hold 10 for sleeve, bridge 4, dc 5) 2 times
            """),
        SmallPattern.With("Yoke",
            """
            piece yoke
              begin with 40 stitches
              row 1 RS: dc across
              row 2: dc 5, hold 10 for left-sleeve, bridge 4, dc 10, hold 10 for right-sleeve, bridge 4, dc 5

            piece left-sleeve picked up along yoke left-sleeve: 1 dc in each st
            piece right-sleeve picked up along yoke right-sleeve: 1 dc in each st
            """));

    internal static Diagnostic At(TextSpan span, bool bridge) =>
        new(Kind, span, bridge ? "a bridge of chains can't stand in a bracket" : "stitches can't be held in a bracket")
        {
            Help = "write it among the row's own words, each with a name of its own",
        };
}
