using Turnrow.Compiler.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Claims;

/// <summary>Proposes claims for lines that make rows and have none.</summary>
internal static class ClaimProposal
{
    /// <summary>The claim that a line could have; null if it has one, makes no row, or its count is not known in every size.</summary>
    public static MissingClaim? For(Context context, PieceState piece, StatementSyntax statement)
    {
        if (statement is ForSizesStatement some) return ForSome(context, piece, some);
        if (statement is not (RowStatement { Claim: null } or StraightStatement { Claim: null } or ShapeStatement { Claim: null } or RepeatStatement { Claim: null })) return null;
        var stitches = new int[context.Sizes];
        var spaces = new int[context.Sizes];
        for (var i = 0; i < stitches.Length; i++)
        {
            if (piece.Builders[i].LastWork is not { } work) return null;
            stitches[i] = work.Count(context.Counting);
            spaces[i] = work.Spaces;
        }

        var text = Array.TrueForAll(spaces, n => n == 0)
            ? " = " + Findings.InBrackets(stitches)
            : $" = {Findings.InBrackets(stitches)} sts, {Findings.InBrackets(spaces)} sp";
        return new MissingClaim(statement.Span.End, text);
    }

    // In its sizes the line makes a count; the numbers of the others are those of their last rows, and nobody looks at them.
    private static MissingClaim? ForSome(Context context, PieceState piece, ForSizesStatement statement)
    {
        bool[]? sizes = null;
        context.Findings.Quietly(() => sizes = ForSizesBinding.SizesOf(context, statement));
        if (sizes is null || statement.Done is not (RowStatement { Claim: null } or StraightStatement { Claim: null } or ShapeStatement { Claim: null } or RepeatStatement { Claim: null })) return null;
        var stitches = new List<int>();
        for (var i = 0; i < sizes.Length; i++)
        {
            if (sizes[i] && piece.Builders[i].LastWork is not { Spaces: 0 }) return null;
            if (sizes[i]) stitches.Add(piece.Builders[i].LastWork!.Count(context.Counting));
        }

        if (stitches.Count == 0) return null;
        if (stitches.TrueForAll(n => n == stitches[0])) return new MissingClaim(statement.Span.End, " = " + Findings.InBrackets([stitches[0]]));
        var all = new int[sizes.Length];
        for (var i = 0; i < all.Length; i++) all[i] = piece.Builders[i].LastWork?.Count(context.Counting) ?? stitches[0];
        return new MissingClaim(statement.Span.End, " = " + Findings.InBrackets(all));
    }
}
