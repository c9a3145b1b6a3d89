using CsCheck;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Tests.Places;

/// <summary>Random rows of places, and the same as a plain list.</summary>
internal static class PlaceGen
{
    public static Place Dc { get; } = Place.TopOf(StitchBook.Double);

    public static Place Sc { get; } = Place.TopOf(StitchBook.Single);

    public static Place Space { get; } = Place.SpaceOf(2);

    private static readonly Place[] _all = [Dc, Sc, Space, Place.SpaceOf(1), new(PlaceKind.AddedChain, null, 0)];

    public static Gen<Place> One { get; } = Gen.Int[0, _all.Length - 1].Select(static i => _all[i]);

    public static Gen<PlaceSequence> Sequence { get; } = Gen.Select(Gen.Select(One, Gen.Int[1, 4]).Array[1, 3], Gen.Int[1, 4])
        .Array[0, 4].Select(static parts =>
        {
            var builder = new PlaceSequenceBuilder();
            foreach (var (runs, times) in parts)
            {
                var unit = new PlaceSequenceBuilder();
                foreach (var (place, count) in runs) unit.Add(place, count);
                builder.AddTimes(unit.Build(), times);
            }

            return builder.Build();
        });

    public static List<Place> Flat(PlaceSequence places)
    {
        var flat = new List<Place>();
        foreach (var segment in places.Segments)
        {
            for (var i = 0; i < segment.Times; i++)
            {
                foreach (var run in segment.Unit) flat.AddRange(Enumerable.Repeat(run.Place, run.Count));
            }
        }

        return flat;
    }

    public static PlaceSequence Of(IEnumerable<Place> places)
    {
        var builder = new PlaceSequenceBuilder();
        foreach (var place in places) builder.Add(place, 1);
        return builder.Build();
    }
}
