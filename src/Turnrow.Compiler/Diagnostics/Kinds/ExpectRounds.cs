using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A piece is to lie in some way in rounds that it does not have.</summary>
public static class ExpectRounds
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "expect-rounds",
        "TR0445",
        Severity.Error,
        """
        How a piece lies is looked at in the rounds named here, and it does not have all of them, or the last lies before the first. Nothing would be
        checked. Name rounds that are there, from the lower number to the higher, or leave the choice out for all of them.
        """,
        SmallPattern.With("Coaster",
            """
            gauge sc: 20 stitches and 20 rows to 10 cm

            piece coaster
              begin with ring
              round 1: 6 sc in ring
              round 2: sc inc 6 evenly
              expect coaster lies flat in rounds 1 to 4
            """),
        SmallPattern.With("Coaster",
            """
            gauge sc: 20 stitches and 20 rows to 10 cm

            piece coaster
              begin with ring
              round 1: 6 sc in ring
              round 2: sc inc 6 evenly
              expect coaster lies flat in rounds 1 to 2
            """));

    internal static Diagnostic At(Context context, ExpectLieStatement expect, int[] sizes, Func<int, (int From, int To)> said, Func<int, int> there)
    {
        var (from, to) = said(sizes[0]);
        var why = from > to ? Invariant($"rounds {from} to {to} run backwards") : Invariant($"{expect.Piece.Text} has no round {Math.Max(from, there(sizes[0]) + 1)}");
        return new(Kind, expect.Span, Invariant($"{why}{context.Findings.InSize(sizes[0])}: it has {there(sizes[0])} here"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = sizes.Length > 1 ? ["rounds: " + context.Findings.Each(sizes, i => Invariant($"{there(i)}"))] : [],
            Help = Invariant($"name rounds from 1 to {there(sizes[0])}, the lower number first"),
        };
    }
}
