using Turnrow.Fabric.Colours;
using Turnrow.Fabric.Pieces;
using Turnrow.Publishing.Instructions.Phrases;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>Tells of each row of a piece which yarn it begins with, and what becomes of the yarns at its end.</summary>
/// <param name="piece">The piece in a size.</param>
/// <param name="changes">True of a piece that is worked in several yarns, so that each row has to say its own.</param>
/// <param name="most">The most stitches that a yarn may be carried over.</param>
internal sealed class YarnTeller(Piece piece, bool changes, int most)
{
    /// <summary>A row's description with its yarns.</summary>
    public RowDescription Tell(RowDescription told, int index)
    {
        var row = piece.Rows[index];
        if (told.IsUnknown || row.Yarn is not { } yarn) return told;
        var before = index == 0 && Before() != yarn ? told.Before.Phrases.Prepend(new BeginWithYarn(yarn)).ToList() : told.Before.Phrases;
        if (!changes) return new RowDescription(new(before), told.Working, told.Remarks);
        string? inHand = yarn;
        var working = WhereTaken(told.Working.Phrases, ref inHand);
        // What is taken up behind the last stitch is the next row's, and told as that.
        while (working is [.., WithYarn]) working.RemoveAt(working.Count - 1);
        return new RowDescription(new(before), new([new WithYarn(yarn), .. working]), new([.. told.Remarks.Phrases, .. AtEnd(index, LastIn(working) ?? yarn, told.Working.Phrases.Any(static p => p is JoinRound))]));
    }

    // A yarn is named where it is taken up, and not where it is in the hand already. What a bracket begins with is in the hand only if it is so each time.
    private static List<Phrase> WhereTaken(IReadOnlyList<Phrase> phrases, ref string? yarn)
    {
        var result = new List<Phrase>(phrases.Count);
        foreach (var phrase in phrases)
        {
            switch (phrase)
            {
                case WithYarn with when with.Yarn == yarn:
                    break;
                case WithYarn with:
                    yarn = with.Yarn;
                    result.Add(with);
                    break;
                case Repeated repeated:
                    var ends = LastIn(repeated.Words.Phrases) ?? yarn;
                    var inside = ends == yarn ? yarn : null;
                    result.Add(repeated with { Words = new(WhereTaken(repeated.Words.Phrases, ref inside)) });
                    yarn = ends;
                    break;
                default:
                    result.Add(phrase);
                    break;
            }
        }

        return result;
    }

    private static string? LastIn(IReadOnlyList<Phrase> phrases)
    {
        for (var i = phrases.Count - 1; i >= 0; i--)
        {
            if (phrases[i] is WithYarn with) return with.Yarn;
            if (phrases[i] is Repeated repeated && LastIn(repeated.Words.Phrases) is { } last) return last;
        }

        return null;
    }

    /// <summary>What is said of yarns at a row's end.</summary>
    /// <param name="index">The row's place in the piece, from 0.</param>
    /// <param name="yarn">The yarn of its last stitch.</param>
    /// <param name="isJoined">True of a round that a slip stitch joins.</param>
    private List<Phrase> AtEnd(int index, string yarn, bool isJoined)
    {
        var row = piece.Rows[index];
        var phrases = new List<Phrase>();
        var next = index + 1 < piece.Rows.Count ? piece.Rows[index + 1].Yarn : null;
        if (next is not null && next != yarn)
        {
            // The next row's yarn may hang too far back in this one to be brought to its end.
            var anew = YarnsWorked.In(row).Contains(next) && YarnsWorked.After(piece, index, next, most) == YarnRest.Cut;
            if (anew) phrases.Add(new RestYarn(next, YarnRest.CutThere, row.IsRound));
            phrases.Add(new ChangeAtEnd(next, isJoined) { Anew = anew });
            phrases.Add(new RestYarn(yarn, YarnsWorked.After(piece, index, yarn, most), row.IsRound));
        }

        foreach (var other in YarnsWorked.In(row))
        {
            if (other != yarn && other != next && YarnsWorked.After(piece, index, other, most) == YarnRest.Cut) phrases.Add(new RestYarn(other, YarnRest.Cut, row.IsRound));
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
