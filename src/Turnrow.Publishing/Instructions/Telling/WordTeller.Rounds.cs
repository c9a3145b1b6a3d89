using Turnrow.Fabric.Rows;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Telling;

/// <content>Ground that changes within a row: a round of both sides of a chain, with its ends, and a row that goes over from chains to an earlier row.</content>
internal sealed partial class WordTeller
{
    private bool _onOtherGround;

    // Places up to where other ground begins, the opposite side of the chain or the earlier row behind chains; behind it, or where there
    // is none, more than there are.
    private int ToOtherGround => row.IsBeforeOppositeSide ? (row.Work.Below.Count / 2) + 1 - _places.Passed
        : _places.Passed < row.ChainsBefore ? row.ChainsBefore - _places.Passed
        : int.MaxValue;

    private bool IsAtOtherGround => !_onOtherGround && ToOtherGround == int.MaxValue;

    private void AtOtherGround()
    {
        if (!IsAtOtherGround) return;
        if (row.Row.Begins == RowBegins.BothSides) Phrases.Add(new OppositeSide());
        // What is worked over both is no place to say it: then it has to be said before the row.
        else if (row.OnNewChains is { } part && _places.Passed == row.ChainsBefore) Phrases.Add(new GoOver(PartTeller.First(row, part)));
        _onOtherGround = true;
    }

    // The end of a foundation chain bears no marker yet.
    private Where Corner()
    {
        var name = _places.Take(1).Name;
        return row.Row.Begins == RowBegins.BothSides ? new LastPlaces(Sized.Of(1), name) : new MarkedPlace(name);
    }
}
