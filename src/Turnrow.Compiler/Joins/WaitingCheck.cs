using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Joins;

/// <summary>Looks, at the end of a piece, for stitches left for later that no row worked over.</summary>
internal static class WaitingCheck
{
    public static void Add(Context context, PieceState piece)
    {
        foreach (var hand in (ReadOnlySpan<Hand>)[Hand.Right, Hand.Left])
        {
            var waiting = Sized.Where(context.Sizes, i => piece.Builders[i].WaitingAt(hand) > 0);
            if (waiting.Length > 0)
            {
                var first = piece.Builders[waiting[0]];
                context.Findings.Add(StitchesWaiting.At(
                    context, SpanOf(piece, first.WaitingFrom(hand).Value), waiting, i => piece.Builders[i].WaitingAt(hand), hand, first.WaitingSince(hand), piece.Name));
            }

            var asked = Sized.Where(context.Sizes, i => piece.Builders[i].AskedAt(hand) > 0 && piece.Builders[i].WaitingAt(hand) == 0);
            if (asked.Length > 0)
                context.Findings.Add(StitchesWaiting.Unreached(context, SpanOf(piece, piece.Builders[asked[0]].AskedFrom(hand).Value), asked, hand, piece.Name));
        }
    }

    // What a mirrored piece does wrong is said where it is mirrored: its lines are the original's.
    private static TextSpan SpanOf(PieceState piece, object? line) =>
        piece.MirrorOf is null && line is SyntaxNode node ? RowSpan(node) : piece.Span;

    private static TextSpan RowSpan(SyntaxNode node) => node is StatementSyntax statement ? RowFaults.RowSpan(statement) : node.Span;
}
