using Turnrow.Compiler.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A side that is not the row's own.</summary>
public static class RowSide
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "row-side",
        "TR0311",
        Severity.Error,
        """
        The work is turned after each row, so right-side and wrong-side rows take turns. This row is said to have the side that it can't
        have. On a garment that matters: shaping at the neck would land at the side seam. Perhaps an earlier row is missing or is one too
        many. If the number of rows before is right, change the side here or leave it out.

        Rounds are not turned: each has the side facing that the one before had, which is the right side. To go back over the last one, write a
        row: `row WS: dc across`. Where the work is turned after each round, say so before them: `rounds are joined and turned`.

        Tip: to end on a certain side, write `straight for 10 cm, end WS`.
        """,
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2 RS: dc across
            """),
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2 WS: dc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, PieceState piece, int[] sizes, bool rightSide)
    {
        var side = rightSide ? "WS" : "RS";
        var isRound = piece.Builders[sizes[0]].InRounds;
        var name = RowName.Of(piece, sizes[0], piece.Builders[sizes[0]].RowCount + 1);
        var is_ = isRound ? $"is worked with the {(rightSide ? "wrong" : "right")} side facing" : $"is a {(rightSide ? "wrong" : "right")}-side row";
        return new(Kind, span, Invariant($"{name} of {piece.Name} {is_}{context.Findings.InSizes(sizes)}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = isRound && piece.Builders[sizes[0]].RoundsAre != RoundWay.Turned ? $"write `{side}`, or leave the side out: rounds are not turned; to work back over the last one, write a row, such as `row WS: dc across`"
                : sizes.Length == context.Sizes ? $"write `{side}`, or leave the side out; if the side is right, an earlier row is missing or one too many"
                : "leave the side out; if the side is right, an earlier row is missing or one too many in these sizes",
            Mends = sizes.Length == context.Sizes ? [new Mend($"write {side}", span, side)] : [],
        };
    }
}
