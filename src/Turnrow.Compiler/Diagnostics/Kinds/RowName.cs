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
    public static string Of(PieceState piece, int size, int number)
    {
        var builder = piece.Builders[size];
        var isRound = number >= 1 && number <= builder.RowCount ? builder.Rows[number - 1].IsRound : builder.InRounds;
        return string.Create(CultureInfo.InvariantCulture, $"{(isRound ? "round" : "row")} {number}");
    }
}
