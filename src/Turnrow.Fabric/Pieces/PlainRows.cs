using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Pieces;

/// <summary>Which rows are plain, so that more like them can follow without a word said.</summary>
internal static class PlainRows
{
    /// <summary>The one stitch of a plain row; null if the row is not plain.</summary>
    public static Stitch? StitchOf(Row row) => row.Plan switch
    {
        ShapedPlan shaped => shaped.Stitch,
        WordsPlan words => OneStitch(words.Words),
        _ => null,
    };

    private static Stitch? OneStitch(IReadOnlyList<Word> words)
    {
        Stitch? only = null;
        foreach (var word in words)
        {
            if (word is SlipOver or Leave or MarkCorner or RemoveCorners or Hold or Bridge) continue;
            if (word is not Work { Takes: 1, Makes: 1, Hook: HookInto.BothLoops, Stitch.IsOne: true } work) return null;
            if (only is not null && only != work.Stitch) return null;
            only = work.Stitch;
        }

        return only;
    }
}
