using Turnrow.Fabric.Places;

namespace Turnrow.Fabric.Words;

/// <summary>
/// Works the words of a row over the places of the row below, run by run. A repeat is worked once and then taken as often as it meets
/// the same places again, so a wide row costs what its words cost.
/// </summary>
public static class RowWorker
{
    /// <summary>Works words over places, both in working order.</summary>
    /// <param name="words">The words.</param>
    /// <param name="below">The places.</param>
    /// <param name="isRound">True if behind the last place comes the first one again.</param>
    /// <param name="waiting">How many of the places, the last ones, wait behind the turn of the row below.</param>
    /// <param name="begunAt">Of a round, how many of the places lie before its beginning, and so come last.</param>
    public static WorkedRow Work(IReadOnlyList<Word> words, PlaceSequence below, bool isRound = false, int waiting = 0, int begunAt = 0)
    {
        var worked = new RowRun(below, isRound, waiting, begunAt).Row(words);
        if (worked.Fault is not null || !ChainRuns.AreIn(worked.Tops)) return worked;
        if (SpecialChains.Meeting(worked.Words) is { } met) return worked with { Fault = new RowFault(RowFaultKind.ChainsMeet, met, 0, 0, 0) };
        if (!ChainRuns.TryJoin(worked.Words, out var joined)) return worked with { Fault = new RowFault(RowFaultKind.TooLong, null, 0, 0, 0) };
        return joined is null ? worked : new RowRun(below, isRound, waiting, begunAt).Row(joined);
    }
}
