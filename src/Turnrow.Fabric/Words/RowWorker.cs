using Turnrow.Fabric.Places;

namespace Turnrow.Fabric.Words;

/// <summary>
/// Works the words of a row over the places of the row below, run by run. A repeat is worked once and then taken as often as it meets
/// the same places again, so a wide row costs what its words cost.
/// </summary>
public static class RowWorker
{
    /// <summary>Works words over places, both in working order.</summary>
    public static WorkedRow Work(IReadOnlyList<Word> words, PlaceSequence below) => new RowRun(below).Row(words);
}
