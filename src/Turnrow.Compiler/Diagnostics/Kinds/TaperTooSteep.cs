using Turnrow.Fabric.Shaping;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A taper that does not fit in its rows.</summary>
public static class TaperTooSteep
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "taper-too-steep",
        "TR0333",
        Severity.Error,
        """
        The shaping is to be spread evenly over its rows, one stitch at a time at each edge, and there are more changes than rows. The
        message says how many fit. Give it more rows, or aim at a count that is nearer. To take off several stitches at once, as at an
        underarm or for a shoulder, use `leave 4 at both edges` first, or a given shaping: `dec 2 at both edges every row`.
        """,
        SmallPattern.With("Hat",
            """
            piece flap
              begin with 20 stitches
              row 1 RS: dc across
              shape 6 rows evenly to 4, at both edges
            """),
        SmallPattern.With("Hat",
            """
            piece flap
              begin with 20 stitches
              row 1 RS: dc across
              shape 8 rows evenly to 4, at both edges
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, Func<int, Taper> taper, int edges, int?[] differences)
    {
        var first = taper(sizes[0]);
        var most = TaperSolver.MostChanges(first);
        var each = edges == 2 ? " at each edge" : string.Empty;
        return new(Kind, span, Invariant($"{Counted.Times(first.Changes)}{each} do not fit into {Counted.Rows(first.Rows)}{context.Findings.InSize(sizes[0])}: {(first.EveryOtherRow ? "each right-side row" : "once a row")} is {Counted.Times(most)}, {Counted.Stitches(most * edges)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = [context.Findings.Each(sizes, i => Invariant($"{Counted.Stitches(Math.Abs(differences[i]!.Value))} {(differences[i] > 0 ? "more" : "fewer")} in {Counted.Rows(taper(i).Rows)}"))],
            Help = "give it more rows, or aim at a count that is nearer",
        };
    }

    internal static Diagnostic Around(Context context, TextSpan span, int[] sizes, Func<int, (int From, int To, int Rounds)> slope)
    {
        var (from, to, rounds) = slope(sizes[0]);
        return new(Kind, span, Invariant($"from {from} to {to} does not fit into {rounds} {(rounds == 1 ? "round" : "rounds")}{context.Findings.InSize(sizes[0])}: a round can have twice as many as the one before it at most, and half as many at least"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = sizes.Length > 1 ? [context.Findings.Each(sizes, i => Invariant($"{slope(i).From} to {slope(i).To} in {slope(i).Rounds}"))] : [],
            Help = "give it more rounds, or aim at a count that is nearer",
        };
    }
}
