using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;

namespace Turnrow.Publishing.Charts.Layout;

/// <summary>
/// Sets the rows of a piece one on the other. A plain row stands evenly, where most of its stitches stand straight over those that they are worked
/// into, so that only increases and decreases lean; where many would lean, and in openwork, each stitch is set over its own feet.
/// </summary>
internal static class RowStack
{
    private const int SamplesOfPattern = 32;
    private const int MostCells = 600_000;
    private const double FarLean = 1.6;
    private const double ShareToLean = 0.25;
    private const int NarrowEnoughToLean = 16;
    private const double Filled = 0.88;
    private const double ClosestPitch = 0.65;
    private const double WidestPitch = 2.5;

    /// <summary>The rows in order.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="from">How many of its rows are not set here: the next one stands on places side by side.</param>
    public static IReadOnlyList<RowLayout> Of(Piece piece, int from = 0)
    {
        var rows = new List<RowLayout>(piece.Rows.Count - from);
        RowLayout? before = null;
        // Of a field of rows, only those are set stitch by stitch that are not too wide for it.
        var closely = Math.Min(Footing.MostColumns, MostCells / Math.Max(1, piece.Rows.Count));
        for (var i = from; i < piece.Rows.Count; i++)
        {
            before = Set(piece.Rows[i], before, closely);
            rows.Add(before);
        }

        return rows;
    }

    private static RowLayout Set(Row row, RowLayout? before, int closely)
    {
        var scale = ScaleOf(row, before);
        var start = StartOf(row, before, scale);
        var direction = row.StartsAt == Hand.Right ? 1 : -1;
        if (row.Work is not { } work) return new RowLayout(row, null, scale, start, Knots.Even(start, direction, (int)Math.Ceiling(scale.Columns)), 1);
        var strip = StripBuilder.Build(work.Words, work.Below);
        var pitch = before?.Pitch ?? 1;
        var leans = LeansOf(strip, scale, column => column * pitch);
        var longest = Math.Max(RowLayout.LengthOf(row), before?.Longest ?? scale.Count);
        var isEven = before?.IsEven != false && !HasArches(work);
        if (leans.Count == 0 || (isEven && ShareOff(leans, Lean.MiddleOf(leans)) <= ShareToLean)) return Even(pitch, leans);
        if (strip.Columns <= closely && OverFeet(row, strip, scale, pitch, longest - (before?.Longest ?? scale.Count)) is var (knots, closest))
            return new RowLayout(row, strip, scale, start, new Knots([.. knots.Select(knot => knot with { Along = start + (direction * knot.Along) })]), closest) { Longest = longest };
        pitch = Math.Clamp(scale.Columns / strip.Columns, ClosestPitch, WidestPitch);
        return Even(pitch, LeansOf(strip, scale, column => column * pitch));

        RowLayout Even(double pitch, List<Lean> leans) =>
            new(row, strip, scale, start, Knots.Even(start + (direction * (leans.Count == 0 ? 0 : Lean.MiddleOf(leans))), direction * pitch, strip.Columns), pitch) { Longest = longest };
    }

    private static bool HasArches(RowWork work) => work.Tops.Kinds().Any(static kind => kind.Place.Kind == PlaceKind.Space);

    // Within the width below where there is room; wider where only a few lean for it, as at edges that grow; else closer together.
    private static (IReadOnlyList<Knot> Knots, double Pitch)? OverFeet(Row row, Strip strip, BelowScale scale, double pitchBelow, long grown)
    {
        // Plain stitches even out where increases and decreases below have set them closer or wider apart.
        var evened = HasArches(row.Work!) ? 0 : Footing.Evened;
        double? FootOf(PlacedCell cell) => (FootIn(scale, cell) * (1 - evened)) + (cell.Middle / strip.Columns * scale.Columns * evened);
        var needed = Footing.NeededBy(strip);
        var pitch = Math.Min(1, Math.Max(pitchBelow, scale.Columns * Filled / needed));
        if (needed * pitch > scale.Columns)
        {
            if (Footing.Over(strip, FootOf, pitch, double.PositiveInfinity) is not { } wide) return null;
            if (needed < NarrowEnoughToLean || ShareOff(LeansOf(strip, scale, new Knots(wide).At), 0) <= ShareToLean) return (wide, pitch);
            pitch = Math.Clamp(scale.Columns * Filled / needed, ClosestPitch, 1);
        }

        // A row that is no longer than others were before it is no wider either; one that grows may stand out by as much.
        var knots = Footing.Over(strip, FootOf, pitch, needed * pitch <= scale.Columns ? scale.Columns + (grown * pitch) : double.PositiveInfinity);
        return knots is null ? null : (knots, pitch);
    }

    private static double FootIn(BelowScale scale, PlacedCell cell) => (scale.Middle(cell.Foot) + scale.Middle(cell.Foot + cell.Cell.Feet - 1)) / 2;

    private static BelowScale ScaleOf(Row row, RowLayout? before)
    {
        if (row.Work is not { } work) return BelowScale.Even((int)Math.Ceiling(before?.Tops.Length ?? 1));
        var (added, left) = Amounts(row.Start);
        var (addedAtEnd, leftAtEnd) = Amounts(row.End);
        // Stitches left for later lie beside those of the row before, one column each, wherever they are left or taken up.
        leftAtEnd += row.Short.Left + (row.Unworked?.Count ?? 0);
        addedAtEnd += row.Short.Taken;
        // Slip stitches may go past all of the row before, onto chains added behind it: then the row stands on none of that one.
        return before?.Strip is { } strip && left + leftAtEnd <= strip.Tops && strip.Tops - left - leftAtEnd + added + addedAtEnd == work.Below.Count
            ? BelowScale.Over(before, row.StartsAt != before.Row.StartsAt, added, left, leftAtEnd, addedAtEnd)
            : BelowScale.Even(work.Below.Count);
    }

    private static (int Added, int Left) Amounts(Step? step) =>
        step is null ? (0, 0) : step.Adds ? (step.Count, 0) : (0, step.Count);

    private static double StartOf(Row row, RowLayout? before, BelowScale scale)
    {
        var fromRight = row.StartsAt == Hand.Right;
        if (before is null) return fromRight ? 0 : scale.Columns;
        var edge = fromRight ? before.Tops.From : before.Tops.To;
        var inwards = scale.LeftColumns - Amounts(row.Start).Added;
        return edge + (fromRight ? inwards : -inwards);
    }

    // How many of the stitches would lean far if they stood as close as in the row before.
    private static double ShareOff(List<Lean> leans, double middle)
    {
        var off = 0.0;
        foreach (var lean in leans) off += Math.Abs(lean.Columns - middle) > FarLean ? lean.Weight : 0;
        return off / leans.Sum(static lean => lean.Weight);
    }

    private static List<Lean> LeansOf(Strip strip, BelowScale scale, Func<double, double> at)
    {
        var leans = new List<Lean>();
        foreach (var section in Sections.Of(strip))
        {
            if (section.Plain is { } plain)
            {
                // Plain stitches lean alike, unless the row is wider or narrower than the one below: then from one end to the other.
                leans.Add(LeanOf(plain, section.Tops - (section.Tops / 2)));
                leans.Add(LeanOf(section.LastPlain, section.Tops / 2));
                continue;
            }

            var step = Math.Max(1.0, section.Columns.Length / SamplesOfPattern);
            for (var column = section.Columns.From; column < section.Columns.To; column += step)
            {
                strip.Visit(column, column + 1, cell =>
                {
                    if (cell.Cell.Stitch is not null) leans.Add(LeanOf(cell, step * cell.Cell.Feet));
                });
            }
        }

        return leans;

        Lean LeanOf(PlacedCell cell, double weight) => new(FootIn(scale, cell) - at(cell.Middle), weight);
    }
}
