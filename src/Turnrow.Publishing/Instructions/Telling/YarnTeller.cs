using Turnrow.Fabric.Colours;
using Turnrow.Fabric.Pieces;
using Turnrow.Publishing.Instructions.Phrases;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>Tells of each row of a piece which yarn it begins with, and what becomes of the yarns at its end.</summary>
/// <param name="piece">The piece in a size.</param>
/// <param name="changes">True of a piece that is worked in several yarns, so that each row has to say its own.</param>
internal sealed class YarnTeller(Piece piece, bool changes)
{
    /// <summary>A row's description with its yarns.</summary>
    public RowDescription Tell(RowDescription told, int index)
    {
        var row = piece.Rows[index];
        if (told.IsUnknown || row.Yarn is not { } yarn) return told;
        var before = index == 0 && Before() != yarn ? told.Before.Phrases.Prepend(new BeginWithYarn(yarn)).ToList() : told.Before.Phrases;
        if (!changes) return new RowDescription(new(before), told.Working, told.Remarks);
        return new RowDescription(new(before), new([new WithYarn(yarn), .. told.Working.Phrases]), new([.. told.Remarks.Phrases, .. AtEnd(index, told.Working.Phrases.Any(static p => p is JoinRound))]));
    }

    /// <summary>What is said of yarns at a row's end.</summary>
    /// <param name="index">The row's place in the piece, from 0.</param>
    /// <param name="isJoined">True of a round that a slip stitch joins.</param>
    private List<Phrase> AtEnd(int index, bool isJoined)
    {
        var row = piece.Rows[index];
        if (row.YarnAfter is not { } yarn) return [];
        var phrases = new List<Phrase>();
        var next = index + 1 < piece.Rows.Count ? piece.Rows[index + 1].Yarn : null;
        if (next is not null && next != yarn)
        {
            phrases.Add(new ChangeAtEnd(next, isJoined));
            phrases.Add(new RestYarn(yarn, YarnsWorked.After(piece, index, yarn), row.IsRound));
        }

        foreach (var other in YarnsWorked.In(row))
        {
            if (other != yarn && YarnsWorked.After(piece, index, other) == YarnRest.Cut) phrases.Add(new RestYarn(other, YarnRest.Cut, row.IsRound));
        }

        return phrases;
    }

    // The yarn that is in the hand already when the piece goes on from another.
    private string? Before() => piece.Start switch
    {
        PartStart { Joined: false } part => part.Base.YarnAfter,
        AcrossStart { Joined: false } across => across.First(piece.Rows[0].StartsAt).Base.YarnAfter,
        PickUpStart { Joined: false, Walk: [var leg, ..] } => leg.Piece.YarnAfter,
        _ => null,
    };
}
