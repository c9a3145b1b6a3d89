namespace Turnrow.Publishing.Tests.Reader;

/// <summary>What a row leaves at the edges of a piece, and takes of an earlier one.</summary>
internal static class EdgeMemory
{
    public static void Keep(ReadPiece piece, ReadRow row, WorkedRow worked, Ground ground, int added, IReadOnlyList<Step> steps)
    {
        var isFirst = piece.Rows.Count == 0;
        var stands = worked.SkippedChains > 0 && worked.Made[0].Seen is Seen.BeginningChain or Seen.ChainAndStitch ? 1 : 0;
        var shared = SharesItsBase(steps) ? 1 : 0;
        var chained = ground.HangingChains - worked.SkippedChains + worked.PassedChains + (stands > 0 ? stands - shared : 0) + worked.OwnChains;
        if (isFirst && piece is { StandsOn: null, Over.Count: 0 }) piece.FoundationStitches ??= piece.Foundation is null ? null : chained;
        else if (ground.HangingChains > 0) piece.AddToEdge(row.StartsAt, new EdgePart(Lies.AddedChain, row.Number, chained));
        if (isFirst) piece.IsBegunByRow = worked.OwnChains > 0;
        if (worked.Slipped > 0 && !row.IsRound) piece.AddToEdge(row.StartsAt, new EdgePart(Lies.LeftStitches, row.Number, worked.Slipped));
        if (added > 0) piece.AddToEdge(row.EndsAt, new EdgePart(Lies.AddedChain, row.Number, added));
        if (worked.Left > 0 && !isFirst) piece.AddToEdge(row.EndsAt, new EdgePart(Lies.LeftStitches, row.Number, worked.Left));
        piece.Inner.AddRange(worked.Inner.Select(inner => inner with { Row = row.Number }));
        if (row.IsRound)
        {
            // Once round, nothing is left behind the turn where it came to it, and the round can't begin behind one.
            if (piece.Waiting[(int)row.StartsAt].Count > 0) throw new Misread("the round begins where a row turned");
            piece.Waiting[(int)row.EndsAt] = [];
            return;
        }

        var startsAtTurn = piece.Waiting[(int)row.StartsAt].Count > 0;
        piece.Waiting[(int)row.EndsAt] = worked.Waiting;
        // A row that starts where one turned, or turns itself, does not reach that edge.
        if (!startsAtTurn) piece.AddToEdge(row.StartsAt, new EdgePart(Lies.RowEnd, row.Number, 1));
        if (worked.Waiting.Count == 0) piece.AddToEdge(row.EndsAt, new EdgePart(Lies.RowEnd, row.Number, 1));
    }

    /// <summary>The stitches of an earlier piece that a part stands on are there only once.</summary>
    public static void Take(ReadPiece piece, Ground ground, WorkedRow worked, bool rightSide)
    {
        foreach (var over in piece.Over)
        {
            if (!Enumerable.Range(over.From, over.Count).All(over.Piece.Taken.Add)) throw new Misread($"a st of {over.Piece.Title} is worked into that an earlier piece stands on");
        }

        if (piece.StandsOn is not { } on) return;
        var count = on.Base.Rows[^1].Made.Count;
        for (var i = Math.Max(ground.JoinedAt, 0); i < worked.Reached; i++)
        {
            if (ground.Places[i].Seen is Seen.Chain or Seen.AddedChain) continue;
            var at = ground.BaseAt + i;
            if (!on.Base.Taken.Add(rightSide ? at : count - 1 - at)) throw new Misread($"a st of {on.Base.Title} is worked into that an earlier piece stands on");
        }
    }

    // An increase in the very first stitch goes into the ch that the skipped ones stand on: that ch is one place, and of the increases
    // that are spoken of one less can be seen.
    private static bool SharesItsBase(IReadOnlyList<Step> steps)
    {
        var seen = 0;
        foreach (var step in steps.TakeWhile(step => step is not WorkInto { Places.Where: Where.Across or Where.ToLast or Where.ToNext }))
        {
            if (step is WorkInto work) seen += (work.Each - 1) * Math.Max(1, work.Places.Count);
            if (step.Remarks.Select(Shaping.Increases).FirstOrDefault(n => n > 0) is > 0 and var told) return seen < told;
        }

        return false;
    }
}
