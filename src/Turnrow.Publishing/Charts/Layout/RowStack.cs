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
    private const double RoomToSpread = 6;
    private const double ShareToSpread = 0.2;
    private const double ClosestPitch = 0.65;

    /// <summary>The rows in order.</summary>
    public static IReadOnlyList<RowLayout> Of(Piece piece)
    {
        var rows = new List<RowLayout>(piece.Rows.Count);
        RowLayout? before = null;
        foreach (var row in piece.Rows)
        {
            before = Set(row, before);
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
        var direction = row.RightSide ? 1 : -1;
        var pitch = PitchOf(strip, scale, before?.Pitch ?? 1);
        return new RowLayout(row, strip, scale, start, start + (direction * ShiftOf(strip, scale, pitch)), pitch);
    }

    private static BelowScale ScaleOf(Row row, RowLayout? before)
    {
        if (row.Work is not { } work) return BelowScale.Even((int)Math.Ceiling(before?.Tops.Length ?? 1));
        var (added, left) = Amounts(row.Start);
        var (addedAtEnd, leftAtEnd) = Amounts(row.End);
        return before?.Strip is { } strip && strip.Tops - left - leftAtEnd + added + addedAtEnd == work.Below.Count
            ? BelowScale.Over(strip, before.Pitch, added, left, leftAtEnd, addedAtEnd)
            : BelowScale.Even(work.Below.Count);
    }

    private static (int Added, int Left) Amounts(Step? step) =>
        step is null ? (0, 0) : step.Adds ? (step.Count, 0) : (0, step.Count);

    private static double StartOf(Row row, RowLayout? before, BelowScale scale)
    {
        if (before is null) return row.RightSide ? 0 : scale.Columns;
        var edge = row.RightSide ? before.Tops.From : before.Tops.To;
        var inwards = scale.LeftColumns - Amounts(row.Start).Added;
        return edge + (row.RightSide ? inwards : -inwards);
    }

    // As wide as the row before as long as it fits; where much more is made than there is room for, as a pattern of groups does, the
    // stitches stand closer rather than fan out.
    private static double PitchOf(Strip strip, BelowScale scale, double before)
    {
        var off = Math.Abs((strip.Columns * before) - scale.Columns);
        var keeps = off <= Math.Max(RoomToSpread, scale.Columns * ShareToSpread) || strip.Columns == 0;
        return keeps ? before : Math.Clamp(scale.Columns / strip.Columns, ClosestPitch, 1);
    }

    // Columns from the first place below to the first place made: what the middle one of all stitches asks for.
    private static double ShiftOf(Strip strip, BelowScale scale, double pitch)
    {
        var leans = new List<(double Lean, long Weight)>();
        foreach (var section in Sections.Of(strip)) AddLeans(strip, scale, pitch, section, leans);
        if (leans.Count == 0) return 0;
        leans.Sort(static (a, b) => a.Lean.CompareTo(b.Lean));
        var half = leans.Sum(static lean => lean.Weight) / 2;
        foreach (var (lean, weight) in leans)
        {
            if (half < weight) return lean;
            half -= weight;
        }

        return leans[^1].Lean;
    }

    private static void AddLeans(Strip strip, BelowScale scale, double pitch, Section section, List<(double Lean, long Weight)> leans)
    {
        if (section.Plain is { } plain)
        {
            leans.Add((scale.Middle(plain.Foot) - (plain.Middle * pitch), section.Tops));
            return;
        }

        var step = Math.Max(1.0, section.Columns.Length / SamplesOfPattern);
        for (var column = section.Columns.From; column < section.Columns.To; column += step)
        {
            strip.Visit(column, column + 1, cell =>
            {
                if (cell.Cell.Stitch is null) return;
                var foot = (scale.Middle(cell.Foot) + scale.Middle(cell.Foot + cell.Cell.Feet - 1)) / 2;
                leans.Add((foot - (cell.Middle * pitch), Math.Max(1, (long)(step * cell.Cell.Tops))));
            });
        }
    }
}
