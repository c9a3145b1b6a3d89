using Turnrow.Fabric.Rows;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Telling;

/// <content>A round of both sides of a chain: where it comes to the other side, and its ends.</content>
internal sealed partial class WordTeller
{
    private bool _onOppositeSide;

    // Places up to the opposite side; behind it, or where there is none, more than there are.
    private int ToOppositeSide => row.IsBeforeOppositeSide ? (row.Work.Below.Count / 2) + 1 - _places.Passed : int.MaxValue;

    private void AtOppositeSide()
    {
        if (_onOppositeSide || row.Row.Begins != RowBegins.BothSides || row.IsBeforeOppositeSide) return;
        _onOppositeSide = true;
        Phrases.Add(new OppositeSide());
    }

    // The end of a foundation chain bears no marker yet.
    private Where Corner()
    {
        var name = _places.Take(1).Name;
        return row.Row.Begins == RowBegins.BothSides ? new LastPlaces(Sized.Of(1), name) : new MarkedPlace(name);
    }
}
