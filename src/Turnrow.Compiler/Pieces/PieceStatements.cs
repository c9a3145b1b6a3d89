using Turnrow.Compiler.Colours;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Header;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>Hands each statement of a piece to its binder.</summary>
internal static class PieceStatements
{
    /// <summary>True if a statement belongs in a piece.</summary>
    public static bool IsOne(StatementSyntax statement) => statement is
        BeginStatement or FoundationRowStatement or RingStatement or BothSidesStatement or RoundsAreStatement or ChainStatement or EdgeNameStatement or RowStatement or StraightStatement or LeaveStatement or AddStatement
        or ShapeStatement or SolidStatement or ShapeMannerStatement or ForSizesStatement or MarkStatement or RepeatStatement or PatternRepeatStatement or DivideStatement or FastenOffStatement
        or YarnInHandStatement or StripesStatement;

    /// <summary>Does what a statement says.</summary>
    public static void Bind(Context context, PieceState piece, StatementSyntax statement)
    {
        switch (statement)
        {
            case BeginStatement begin: BeginBinding.Bind(context, piece, begin); break;
            case FoundationRowStatement foundation: BeginBinding.Bind(context, piece, foundation); break;
            case RingStatement ring: BeginBinding.Bind(context, piece, ring); break;
            case BothSidesStatement both: BeginBinding.Bind(context, piece, both); break;
            case RoundsAreStatement rounds: RoundsAre(piece, WayOf(rounds)); break;
            case ChainStatement chain: BeginBinding.Bind(context, piece, chain); break;
            case EdgeNameStatement name: EdgeNaming.Bind(context, piece, name); break;
            case RowStatement row: RowBinding.Bind(context, piece, row); break;
            case StraightStatement straight: StraightBinding.Bind(context, piece, straight); break;
            case LeaveStatement { ForLater: true } later: LaterBinding.Bind(context, piece, later); break;
            case LeaveStatement leave: StepBinding.Bind(context, piece, leave); break;
            case AddStatement add: StepBinding.Bind(context, piece, add); break;
            case ShapeStatement shape: ShapeBinding.Bind(context, piece, shape); break;
            case SolidStatement solid: SolidBinding.Bind(context, piece, solid); break;
            case ShapeMannerStatement manner: MannerBinding.Bind(context, piece, manner); break;
            case RepeatStatement repeat: RepeatBinding.Bind(context, piece, repeat); break;
            case PatternRepeatStatement often: Often(context, piece, often); break;
            case DivideStatement divide: DivideBinding.Bind(context, piece, divide); break;
            case ForSizesStatement some: ForSizesBinding.Bind(context, piece, some); break;
            case MarkStatement mark: Mark(context, piece, mark); break;
            case FastenOffStatement: FastenOff(piece); break;
            case YarnInHandStatement with: YarnBinding.Bind(context, piece, with); break;
            case StripesStatement stripes: YarnBinding.Bind(context, piece, stripes); break;
            case TurnStatement turn: Turn(context, piece, turn); break;
        }
    }

    /// <summary>The way in which a line says that rounds follow each other.</summary>
    public static RoundWay WayOf(RoundsAreStatement statement) => statement.Way switch
    {
        Syntax.Tree.RoundsAre.Turned => RoundWay.Turned,
        Syntax.Tree.RoundsAre.Spiral => RoundWay.Spiral,
        _ => RoundWay.Joined,
    };

    private static void RoundsAre(PieceState piece, RoundWay way)
    {
        foreach (var builder in piece.Builders) builder.RoundsAre = way;
    }

    private static void Mark(Context context, PieceState piece, MarkStatement mark)
    {
        // Different sizes may set a mark of one name in lines of their own.
        var rows = piece.Marks.TryGetValue(mark.Name.Text, out var known) ? (int?[])known.Clone() : new int?[context.Sizes];
        if (piece.MarkSpans.TryGetValue(mark.Name.Text, out var earlier) && Sized.Where(context.Sizes, i => context.Here.Has(i) && rows[i] is not null).Length > 0)
        {
            context.Findings.Add(DefinedTwice.At(mark.Name.Span, mark.Name.Text, earlier));
            return;
        }

        for (var i = 0; i < rows.Length; i++)
        {
            if (context.Here.Has(i)) rows[i] = piece.Builders[i].RowCount + 1;
        }

        piece.MarkSpans[mark.Name.Text] = mark.Name.Span;
        piece.Marks[mark.Name.Text] = rows;
    }

    // How often is not said, so neither is any number of rows that follows.
    private static void Often(Context context, PieceState piece, PatternRepeatStatement repeat)
    {
        // Below a line that can't be read it may be a stitch pattern's.
        if (!piece.Unread) context.Findings.Add(RepeatOften.At(repeat.Span));
        piece.Doubt(true);
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
