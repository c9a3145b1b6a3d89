using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A measurement that is not as expected.</summary>
public static class ExpectMeasure
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "expect-measure",
        "TR0360",
        Severity.Error,
        """
        An `expect` line checks that stitches or rows measure what you want by your gauge, and these do not. The pattern can be worked as
        it is, but the piece will not have the size you have in mind. Change the count, or look at the gauge line; or allow a greater
        distance, `within 2 cm`. A count that has to be a multiple of something can't always come nearer.
        """,
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm

            piece scarf
              begin with 24 stitches
              row 1 RS: dc across
              expect 24 stitches measure 20 cm, within 1 cm
            """),
        SmallPattern.With("Scarf",
            """
            gauge dc: 18 stitches and 9 rows to 10 cm

            piece scarf
              begin with 36 stitches
              row 1 RS: dc across
              expect 36 stitches measure 20 cm, within 1 cm
            """));

    internal static Diagnostic At(Context context, ExpectMeasureStatement expect, int[] sizes, Func<int, Rational> counts, Rational?[] measured, Rational?[] asked, Rational?[] within)
    {
        var first = sizes[0];
        var (made, wanted) = (measured[first]!.Value, asked[first]!.Value);
        var off = (made - wanted)!.Value;
        var what = expect.OfRows ? "rows" : "stitches";
        return new(Kind, expect.Span, $"{counts(first)} {what} measure {context.Length(made)}{context.Findings.InSize(first)}, {context.Length(off.Magnitude())} {(off > Rational.Zero ? "more" : "less")} than {Bounded(expect.Bound)}{context.Length(wanted)}{Within(context, within[first]!.Value)}")
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = sizes.Length > 1 ? [context.Findings.Each(sizes, i => $"{context.Length(measured[i]!.Value)} for {context.Length(asked[i]!.Value)}")] : [],
            Help = $"{Nearest(context, counts(first), made, wanted, what)}change the count, or look at the gauge{(expect.Bound == Bound.Same ? "; a greater distance is allowed by `within`" : string.Empty)}",
        };
    }

    private static string Bounded(Bound bound) => bound switch
    {
        Bound.AtLeast => "the least, ",
        Bound.AtMost => "the most, ",
        _ => string.Empty,
    };

    private static string Within(Context context, Rational within) =>
        within == Rational.Zero ? string.Empty : $", and only {context.Length(within)} is allowed";

    private static string Nearest(Context context, Rational count, Rational made, Rational wanted, string what) =>
        made > Rational.Zero && count * wanted is { } product && product / made is { } exact && exact + Rational.Of(1, 2)!.Value is { } half
            ? Invariant($"{context.Length(wanted)} would be {half.Floor()} {what}: ")
            : string.Empty;
}
