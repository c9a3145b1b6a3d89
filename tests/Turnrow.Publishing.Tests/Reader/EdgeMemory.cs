using System.Text.RegularExpressions;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>What a row leaves at the edges of a piece, and what its remarks show of their names.</summary>
internal static partial class EdgeMemory
{
    public static void Keep(ReadPiece piece, ReadRow row, WorkedRow worked, Ground ground, int added, IReadOnlyList<Step> steps)
    {
        var isFirst = piece.Rows.Count == 0;
        var stands = worked.Made.Count > 0 && worked.Made[0].Seen == Seen.BeginningChain ? 1 : 0;
        var chained = ground.HangingChains - worked.SkippedChains + stands;
        if (isFirst) piece.FoundationStitches = piece.Foundation is null ? null : chained;
        else if (ground.HangingChains > 0) piece.AddToEdge(row.StartsAt, new EdgePart(Lies.AddedChain, row.Number, chained));
        if (worked.Slipped > 0) piece.AddToEdge(row.StartsAt, new EdgePart(Lies.LeftStitches, row.Number, worked.Slipped));
        if (added > 0) piece.AddToEdge(row.EndsAt, new EdgePart(Lies.AddedChain, row.Number, added));
        if (worked.Left > 0 && !isFirst) piece.AddToEdge(row.EndsAt, new EdgePart(Lies.LeftStitches, row.Number, worked.Left));
        foreach (var side in new[] { Side.Right, Side.Left }) piece.AddToEdge(side, new EdgePart(Lies.RowEnd, row.Number, 1));
        LearnNames(piece, row, steps);
    }

    /// <summary>The stitches of an earlier piece that a part stands on are there only once.</summary>
    public static void Take(ReadPiece piece, Ground ground, WorkedRow worked, bool rightSide)
    {
        if (piece.StandsOn is not { } on) return;
        var count = ground.Places.Count;
        for (var i = Math.Max(ground.JoinedAt, 0); i < worked.Reached; i++)
        {
            if (!on.Base.Taken.Add(rightSide ? i : count - 1 - i)) throw new Misread($"a st of {on.Base.Title} is worked into that an earlier piece stands on");
        }
    }

    /// <summary>`(increase at neck edge)` behind the first or the last steps of a row shows where that edge is.</summary>
    private static void LearnNames(ReadPiece piece, ReadRow row, IReadOnlyList<Step> steps)
    {
        var across = steps.ToList().FindIndex(step => step is WorkInto { Places.Where: Where.Across or Where.ToLast });
        for (var i = 0; i < steps.Count && across >= 0; i++)
        {
            foreach (var remark in steps[i].Remarks)
            {
                if (AtEdge().Match(remark) is { Success: true } match && i != across) piece.Learn(match.Groups["edge"].Value, i < across ? row.StartsAt : row.EndsAt);
            }
        }
    }

    [GeneratedRegex(@"^(?:\d+ )?(?:increase|decrease)s? at (?<edge>.+) edge$")]
    private static partial Regex AtEdge();
}
