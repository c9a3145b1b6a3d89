using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Stitches left for later that no row works over.</summary>
public static class StitchesWaiting
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "stitches-waiting",
        "TR0452",
        Severity.Error,
        """
        Stitches were left for later, and the piece ends without a row that works over them. Rows go to and fro, so it has to be a row that goes to
        the edge where they wait; `straight 2 rows` is sure to hold one. If the stitches are to stay free, as for a neck or a slanted shoulder, leave
        them for good: without `for later`. The same is said where no row follows that goes to the edge at all.
        """,
        SmallPattern.With("Back",
            """
            piece back
              begin with 30 stitches
              row 1 RS: dc across
              row 2: dc across
              row 3: dc until 6 remain, leave 6 for later
              row 4: dc across
            """),
        SmallPattern.With("Back",
            """
            piece back
              begin with 30 stitches
              row 1 RS: dc across
              row 2: dc across
              row 3: dc until 6 remain, leave 6 for later
              row 4: dc across
              row 5: dc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, Func<int, int> count, Hand hand, int row, string piece) =>
        new(Kind, span, Invariant($"{Counted.Stitches(count(sizes[0]))} that row {row} of {piece} left for later at the {Edge(hand)} edge {(count(sizes[0]) == 1 ? "is" : "are")} never worked over{context.Findings.InSizes(sizes)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Ledger = sizes.Length > 1 ? ["waiting: " + context.Findings.Each(sizes, i => Counted.Plain(count(i)))] : [],
            Help = Invariant($"work a row that goes to the {Edge(hand)} edge (`straight 2 rows` holds one), or leave them for good, without `for later`"),
        };

    internal static Diagnostic Unreached(Context context, TextSpan span, int[] sizes, Hand hand, string piece) =>
        new(Kind, span, $"no row of {piece} follows that goes to the {Edge(hand)} edge and could turn there{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "write the rows behind this line, or take the line out",
        };

    private static string Edge(Hand hand) => hand == Hand.Right ? "right" : "left";
}
