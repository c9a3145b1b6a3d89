using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Sections;

/// <summary>What a piece's two measures are to a maker who lays it flat: the length of its rows, and of all rows together.</summary>
/// <param name="piece">The piece.</param>
/// <param name="pattern">The pattern.</param>
/// <param name="widths">Its longest row, a size; null where that is not known.</param>
/// <param name="heights">All its rows, a size; null where that is not known.</param>
internal sealed class PieceShape(PieceInSizes piece, Pattern pattern, Sized<Rational>? widths, Sized<Rational>? heights)
{
    // Made by itself, a strip is named by its length where that is so many times the other side.
    private const int StripTimes = 5;

    /// <summary>
    /// True if its rows run up and down the body, since what the size is chosen by is counted in rows: then it is as wide as it has rows.
    /// </summary>
    public bool IsSideways =>
        piece.InSizes.All(static p => p.Start is FoundationStart) && !IsTube && pattern.ChosenBy is { InRows: true };

    /// <summary>What the longest row's length is.</summary>
    public string AlongRows
    {
        get
        {
            if (IsBent) return "along its longest row";
            if (IsBand && !IsTube) return "long";
            // A tube is measured round, and lies half as wide.
            var across = IsTube ? "round" : IsSideways ? "long" : "wide";
            return IsStraight ? across : IsSideways ? "long at its longest" : $"{across} at its widest";
        }
    }

    /// <summary>What the length of all rows is.</summary>
    public string AcrossRows =>
        IsBent ? "from its first row to its last"
        : IsBand ? "deep"
        : IsFromRing ? Closes ? "from its first round to its last" : "from its middle to its edge"
        : IsSideways ? "wide"
        : "long";

    /// <summary>Of a motif from a ring, whose sides are all alike, how many it has: it is measured from one side to the one across it. Else 0.</summary>
    public int AlikeSides
    {
        get
        {
            var sides = IsTube && piece.InSizes.All(static p => p.Start is RingStart) ? MotifSides.Count(piece.InSizes[0]) : 0;
            return sides is 4 or 6 && piece.InSizes.All(p => MotifSides.Count(p) == sides && Enumerable.Range(1, sides - 1).All(i => Places(p, i) == Places(p, 0))) ? sides : 0;
        }
    }

    /// <summary>
    /// True if most of its rows begin on chains added for them, as blocks from corner to corner do: these rows lie aslant, and neither their stitches nor their
    /// number measures the piece.
    /// </summary>
    public bool IsAslant => piece.InSizes.Any(static p => 2 * p.Rows.Count(static r => r.Start is { Adds: true }) > p.Rows.Count);

    private static int Places(Piece motif, int side) => MotifSides.Of(motif, side)!.Stretches[0].Count;

    // Rows that turn a corner do not lie across the piece, nor do those of a fan round a ring.
    private bool IsBent => piece.InSizes.All(static p => p.Start is FoundationStart or RingStart) && piece.InSizes.Any(static p => p.Rows.Any(r => !r.IsRound && (p.Start is RingStart || r.Work is { Tops.HasCorners: true })));

    private bool IsFromRing => IsTube && piece.InSizes.All(static p => p.Start is RingStart or BothSidesStart);

    // What draws together again has no edge.
    private bool Closes =>
        piece.InSizes.All(p => pattern.Gauges.WidthOf(p.Rows[^1]) is { } last && pattern.Gauges.WidestOf(p.Rows) is { } widest && last + last is { } twice && twice < widest.Width);

    // A row that makes its own foundation is joined with the round that follows it.
    private bool IsTube =>
        piece.InSizes.All(static p => p.Rows.All(r => r.IsRound || (r.Begins == RowBegins.FoundationStitches && p.Rows.Count > 1)));

    // What is picked up along an edge and wider than long is a band to its maker: its rows are as long as the edge, and it is deep. So is a strip.
    private bool IsBand =>
        widths is not null && heights is not null
        && ((piece.InSizes.All(static p => p.Start is PickUpStart) && IsWiderBy(1)) || (piece.InSizes.All(static p => p.Start is FoundationStart) && IsStraight && IsWiderBy(StripTimes)));

    private bool IsWiderBy(int times) => widths!.Values.Zip(heights!.Values).All(pair => pair.Second * times is { } least && pair.First > least);

    private bool IsStraight =>
        piece.InSizes.All(static p => p.Rows.All(r => r.Work?.Stitches == p.Rows[0].Work?.Stitches));
}
