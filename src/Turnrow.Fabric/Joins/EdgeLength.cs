using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Joins;

/// <summary>
/// How long an edge is along its slopes, as a tape would measure it on the flat piece: from one shaped row to the next in a straight line,
/// along steps stitch by stitch.
/// </summary>
public static class EdgeLength
{
    // A root is no fraction. To the thousandth of a centimetre it is the same everywhere, and finer than any tape.
    private const int Parts = 1000;

    // Shaping is worked so many stitches in from an edge at most; a third of a narrow row.
    private const int MostAtEdge = 6;

    /// <summary>Its length in centimetres; null if a row's stitch has no gauge.</summary>
    public static Rational? Of(IReadOnlyList<JoinSide> edge, GaugeBook gauges)
    {
        var sum = 0.0;
        foreach (var side in edge)
        {
            if (Of(side, gauges) is not { } length) return null;
            sum += length;
        }

        return double.IsFinite(sum) && sum < int.MaxValue ? Rational.Of((long)Math.Round(sum * Parts), Parts) : null;
    }

    /// <summary>A stitch along the edge that has no gauge; null if all have one.</summary>
    public static Stitch? WithoutGauge(IReadOnlyList<JoinSide> edge, GaugeBook gauges)
    {
        foreach (var side in edge)
        {
            for (var i = 0; i < side.Stretches.Count; i++)
            {
                if (WithoutGauge(side, side.Stretches[i], gauges) is { } stitch) return stitch;
            }
        }

        return null;
    }

    private static Stitch? WithoutGauge(JoinSide side, Stretch stretch, GaugeBook gauges)
    {
        var (from, to) = RowsOf(side.Piece, stretch);
        for (var at = from; at < to; at++)
        {
            var row = side.Piece.Rows[at];
            if (GaugeBook.WidthFabricOf(row) is { } wide && gauges.Of(wide) is null) return wide;
            if (stretch.Kind == StretchKind.RowEnds && GaugeBook.FabricOf(row) is { } high && gauges.Of(high) is null) return high;
        }

        return null;
    }

    private static double? Of(JoinSide side, GaugeBook gauges)
    {
        var sum = 0.0;
        foreach (var stretch in side.Stretches)
        {
            var length = stretch.Kind == StretchKind.RowEnds ? AlongRows(side, stretch, gauges) : AlongStitches(side, stretch, gauges);
            if (length is not { } known) return null;
            sum += known;
        }

        return sum;
    }

    private static double? AlongRows(JoinSide side, Stretch stretch, GaugeBook gauges)
    {
        var (sum, height) = (0.0, 0.0);
        var (highBy, wideBy, high, wide) = ((Gauge?)null, (Gauge?)null, 0.0, 0.0);
        var (from, to) = RowsOf(side.Piece, stretch);
        for (var at = from; at < to; at++)
        {
            var row = side.Piece.Rows[at];
            if (HeightGauge(row, gauges) is not { } ofHeight || WidthGauge(row, gauges) is not { } ofWidth) return null;
            if (!ReferenceEquals(ofHeight, highBy) || !ReferenceEquals(ofWidth, wideBy))
            {
                if (ofHeight.HeightOf(1) is not { } ofRow || ofWidth.WidthOf(1) is not { } ofStitch) return null;
                (highBy, wideBy, high, wide) = (ofHeight, ofWidth, ofRow.ToDouble(), ofStitch.ToDouble());
            }

            height += high;
            var across = side.Hand is { } hand ? ChangeAt(row, hand) * wide : 0;
            if (across == 0) continue;
            sum += Math.Sqrt((height * height) + (across * across));
            height = 0;
        }

        return sum + height;
    }

    private static double? AlongStitches(JoinSide side, Stretch stretch, GaugeBook gauges)
    {
        if (stretch.Count == 0) return 0;
        var (from, to) = RowsOf(side.Piece, stretch);
        return from < to ? WidthGauge(side.Piece.Rows[from], gauges)?.WidthOf(stretch.Count)?.ToDouble() : null;
    }

    // Where its rows are among the piece's. A step is as wide as the row that it is left of; what is added, and a foundation, as the row
    // worked into it.
    private static (int From, int To) RowsOf(Piece piece, Stretch stretch)
    {
        var after = stretch.Kind is StretchKind.AddedChain or StretchKind.Foundation || stretch.FirstRow == 0;
        var from = after ? stretch.FirstRow : stretch.FirstRow - 1;
        return (from, Math.Min(piece.Rows.Count, from + (stretch.Kind == StretchKind.RowEnds ? stretch.Count : 1)));
    }

    private static Gauge? HeightGauge(Row row, GaugeBook gauges) => GaugeBook.FabricOf(row) is { } stitch ? gauges.Of(stitch) : null;

    private static Gauge? WidthGauge(Row row, GaugeBook gauges) => GaugeBook.WidthFabricOf(row) is { } stitch ? gauges.Of(stitch) : null;

    // What grows or shrinks all over a row turns it to a fan, and at a corner the row bends: either way it meets its edge squarely, and only what is made
    // at the edge itself makes that slope.
    private static int ChangeAt(Row row, Hand hand)
    {
        if (row.Plan is ShapedPlan plan) return plan.At(hand).Change;
        if (row.Plan is WordsPlan { Of: { } of }) return of.ChangeAt(hand);
        return row.Work is { } work ? ChangeAtEnd(work, hand == row.StartsAt) : 0;
    }

    private static int ChangeAtEnd(RowWork work, bool ofStart)
    {
        var near = Math.Clamp(work.Below.Count / 3, 1, MostAtEdge);
        var (change, taken) = (0, 0);
        for (var i = 0; i < work.Words.Count; i++)
        {
            var word = work.Words[ofStart ? i : work.Words.Count - 1 - i];
            // A step is a stretch of its own.
            if (word is SlipOver or Leave) continue;
            taken += WordCounts.Takes(word);
            if (taken > near || word is Work { Corners: > 0 } or Group { Corners: > 0 } or Work { Target.Aim: Aim.Ring } or Group { Target.Aim: Aim.Ring }) break;
            change += WidthMade(word) - WordCounts.Takes(word);
        }

        return change;
    }

    // A chain is as wide as a stitch.
    private static int WidthMade(Word word) => word switch
    {
        Chains chains => chains.Count,
        Group group => WordCounts.Makes(group) + (group.Words.OfType<Chains>().Sum(static c => c.Count) * group.Times),
        _ => WordCounts.Makes(word),
    };
}
