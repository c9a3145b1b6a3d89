using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Publishing.Instructions.Telling;

namespace Turnrow.Publishing.Instructions.Folding;

/// <summary>A row of one size and how it is told.</summary>
internal sealed record ToldRow(Row Row, RowDescription Description);

/// <summary>The rows that one line makes in one size, in order.</summary>
/// <param name="Size">The size's index.</param>
/// <param name="Piece">The piece in that size.</param>
/// <param name="Rows">The rows; a line may make none.</param>
internal sealed record SizeRows(int Size, Piece Piece, IReadOnlyList<ToldRow> Rows);
