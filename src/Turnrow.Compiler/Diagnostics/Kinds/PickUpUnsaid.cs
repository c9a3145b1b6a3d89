using Turnrow.Fabric.Places;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A pick-up that meets places of a kind that nothing is said of.</summary>
public static class PickUpUnsaid
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "pick-up-unsaid",
        "TR0585",
        Severity.Error,
        """
        Stitches are picked up along a row of stitches and spaces, and what goes into one of the two is not said. Into a space of one chain goes one
        stitch as a rule, into one of four chains three or four, and some borders leave the spaces out: only you know. Say it of each kind: `1 sc in
        each st, 3 sc in each sp`, `1 sc in each st and sp`, or `1 sc in each st, skip each sp`. Of spaces of different sizes, `1 sc in each ch-1 sp`
        and `3 sc in each ch-3 sp` each speak of their own.

        The yarn is joined in the first place of the walk, so that one can't be skipped.
        """,
        SmallPattern.With("Curtain",
            """
            piece net
              begin with 21 stitches
              row 1 RS: dc across
              row 2: dc, (ch 4, skip 3, dc) across
              row 3: dc, (ch 4, dc in next dc) across

            piece border picked up along net last row: 1 sc in each st
              row 2: sc across
            """),
        SmallPattern.With("Curtain",
            """
            piece net
              begin with 21 stitches
              row 1 RS: dc across
              row 2: dc, (ch 4, skip 3, dc) across
              row 3: dc, (ch 4, dc in next dc) across

            piece border picked up along net last row: 1 sc in each st, 3 sc in each sp
              row 2: sc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, IReadOnlyDictionary<Place, int> unsaid, string stitch)
    {
        var spaces = unsaid.Where(static u => u.Key.Kind == PlaceKind.Space).ToList();
        var count = spaces.Count > 0 ? spaces.Sum(static u => u.Value) : unsaid.Values.Sum();
        var chains = spaces.Count > 0 ? spaces[0].Key.Chains : 0;
        var one = spaces.Count == 0 ? "st" : spaces.TrueForAll(s => s.Key.Chains == chains) ? Invariant($"ch-{chains} sp") : "sp";
        return new(Kind, span, Invariant($"along the way are {count} {one}{(count == 1 ? string.Empty : "s")}{context.Findings.InSizes(sizes)}, and what goes into {(count == 1 ? "it" : "them")} is not said"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = Invariant($"add how many: `{Math.Max(1, chains - 1)} {stitch} in each {(spaces.Count == 0 ? "st" : "sp")}`; or pass over them, `skip each {(spaces.Count == 0 ? "st" : "sp")}`"),
        };
    }

    internal static Diagnostic FirstSkipped(Context context, TextSpan span, int[] sizes) =>
        new(Kind, span, $"yarn is joined in the first place of the walk, and that one is skipped{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "let the walk begin at another edge, or work one stitch into each place of this kind",
        };
}
