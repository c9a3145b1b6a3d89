using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A row in the middle is to be picked up along, and the row above left none of its loops free.</summary>
public static class LoopsTaken
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "loops-taken",
        "TR0578",
        Severity.Error,
        """
        A stitch has two loops at its top. A row that goes through the back loops alone leaves the front loops free, on the side that faces the maker, and
        a row through the front loops leaves the back loops. Into these a skirt, a sole, petals are worked later: `picked up around body round 5`. The row
        above, here round 6, has to be worked through the one loop of every stitch, `back-loop sc around`, and pass none over. Of the last row nothing is
        taken yet: that is `last row`.
        """,
        SmallPattern.With("Doll",
            """
            piece body
              begin with 24 stitches
              round 1: sc around
              round 2: sc around
              round 3: sc around

            piece skirt picked up around body round 1: 1 sc in each st
            """),
        SmallPattern.With("Doll",
            """
            piece body
              begin with 24 stitches
              round 1: sc around
              round 2: back-loop sc around
              round 3: sc around

            piece skirt picked up around body round 1: 1 sc in each st
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, LoopsFault fault, Piece made, string piece, int row)
    {
        var (one, above) = (NameOf(made, row), NameOf(made, row + 1));
        var (message, help) = fault switch
        {
            LoopsFault.NoRow => ($"{piece} has {Rows(made)}, and no {one}", $"write a number from 1 to {Counted.Plain(Math.Max(1, made.Rows.Count - 1))}"),
            LoopsFault.IsLast => ($"{one} is the last of {piece}, and no loop of it is taken yet", $"write `{piece} last row`"),
            LoopsFault.HasSpaces => ($"{one} of {piece} has chain spaces, which have no loops", "work a row without spaces below the loops that are to be free"),
            LoopsFault.BothLoops => ($"{above} of {piece} is not worked through one loop of {one}, so none stays free", $"work {above} through one loop, `back-loop sc around`, and the front loops of {one} stay free"),
            LoopsFault.OtherLoops => ($"{above} of {piece} goes through the front loop of some stitches of {one} and through the back loop of others", $"work all of {above} through the same loop"),
            _ => ($"{above} of {piece} is not worked into every stitch of {one}", $"let {above} go over all of {one}, through one loop of each stitch"),
        };
        return new(Kind, span, message + context.Findings.InSizes(sizes)) { Sizes = context.Findings.Names(sizes), Help = help };
    }

    private static string NameOf(Piece made, int row) =>
        $"{(row <= made.Rows.Count && row > 0 ? made.Rows[row - 1].IsRound : made.EndsInRounds) switch { true => "round", false => "row" }} {Counted.Plain(row)}";

    private static string Rows(Piece made) => made.EndsInRounds ? Counted.Rounds(made.Rows.Count) : Counted.Rows(made.Rows.Count);
}
