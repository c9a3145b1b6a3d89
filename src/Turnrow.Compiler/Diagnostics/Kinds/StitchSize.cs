using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>The number of a stitch: missing, out of range, or where there is none.</summary>
public static class StitchSize
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "stitch-size",
        "TR0482",
        Severity.Error,
        """
        Some stitches come in several sizes: `stitch fan of n is (n tr) in one place` makes of `fan of 7` seven treble. The row has to say which,
        and only such a stitch can have a number. Behind the number nothing else can be counted: several of them are `(fan of 7) 3 times`.
        """,
        SmallPattern.With("Fan cloth",
            """
            stitch wing of n is (n tr) in one place

            piece cloth
              begin with 19 stitches
              row 1 RS: sc across
              row 2: sc, (skip 2, wing in next, skip 2, sc) across
            """),
        SmallPattern.With("Fan cloth",
            """
            stitch wing of n is (n tr) in one place

            piece cloth
              begin with 19 stitches
              row 1 RS: sc across
              row 2: sc, (skip 2, wing of 5 in next, skip 2, sc) across
            """));

    internal static Diagnostic Missing(TextSpan span, string word) =>
        new(Kind, span, $"`{word}` comes in several sizes: which one is this?")
        {
            Help = $"write `{word} of 5`",
            Mends = [new Mend($"write `{word} of 5`", span, $"{word} of 5")],
        };

    internal static Diagnostic None(TextSpan span, string word) =>
        new(Kind, span, $"`{word}` is always the same, so it has no number")
        {
            Help = $"leave `of …` out; several of them are `{word} 3`",
        };

    internal static Diagnostic Range(TextSpan span, StitchFamily family, int number) =>
        new(Kind, span, Invariant($"there is no `{family.Word} of {number}`"))
        {
            Help = Invariant($"its number can be from {family.Least} to {family.Most}"),
        };
}
