using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>So many motifs as make no blanket.</summary>
public static class BlanketNumber
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "blanket-number",
        "TR0438",
        Severity.Error,
        """
        A blanket has at least two motifs, `1 across, 2 down`, and at most a thousand in a row or in a column. One motif alone is simply that piece.
        """,
        SmallPattern.With("Blanket",
            """
            piece tile
              begin with ring
              round 1: (3 dc, ch 2, mark corner) 4 times in ring
              fasten off
            blanket throw of tile: 1 across, 1 down, join in each corner
            """),
        SmallPattern.With("Blanket",
            """
            piece tile
              begin with ring
              round 1: (3 dc, ch 2, mark corner) 4 times in ring
              fasten off
            blanket throw of tile: 1 across, 2 down, join in each corner
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, Func<int, int> across, Func<int, int> down, int most) =>
        new(Kind, span, $"{Counted.Plain(across(sizes[0]))} across and {Counted.Plain(down(sizes[0]))} down {(across(sizes[0]) > most || down(sizes[0]) > most ? "are more motifs than can be told" : "are no two motifs to be joined")}{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = $"a blanket has two motifs at least, and up to {Counted.Plain(most)} across or down",
        };

    internal static Diagnostic Several(TextSpan span, string motif) => new(Kind, span, $"{motif} is made several times, and the blanket says how many of it there are")
    {
        Help = "take `make` away where the motif begins",
    };
}
