using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Places;

/// <summary>
/// Which of the places of a special stitch a place is. There is one object for each, so that comparing two asks for no more than that and
/// runs stay runs; from the other end, as after a turn, the same place is another one.
/// </summary>
public sealed class PartOfStitch
{
    private PartOfStitch? _other;

    private PartOfStitch(Stitch special, int index, int nth, bool isCentre) =>
        (Special, Index, Nth, IsCentre) = (special, index, nth, isCentre);

    /// <summary>The special stitch.</summary>
    public Stitch Special { get; }

    /// <summary>Its number among the places of the stitch as they are met, from 0.</summary>
    public int Index { get; }

    /// <summary>Its number among those of its kind as they are met, from 1: the 3rd dc.</summary>
    public int Nth { get; }

    /// <summary>True if the name of the stitch alone means this place.</summary>
    public bool IsCentre { get; }

    /// <summary>The same place met from the other end.</summary>
    public PartOfStitch FromOtherEnd => _other!;

    internal static PartOfStitch At(Stitch special, IReadOnlyList<Place> made, int index, int centre)
    {
        var (before, after) = (0, 0);
        for (var i = 0; i < made.Count; i++)
        {
            if (made[i].Kind != made[index].Kind || made[i].Stitch != made[index].Stitch) continue;
            if (i < index) before++;
            if (i > index) after++;
        }

        var part = new PartOfStitch(special, index, before + 1, index == centre);
        part._other = new PartOfStitch(special, made.Count - 1 - index, after + 1, index == centre) { _other = part };
        return part;
    }
}
