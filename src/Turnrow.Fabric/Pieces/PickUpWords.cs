using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Pieces;

/// <summary>The row of stitches that is picked up: plain, but for the markers in its corners.</summary>
internal static class PickUpWords
{
    /// <summary>The row's plan.</summary>
    public static RowPlan PlanOf(PickUpStart pickUp, Stitch stitch)
    {
        var corners = pickUp.CornersMade();
        if (corners.Count == 0) return ShapedPlan.Plain(stitch);
        var words = new List<Word>();
        var done = 0;
        foreach (var corner in corners)
        {
            words.Add(Work.Plain(stitch, Amount.Of(corner + 1 - done)));
            words.Add(new MarkCorner());
            done = corner + 1;
        }

        words.Add(Work.Plain(stitch, Amount.Across));
        return new WordsPlan(words);
    }
}
