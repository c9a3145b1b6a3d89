using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Chains before the first stitch of a row: most likely the turning chain, which is never written.</summary>
public static class TurningChainWritten
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "turning-chain",
        "TR0374",
        Severity.Warning,
        """
        In print a row begins with its turning chain: "ch 3, turn, dc in each st across". Here the turn and its chain are worked out for you and
        printed, so a row begins with its first stitch: `dc across`. Chains that you write are a space of their own, and the next
        row would come to it. Take them out. If you do mean a loop of chains at the edge, for a button say, leave them so.

        Tip: how your rows are turned is said once, at the top: `turn dc: ch 3 counts`.
        """,
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2: ch 3, dc across
            """),
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dc across
            """));

    /// <param name="chains">The chains.</param>
    /// <param name="next">What stands behind them.</param>
    internal static Diagnostic At(TextSpan chains, TextSpan next) =>
        new(Kind, chains, "chains before the first stitch make a space: they are not the turning chain, which comes by itself")
        {
            Help = "take them out, unless a loop of chains at the edge is meant",
            Mends = [new Mend("take them out", TextSpan.FromBounds(chains.Start, next.Start), "")],
        };
}
