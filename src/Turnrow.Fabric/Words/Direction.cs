using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Words;

/// <summary>Which way a row is worked: as every row, or back from the maker's left to her right. Its stitches say it, and all of them the same.</summary>
internal static class Direction
{
    /// <summary>True if what a row is meant to be has a stitch that is worked back.</summary>
    public static bool IsBack(RowPlan plan) => plan switch
    {
        ShapedPlan shaped => IsBack(shaped.Stitch),
        WordsPlan words => Find(words.Words, true, WorkedWords.IsIdleUnworked) is not null,
        _ => false,
    };

    /// <summary>What is wrong with a row that is worked back: another of its stitches is not, or there is no row that it could go back over.</summary>
    public static RowFault? Fault(IReadOnlyList<Word> words, bool isFirst)
    {
        if (Find(words, false, WorkedWords.IsIdle) is { } other) return new RowFault(RowFaultKind.TwoDirections, other, 0, 0, 0);
        return isFirst ? new RowFault(RowFaultKind.NothingToGoBackOver, Find(words, true, WorkedWords.IsIdle), 0, 0, 0) : null;
    }

    private static bool IsBack(Stitch stitch)
    {
        if (stitch.Making == StitchMaking.Reversed) return true;
        for (var i = 0; i < stitch.Form?.Parts.Count; i++)
        {
            if (stitch.Form.Parts[i].Stitch is { Making: StitchMaking.Reversed }) return true;
        }

        return false;
    }

    // The first word whose stitch is worked so; null if there is none.
    private static Word? Find(IReadOnlyList<Word> words, bool back, Func<Word, bool> isIdle) =>
        WordLists.First(words, word => word is Work work && IsBack(work.Stitch) == back, isIdle);
}
