using Turnrow.Fabric.Places;

namespace Turnrow.Fabric.Words;

/// <content>
/// The end of a round. Behind its last place comes its first one, so a word that goes to a kind of place passes over what is left there as it does between
/// two of them.
/// </content>
internal sealed partial class RowRun
{
    // The kind that the last word named which took a place; null if it named none.
    private PlaceFilter? _named;

    private void Name(Target target)
    {
        if (target.Aim is Aim.Same or Aim.Ring) return;
        _named = target.Aim is Aim.NextOfKind or Aim.EachOfKind && target is { Remain: 0, ToCorner: false } ? target.Filter : null;
    }

    // Nothing of the kind is left before the round's beginning, and no corner that would be lost.
    private bool IsRoundDone()
    {
        if (!isRound || _named is not { } kind || _fault is not null || _cursor.Remaining == 0 || MeetsCorner(_cursor.Remaining)) return false;
        return below.Slice(Taken, _cursor.Remaining).CountWhere(place => kind.Has(place) || IsOtherSpace(kind, place)) == 0;
    }

    // Of a repeat, nothing is left either that its next time would begin with: what was passed over before its first place does not end a time that has begun.
    private bool IsRoundDone(Repeat repeat)
    {
        if (IsWayToBeginning(repeat)) return true;
        return IsRoundDone() && (PlaceKinds.First(repeat.Words) is not { } first || below.Slice(Taken, _cursor.Remaining).CountWhere(first.Has) == 0);
    }

    // What a round went past to where it begins is gone past again on the way back there, by the word that went there.
    private bool IsWayToBeginning(Repeat repeat)
    {
        if (!isRound || _fault is not null || _cursor.Remaining == 0 || _cursor.Remaining > begunAt) return false;
        if (WordLists.First(repeat.Words, static word => word is not Repeat, static word => word is ChangeYarn || WorkedWords.IsIdleUnworked(word))?.GoesTo is not { Aim: Aim.NextOfKind, Filter: var first }) return false;
        var named = _named;
        _named = first;
        if (IsRoundDone()) return true;
        _named = named;
        return false;
    }

    // "Next ch-3 sp" never passes over another space.
    private static bool IsOtherSpace(PlaceFilter kind, Place place) => kind.Kind == PlaceFilterKind.SpaceOf && place.Kind == PlaceKind.Space;

    private void EndRound(List<Word> done)
    {
        if (!IsRoundDone()) return;
        done.Add(new Skip(_cursor.Remaining) { IsUnsaid = true });
        _cursor.Pass(_cursor.Remaining);
    }
}
