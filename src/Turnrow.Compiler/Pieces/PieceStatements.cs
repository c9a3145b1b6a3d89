using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Header;
using Turnrow.Fabric.Patterns;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>Hands each statement of a piece to its binder.</summary>
internal static class PieceStatements
{
    /// <summary>True if a statement belongs in a piece.</summary>
    public static bool IsOne(StatementSyntax statement) => statement is
        BeginStatement or ChainStatement or EdgeNameStatement or RowStatement or StraightStatement or LeaveStatement or AddStatement
        or ShapeStatement or MarkStatement or RepeatStatement or DivideStatement or FastenOffStatement;

    /// <summary>Does what a statement says.</summary>
    public static void Bind(Context context, PieceState piece, StatementSyntax statement)
    {
        switch (statement)
        {
            case BeginStatement begin: BeginBinding.Bind(context, piece, begin); break;
            case ChainStatement chain: BeginBinding.Bind(context, piece, chain); break;
            case EdgeNameStatement name: EdgeNaming.Bind(context, piece, name); break;
            case RowStatement row: RowBinding.Bind(context, piece, row); break;
            case StraightStatement straight: StraightBinding.Bind(context, piece, straight); break;
            case LeaveStatement leave: StepBinding.Bind(context, piece, leave); break;
            case AddStatement add: StepBinding.Bind(context, piece, add); break;
            case ShapeStatement shape: ShapeBinding.Bind(context, piece, shape); break;
            case RepeatStatement repeat: RepeatBinding.Bind(context, piece, repeat); break;
            case DivideStatement divide: DivideBinding.Bind(context, piece, divide); break;
            case MarkStatement mark: Mark(context, piece, mark); break;
            case FastenOffStatement: FastenOff(piece); break;
            case TurnStatement turn: Turn(context, piece, turn); break;
        }
    }

    private static void Mark(Context context, PieceState piece, MarkStatement mark)
    {
        if (piece.MarkSpans.TryAdd(mark.Name.Text, mark.Name.Span)) piece.Marks[mark.Name.Text] = Array.ConvertAll(piece.Builders, b => b.RowCount + 1);
        else context.Findings.Add(DefinedTwice.At(mark.Name.Span, mark.Name.Text, piece.MarkSpans[mark.Name.Text]));
    }

    private static void FastenOff(PieceState piece)
    {
        foreach (var builder in piece.Builders) builder.FastenOff();
        piece.Passages.Add(new FastenOffPassage());
        piece.Changed();
    }

    private static void Turn(Context context, PieceState piece, TurnStatement turn) =>
        TurnBinder.Bind(context, turn, (stitch, rule) =>
        {
            foreach (var builder in piece.Builders) builder.SetRule(stitch, rule, turn.NextRowOnly);
        });
}
