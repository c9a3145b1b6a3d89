using Turnrow.Fabric.Places;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Places;

public sealed class SliceTests
{
    private static readonly PlaceSequence Mesh = MeshOver(41);

    [Fact]
    public void A_slice_holds_the_places_that_lie_within()
    {
        var all = Flat(Mesh);
        for (var start = 0; start <= all.Count; start++)
        {
            for (var count = 0; start + count <= all.Count; count++)
                Assert.Equal(all.GetRange(start, count), Flat(Mesh.Slice(start, count)));
        }
    }

    [Fact]
    public void A_slice_keeps_repeats_together() => Assert.InRange(Mesh.Slice(3, 30).Segments.Count, 1, 3);

    private static PlaceSequence MeshOver(int stitches)
    {
        var dc = StitchBook.Double;
        var words = new Word[] { Work.Plain(dc, Amount.Once), new Repeat([new Chains(1), new Skip(1), Work.Plain(dc, Amount.Once)], Amount.Across) };
        return RowWorker.Work(words, PlaceSequence.Of(Place.TopOf(dc), stitches)).Tops;
    }

    private static List<Place> Flat(PlaceSequence places) =>
        [.. places.Segments.SelectMany(segment => Enumerable.Repeat(segment.Unit, segment.Times)).SelectMany(unit => unit).SelectMany(run => Enumerable.Repeat(run.Place, run.Count))];
}
