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
        PAGE
        """,
        """
        BAD
        """,
        """
        GOOD
        """);

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
