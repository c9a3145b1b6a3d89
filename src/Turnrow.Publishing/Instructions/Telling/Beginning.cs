using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Instructions.Phrases;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>A row's words, parted at the first that works something.</summary>
/// <param name="Skipped">Places skipped before it.</param>
/// <param name="First">The first word that is no skip; null for none.</param>
/// <param name="Rest">The words behind it.</param>
internal sealed record Beginning(int Skipped, Word? First, IReadOnlyList<Word> Rest)
{
    public static Beginning Of(IReadOnlyList<Word> words)
    {
        var unrolled = Leading.Unrolled(words);
        var skipped = 0;
        var at = 0;
        while (at < unrolled.Count && unrolled[at] is Skip skip)
        {
            skipped += skip.Count;
            at++;
        }

        return at < unrolled.Count ? new(skipped, unrolled[at], unrolled[(at + 1)..]) : new(skipped, null, []);
    }

    /// <summary>True if the stitch named next is the one that the row begins with.</summary>
    public bool Goes(Stitch? stitch)
    {
        if (First is Work { Makes: 1, Amount.Times: 1 }) return Stitched(Leading.First(Rest)) == stitch;
        if (First is Group { Words: [Work { Makes: 1, Amount.Times: 1 }, ..] group }) return (group.Skip(1).OfType<Work>().FirstOrDefault()?.Stitch ?? Stitched(Leading.First(Rest))) == stitch;
        return Stitched(First) == stitch;
    }

    private static Stitch? Stitched(Word? word) => word switch
    {
        Work work => work.Stitch,
        Group group => group.Words.OfType<Work>().FirstOrDefault()?.Stitch,
        _ => null,
    };

    /// <summary>Places passed over before the first stitch, whether skipped or on the way to its kind of place.</summary>
    public int Passed(RowPlaces places) => Skipped + First switch
    {
        Work { Target.Aim: Aim.EachOfKind } work => places.Until(work.Target.Filter.Has),
        Group { Target.Aim: Aim.EachOfKind } group => places.Until(group.Target.Filter.Has),
        Work work => work.Passed,
        Group group => group.Passed,
        _ => 0,
    };

    /// <summary>The rest where the chain that stands for the first stitch is also the space behind it, which may stand in a repeat.</summary>
    /// <param name="space">True if it is.</param>
    /// <param name="marks">Takes the markers in what the chain stands for, which are left out of the words.</param>
    public IReadOnlyList<Word> RestAfter(bool space, List<PlaceMarker> marks)
    {
        var rest = space ? Leading.Unrolled(Rest) : [.. Rest];
        if (First is Work { Makes: 1, Takes: 1, Amount.Times: 1 }) TakeMark(rest, 0, PlaceName.AnyStitch, marks);
        if (!space) return rest;
        var at = rest.FindIndex(static w => w is not Skip);
        if (at >= 0 && rest[at] is Group { Words: [Chains, ..] } group) rest[at] = group with { Words = [.. group.Words.Skip(1)] };
        if (at < 0 || rest[at] is not Chains chains) return rest;
        rest.RemoveAt(at);
        TakeMark(rest, at, new PlaceName(PlaceNameKind.Space, null, chains.Count), marks);
        return rest;
    }

    private static void TakeMark(List<Word> words, int at, PlaceName place, List<PlaceMarker> marks)
    {
        if (at >= words.Count || words[at] is not MarkCorner) return;
        words.RemoveAt(at);
        marks.Add(new PlaceMarker(place, true));
    }
}
