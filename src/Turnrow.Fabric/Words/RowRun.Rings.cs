using Turnrow.Fabric.Places;

namespace Turnrow.Fabric.Words;

/// <content>A ring: any number of words go into it, and all of them together use it up.</content>
internal sealed partial class RowRun
{
    private bool _inRing;

    private bool AtRing(Word word)
    {
        _inRing = _cursor.Remaining > 0 && _cursor.Next.Kind == PlaceKind.Ring;
        if (!_inRing) Fail(RowFaultKind.NoRing, word, 0, _cursor.Remaining);
        return _inRing;
    }

    private void EndRing()
    {
        if (_fault is not null || _cursor.Remaining == 0 || _cursor.Next.Kind != PlaceKind.Ring) return;
        if (_inRing) _cursor.Pass(1);
        else Fail(RowFaultKind.RingAhead, null, 0, 1);
    }

    private static RowFaultKind AheadOf(Place place) => place.Kind == PlaceKind.Ring ? RowFaultKind.RingAhead : RowFaultKind.SpaceAhead;
}
