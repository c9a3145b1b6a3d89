using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Pieces;

/// <summary>Which rows are of one plain stitch, so that rows of it can follow without a word said.</summary>
internal static class PlainRows
{
    /// <summary>The one stitch of a row; null if there is none.</summary>
    public static Stitch? StitchOf(Row row) => row.Plan switch
    {
        ShapedPlan shaped => shaped.Stitch,
        WordsPlan words => OneStitch(words.Words),
        _ => null,
    };

    private static Stitch? OneStitch(IReadOnlyList<Word> words)
    {
        Stitch? only = null;
        return IsOf(words, ref only) ? only : null;
    }

    // One stitch all along: increases and decreases of it leave no doubt what going on is. Holes, places passed over and other loops do.
    private static bool IsOf(IReadOnlyList<Word> words, ref Stitch? only)
    {
        for (var i = 0; i < words.Count; i++)
        {
            var known = words[i] switch
            {
                // Whether rows that follow are joined too would be anybody's guess.
                Work { To: not null } => false,
                SlipOver or Leave or MarkerHere or MarkCorner or RemoveCorners or ChangeYarn or Hold or Bridge => true,
                Work { Hook: HookInto.BothLoops, Stitch.IsOne: true } work => Is(work.Stitch, ref only),
                Spread spread => Is(spread.Stitch, ref only) && IsOf(spread.Words, ref only),
                Group group => IsOf(group.Words, ref only),
                Repeat repeat => IsOf(repeat.Words, ref only),
                _ => false,
            };
            if (!known) return false;
        }

        return true;
    }

    private static bool Is(Stitch stitch, ref Stitch? only)
    {
        var same = only is null || only == stitch;
        only = stitch;
        return same;
    }
}
