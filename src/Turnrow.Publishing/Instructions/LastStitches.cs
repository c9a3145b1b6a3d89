using Turnrow.Fabric.Pieces;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions;

/// <summary>Some stitches of a piece's last row or round, by their numbers from where a right-side row starts.</summary>
/// <param name="First">The first.</param>
/// <param name="Last">The last.</param>
/// <param name="All">Stitches of the whole row.</param>
/// <param name="IsRound">True if it is a round.</param>
internal sealed record LastStitches(Sized<int> First, Sized<int> Last, Sized<int> All, bool IsRound)
{
    /// <summary>The stitches of a part.</summary>
    public static LastStitches OfPart(PartStart part, bool fromRight)
    {
        var before = fromRight ? part.FromRight : part.FromLeft;
        return new(Sized.Of(before + 1), Sized.Of(before + part.Count), Sized.Of(part.Base.LastStitches), part.Base.EndsInRounds);
    }

    /// <summary>The stitches of a part of the last row that has a name.</summary>
    public static LastStitches OfStretch(Piece piece, Stretch part) =>
        new(Sized.Of(part.FromRight + 1), Sized.Of(part.FromRight + part.Count), Sized.Of(piece.LastStitches), piece.EndsInRounds);

    /// <summary>True if it is all of them.</summary>
    public bool IsAll => First.All(static n => n == 1) && Last.Equals(All);

    /// <summary><c>stitches 43-46 of the last round</c>.</summary>
    public string Numbered => $"{Numbers} of the last {Row}";

    /// <summary><c>stitches 43-46</c>.</summary>
    public string Numbers => $"{(First.Equals(Last) ? "stitch" : "stitches")} {First.WrittenTo(Last)}";

    /// <summary><c>row</c> or <c>round</c>.</summary>
    public string Row => IsRound ? "round" : "row";

    public LastStitches And(LastStitches other) => new(First.And(other.First), Last.And(other.Last), All.And(other.All), IsRound);
}
