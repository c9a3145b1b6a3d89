using Turnrow.Compiler.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Two shapings at one edge in one row.</summary>
public static class ShapingsMeet
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "shapings-meet",
        "TR0331",
        Severity.Error,
        """
        Two shapings of this line fall on the same edge in the same row. The maker would come to one end of a row and find two things to
        do there. An edge has one schedule at a time. If both are meant, put them together (`dec 2`), or let one follow the other with `,
        then every 4 rows 3 times`. Often `both edges` was written where one edge was meant. In rounds the right edge is the beginning of the
        round, and the left edge its end.
        """,
        SmallPattern.With("Vest",
            """
            piece front
              begin with 30 stitches
              left edge is neck
              row 1 RS: dc across
              shape 8 rows: dec 1 at neck every 2 rows; dec 1 at both edges every 4 rows
            """),
        SmallPattern.With("Vest",
            """
            piece front
              begin with 30 stitches
              left edge is neck
              row 1 RS: dc across
              shape 8 rows: dec 1 at neck every 2 rows; dec 1 at right edge every 4 rows
            """));

    internal static Diagnostic At(Context context, TextSpan span, PieceState piece, int size, int row, Hand hand) =>
        new(Kind, span, Invariant($"{Edge(piece, size, hand)} is shaped already in {RowName.Next(piece, size)} {row} of these{context.Findings.InSize(size)}"))
        {
            Help = $"an edge has one schedule at a time: put the two together (`dec 2`), let one follow the other (`, then every 4 {RowName.Next(piece, size)}s`), or name the other edge",
        };

    internal static Diagnostic Evenly(Context context, TextSpan span, PieceState piece, int size, int row) =>
        new(Kind, span, Invariant($"two things are spread evenly over {RowName.Next(piece, size)} {row} of these{context.Findings.InSize(size)}"))
        {
            Help = "put the two together, or let one follow the other (`, then every 4 rounds`)",
        };

    // A round has no edges: it is shaped on one side of its beginning or on the other.
    private static string Edge(PieceState piece, int size, Hand hand)
    {
        var builder = piece.Builders[size];
        if (builder.NameOf(hand) is { } name) return name;
        if (builder.InRounds) return hand == Hand.Right ? "the beginning of the round" : "the end of the round";
        return hand == Hand.Right ? "the right edge" : "the left edge";
    }
}
