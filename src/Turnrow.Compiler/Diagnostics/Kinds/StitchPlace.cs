using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A place in a special stitch that it does not have.</summary>
public static class StitchPlace
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "stitch-place",
        "TR0483",
        Severity.Error,
        """
        A later row can go into a special stitch by its name: `sc in next shell` means its centre, which is its only space, the middle one of
        an odd number of stitches, or the one that its definition names, `centre is 3rd dc`. A shell of four has no middle of its own,
        and none is chosen for you. Any of its stitches can be named: `sc in 2nd dc of next shell`, counted as the row meets them.
        """,
        SmallPattern.With("Shell cloth",
            """
            stitch clam is (4 dc) in one place

            piece cloth
              begin with 17 stitches
              row 1 RS: sc across
              row 2: sc, (skip 3, clam in next, skip 3, sc) across
              row 3: sc, (ch 3, sc in next clam, ch 3, skip 2, sc) across
            """),
        SmallPattern.With("Shell cloth",
            """
            stitch clam is (4 dc) in one place

            piece cloth
              begin with 17 stitches
              row 1 RS: sc across
              row 2: sc, (skip 3, clam in next, skip 3, sc) across
              row 3: sc, (ch 3, sc in 2nd dc of next clam, ch 3, skip 2, sc) across
            """));

    internal static Diagnostic NoCentre(TextSpan span, string word) =>
        new(Kind, span, $"`{word}` has no middle that its name could mean")
        {
            Help = $"say which, `in 2nd dc of next {word}`, or name its centre where it is defined: `centre is 2nd dc`",
        };

    internal static Diagnostic Missing(TextSpan span, string word, string kind, int there) =>
        new(Kind, span, Invariant($"`{word}` has {there} of `{kind}`")) { Help = "count as the row meets them, from 1st on" };

    internal static Diagnostic CentreMissing(TextSpan span, int there) =>
        new(Kind, span, Invariant($"the stitch has {there} of them")) { Help = "count from its beginning, from 1st on" };

    internal static Diagnostic NotSpecial(TextSpan span, string word) =>
        new(Kind, span, $"`{word}` is one place, so there is nothing in it to count")
        {
            Help = $"write `in next {word}`",
        };

    internal static Diagnostic Words(TextSpan span) =>
        new(Kind, span, "this names no place in a special stitch") { Help = "such words read: sc in 3rd dc of next shell" };
}
