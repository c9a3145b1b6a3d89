using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A special stitch where only a stitch that makes one place makes sense.</summary>
public static class StitchHere
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "stitch-here",
        "TR0484",
        Severity.Error,
        """
        A stitch that takes or makes several places stands where one is needed that goes into one place and makes one: in a gauge, a turning
        chain, a rate, an increase or a decrease. Measure or count in what it is made of. A special stitch can't be increased, since nobody
        could tell whether two of them or a bigger one is meant: write `2 bobble in next` or `shell of 7`.
        """,
        SmallPattern.With("Shell cloth",
            """
            gauge shell: 4 stitches and 9 rows to 10 cm

            piece cloth
              begin with 19 stitches
              row 1 RS: sc across
              row 2: sc, (skip 2, shell in next, skip 2, sc) across
            """),
        SmallPattern.With("Shell cloth",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm

            piece cloth
              begin with 19 stitches
              row 1 RS: sc across
              row 2: sc, (skip 2, shell in next, skip 2, sc) across
            """));

    internal static Diagnostic At(TextSpan span, string word, string of) =>
        new(Kind, span, $"`{word}` is not one stitch in one place, as is needed here")
        {
            Help = $"say it of what it is made of: `{of}`",
        };

    internal static Diagnostic Place(TextSpan span, string word, int takes) =>
        new(Kind, span, takes == 0 ? $"`{word}` stands on the stitch before it" : $"`{word}` is worked over several places, the next ones")
        {
            Help = takes == 0 ? $"write the stitch first: `sc, {word}`" : $"write `{word}`, or `{word} 3` for several of them",
        };

    internal static Diagnostic Together(TextSpan span, string word, int places, bool each) =>
        new(Kind, span, $"`{word}` is worked over {Counted.Plain(places)} places, the next ones, and can't go into one")
        {
            Help = each ? $"write `{word} across`" : $"write `{word}` by itself; several drawn together in one place are a stitch of your own: `stitch knot is 3 dc together in one place`",
        };

    internal static Diagnostic Change(TextSpan span, string word, bool increase) =>
        new(Kind, span, $"`{word}` is a special stitch and has no {(increase ? "increase" : "decrease")} of its own")
        {
            Help = increase ? $"write `2 {word} in next`" : "decrease with the stitch beside it, as in `dc dec`",
        };
}
