using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;

namespace Turnrow.Publishing.Charts.Layout;

/// <summary>A stretch of columns, counted from the piece's first right edge to the left.</summary>
internal readonly record struct Columns(double From, double To)
{
    public double Length => To - From;

    public Columns With(Columns other) => new(Math.Min(From, other.From), Math.Max(To, other.To));

    /// <summary>From one point to another, whichever is farther right.</summary>
    public static Columns Between(double a, double b) => new(Math.Min(a, b), Math.Max(a, b));
}

/// <summary>A row in the piece's columns.</summary>
/// <param name="row">The row.</param>
/// <param name="strip">Its stitches in working order; null if it is not known.</param>
/// <param name="below">What it is worked over.</param>
/// <param name="belowStart">The column where what it is worked over starts, in working order.</param>
/// <param name="tops">Where its stitches stand.</param>
/// <param name="pitch">Columns from one stitch to the next that stands beside it: 1, or less where stitches crowd over the whole row.</param>
internal sealed class RowLayout(Row row, Strip? strip, BelowScale below, double belowStart, Knots tops, double pitch)
{
    /// <summary>Columns from one stitch to the next that stands beside it.</summary>
    public double Pitch { get; } = pitch;

    /// <summary>True if its stitches stand evenly.</summary>
    public bool IsEven => tops.IsEven;

    /// <summary>The length of the longest row up to this one.</summary>
    public long Longest { get; init; }

    public Row Row { get; } = row;

    public Strip? Strip { get; } = strip;

    public BelowScale BelowScale { get; } = below;

    public double BelowStart { get; } = belowStart;

    public double TopStart => tops.First.Along;

    /// <summary>+1 if the row runs from the right edge to the left, else -1.</summary>
    public int Direction { get; } = row.StartsAt == Hand.Right ? 1 : -1;

    /// <summary>Its stitches.</summary>
    public Columns Tops => Columns.Between(TopStart, Strip is null ? TopStart + (Direction * BelowScale.Columns) : TopColumn(Strip.Columns));

    /// <summary>What it is worked over, with chains added and without stitches left.</summary>
    public Columns Below => Columns.Between(BelowStart, BelowStart + (Direction * BelowScale.Columns));

    /// <summary>Stitches left where it starts; empty if there are none.</summary>
    public Columns LeftAtStart => Columns.Between(BelowStart - (Direction * BelowScale.LeftColumns), BelowStart);

    /// <summary>Stitches left where it ends, for good or for later; empty if there are none.</summary>
    public Columns LeftAtEnd
    {
        get
        {
            var end = BelowStart + (Direction * BelowScale.Columns);
            return Columns.Between(end, end + (Direction * ((Row.End is { Adds: false } left ? left.Count : 0) + Row.Short.Left)));
        }
    }

    /// <summary>All of it.</summary>
    public Columns Extent => Tops.With(Below).With(LeftAtStart).With(LeftAtEnd);

    /// <summary>Chains added where it starts, or of a foundation all that its stitches go into; else 0.</summary>
    public int ChainsAtStart => Row.Begins is RowBegins.Foundation or RowBegins.Ring or RowBegins.FoundationStitches ? BelowScale.Count
        : Row.Begins == RowBegins.BothSides ? (BelowScale.Count / 2) + 1
        : Row.Start is { Adds: true } step ? step.Count : 0;

    /// <summary>
    /// Chains that stand at the row's start: those of its opening that neither lie under its stitches nor belong to a space.
    /// </summary>
    public int StandingChains
    {
        get
        {
            if (Row.Work?.Opening is not { } opening || opening.Stitch is null) return 0;
            // Of a row that makes its own foundation, the chain at the first stitch's foot.
            var lying = Row.Begins == RowBegins.FoundationStitches ? 1
                : opening.FirstStitchIn > 0 ? ChainsAtStart - (opening is { Counts: true, SharesPlace: false } ? 1 : 0) : 0;
            return Math.Max(0, opening.Chains - opening.Space - lying);
        }
    }

    /// <summary>True if the standing chains are the row's first stitch.</summary>
    public bool ChainIsStitch => Row.Work?.Opening.Counts == true && StandingChains > 0;

    /// <summary>A column of its stitches, given in working order.</summary>
    public double TopColumn(double column) => tops.At(column);

    /// <summary>The middle of a place it is worked into.</summary>
    public double FootColumn(int place) => BelowStart + (Direction * BelowScale.Middle(place));

    /// <summary>Columns, given in the piece's, in the row's working order from its first stitch.</summary>
    public Columns InWorkingOrder(Columns columns) =>
        Columns.Between(tops.ColumnAt(columns.From), tops.ColumnAt(columns.To));

    /// <summary>Height in the chart, in pixels: by the tallest stitch.</summary>
    public double Height => ChartScale.HeightOf(GaugeBook.TallestOf(Row));

    /// <summary>How long a row is if nothing pulls it in: chains over a space are as long as stitches side by side.</summary>
    public static long LengthOf(Row row)
    {
        var length = 0L;
        foreach (var kind in row.Work!.Tops.Kinds()) length += kind.Place.Kind == PlaceKind.Space ? (long)kind.Count * kind.Place.Chains : kind.Count;
        return length;
    }
}
