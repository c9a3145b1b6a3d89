using Turnrow.Fabric.Words;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>Tells what becomes of markers.</summary>
internal static class Markers
{
    /// <summary>
    /// How the marker moves up from a corner that a word has just been worked into; null where nothing has to be said: of a corner that is worked
    /// over in passing, the notes say it.
    /// </summary>
    public static Phrase? Moved(Word word) => word switch
    {
        Work { Corners: > 0, Target.Aim: not Aim.EachOfKind, Stitch: { IsOne: false, Form: { Takes: 1 } form } } => OfGroup(new Group(form.Words(), Target.Next)),
        Work { Corners: > 0, Target.Aim: Aim.Corner or Aim.Next or Aim.First or Aim.Last or Aim.NextOfKind, Makes: > 1 } work =>
            new MoveMarker(MarkerTo.Middle, Sized.Of(work.Makes), NameOf(work)),
        Work { Corners: > 0 } work when IsIn(work.Target) => new MoveMarker(MarkerTo.Stitch, Sized.Of(1), NameOf(work)),
        Group { Corners: > 0, Target.Aim: not Aim.EachOfKind } group => OfGroup(group),
        _ => null,
    };

    /// <summary>The same where the row's chain stands for the one stitch worked into the corner.</summary>
    public static Phrase? MovedToChain(Word word) => word is Work { Corners: > 0, Makes: 1 } work && IsIn(work.Target)
        ? new MoveMarker(MarkerTo.Chain, Sized.Of(1), NameOf(work))
        : null;

    private static bool IsIn(Target target) => target.Aim == Aim.Corner || target is { Aim: Aim.NextOfKind, Filter.Kind: PlaceFilterKind.Corner };

    /// <summary>What a word makes last; null if it makes nothing.</summary>
    public static PlaceName? LastMade(Word word) => word switch
    {
        Work { To: not null } or Work { Takes: 0 } => null,
        Work { Amount.Times: > 0 } work => NameOf(work),
        Chains chains => SpaceOf(chains),
        Group { Words: { Count: > 0 } words } => LastInGroup(words.LastOrDefault(Makes) ?? words[^1]),
        _ => null,
    };

    private static PlaceName? LastInGroup(Word word) => word switch
    {
        Work { To: null } work => NameOf(work),
        Chains chains => SpaceOf(chains),
        _ => null,
    };

    private static MoveMarker? OfGroup(Group group)
    {
        if (group.Words.Any(static w => w is MarkCorner)) return null;
        var stitches = group.Words.OfType<Work>().Where(Makes).ToList();
        var count = stitches.Sum(static w => w.Makes * w.Amount.Count);
        var name = stitches.Count > 0 && stitches.TrueForAll(w => w.Stitch == stitches[0].Stitch) ? NameOf(stitches[0]) : PlaceName.AnyStitch;
        if (count % 2 == 0) return ToSpace(group, count / 2);
        return new MoveMarker(count == 1 ? MarkerTo.Stitch : MarkerTo.Middle, Sized.Of(count), name);
    }

    // The space behind so many stitches, told from others of as many chains.
    private static MoveMarker ToSpace(Group group, int before)
    {
        var seen = 0;
        var spaces = new SortedDictionary<int, int>();
        // Chains on both sides of a stitch that joins are one space.
        foreach (var word in group.Words)
        {
            if (word is Work work && Makes(work)) seen += work.Makes * work.Amount.Count;
            else if (word is Chains chains) spaces[seen] = spaces.GetValueOrDefault(seen) + chains.Count;
        }

        var middle = Math.Max(1, spaces.GetValueOrDefault(before));
        var alike = spaces.Where(space => space.Value == middle).Select(static space => space.Key).ToList();
        return new MoveMarker(MarkerTo.Space, Sized.Of(Math.Max(1, alike.Count)), SpaceOf(new Chains(middle))) { Nth = alike.IndexOf(before) + 1 };
    }

    // What stands on the stitch before it, or goes into another piece, makes none.
    private static bool Makes(Word word) => word is Work { To: null, Takes: > 0 } or Chains;

    private static PlaceName NameOf(Work work) => work.Stitch.IsOne ? new(PlaceNameKind.Stitch, work.Stitch) : PlaceName.Of(work.Stitch.Tops.Last);

    private static PlaceName SpaceOf(Chains chains) => new(PlaceNameKind.Space, null, chains.Count);
}
