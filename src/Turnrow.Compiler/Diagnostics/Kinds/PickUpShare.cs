using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A number for one side of a border, and there is no such side.</summary>
public static class PickUpShare
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "pick-up-share",
        "TR0586",
        Severity.Error,
        """
        `37 sc evenly along blanket right edge` says how many go along one of the edges that are picked up, so that edge has to be one of those
        named before the colon. `37 sc evenly to each corner` says how many go between each two corners, so it needs corners: what goes into them stands
        beside it, `3 sc in each corner`, and comes besides.
        """,
        SmallPattern.With("Baby blanket",
            """
            piece blanket
              begin with 20 stitches
              row 1 RS: sc across
              straight 19 rows

            piece border picked up along blanket right edge and blanket last row: 19 sc evenly along blanket left edge, 1 sc in each st
              row 2: sc across
            """),
        SmallPattern.With("Baby blanket",
            """
            piece blanket
              begin with 20 stitches
              row 1 RS: sc across
              straight 19 rows

            piece border picked up along blanket right edge and blanket last row: 19 sc evenly along blanket right edge, 1 sc in each st
              row 2: sc across
            """));

    internal static Diagnostic Elsewhere(TextSpan span, string edge, IReadOnlyList<string> walked) =>
        new(Kind, span, $"{edge} is not among the edges that are picked up here")
        {
            Help = $"the edges are {string.Join(", ", walked)}; name one of them, or walk along this one as well",
        };

    internal static Diagnostic NoCorners(TextSpan span, string stitch) =>
        new(Kind, span, "so many go from corner to corner, and what goes into a corner is not said")
        {
            Help = $"write it behind a comma: `, 3 {stitch} in each corner`",
        };
}
