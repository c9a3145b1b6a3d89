using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A motif that a blanket in rows and columns can't be made of.</summary>
public static class BlanketMotif
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "blanket-motif",
        "TR0436",
        Severity.Error,
        """
        A blanket is made of motifs with four sides, in rows and columns, or with six, in rows that are set off by half a motif. Where two motifs meet, a side lies
        along the one opposite to it, of a square the first along a third and the second along a fourth: these need as many places to be joined in as each other.
        So the last round of the motif has four or six corners, its right side faces, and opposite sides have as many stitches and spaces. Other
        motifs are joined one by one with `join to` or with seams.
        """,
        SmallPattern.With("Blanket",
            """
            piece tile
              begin with ring
              round 1: (3 dc, ch 2, mark corner) 3 times in ring
              fasten off
            blanket throw of tile: 4 across, 5 down, join in each corner
            """),
        SmallPattern.With("Blanket",
            """
            piece tile
              begin with ring
              round 1: (3 dc, ch 2, mark corner) 4 times in ring
              fasten off
            blanket throw of tile: 4 across, 5 down, join in each corner
            """));

    internal static Diagnostic Sides(Context context, TextSpan span, int[] sizes, Piece made, string motif)
    {
        var corners = MotifSides.Count(made);
        var what = corners == 0 ? $"{motif} has no sides: its last row is no round with corners"
            : corners is 4 or 6 ? $"the last round of {motif} has the wrong side facing"
            : Invariant($"{motif} has {corners} sides");
        return new(Kind, span, $"{what}, and motifs of a blanket have four or six, worked with the right side facing{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "mark four corners in its first round, or six, and work `in corner` in the others; other shapes are joined one by one, `join to … first side`",
        };
    }

    internal static Diagnostic Unlike(Context context, TextSpan span, int[] sizes, Piece made, string motif, int side) =>
        new(Kind, span, $"the {MotifSides.Names[side]} side of {motif} has {Of(made, side)}, and its {MotifSides.Names[Opposite(made, side)]} side, which lies along it in the next motif, has {Of(made, Opposite(made, side))}{context.Findings.InSizes(sizes)}")
        {
            Sizes = context.Findings.Names(sizes),
            Help = "make opposite sides alike",
        };

    private static int Opposite(Piece made, int side) => side + (MotifSides.Count(made) / 2);

    /// <summary>What a side has from corner to corner.</summary>
    internal static string Of(Piece made, int side)
    {
        var places = MotifSides.PlacesOf(made, MotifSides.Of(made, side)!.Stretches[0]);
        var spaces = places.CountWhere(static p => p.Kind == PlaceKind.Space);
        return $"{Counted.Stitches(places.Count - spaces)}{(spaces == 0 ? string.Empty : $" and {Counted.Spaces(spaces)}")}";
    }
}
