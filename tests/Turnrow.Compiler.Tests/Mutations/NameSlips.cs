using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Tests.Mutations;

/// <summary>Slips in names: another piece, another count, another edge than was meant.</summary>
internal static class NameSlips
{
    public static IEnumerable<Slip> Of(SlipPattern pattern, int index)
    {
        foreach (var node in pattern.NodesOf(index))
        {
            if (node.Node is not NameSyntax name) continue;
            var (kind, others) = Others(pattern, node);
            foreach (var other in others)
            {
                if (!string.Equals(other, name.Text, StringComparison.OrdinalIgnoreCase)) yield return pattern.Slip(kind, index, name.Span, other);
            }
        }
    }

    private static (string Kind, IReadOnlyList<string> Others) Others(SlipPattern pattern, NodeInLine name) => name switch
    {
        { Role: "Piece", Holder.Node: MirrorOriginSyntax } => ("a mirror's piece", pattern.PieceNames),
        { Role: "Piece", Holder.Node: PartOriginSyntax } => ("the piece that a part goes on from", pattern.PieceNames),
        { Role: "Piece" } => ("an expected piece", pattern.PieceNames),
        { Role: "Words", Holder: { Node: WalkSyntax walk } holder } => OfWalk(pattern, walk, (NameSyntax)name.Node, holder),
        { Role: "Words", Holder.Node: AcrossPartSyntax part } when ReferenceEquals(name.Node, part.Words[0]) => ("a piece that a row goes over", pattern.PieceNames),
        { Role: "Name", Holder.Node: NameExpression } => ("a name of a count or a measurement", NamesLike(pattern, ((NameSyntax)name.Node).Text)),
        { Role: "Name", Holder.Node: EdgeSyntax } => ("an edge's name", pattern.EdgeNames),
        { Role: "Name", Holder.Node: EdgeNameStatement } => ("the name that an edge is given", pattern.EdgeNames),
        _ => ("", []),
    };

    private static (string Kind, IReadOnlyList<string> Others) OfWalk(SlipPattern pattern, WalkSyntax walk, NameSyntax word, NodeInLine holder)
    {
        var what = holder.In<SeamStatement>() is not null ? "a seam's" : "a pick-up's";
        if (ReferenceEquals(word, walk.Words[0])) return (what + " piece", pattern.PieceNames);
        return pattern.EdgeNames.Contains(word.Text) ? (what + " edge by its name", pattern.EdgeNames) : ("", []);
    }

    private static IReadOnlyList<string> NamesLike(SlipPattern pattern, string name) =>
        pattern.CountNames.Contains(name) ? pattern.CountNames : pattern.MeasureNames.Contains(name) ? pattern.MeasureNames : [];
}
