using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Phrases;

/// <summary>A marker is put into what was just made: <c>place a marker in the dc just made</c>.</summary>
/// <param name="Made">What it is; null for the chain that stands for the row's first stitch.</param>
internal sealed record PlaceMarker(PlaceName? Made) : Phrase
{
    protected override Phrase? Join(Phrase other)
    {
        if (other is not PlaceMarker marker || Made is null != marker.Made is null) return null;
        if (Made is not { } made) return this;
        return made.And(marker.Made!.Value) is { } both ? new PlaceMarker(both) : null;
    }

    protected override string Text(Wording words) =>
        Made is { } made ? $"place a marker in the {made.One(words)} just made" : $"place a marker in the top of this {words.Ch}";
}

/// <summary>What the marker moves to when its corner has been worked into.</summary>
internal enum MarkerTo : byte
{
    /// <summary>The one stitch worked there.</summary>
    Stitch,

    /// <summary>The middle one of several.</summary>
    Middle,

    /// <summary>The space in their middle.</summary>
    Space,

    /// <summary>The chain that stands for the stitch.</summary>
    Chain,
}

/// <summary>The marker of a corner moves up: <c>move the marker to the middle one of these 3 dc</c>.</summary>
internal sealed record MoveMarker(MarkerTo To, Sized<int> Count, PlaceName Place) : Phrase
{
    protected override Phrase? Join(Phrase other) =>
        other is MoveMarker move && move.To == To && Place.And(move.Place) is { } place ? this with { Count = Count.And(move.Count), Place = place } : null;

    protected override string Text(Wording words) => "move the marker to " + To switch
    {
        MarkerTo.Middle => $"the middle one of these {Place.Counted(Count, words)}",
        MarkerTo.Space => $"this {Place.One(words)}",
        MarkerTo.Chain => $"the top of this {words.Ch}",
        _ => $"this {Place.One(words)}",
    };
}

/// <summary>Markers are no longer needed.</summary>
/// <param name="AtEdge">True if only the one is meant where a part has been cut off at a corner.</param>
internal sealed record TakeMarkersOut(bool AtEdge) : Phrase
{
    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words) => AtEdge ? "take the marker at the edge out" : "take the markers out";
}
