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

    /// <summary>The yarn of a row that is worked with one from its beginning to its end; null where it is not said, or where there are several.</summary>
    public string? OnlyYarn => Working.Phrases is [WithYarn first, ..] && !Working.Phrases.Skip(1).Any(HasYarn) ? first.Yarn : null;

    // A short row is sooner read than looked up.
    private const int FewestPhrases = 6;

    /// <summary>
    /// The same, plainly, whatever the yarn; null where it is not of one yarn, where more is said at its end than what becomes of yarns, or where it is short.
    /// </summary>
    public RowDescription? InAnyYarn() =>
        OnlyYarn is null || CountOf(Working) < FewestPhrases || !Remarks.Phrases.All(static phrase => phrase is ChangeAtEnd or RestYarn) ? null : Plainly() is var plain ? plain with { Working = new([.. plain.Working.Phrases.Skip(1)]) } : null;

    private static int CountOf(PhraseList phrases) => phrases.Phrases.Sum(static phrase => phrase is Repeated repeated ? CountOf(repeated.Words) : 1);

    private static bool HasYarn(Phrase phrase) => phrase is WithYarn || (phrase is Repeated repeated && repeated.Words.Phrases.Any(HasYarn));

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
