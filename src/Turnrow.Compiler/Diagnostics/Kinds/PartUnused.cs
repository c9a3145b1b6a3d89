using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A part that no piece goes on from.</summary>
public static class PartUnused
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "part-unused",
        "TR0371",
        Severity.Warning,
        """
        A divided row gives stitches to this part, and no piece goes on from it. They would wait on the marker for ever. If the part is
        worked, open a piece that begins from it. If its stitches are to stay free, as for a neck or an underarm, `skip` them in the
        `divide` line.
        """,
        SmallPattern.With("Yoke",
            """
            piece yoke
              begin with 30 stitches
              row 1 RS: dc across
              divide: 12 for back, 6 for underarm, 12 for front

            piece back from yoke: back
              row 1: dc across

            piece front from yoke: front
              row 1: dc across
            """),
        SmallPattern.With("Yoke",
            """
            piece yoke
              begin with 30 stitches
              row 1 RS: dc across
              divide: 12 for back, skip 6, 12 for front

            piece back from yoke: back
              row 1: dc across

            piece front from yoke: front
              row 1: dc across
            """));

    internal static Diagnostic At(TextSpan span, string name, string piece) =>
        new(Kind, span, $"no piece goes on from the part `{name}`, so its stitches would wait for ever")
        {
            Help = $"open a piece that goes on from it, `piece {name} from {piece}: {name}`, or write `skip` instead of giving these stitches a name",
        };
}
