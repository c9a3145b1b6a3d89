using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Tests.Mutations;

/// <summary>One single change to a pattern, such as a hand or a thought that slips would make.</summary>
/// <param name="Kind">What kind of slip it is, in the designer's words.</param>
/// <param name="Pattern">The pattern as it should be.</param>
/// <param name="Index">Number of the line where it happens, among the pattern's lines.</param>
/// <param name="Edit">The change.</param>
internal sealed record Slip(string Kind, SlipPattern Pattern, int Index, Edit Edit)
{
    /// <summary>What the line says without the slip.</summary>
    public StatementSyntax Statement => Pattern.Tree.Lines[Index].Statement!;

    /// <summary>The piece whose line it is; null outside of pieces.</summary>
    public PieceStatement? Piece => Pattern.PieceAt(Index);

    /// <summary>Where it is and what it does, for a person.</summary>
    public string Shown
    {
        get
        {
            var source = Pattern.Tree.Source;
            var gone = source.ToString(Edit.Span).Trim();
            var line = source.PositionOf(Pattern.Tree.Lines[Index].Span.Start).Line;
            return $"{Path.GetFileNameWithoutExtension(Pattern.Path)}:{line}: {Kind}: `{gone}` -> `{Edit.NewText.Trim()}` in `{source.ToString(Pattern.Tree.Lines[Index].Span)}`";
        }
    }
}
