using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Compiler.Joins;

/// <summary>Two rows of different stitches whose ends meet in a seam.</summary>
internal sealed record RowsThatMeet(int First, Stitch FirstStitch, int Second, Stitch SecondStitch)
{
    /// <summary>
    /// The first plain rows that meet and are of different stitches; null if there are none, or if both edges have as many rows of each stitch, for
    /// then they are equally long.
    /// </summary>
    public static RowsThatMeet? Find(Seam seam)
    {
        if (seam.Eased || seam.First.Hand is null || seam.Second.Hand is null || seam.First.RowEnds != seam.Second.RowEnds || AsLong(seam)) return null;
        var (first, second) = (Runs(seam.First, false), Runs(seam.Second, seam.OppositeOrder));
        var (i, j, passedFirst, passedSecond) = (0, 0, 0, 0);
        while (i < first.Count && j < second.Count)
        {
            var (a, b) = (first[i], second[j]);
            var (row, otherRow) = (a.FirstRow + passedFirst, seam.OppositeOrder ? b.LastRow - passedSecond : b.FirstRow + passedSecond);
            if (a.Stitch is { } one && b.Stitch is { } other && one != other && IsPlain(seam.First, row, one) && IsPlain(seam.Second, otherRow, other))
                return new RowsThatMeet(row, one, otherRow, other);
            var step = Math.Min(a.Count - passedFirst, b.Count - passedSecond);
            passedFirst += step;
            passedSecond += step;
            if (passedFirst == a.Count) (i, passedFirst) = (i + 1, 0);
            if (passedSecond == b.Count) (j, passedSecond) = (j + 1, 0);
        }

        return null;
    }

    private static bool AsLong(Seam seam)
    {
        var more = new Dictionary<string, int>();
        foreach (var stretch in seam.First.Stretches) Count(stretch, stretch.Count);
        foreach (var stretch in seam.Second.Stretches) Count(stretch, -stretch.Count);
        return more.Values.All(n => n == 0);

        void Count(Stretch stretch, int rows)
        {
            if (stretch.Kind == StretchKind.RowEnds) more[stretch.Stitch?.Id ?? string.Empty] = more.GetValueOrDefault(stretch.Stitch?.Id ?? string.Empty) + rows;
        }
    }

    // A row of several stitches is as high as its tallest, whatever stands at its end.
    private static bool IsPlain(JoinSide side, int row, Stitch stitch) =>
        side.Piece.Rows[row - 1].Work is { } work && work.Tops.Kinds().All(k => k.Place.Stitch == stitch);

    private static List<Stretch> Runs(JoinSide side, bool fromTheTop)
    {
        var runs = side.Stretches.Where(s => s.Kind == StretchKind.RowEnds).ToList();
        if (fromTheTop) runs.Reverse();
        return runs;
    }
}
