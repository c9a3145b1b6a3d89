using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Pieces;

/// <content>A foundation that is worked at once with the first row.</content>
public sealed partial class PieceBuilder
{
    /// <summary>
    /// Begins with a row that makes its own foundation, a chain at the foot of each stitch. The row itself is worked as any is, by what
    /// <see cref="FoundationPlan"/> says.
    /// </summary>
    public void BeginWithFoundationStitches(Stitch stitch, int stitches)
    {
        Begin(new FoundationStart(0, false) { AtOnce = stitch }, RowBegins.FoundationStitches, true);
        _course.Set(PlaceSequence.Of(new Place(PlaceKind.FoundationChain, null, 0), stitches));
    }

    /// <summary>What the first row of so begun a piece is to be.</summary>
    public static RowPlan FoundationPlan(Stitch stitch) => new WordsPlan([Words.Work.Plain(stitch, Amount.Across)]);
}
