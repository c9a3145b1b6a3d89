using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

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
        return new(Kind, expect.Span, $"{counts(first)} {(expect.OfRows ? "rows" : "stitches")} measure {context.Length(measured[first]!.Value)}{context.Findings.InSize(first)}, not {context.Length(asked[first]!.Value)}{Within(context, within[first]!.Value)}")
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = sizes.Length > 1 ? [context.Findings.Each(sizes, i => $"{context.Length(measured[i]!.Value)} for {context.Length(asked[i]!.Value)}")] : [],
            Help = "change the count, the gauge or what is expected; or allow more (`within 1 cm`)",
        };
    }

    private static string Within(Context context, Rational within)
    {
        return within == Rational.Zero ? string.Empty : $" within {context.Length(within)}";
    }
}
