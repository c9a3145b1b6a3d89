using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Joins;

/// <summary>Looks at the whole pattern once all of it is read: what is never joined, never used, or turned in two ways in print.</summary>
internal static class PatternWarnings
{
    public static void Add(Context context, PieceBook book)
    {
        if (!book.InDoubt && !book.JoinsInDoubt) Unjoined(context, book);
        foreach (var piece in book.All) UnusedParts(context, piece);
        if (!context.TurnsInDoubt) HowIsItTurned(context, book);
    }

    private static void Unjoined(Context context, PieceBook book)
    {
        if (book.All.Count < 2) return;
        foreach (var piece in book.All)
        {
            if (!piece.Joined && !piece.RowsInDoubt) context.Findings.Add(PieceUnjoined.At(piece.Span, piece.Name));
        }
    }

    private static void UnusedParts(Context context, PieceState piece)
    {
        foreach (var (name, part) in piece.Parts)
        {
            if (!part.Used) context.Findings.Add(PartUnused.At(part.Span, name, piece.Name));
        }
    }

    private static void HowIsItTurned(Context context, PieceBook book)
    {
        foreach (var piece in book.All)
        {
            foreach (var row in piece.Builders[0].Rows)
            {
                if (row.Work?.Opening.Stitch is not { TurningChainCounts: null } stitch || context.Rules.ContainsKey(stitch)) continue;
                if (row.Origin.Value is not SyntaxNode line || piece.Builders[0].SaysRuleOf(stitch)) continue;
                context.Findings.Add(Diagnostics.Kinds.TurnUnsaid.At(line.Span, context.Word(stitch), stitch.Height));
                return;
            }
        }
    }
}
