using Turnrow.Fabric.Places;

namespace Turnrow.Fabric.Words;

/// <summary>A row's words after working them over a row below.</summary>
/// <param name="Words">The words with every number known; of a row at fault, those before the fault.</param>
/// <param name="Tops">The places made, in working order.</param>
/// <param name="Fault">The first fault; null if the row comes out.</param>
public sealed record WorkedRow(IReadOnlyList<Word> Words, PlaceSequence Tops, RowFault? Fault)
{
    /// <summary>Stitches made (spaces are not stitches).</summary>
    public int Stitches => Tops.CountWhere(static p => p.IsStitch);
}
