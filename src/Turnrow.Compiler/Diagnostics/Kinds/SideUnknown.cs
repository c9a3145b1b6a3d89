using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A side of a motif that it does not have.</summary>
public static class SideUnknown
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "side-unknown",
        "TR0424",
        Severity.Error,
        """
        The sides of a motif are counted by its corners: the `first side` goes from the first corner of the last round to the second, in working
        order, the last side from the last corner back to the first. So a square has four and a hexagon six, and a piece whose last round has no
        corners has none; `mark corner` makes them, and `in corner` carries them up.
        """,
        SmallPattern.With("Tiles",
            """
            piece tile
              begin with ring
              round 1: (3 dc, ch 2, mark corner) 4 times in ring
              fasten off
            piece other
              begin with ring
              round 1: (3 dc, ch 2, mark corner) 4 times in ring
              fasten off
            seam tile fifth side with other first side
            """),
        SmallPattern.With("Tiles",
            """
            piece tile
              begin with ring
              round 1: (3 dc, ch 2, mark corner) 4 times in ring
              fasten off
            piece other
              begin with ring
              round 1: (3 dc, ch 2, mark corner) 4 times in ring
              fasten off
            seam tile fourth side with other first side
            """));

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, Piece made, string piece)
    {
        var sides = MotifSides.Count(made);
        return new(Kind, span, sides > 0
            ? Invariant($"{piece} has {sides} corners in its last round, so it has {sides} sides{context.Findings.InSizes(sizes)}")
            : $"{piece} has no sides: its last row is no round with corners{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = sides > 0
                ? $"its sides are the {string.Join(", ", MotifSides.Names.Take(sides))}, in working order from the first corner of the last round"
                : "mark its corners (`mark corner`), or say `last row`",
        };
    }
}
