using Turnrow.Compiler.Claims;
using Turnrow.Fabric;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>What a line that could not be read leaves in doubt: no more than it must, so that the errors below are still found.</summary>
internal static class BrokenLines
{
    private static readonly string[] Harmless =
    [
        "notation", "pattern", "version", "terms", "sizes", "skill", "notion", "wearer", "yarn", "hook", "gauge", "turn", "measure",
        "count", "claims", "expect", "seam", "weave", "fasten", ">",
    ];

    private static readonly string[] Naming = ["both", "right", "left", "from", "mark", "divide"];

    /// <summary>Puts what a broken line may have said in doubt.</summary>
    public static void Apply(Context context, PieceState piece, LineSyntax line)
    {
        if (line.Keyword is { } harmless && Harmless.Contains(harmless)) return;
        if (line.Keyword is { } naming && Naming.Contains(naming))
        {
            piece.NamesInDoubt = true;
            return;
        }

        if (line.Keyword is "row") OneRow(piece, line);
        else piece.Doubt(line.Keyword is not ("leave" or "add"));
        if (line.Keyword is null) piece.NamesInDoubt = true;
        Believe(context, piece, line.Statement);
    }

    private static void OneRow(PieceState piece, LineSyntax line)
    {
        foreach (var builder in piece.Builders)
        {
            if (!builder.HasBegun) builder.BeginUnknown();
            builder.Doubt(false);
            builder.WorkRow(new WordsPlan([]), new Origin(line), 0);
        }

        piece.AddRowsPassage(line);
    }

    private static void Believe(Context context, PieceState piece, StatementSyntax? statement)
    {
        if (statement is not UnfinishedStatement { Claim: { } claim }) return;
        if (new ClaimBinder(context).Bind(claim) is { } bound) new ClaimBinder(context).CheckRow(piece, bound);
    }
}
