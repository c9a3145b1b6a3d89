using Turnrow.Fabric.Places;

namespace Turnrow.Fabric.Words;

/// <summary>What becomes of a corner: the middle of what is worked into it is the corner of the next row.</summary>
internal static class Corners
{
    /// <summary>
    /// The places made in one corner, their middle marked: the middle one of an odd number of stitches, or the space that parts an even number
    /// into halves. What holds a marker of its own stays as it is. Null if there is no middle.
    /// </summary>
    public static PlaceSequence? WithMiddle(PlaceSequence made)
    {
        if (made.HasCorners) return made;
        var index = MiddleOf(made);
        return index < 0 ? null : made.WithCornerAt(index, true);
    }

    /// <summary>True if a row's words speak of corners that are there already.</summary>
    public static bool AreSaid(IReadOnlyList<Word> words) =>
        WordLists.Any(words, static word => IsIn(word) || word.Reach == Reach.ToCorner || word.GoesTo is { ToCorner: true });

    /// <summary>True if a word goes into the corner.</summary>
    public static bool IsIn(Word word) => word.GoesTo is { } target && IsCorner(target);

    /// <summary>True of a word's way to a corner, which is the next place or the next one that is a corner.</summary>
    public static bool IsCorner(Target target) => target.Aim == Aim.Corner || target is { Aim: Aim.NextOfKind, Filter.Kind: PlaceFilterKind.Corner };

    private static int MiddleOf(PlaceSequence made)
    {
        var stitches = made.CountWhere(static p => p.IsStitch);
        var (half, odd) = (stitches / 2, stitches % 2 != 0);
        var cursor = new PlaceCursor(made);
        var seen = 0;
        while (cursor.Remaining > 0)
        {
            var index = made.Count - cursor.Remaining;
            var run = cursor.CurrentRun(int.MaxValue);
            cursor.Pass(run.Count);
            if (run.Place.IsStitch)
            {
                if (odd && seen + run.Count > half) return index + half - seen;
                if (!odd && (seen == half || seen + run.Count > half)) return -1;
                seen += run.Count;
            }
            else if (!odd && seen == half)
            {
                // Two spaces side by side have no middle either.
                return run.Count == 1 && (cursor.Remaining == 0 || cursor.Next.IsStitch) ? index : -1;
            }
        }

        return -1;
    }
}
