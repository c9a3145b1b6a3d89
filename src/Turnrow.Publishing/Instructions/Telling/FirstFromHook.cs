using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Instructions.Phrases;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>Which chain from the hook the first stitch of a piece goes into, as its first row is told: whoever says it besides says the same.</summary>
internal static class FirstFromHook
{
    /// <summary>The stitch and its chain; null if the row tells none.</summary>
    public static (Stitch Stitch, int Nth)? Of(Piece piece)
    {
        foreach (var phrase in RowTeller.Tell(piece, 0).Working.Phrases)
        {
            (Stitch? Stitch, Where? Where) told = phrase switch
            {
                StitchesIn stitches => (stitches.Stitch, stitches.Where),
                GroupIn group => (group.Words.Phrases.OfType<BareStitches>().FirstOrDefault()?.Stitch, group.Where),
                RestOfDecrease rest => (rest.Stitch, rest.Where),
                TogetherFromHook together => (together.Stitch, together.From),
                _ => default,
            };
            if (told is { Stitch: { } stitch, Where: ChainFromHook chain }) return (stitch, chain.Nth.First);
        }

        return null;
    }
}
