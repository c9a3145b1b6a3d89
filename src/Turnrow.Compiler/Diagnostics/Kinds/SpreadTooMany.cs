using Turnrow.Compiler.Pieces;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>More increases, decreases or other things spread evenly than fit in a row.</summary>
public static class SpreadTooMany
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "spread-too-many",
        "TR0307",
        Severity.Error,
        """
        Increases, decreases or the words in a bracket are to be spread evenly over a row, and there are more of them than the row has room
        for. An increase needs a stitch of its own, a decrease needs two, a buttonhole `(ch 2, skip 2)` the two that it skips; what stays
        plain at each end comes on top. So 20 stitches can be increased by 20 at most, and decreased by 10. Spread them over two rows,
        or take a smaller number in the sizes named.
        """,
        SmallPattern.With("Hat",
            """
            piece crown
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dc dec 12 evenly
            """),
        SmallPattern.With("Hat",
            """
            piece crown
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dc dec 8 evenly
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, Func<int, RowFailure> failureOf, string word)
    {
        var fault = failureOf(sizes[0]).Fault;
        var spread = (Spread)fault.Word!;
        var ledger = sizes.Length > 1 ? new[] { "stitches: " + context.Findings.Each(sizes, i => Invariant($"{failureOf(i).Fault.There}")) } : [];
        return new(Kind, span, Invariant($"`{word}` does not fit into {Counted.Stitches(fault.There)}{context.Findings.InSize(sizes[0])}: {Limit(spread, fault.There)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = [.. Sum(spread, fault.There), .. ledger],
            Help = spread is { AtEachEnd: { }, Times: 1 } ? "put it in its place with numbers: `sc 20, ch 2, skip 2, sc across`"
                : spread is { Takes: 1, AtEachEnd: null } ? "each increase needs a stitch of its own; spread them over two rows"
                : spread.Words is [Work { Takes: 2, Makes: 1 }] ? "each decrease needs two stitches; spread them over two rows"
                : "spread fewer, or leave fewer at the ends",
        };
    }

    private static string Limit(Spread spread, int there)
    {
        var most = Most(spread, there);
        return spread is { AtEachEnd: { } ends, Times: 1 } && most > 0 ? Invariant($"one alone can't have {ends} on both sides")
            : most == 0 ? "there is not even room for one"
            : Invariant($"{most} would be the most");
    }

    // Between two that can't touch stands one stitch; what is no distance from an end has half a gap there.
    private static long Most(Spread spread, int there)
    {
        var apart = spread.StandsApart ? 1 : 0;
        var room = there - (2L * (spread.AtEachEnd ?? 0)) + (spread.AtEachEnd is null ? 0 : apart);
        return Math.Max(0, room / Math.Max(1, spread.Takes + apart));
    }

    // What was asked for, added up.
    private static string[] Sum(Spread spread, int there)
    {
        if (spread.AtEachEnd is not { } ends || spread.Times < 2) return [];
        var apart = spread.StandsApart ? spread.Times - 1 : 0;
        var wanted = ((long)spread.Times * spread.Takes) + (2L * ends) + apart;
        var between = apart > 0 ? Invariant($" + {apart} between") : string.Empty;
        return [Invariant($"{spread.Times} x {spread.Takes} + 2 x {ends}{between} = {wanted}, of {there}")];
    }
}
