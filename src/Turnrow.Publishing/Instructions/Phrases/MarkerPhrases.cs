using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Phrases;

/// <summary>A marker is put into what was just made: <c>place a marker in the dc just made</c>.</summary>
/// <param name="Made">What it is.</param>
/// <param name="First">True if it is the row's first, which the chain stands for: that is said when the row is done.</param>
internal sealed record PlaceMarker(PlaceName Made, bool First) : Phrase
{
    /// <summary>True if the row is a round.</summary>
    public bool OfRound { get; init; }

    protected override Phrase? Join(Phrase other) =>
        other is PlaceMarker marker && marker.First == First && marker.OfRound == OfRound && Made.And(marker.Made) is { } both ? this with { Made = both } : null;

    protected override string Text(Wording words) =>
        First ? $"{words.Noting(Note.Markers, "place a marker")} in the first {Made.One(words)} of this {(OfRound ? "round" : "row")}" : $"{words.Noting(Note.Markers, "place a marker")} in the {Made.One(words)} just made";
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
    /// <summary>True if there is no marker yet: a corner that is one from the beginning.</summary>
    public bool IsNew { get; init; }

    /// <summary>Of several spaces that are called alike, which it is.</summary>
    public int Nth { get; init; }

    protected override Phrase? Join(Phrase other) =>
        other is MoveMarker move && move.To == To && move.Nth == Nth && move.IsNew == IsNew && Place.And(move.Place) is { } place ? this with { Count = Count.And(move.Count), Place = place } : null;

    protected override string Text(Wording words) => (IsNew ? words.Noting(Note.Markers, "place a marker in ") : "move the marker to ") + To switch
    {
        MarkerTo.Middle => $"the middle one of these {Place.Counted(Count, words)}",
        MarkerTo.Space when Count.First > 1 => $"the {(Count.First == (2 * Nth) - 1 ? "middle one" : Numbers.Nth(Nth))} of these {Place.Counted(Count, words)}",
        MarkerTo.Space => $"this {Place.One(words)}",
        MarkerTo.Chain => $"the top of this {words.Ch}",
        _ => $"this {Place.One(words)}",
    };
}

/// <summary>Markers are no longer needed.</summary>
/// <param name="AtEdge">True if only the one is meant where a part has been cut off at a corner.</param>
internal sealed record TakeMarkersOut(bool AtEdge) : Phrase
{
    /// <summary>True if there is only one in the work.</summary>
    public bool IsOne { get; init; }

    protected override Phrase? Join(Phrase other) => Equals(other) ? this : null;

    protected override string Text(Wording words) => AtEdge ? "take the marker at the edge out" : IsOne ? "take the marker out" : "take the markers out";
}
