using Turnrow.Compiler.Claims;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary><c>leave 6 at both edges</c> and <c>add 6 at armhole</c></summary>
internal static class StepBinding
{
    public static void Bind(Context context, PieceState piece, LeaveStatement statement)
    {
        Begun.Check(context, piece, statement.Span);
        var counts = context.Evaluate.Counts(statement.Count);
        if (EdgeBinder.Bind(context, piece, statement.Edge) is not { } hands)
        {
            piece.Doubt(false);
            return;
        }

        var short_ = Sized.Where(context.Sizes, i =>
            counts[i] is { } n && piece.Builders[i].Ahead is { } ahead && (long)n * hands.Length >= ahead.Count && n > 0);
        if (short_.Length > 0) context.Findings.Add(EdgeShort.At(context, statement.Count.Span, short_, counts, i => piece.Builders[i].Ahead!.Count, hands.Length));
        Step(piece, statement, hands, counts, false, false, short_);
        new ClaimBinder(context).CheckAhead(piece, new ClaimBinder(context).Bind(statement.Claim));
    }

    public static void Bind(Context context, PieceState piece, AddStatement statement)
    {
        Begun.Check(context, piece, statement.Span);
        var counts = context.Evaluate.Counts(statement.Count);
        if (EdgeBinder.Bind(context, piece, statement.Edge) is not { } hands)
        {
            piece.Doubt(false);
            return;
        }

        Step(piece, statement, hands, counts, true, statement.OneRowApart, []);
        new ClaimBinder(context).CheckAhead(piece, new ClaimBinder(context).Bind(statement.Claim));
    }

    private static void Step(PieceState piece, StatementSyntax statement, Hand[] hands, int?[] counts, bool adds, bool apart, int[] skip)
    {
        for (var i = 0; i < counts.Length; i++)
        {
            var builder = piece.Builders[i];
            if (counts[i] is not { } count || Array.IndexOf(skip, i) >= 0)
            {
                builder.Doubt(false);
                continue;
            }

            foreach (var hand in hands)
            {
                // One row apart: first the edge where the hook is, then the other one, where it is after the next row.
                builder.AddStep(hand, adds, count, apart && hand != builder.HookAt ? 1 : 0, new Origin(statement));
            }
        }

        piece.Changed();
    }
}
