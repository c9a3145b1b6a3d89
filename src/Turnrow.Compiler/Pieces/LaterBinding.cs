using Turnrow.Compiler.Claims;
using Turnrow.Fabric;
using Turnrow.Fabric.Pieces;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary><c>leave 6 for later at left edge</c>: the next row that goes there turns before them.</summary>
internal static class LaterBinding
{
    public static void Bind(Context context, PieceState piece, LeaveStatement statement)
    {
        Begun.Check(context, piece, statement.Span);
        var counts = context.Evaluate.Counts(statement.Count);
        var claim = new ClaimBinder(context).Bind(statement.Claim);
        if (EdgeBinder.Bind(context, piece, statement.Edge) is not { } hands)
        {
            piece.Doubt(true);
            Unknown(piece.Builders);
            return;
        }

        for (var i = 0; i < counts.Length; i++)
        {
            if (!context.Here.Has(i)) continue;
            var builder = piece.Builders[i];
            if (counts[i] is not { } count)
            {
                builder.Doubt(true);
                Unknown([builder]);
                continue;
            }

            foreach (var hand in hands) builder.LeaveForLater(hand, count, new Origin(statement));
        }

        piece.Changed();
        new ClaimBinder(context).CheckAhead(piece, claim);
    }

    // The stitches are left in one of the next two rows, and worked over two rows later.
    private static void Unknown(PieceBuilder[] builders)
    {
        foreach (var builder in builders) builder.DoubtTurns(4);
    }
}
