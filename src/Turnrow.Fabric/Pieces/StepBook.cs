using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;

namespace Turnrow.Fabric.Pieces;

/// <summary>What is left and added at both edges, by the row before which it is done.</summary>
internal sealed class StepBook
{
    private readonly Dictionary<(Hand Hand, int Row), Step> _steps = [];

    /// <summary>The step at an edge before a row; null for none.</summary>
    public Step? At(Hand hand, int row) => _steps.GetValueOrDefault((hand, row));

    /// <summary>The steps laid for rows after one.</summary>
    public IEnumerable<Step> After(int row) => _steps.Count == 0 ? [] : _steps.Where(s => s.Key.Row > row).Select(s => s.Value);

    /// <summary>Lays a step. Where several meet at one edge of one row (left twice in a row, say), they are one.</summary>
    public void Lay(Hand hand, Step step, int row)
    {
        if (step.Count > 0) _steps[(hand, row)] = Together(At(hand, row), step);
    }

    /// <summary>Takes back the steps laid for rows after one.</summary>
    public void ForgetAfter(int row)
    {
        foreach (var at in _steps.Keys.Where(at => at.Row > row).ToList()) _steps.Remove(at);
    }

    /// <summary>How many stitches more a row has by a step.</summary>
    public static int GainOf(Step? step) => step is null ? 0 : step.Adds ? step.Count : -step.Count;

    /// <summary>How many stitches a step leaves.</summary>
    public static int LeftBy(Step? step) => step is { Adds: false } ? step.Count : 0;

    /// <summary>Places with the steps at their start and end taken into account; null if more is left than there is.</summary>
    public static PlaceSequence? Over(PlaceSequence places, Step? start, Step? end)
    {
        var (atStart, atEnd) = (LeftBy(start), LeftBy(end));
        if ((long)atStart + atEnd > places.Count) return null;
        places = places.Slice(atStart, places.Count - atStart - atEnd);
        var chain = new Place(PlaceKind.AddedChain, null, 0);
        if (start is { Adds: true }) places = PlaceSequence.Of(chain, start.Count).Then(places);
        if (end is { Adds: true }) places = places.Then(PlaceSequence.Of(chain, end.Count));
        return places;
    }

    private static Step Together(Step? first, Step second) =>
        first is not null && first.Adds == second.Adds
            ? second with { Count = first.Count + second.Count, Earlier = first.Edge == second.Edge ? first.Earlier : first }
            : second;
}
