using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Words that define a stitch stand in a row.</summary>
public static class StitchInRow
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "stitch-in-row",
        "TR0481",
        Severity.Error,
        """
        `in one place`, `in skipped`, `together` and `centre is …` say what a stitch is made of. They stand in a line of their own that gives
        it a name, `stitch bobble is 5 dc together in one place`; in a row stands that name and where it goes, `bobble in next`. So it is
        explained once, counted by its name, and can be found by the row after it.
        """,
        SmallPattern.With("Bobble cloth",
            """
            piece cloth
              begin with 17 stitches
              row 1 RS: sc across
              row 2: sc, (sc 3, 4 dc together in next) across
            """),
        SmallPattern.With("Bobble cloth",
            """
            stitch knot is 4 dc together in one place

            piece cloth
              begin with 17 stitches
              row 1 RS: sc across
              row 2: sc, (sc 3, knot in next) across
            """));

    internal static Diagnostic Place(TextSpan span) =>
        new(Kind, span, "this says what a stitch is made of; in a row it has to be said which place that is")
        {
            Help = "write `in next`, or define a stitch: `stitch shell is (5 dc) in one place`",
        };

    internal static Diagnostic TurnBack(TextSpan span) =>
        new(Kind, span, "a chain that is worked back along is a stitch with a name")
        {
            Help = "define it at the top of the file, `stitch tip is ch 6, turn back, sc, hdc, dc 3`, and write `tip` in the row",
        };

    internal static Diagnostic Words(TextSpan span) =>
        new(Kind, span, "what ends in one loop, or has a centre, is a stitch with a name")
        {
            Help = "define it, `stitch bobble is 5 dc together in one place`, and write `bobble` in the row; a decrease is `dc2tog`",
        };
}
