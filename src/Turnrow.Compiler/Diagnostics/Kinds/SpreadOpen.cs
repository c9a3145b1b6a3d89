using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Words spread evenly that take now more, now fewer stitches.</summary>
public static class SpreadOpen
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "spread-open",
        "TR0241",
        Severity.Error,
        """
        To spread something evenly, it has to be known beforehand how many stitches it takes: a buttonhole `(ch 2, skip 2)` takes two, a
        shell `(5 dc in next)` one. What goes `across`, or looks for the `next sp`, takes as many as it meets. And between stand plain
        stitches, one in each, for without them nothing is spread.
        """,
        SmallPattern.With("Cardigan",
            """
            piece band
              begin with 60 stitches
              row 1 RS: dc across
              row 2: dc across with (ch 2, skip 2, dc in next sp) 5 times evenly
            """),
        SmallPattern.With("Cardigan",
            """
            piece band
              begin with 60 stitches
              row 1 RS: dc across
              row 2: dc across with (ch 2, skip 2) 5 times evenly
            """));

    internal static Diagnostic At(TextSpan span, bool isPlain) => isPlain
        ? new(Kind, span, "between what is spread evenly stand plain stitches, one in each of the next")
        {
            Help = "name the stitch alone: `sc across with (ch 2, skip 2) 5 times evenly`",
        }
        : new(Kind, span, "what is spread evenly has to take the next stitches, and a number of them that is known beforehand")
        {
            Help = "in the bracket stand stitches with a number, `skip`, `ch` and what goes `in next`",
        };
}
