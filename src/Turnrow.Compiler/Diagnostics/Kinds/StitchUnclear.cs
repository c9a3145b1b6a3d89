using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A stitch is defined by what can't be part of a stitch.</summary>
public static class StitchUnclear
{
    private const string Forms = "`(5 dc) in one place`, `5 dc together in one place` or `skip 1, dc in next, dc in skipped`";

    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "stitch-unclear",
        "TR0480",
        Severity.Error,
        """
        A stitch of your own is the same wherever it is worked: so many places taken, so many made. So it is said in stitches, chains and
        skipped places alone, either all in one place, `(2 dc, ch 1, 2 dc) in one place`, or place by place, `skip 1, dc in next, dc in skipped`;
        with `together` behind it, all of it ends in one loop. What goes as far as there is room (`across`, `until 3 remain`), what
        increases, decreases or leaves belongs into the row that uses the stitch.
        """,
        SmallPattern.With("Shell cloth",
            """
            stitch shell is dc across

            piece cloth
              begin with 19 stitches
              row 1 RS: sc across
              row 2: sc, (skip 2, shell in next, skip 2, sc) across
            """),
        SmallPattern.With("Shell cloth",
            """
            stitch shell is (5 dc) in one place

            piece cloth
              begin with 19 stitches
              row 1 RS: sc across
              row 2: sc, (skip 2, shell in next, skip 2, sc) across
            """));

    internal static Diagnostic At(TextSpan span) =>
        new(Kind, span, "this can't be part of a stitch, which is the same wherever it is worked") { Help = $"say it as {Forms}" };

    internal static Diagnostic Of(RowItemSyntax item) => item switch
    {
        TogetherItem => At(item.Span) with { Help = "give it a line of its own, and use its name here: `stitch cluster is 3 dc together in one place`, then `(cluster, ch 1, cluster) in one place`" },
        GroupItem { Times: not null, Place: not null } => At(item.Span) with { Help = "so many times, all in one place, reads: `((dc, ch 1) 2 times) in next`" },
        YarnItem => new(Kind, item.Span, "a stitch takes up no yarn: it is worked with the one in the hand")
        {
            Help = "say the yarns in the row: `2 dc in next, with cream, dc in same, dc in same`",
        },
        _ => At(item.Span),
    };

    internal static Diagnostic Place(TextSpan span) =>
        new(Kind, span, "inside a stitch only `in one place`, `in next`, `in same` and `in skipped` can be said")
        {
            Help = "what place that is in a row is said where the stitch is used: `shell in next sp`",
        };

    internal static Diagnostic NothingSkipped(TextSpan span) =>
        new(Kind, span, "no place has been skipped that this could go back to") { Help = "such words read: skip 1, dc in next, dc in skipped" };

    internal static Diagnostic Crossings(TextSpan span) =>
        new(Kind, span, "some of what goes back passes in front, and some does not") { Help = "say the same of all of them: `dc in skipped in front`, or `dc in skipped behind`" };

    internal static Diagnostic Number(TextSpan span) =>
        new(Kind, span, "so many in one place, or one in each of so many?")
        {
            Help = "in one place: `2 dc in next`; in each: `dc 2`; if all of the stitch goes into one place: `(2 dc) in one place`",
        };

    internal static Diagnostic Nothing(StitchStatement statement) =>
        new(Kind, statement.Span, $"`{statement.Name.Text}` works nothing into any place") { Help = $"say it as {Forms}" };

    internal static Diagnostic Together(TextSpan span) =>
        new(Kind, span, "at least two stitches end together in one loop, and no chains stand between them") { Help = "such words read: 5 dc together in one place; (sc, dc) together" };

    internal static Diagnostic CentreOfOne(TextSpan span) =>
        new(Kind, span, "stitches that end together make one place, which is its own centre") { Help = "leave the centre out" };

    internal static Diagnostic Sizes(TextSpan span) =>
        new(Kind, span, "a stitch is the same in all sizes")
        {
            Help = "give it a number, and say in the row which: `stitch fan of n is (n tr) in one place`, then `fan of 5 (7, 9) in next`",
        };

    internal static Diagnostic TooLong(TextSpan span, int most) =>
        new(Kind, span, Invariant($"a stitch is made of at most {most} parts")) { Help = "write the rest into the row" };
}
