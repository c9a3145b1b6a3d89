namespace Turnrow.Compiler.Tests.Naive.Making;

/// <summary>Writes the true count as a claim at some of the lines that may have one.</summary>
public static class Claims
{
    public static NaivePattern Added(NaivePattern pattern, ChoiceTape tape)
    {
        var result = NaiveWorker.Work(pattern);
        if (!result.IsValid)
            return pattern;
        return pattern with { Pieces = pattern.Pieces.Select(piece => Added(pattern, piece, result, tape)).ToList() };
    }

    private static NaivePiece Added(NaivePattern pattern, NaivePiece piece, NaiveResult result, ChoiceTape tape)
    {
        var mirrored = pattern.Pieces.Any(other => other.Start is MirrorOf mirror && mirror.Piece == piece.Name);
        var statements = new List<Statement>();
        for (var i = 0; i < piece.Statements.Count; i++)
        {
            var statement = piece.Statements[i];
            var isLastStep = i + 1 == piece.Statements.Count || piece.Statements[i + 1] is not (LeaveAtEdge or AddAtEdge);
            if (MayClaim(statement, isLastStep) && !(mirrored && Turns(statement)) && tape.OneIn(4))
            {
                var line = i;
                statement = statement with { Claim = Sized.For(pattern.Sizes.Count, size => result.Of(piece.Name, size).CountsAfter[line]) };
            }
            statements.Add(statement);
        }
        return piece with { Statements = statements };
    }

    // A mirrored piece turns in the row beside it, so in the middle of short rows it has other counts.
    private static bool Turns(Statement statement) =>
        statement is LeaveForLater || (statement is Shape shape && shape.Schedules.Any(schedule => schedule.ForLater));

    /// <summary>A claim on a step is what the next row has to begin with, so only the last step before it has one.</summary>
    private static bool MayClaim(Statement statement, bool isLastStep) => statement switch
    {
        RowLine or RowsLine or Shape => true,
        Straight straight => straight.Rows.Min > 0,
        StraightIn straight => straight.Rows.Min > 0,
        LeaveAtEdge => isLastStep,
        LeaveForLater => true,
        AddAtEdge add => isLastStep && !add.OneRowApart,
        _ => false,
    };
}
