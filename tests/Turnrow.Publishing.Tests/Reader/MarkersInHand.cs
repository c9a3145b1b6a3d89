namespace Turnrow.Publishing.Tests.Reader;

/// <summary>The markers of a row being worked: each moves up to what is made in its place, and the row may say to what.</summary>
/// <param name="made">The places made so far.</param>
internal sealed class MarkersInHand(List<Place> made)
{
    private int _carried = -1;
    private int _from = -1;

    /// <summary>A marked place has been worked into: the notes say that its marker moves up. It is one marker, however often that is done.</summary>
    public void CarryTo(int index, int from)
    {
        TakeFrom(from);
        Set(index, true);
        (_carried, _from) = (index, from);
    }

    /// <summary>What is worked into a marked place has a marker of its own: the one moved up from there before is not left behind.</summary>
    public void TakeFrom(int from)
    {
        if (from != _from || from < 0) return;
        Set(_carried, false);
        (_carried, _from) = (-1, -1);
    }

    public void Put(PutMarker put)
    {
        var at = put.InFirst ? made.FindIndex(p => Fits(put.Name, p)) : made.Count - 1;
        if (at < 0 || !Fits(put.Name, made[at])) throw new Misread("the marker has nothing to go into");
        Set(at, true);
    }

    public void PutInMiddle(int of) => Set(Middle(of), true);

    public void Shift(ShiftMarker shift)
    {
        if (_carried < 0) throw new Misread("there is no marker to move");
        Set(_carried, false);
        Set(shift.Name is null ? Chain() : shift.MiddleOf > 1 ? OneOf(shift) : made.FindLastIndex(p => Fits(shift.Name, p)), true);
    }

    public void Drop(bool atEdge)
    {
        for (var i = 0; i < made.Count; i++)
        {
            if (!atEdge || i == 0 || i == made.Count - 1) Set(i, false);
        }
    }

    private static bool Fits(PlaceName name, Place place) => name.Fits(place) || (place.Counts && (name.Word == place.Stitch || name.Word == "st"));

    private int Chain() => made.FindLastIndex(p => p.Seen is Seen.TurningChain or Seen.BeginningChain);

    private int OneOf(ShiftMarker shift)
    {
        if (shift.Name is not { Word: "sp" } name) return Middle(shift.MiddleOf);
        var spaces = Enumerable.Range(0, made.Count).Where(i => Fits(name, made[i])).TakeLast(shift.MiddleOf).ToList();
        if (spaces.Count != shift.MiddleOf || (shift.Nth == 0 && spaces.Count % 2 == 0)) throw new Misread($"{shift.MiddleOf} spaces are not there, or have no middle one");
        return spaces[shift.Nth == 0 ? spaces.Count / 2 : shift.Nth - 1];
    }

    private int Middle(int of)
    {
        var counted = Enumerable.Range(0, made.Count).Where(i => made[i].Counts).TakeLast(of).ToList();
        return counted.Count == of && of % 2 == 1 ? counted[of / 2] : throw new Misread($"{of} have no middle one");
    }

    private void Set(int index, bool marked)
    {
        if (index < 0 || index >= made.Count) throw new Misread("there is nothing to mark");
        made[index] = made[index] with { IsMarked = marked };
    }
}
