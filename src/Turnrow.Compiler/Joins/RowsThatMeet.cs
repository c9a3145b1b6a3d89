using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Compiler.Joins;

/// <summary>Two rows of different stitches whose ends meet in a seam.</summary>
internal sealed record RowsThatMeet(int First, Stitch FirstStitch, int Second, Stitch SecondStitch)
{
    /// <summary>The first rows that meet and are of different stitches; null if there are none.</summary>
    public static RowsThatMeet? Find(Seam seam)
    {
        if (seam.Eased || seam.First.Hand is null || seam.Second.Hand is null || seam.First.RowEnds != seam.Second.RowEnds) return null;
        var (first, second) = (Runs(seam.First, false), Runs(seam.Second, seam.OppositeOrder));
        var (i, j, passedFirst, passedSecond) = (0, 0, 0, 0);
        while (i < first.Count && j < second.Count)
        {
            var (a, b) = (first[i], second[j]);
            if (a.Stitch is { } one && b.Stitch is { } other && one != other)
                return new RowsThatMeet(a.FirstRow + passedFirst, one, seam.OppositeOrder ? b.LastRow - passedSecond : b.FirstRow + passedSecond, other);
            var step = Math.Min(a.Count - passedFirst, b.Count - passedSecond);
            passedFirst += step;
            passedSecond += step;
            if (passedFirst == a.Count) (i, passedFirst) = (i + 1, 0);
            if (passedSecond == b.Count) (j, passedSecond) = (j + 1, 0);
        }

        return null;
    }

    private static List<Stretch> Runs(JoinSide side, bool fromTheTop)
    {
        var runs = side.Stretches.Where(s => s.Kind == StretchKind.RowEnds).ToList();
        if (fromTheTop) runs.Reverse();
        return runs;
    }
}
