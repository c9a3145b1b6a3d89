using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;

namespace Turnrow.Publishing.Charts.Layout;

/// <summary>
/// Sets the rows of a piece one on the other: each where most of its stitches stand straight over those that they are worked
/// into, so that only increases and decreases lean.
/// </summary>
internal static class RowStack
{
    private const int SamplesOfPattern = 32;
    private const double FarLean = 1.6;
    private const double ShareToLean = 0.25;
    private const int NarrowEnoughToLean = 16;
    private const double ClosestPitch = 0.65;
    private const double WidestPitch = 2.5;

    /// <summary>The rows in order.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="from">How many of its rows are not set here: the next one stands on places side by side.</param>
    public static IReadOnlyList<RowLayout> Of(Piece piece, int from = 0)
    {
        var rows = new List<RowLayout>(piece.Rows.Count - from);
        RowLayout? before = null;
        for (var i = from; i < piece.Rows.Count; i++)
        {
            before = Set(piece.Rows[i], before);
            rows.Add(before);
        }

        return rows;
    }

    private static RowLayout Set(Row row, RowLayout? before)
    {
        var scale = ScaleOf(row, before);
        var start = StartOf(row, before, scale);
        if (row.Work is not { } work) return new RowLayout(row, null, scale, start, start, 1);
        var strip = StripBuilder.Build(work.Words, work.Below, scale);
        var direction = row.StartsAt == Hand.Right ? 1 : -1;
        var leans = LeansOf(strip, scale, before?.Pitch ?? 1);
        if (strip.Columns < NarrowEnoughToLean || ShareOff(leans) <= ShareToLean) return At(before?.Pitch ?? 1, leans);
        var pitch = Math.Clamp(scale.Columns / strip.Columns, ClosestPitch, WidestPitch);
        return At(pitch, LeansOf(strip, scale, pitch));

        RowLayout At(double pitch, List<Lean> leans) =>
            new(row, strip, scale, start, start + (direction * (leans.Count == 0 ? 0 : MiddleOf(leans).Columns)), pitch);
    }

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
            ? BelowScale.Over(strip, before.Pitch, row.StartsAt != before.Row.StartsAt, added, left, leftAtEnd, addedAtEnd)
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

    // How many of the stitches would lean far if they stood as close as in the row before. Where it is not only some at an edge,
    // changes are spread over the row: it is drawn as wide as the row below, its stitches closer or wider apart.
    private static double ShareOff(List<Lean> leans)
    {
        if (leans.Count == 0) return 0;
        var middle = MiddleOf(leans).Columns;
        var off = 0L;
        foreach (var lean in leans) off += Math.Abs(lean.Columns - middle) > FarLean ? lean.Weight : 0;
        return (double)off / leans.Sum(static lean => lean.Weight);
    }

    // What the middle one of all stitches asks for: the row is set so that it stands straight.
    private static Lean MiddleOf(List<Lean> leans)
    {
        leans.Sort(static (a, b) => a.Columns.CompareTo(b.Columns));
        var half = leans.Sum(static lean => lean.Weight) / 2;
        foreach (var lean in leans)
        {
            if (half < lean.Weight) return lean;
            half -= lean.Weight;
        }

        return leans[^1];
    }

    private static List<Lean> LeansOf(Strip strip, BelowScale scale, double pitch)
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
                    if (cell.Cell.Stitch is not null) leans.Add(LeanOf(cell, Math.Max(1, (long)(step * cell.Cell.Tops))));
                });
            }
        }

        return leans;

        Lean LeanOf(PlacedCell cell, long weight)
        {
            var foot = (scale.Middle(cell.Foot) + scale.Middle(cell.Foot + cell.Cell.Feet - 1)) / 2;
            return new Lean(foot - (cell.Middle * pitch), weight);
        }
    }

    /// <summary>Columns from where a stitch would stand to where it is worked into, and how many stitches that is said of.</summary>
    private readonly record struct Lean(double Columns, long Weight);
}
