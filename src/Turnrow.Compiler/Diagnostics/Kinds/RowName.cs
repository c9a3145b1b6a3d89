using System.Globalization;
using Turnrow.Compiler.Pieces;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>What a message calls a row: a maker who works round has rounds.</summary>
internal static class RowName
{
    /// <summary><c>row 5</c> or <c>round 5</c>.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="size">The size, by index.</param>
    /// <param name="number">The row's number; one that is not there yet is what comes next.</param>
    public static string Of(PieceState piece, int size, int number) =>
        string.Create(CultureInfo.InvariantCulture, $"{(IsRound(piece, size, number) ? "round" : "row")} {number}");

    /// <summary><c>rows 2 to 5</c> or <c>rounds 2 to 5</c>, by what the last of them is; of one row as <see cref="Of"/>.</summary>
    public static string OfSpan(PieceState piece, int size, int first, int last) => first == last
        ? Of(piece, size, first)
        : string.Create(CultureInfo.InvariantCulture, $"{(IsRound(piece, size, last) ? "rounds" : "rows")} {first} to {last}");

    /// <summary>How many rows a piece has so far: <c>5 rows</c>, <c>1 round</c>, and of both kinds <c>5 rows and rounds</c>.</summary>
    public static string Counted(PieceState piece, int size)
    {
        var rows = piece.Builders[size].Rows;
        var rounds = 0;
        foreach (var row in rows) rounds += row.IsRound ? 1 : 0;
        return rounds == 0 ? Kinds.Counted.Rows(rows.Count)
            : rounds == rows.Count ? Kinds.Counted.Rounds(rounds)
            : $"{Kinds.Counted.Rows(rows.Count)} and rounds";
    }

    /// <summary><c>row</c> or <c>round</c>, by what comes next.</summary>
    public static string Next(PieceState piece, int size) => piece.Builders[size].InRounds ? "round" : "row";

    /// <summary>The word for working to the end of the row: <c>across</c> or <c>around</c>.</summary>
    public static string ToItsEnd(PieceState piece, int size) => piece.Builders[size].InRounds ? "around" : "across";

    private static bool IsRound(PieceState piece, int size, int number)
    {
        var builder = piece.Builders[size];
        return number >= 1 && number <= builder.RowCount ? builder.Rows[number - 1].IsRound : builder.InRounds;
    }
}
