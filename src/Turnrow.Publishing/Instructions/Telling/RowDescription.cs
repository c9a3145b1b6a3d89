using Turnrow.Publishing.Instructions.Phrases;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>What a maker does for a row, as data. Equal descriptions are worked alike, whatever they count.</summary>
/// <param name="Before">Sentences before the row: chains made, yarn joined.</param>
/// <param name="Working">The row itself.</param>
/// <param name="Remarks">What is said at its end.</param>
internal sealed record RowDescription(PhraseList Before, PhraseList Working, PhraseList Remarks)
{
    /// <summary>A row that is not known, because of an error in the file.</summary>
    public static RowDescription Unknown { get; } = new(PhraseList.None, PhraseList.None, PhraseList.None);

    /// <summary>True if it is not known how the row is worked.</summary>
    public bool IsUnknown => Working.Count == 0;

    /// <summary>The chain top that the row ends in; null if it ends otherwise.</summary>
    public ChainTop? EndsIn => Working.Count > 0 ? TopOf(Working.Phrases[^1]) : null;

    /// <summary>Both over the sizes of both; null if they are not alike.</summary>
    public RowDescription? And(RowDescription other) =>
        Before.And(other.Before) is { } before && Working.And(other.Working) is { } working && Remarks.And(other.Remarks) is { } remarks
            ? new RowDescription(before, working, remarks)
            : null;

    /// <summary>The same but for what may differ between a row and one that is worked "as" it: the chain it ends in, and remarks.</summary>
    public RowDescription Plainly()
    {
        if (EndsIn is not { } top || Working.Count == 0) return this with { Remarks = PhraseList.None };
        var phrases = Working.Phrases.ToArray();
        phrases[^1] = WithTop(phrases[^1], new ChainTop(false, top.Nth, top.Of));
        return new RowDescription(Before, new PhraseList(phrases), PhraseList.None);
    }

    private static ChainTop? TopOf(Phrase phrase) => phrase switch
    {
        StitchesIn { Where: ChainTop top } => top,
        Together { Top: { } top } => top,
        GroupIn { Where: ChainTop top } => top,
        _ => null,
    };

    private static Phrase WithTop(Phrase phrase, ChainTop top) => phrase switch
    {
        StitchesIn stitches => stitches with { Where = top },
        Together together => together with { Top = top },
        GroupIn group => group with { Where = top },
        _ => phrase,
    };
}
