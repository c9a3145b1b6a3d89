using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>Tells how a row begins, and with it the stitch that its chain stands for; then all the rest.</summary>
internal static class OpeningTeller
{
    /// <summary>Tells the whole row.</summary>
    public static void Tell(RowContext row, WordTeller teller)
    {
        var opening = row.Work.Opening;
        if (row.Row.Begins == RowBegins.FoundationStitches) FoundationOpening.Tell(row, teller);
        else if (opening.FirstStitchIn > 0) ChainOpening.Tell(row, teller);
        else if (opening.Counts) CountedOpening.Tell(row, teller);
        else UncountedOpening.Tell(row, teller);
    }

    /// <summary>Tells what is left of a word whose first time has been told.</summary>
    public static void TellAgain(WordTeller teller, Word first)
    {
        switch (first)
        {
            case Work { Amount.Times: > 1 } or Work { Amount.Times: 1, Target.ToCorner: true }:
                var work = (Work)first;
                teller.Tell(work with { Amount = work.Amount with { Times = work.Amount.Times - 1 }, Passed = 0 });
                break;
            case Group { Times: > 1 } or Group { Times: 1, Target.ToCorner: true }:
                var group = (Group)first;
                teller.Tell(group with { Times = group.Times - 1, Passed = 0 });
                break;
        }
    }

    /// <summary>Tells a word once, in a place of its own, and takes the places that it needs.</summary>
    /// <param name="row">The row.</param>
    /// <param name="teller">What tells it.</param>
    /// <param name="first">Stitches or a group.</param>
    /// <param name="where">The place.</param>
    /// <param name="without">True if a chain stands for its first stitch.</param>
    /// <param name="marks">Takes the marker in what such a chain stands for, where it is not moved up from a corner.</param>
    public static void TellOnce(RowContext row, WordTeller teller, Word first, Where where, bool without, List<PlaceMarker>? marks = null)
    {
        switch (first)
        {
            case Work { Takes: > 1 } work:
                var name = row.Places.NameOf(work.Takes);
                row.Places.Pass(work.Takes);
                teller.Phrases.Add(new TogetherFromHook(work.Stitch, work.Hook, work.Takes, name, where));
                break;
            case Work work:
                if (work.Target.Aim is not (Aim.Ring or Aim.Same)) row.Places.Pass(1);
                teller.Phrases.Add(new StitchesIn(work.Stitch, work.Hook, Sized.Of(work.Makes - (without ? 1 : 0)), where));
                break;
            case Group group:
                if (group.Target.Aim != Aim.Same) row.Places.Pass(1);
                var words = without ? WithoutFirst(group.Words, row.Work.Opening.Space > 0) : group.Words;
                // What is made last of it is the chain's: a marker there is not in what was just made.
                var marked = without && words is [MarkCorner, ..];
                var inside = WordTeller.Inside(marked ? words.Skip(1) : words);
                if (inside.Count > 0) teller.Phrases.Add(WordTeller.InPlace(inside, where) with { Completes = group.Special });
                if (marked) MarkChain(row, teller, group, marks);
                break;
        }

        teller.AtFirst = false;
        teller.Finished(first);
        if (first is Work { Amount.Times: 1 } once) teller.Shape(once);
    }

    private static void MarkChain(RowContext row, WordTeller teller, Group group, List<PlaceMarker>? marks)
    {
        var space = row.Work.Opening.Space;
        var place = space > 0 ? new PlaceName(PlaceNameKind.Space, null, space) : PlaceName.AnyStitch;
        if (group.Corners > 0 && row.Row.Begins != RowBegins.BothSides) teller.Phrases.Add(new MoveMarker(space > 0 ? MarkerTo.Space : MarkerTo.Chain, Sized.Of(1), place));
        else marks?.Add(new PlaceMarker(place, true));
    }

    // A group's words without its first stitch, and without the space behind that if the chain makes it too.
    private static List<Word> WithoutFirst(IReadOnlyList<Word> words, bool space)
    {
        var rest = words.ToList();
        if (rest.Count > 0 && rest[0] is Work work)
        {
            var stitches = (work.Makes * work.Amount.Count) - 1;
            rest.RemoveAt(0);
            if (stitches > 0) rest.Insert(0, work with { Makes = 1, Amount = Amount.Of(stitches) });
        }

        if (space && rest.Count > 0 && rest[0] is Chains) rest.RemoveAt(0);
        return rest;
    }
}
