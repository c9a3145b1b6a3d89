using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>The places of a row over several pieces, as a maker sees them.</summary>
internal static class AcrossPlaces
{
    /// <summary>
    /// The places that the row is worked over, where the chain of a piece's last row that is one decrease with the stitch beside it is the top of
    /// that stitch. Each piece has its own last row, so that nothing can be said of all chains at once.
    /// </summary>
    /// <param name="across">The pieces.</param>
    /// <param name="row">The row over them.</param>
    /// <param name="below">The places that it is worked over.</param>
    public static PlaceSequence Of(AcrossStart across, Row row, PlaceSequence below)
    {
        var fromRight = row.StartsAt == Hand.Right;
        var before = row.Start is { } step ? (step.Adds ? step.Count : -step.Count) : 0;
        foreach (var part in fromRight ? across.Parts : across.Parts.Reverse())
        {
            if (part.PlacesFromRight() is not { } places) return below;
            if (part.Base.Rows is [.., { Work: { } last }] && RowContext.BeginsWithDecrease(last))
                below = WithStitchAt(before + new RowPlaces(fromRight ? places : places.Reversed(), null).UntilTop(places.Count), below);
            before += places.Count;
        }

        return below;
    }

    private static PlaceSequence WithStitchAt(int at, PlaceSequence below)
    {
        if (at < 0 || at >= below.Count || below.Slice(at, 1).First is not { Kind: PlaceKind.TurningChain or PlaceKind.SkippedChains } chain) return below;
        var changed = PlaceSequence.Of(chain with { Kind = PlaceKind.Stitch }, 1);
        if (at > 0) changed = below.Slice(0, at).Then(changed);
        return at + 1 < below.Count ? changed.Then(below.Slice(at + 1, below.Count - at - 1)) : changed;
    }
}
