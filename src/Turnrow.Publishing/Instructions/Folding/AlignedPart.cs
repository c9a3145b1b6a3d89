using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Folding;

/// <summary>A part of a row over sizes: words, and how often each size works them.</summary>
/// <param name="Words">The words, a size; null in a size that does not work them.</param>
/// <param name="Times">How often, a size.</param>
internal sealed record AlignedPart(IReadOnlyList<PhraseList?> Words, IReadOnlyList<int> Times)
{
    /// <summary>The words of one of the sizes.</summary>
    public PhraseList Sample => Words.First(static w => w is not null)!;

    /// <summary>True if some size does not work it.</summary>
    public bool IsOptional => Times.Contains(0);

    /// <summary>True if no size says it as a repeat.</summary>
    public bool IsOnce => Times.All(static n => n <= 1);

    /// <summary>A phrase of one size.</summary>
    public static AlignedPart Of(Phrase phrase) => phrase is Repeated { Shaping: null } repeated
        ? new AlignedPart([repeated.Words], [repeated.Times.First])
        : new AlignedPart([new PhraseList([phrase])], [1]);

    /// <summary>The same with one more size.</summary>
    public AlignedPart With(PhraseList? words, int times) => new([.. Words, words], [.. Times, times]);

    /// <summary>A part that so many sizes did not have.</summary>
    public static AlignedPart New(int sizesBefore, PhraseList words, int times) =>
        new([.. Enumerable.Repeat<PhraseList?>(null, sizesBefore), words], [.. Enumerable.Repeat(0, sizesBefore), times]);

    /// <summary>True if a part that comes straight behind it is worked by the same sizes, once each.</summary>
    public bool JoinsWith(AlignedPart next) => IsOptional && IsOnce && next.IsOnce && Times.SequenceEqual(next.Times);

    /// <summary>Both as one.</summary>
    public AlignedPart Then(AlignedPart next) =>
        new([.. Words.Zip(next.Words, static (a, b) => a is null || b is null ? null : new PhraseList([.. a.Phrases, .. b.Phrases]))], Times);

    /// <summary>The phrases over all sizes; null if the sizes' words are not alike. A size that does not work it gets its neighbour's numbers.</summary>
    public IReadOnlyList<Phrase>? Written()
    {
        PhraseList? all = null;
        var here = Sample;
        foreach (var words in Words)
        {
            here = words ?? here;
            all = all is null ? here : all.And(here);
            if (all is null) return null;
        }

        return Times.All(static n => n == 1) ? all!.Phrases : [new Repeated(all!, Sized.Over(Times))];
    }
}
