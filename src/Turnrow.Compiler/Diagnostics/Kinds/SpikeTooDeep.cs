using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A spike goes further down than there are rows.</summary>
public static class SpikeTooDeep
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "spike-too-deep",
        "TR0486",
        Severity.Error,
        """
        A spike is worked over the stitch below it, into what that stitch was worked into: `spike sc` one row further down than usual, `spike-2 sc`
        two, `spike-3 sc` three. So there have to be as many rows below. In row 2 a spike goes into the foundation, in row 1 nowhere.
        """,
        SmallPattern.With("Spiked cloth",
            """
            piece cloth
              begin with 20 stitches
              row 1 RS: sc across
              row 2: (sc 3, spike-2 sc) across
            """),
        SmallPattern.With("Spiked cloth",
            """
            piece cloth
              begin with 20 stitches
              row 1 RS: sc across
              row 2: sc across
              row 3: (sc 3, spike-2 sc) across
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, string word, int down, int rows) =>
        new(Kind, span, Invariant($"`{word}` goes {down} rows further down, and there {(rows == 1 ? "is" : "are")} {rows} below{context.Findings.InSizes(sizes)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = "work more rows before it, or go less deep",
        };
}
