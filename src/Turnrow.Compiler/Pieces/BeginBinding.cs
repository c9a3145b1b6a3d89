using Turnrow.Compiler.Claims;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary><c>begin with 77 stitches</c> and <c>chain 79</c></summary>
internal static class BeginBinding
{
    public static void Bind(Context context, PieceState piece, BeginStatement statement) =>
        Begin(context, piece, statement, statement.Stitches, statement.Claim, false);

    public static void Bind(Context context, PieceState piece, ChainStatement statement) =>
        Begin(context, piece, statement, statement.Chains, statement.Claim, true);

    public static void Bind(Context context, PieceState piece, RingStatement statement)
    {
        var chains = statement.Chains is null ? Values.Sized.Same<int?>(context.Sizes, 0) : context.Evaluate.Counts(statement.Chains, 1);
        if (IsSecond(context, piece, statement.Span)) return;
        for (var i = 0; i < chains.Length; i++)
        {
            // However many chains they are, the ring is one place.
            piece.Builders[i].BeginWithRing(chains[i] ?? 1);
        }

        piece.Changed();
    }

    public static void Bind(Context context, PieceState piece, BothSidesStatement statement)
    {
        var counts = context.Evaluate.Counts(statement.Stitches, 1);
        if (IsSecond(context, piece, statement.Span)) return;
        var single = Values.Sized.Where(context.Sizes, i => counts[i] is 1);
        if (single.Length > 0) context.Findings.Add(BothSidesShort.At(context, statement.Stitches.Span, single));
        for (var i = 0; i < counts.Length; i++)
        {
            if (counts[i] is > 1 and var count) piece.Builders[i].BeginWithBothSides(count);
            else piece.Builders[i].BeginUnknown();
        }

        piece.Changed();
        new ClaimBinder(context).CheckAhead(piece, new ClaimBinder(context).Bind(statement.Claim));
    }

    public static void Bind(Context context, PieceState piece, FoundationRowStatement statement)
    {
        var counts = context.Evaluate.Counts(statement.Stitches, 1);
        if (IsSecond(context, piece, statement.Span)) return;
        var stitch = FoundationStitch(context, statement.Stitch);
        var plan = stitch is null ? null : PieceBuilder.FoundationPlan(stitch);
        var working = new RowWorking(context, piece, statement);
        for (var i = 0; i < counts.Length; i++)
        {
            var known = counts[i] is not null && stitch is not null;
            if (known) piece.Builders[i].BeginWithFoundationStitches(stitch!, counts[i]!.Value);
            else piece.Builders[i].BeginUnknown();
            working.One(i, known ? plan : null, 0);
            // How many they are is said, whatever they were to be.
            if (!known && counts[i] is { } count) piece.Builders[i].Trust(count);
        }

        working.Finish();
        new ClaimBinder(context).CheckRow(piece, new ClaimBinder(context).Bind(statement.Claim));
    }

    private static Stitch? FoundationStitch(Context context, NameSyntax word)
    {
        if (context.AnyStitchOf(word) is not { } meaning) return null;
        if (StitchBook.FoundationOf(meaning.Stitch) is not null) return meaning.Stitch;
        context.Findings.Add(FoundationStitchUnknown.At(word.Span, word.Text, [.. StitchBook.Foundations.Select(s => context.Word(s.Base!))]));
        return null;
    }

    private static void Begin(
        Context context, PieceState piece, StatementSyntax statement, ExpressionSyntax expression, ClaimSyntax? claim, bool chains)
    {
        var counts = context.Evaluate.Counts(expression, 1);
        if (IsSecond(context, piece, statement.Span)) return;
        for (var i = 0; i < counts.Length; i++)
        {
            var builder = piece.Builders[i];
            if (counts[i] is not { } count) builder.BeginUnknown();
            else if (chains) builder.BeginWithChains(count);
            else builder.BeginWithStitches(count);
        }

        piece.Changed();
        if (!chains) new ClaimBinder(context).CheckAhead(piece, new ClaimBinder(context).Bind(claim));
    }

    private static bool IsSecond(Context context, PieceState piece, TextSpan span)
    {
        if (!piece.Lead.HasBegun) return false;
        if (piece.RowsInDoubt) return false;
        context.Findings.Add(BegunTwice.At(span, piece.Name));
        return true;
    }
}
