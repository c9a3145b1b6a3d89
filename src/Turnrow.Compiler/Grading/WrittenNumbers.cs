using Turnrow.Compiler.Values;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Grading;

/// <summary>The numbers of a statement where a designer writes those of the body and of the piece.</summary>
internal static class WrittenNumbers
{
    /// <summary>Every part of the statement's values. Claims and schedules follow from others, and have none.</summary>
    public static IEnumerable<ExpressionSyntax> In(StatementSyntax statement)
    {
        return Value(statement) is { } value ? ExpressionParts.Of(value) : [];
    }

    private static ExpressionSyntax? Value(StatementSyntax statement) => statement switch
    {
        MeasureStatement measure => measure.Value,
        CountStatement count => count.Value,
        BeginStatement begin => begin.Stitches,
        FoundationRowStatement foundation => foundation.Stitches,
        ChainStatement chain => chain.Chains,
        StraightStatement straight => straight.Amount,
        LeaveStatement leave => leave.Count,
        AddStatement add => add.Count,
        ShapeStatement shape => shape.Rows?.Amount,
        ForSizesStatement some => Value(some.Done),
        PieceStatement { Origin: PartOriginSyntax part } => part.Stitches,
        ExpectMeasureStatement expect => expect.Length,
        _ => null,
    };
}
