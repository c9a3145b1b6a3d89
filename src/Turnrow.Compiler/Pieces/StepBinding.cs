using Turnrow.Compiler.Claims;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Text;
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
            Unknown(context, piece, statement.Claim);
            return;
        }

        var short_ = Sized.Where(context.Sizes, i =>
            counts[i] is { } n && piece.Builders[i].Ahead is { } ahead && (long)n * hands.Length >= ahead.Count && n > 0);
        if (short_.Length > 0) context.Findings.Add(EdgeShort.At(context, statement.Count.Span, piece, short_, counts, i => piece.Builders[i].Ahead!.Count, hands.Length));
        CheckMeet(context, piece, statement.Edge.Span, hands, counts, false);
        Step(context, piece, statement, hands, counts, false, false, short_);
        new ClaimBinder(context).CheckAhead(piece, new ClaimBinder(context).Bind(statement.Claim));
    }

    public static void Bind(Context context, PieceState piece, AddStatement statement)
    {
        Begun.Check(context, piece, statement.Span);
        var counts = context.Evaluate.Counts(statement.Count);
        if (EdgeBinder.Bind(context, piece, statement.Edge) is not { } hands)
        {
            Unknown(context, piece, statement.Claim);
            return;
        }

        CheckMeet(context, piece, statement.Edge.Span, hands, counts, true);
        Step(context, piece, statement, hands, counts, true, statement.OneRowApart, []);
        new ClaimBinder(context).CheckAhead(piece, new ClaimBinder(context).Bind(statement.Claim));
    }

    // At which edge is not known, so neither is the count; a claim may say it.
    private static void Unknown(Context context, PieceState piece, ClaimSyntax? claim)
    {
        piece.StepsInDoubt = true;
        piece.Doubt(false);
        ClaimBinder.Trust(piece, new ClaimBinder(context).Bind(claim));
    }

    // Stitches left and chains added at one edge before one row: the chains would hang on stitches that are not worked.
    private static void CheckMeet(Context context, PieceState piece, TextSpan span, Hand[] hands, int?[] counts, bool adds)
    {
        var meet = Sized.Where(context.Sizes, i => counts[i] > 0 && Array.Exists(hands, h => piece.Builders[i].PendingStep(h) is { } step && step.Adds != adds));
        if (meet.Length > 0) context.Findings.Add(StepsMeet.At(context, span, meet, adds));
    }

    private static void Step(
        Context context, PieceState piece, StatementSyntax statement, Hand[] hands, int?[] counts, bool adds, bool apart, int[] skip)
    {
        var large = Sized.Where(context.Sizes, i => counts[i] is { } n && Array.Exists(hands, h => piece.Builders[i].PendingStep(h)?.Count + n > Evaluator.LargestCount));
        if (large.Length > 0) context.Findings.Add(TooLarge.At(statement.Span, context.Findings, large, Evaluator.LargestCount));
        for (var i = 0; i < counts.Length; i++)
        {
            if (!context.Here.Has(i)) continue;
            var builder = piece.Builders[i];
            if (counts[i] is not { } count || Array.IndexOf(skip, i) >= 0 || Array.IndexOf(large, i) >= 0)
            {
                piece.StepsInDoubt = true;
                builder.Doubt(false);
                continue;
            }

            if (apart && hands.Length == 2)
            {
                builder.AddChainsApart(count, new Origin(statement));
                continue;
            }

            foreach (var hand in hands) builder.AddStep(hand, adds, count, new Origin(statement));
        }

        piece.Changed();
    }
}
