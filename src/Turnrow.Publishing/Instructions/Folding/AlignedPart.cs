using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Folding;

/// <summary>A part of a row over sizes: words, and how often each size works them.</summary>
/// <param name="Words">The words, a size.</param>
/// <param name="Times">How often, a size; at least once.</param>
internal sealed record AlignedPart(IReadOnlyList<PhraseList> Words, IReadOnlyList<int> Times)
{
    /// <summary>The words of one of the sizes.</summary>
    public PhraseList Sample => Words[0];

    /// <summary>True if no size says it as a repeat.</summary>
    public bool IsOnce => Times.All(static n => n == 1);

    /// <summary>A phrase of one size.</summary>
    public static AlignedPart Of(Phrase phrase) => phrase is Repeated { Shaping: null } repeated
        ? new AlignedPart([repeated.Words], [repeated.Times.First])
        : new AlignedPart([new PhraseList([phrase])], [1]);

    /// <summary>The same with one more size.</summary>
    public AlignedPart With(PhraseList words, int times) => new([.. Words, words], [.. Times, times]);

    /// <summary>The phrases over all sizes; null if the sizes' words are not alike.</summary>
    public IReadOnlyList<Phrase>? Written()
    {
        PhraseList? all = null;
        foreach (var words in Words)
        {
            all = all is null ? words : all.And(words);
            if (all is null) return null;
        }

        return IsOnce ? all!.Phrases : [new Repeated(all!, Sized.Over(Times))];
    }
}
