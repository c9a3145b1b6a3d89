using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Stitches held that nothing takes up.</summary>
public static class HeldUnused
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "held-unused",
        "TR0384",
        Severity.Warning,
        """
        These stitches are held for something, and nothing in the file takes them up: no piece is picked up along them and no seam
        closes them. They would stay on their marker for ever. If they are to stay free, as at an opening, write `skip`.
        """,
        SmallPattern.With("Yoke",
            """
            piece yoke
              begin with 40 stitches
              row 1 RS: dc across
              row 2: dc 15, hold 10 for sleeve, bridge 4, dc 15
            """),
        SmallPattern.With("Yoke",
            """
            piece yoke
              begin with 40 stitches
              row 1 RS: dc across
              row 2: dc 15, hold 10 for sleeve, bridge 4, dc 15

            piece sleeve picked up along yoke sleeve: 1 dc in each st
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string piece, string name) =>
        new(Kind, span, $"nothing takes up the stitches that {piece} holds for {name}{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = $"pick up along them, `piece {name} picked up along {piece} {name}: 1 dc in each st`, or write `skip` if they stay free",
        };
}
