using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A stitch of the designer's within another, where it can't be.</summary>
public static class StitchInside
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "stitch-inside",
        "TR0510",
        Severity.Error,
        """
        A stitch of your own can be made of others: `stitch double-fan is (pair, ch 2, pair) in one place`, when `stitch pair is …` stands above
        it. So no stitch can need itself, and no two can need each other: there has to be one that is worked in stitches everybody
        knows. A smaller or bigger one of the same kind has a number, `stitch fan of n is (n tr) in one place`. What goes into one place can be made
        of what takes one place each, and a picot stands behind a stitch or chains.
        """,
        SmallPattern.With("Fan cloth",
            """
            stitch fan is (fan, ch 1, fan) in one place

            piece cloth
              begin with 19 stitches
              row 1 RS: sc across
              row 2: sc, (skip 2, fan in next, skip 2, sc) across
            """),
        SmallPattern.With("Fan cloth",
            """
            stitch pair is (dc, ch 1, dc) in one place
            stitch double-fan is (pair, ch 1, pair) in one place

            piece cloth
              begin with 19 stitches
              row 1 RS: sc across
              row 2: sc, (skip 2, double-fan in next, skip 2, sc) across
            """));

    internal static Diagnostic OfItself(NameSyntax word) =>
        new(Kind, word.Span, $"`{word.Text}` is made of `{word.Text}` here, so nobody could begin it")
        {
            Help = $"write out what it is made of, or give the stitch inside a name of its own, on a line above: `stitch small-{word.Text} is …`",
        };

    internal static Diagnostic OfEachOther(NameSyntax word, StitchStatement later) =>
        new(Kind, word.Span, $"`{word.Text}` is made of this stitch in its turn, so nobody could begin either")
        {
            Help = "write out in one of them what it is made of",
            Related = [new Related(later.Name.Span, $"`{word.Text}` is defined here")],
        };

    internal static Diagnostic Wide(TextSpan span, string name, int takes) =>
        new(Kind, span, Invariant($"`{name}` is worked over {takes} places, so it can't go into one place with others"))
        {
            Help = "write out the part of it that goes here, or say the whole stitch place by place",
        };

    internal static Diagnostic OnNothing(TextSpan span, string name) =>
        new(Kind, span, $"`{name}` stands on what is made before it, and nothing is")
        {
            Help = $"write the stitch first: `(dc, {name}, dc) in one place`",
        };
}
