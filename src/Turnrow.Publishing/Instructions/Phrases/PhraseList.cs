namespace Turnrow.Publishing.Instructions.Phrases;

/// <summary>Phrases in order. Two lists are equal if their phrases are.</summary>
internal sealed class PhraseList(IReadOnlyList<Phrase> phrases) : IEquatable<PhraseList>
{
    /// <summary>No phrases.</summary>
    public static PhraseList None { get; } = new([]);

    /// <summary>The phrases.</summary>
    public IReadOnlyList<Phrase> Phrases { get; } = phrases;

    /// <summary>Number of phrases.</summary>
    public int Count => Phrases.Count;

    /// <summary>Both over the sizes of both; null if they are not alike.</summary>
    public PhraseList? And(PhraseList others)
    {
        if (Count != others.Count) return null;
        var joined = new Phrase[Count];
        for (var i = 0; i < Count; i++)
        {
            if (Phrases[i].And(others.Phrases[i]) is not { } phrase) return null;
            joined[i] = phrase;
        }

        return new PhraseList(joined);
    }

    /// <summary>The phrases one after the other.</summary>
    public string Written(Wording words, string between = ", ") => string.Join(between, Phrases.Select(p => p.Written(words)));

    /// <inheritdoc/>
    public bool Equals(PhraseList? other) => other is not null && Phrases.SequenceEqual(other.Phrases);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as PhraseList);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (var phrase in Phrases) hash.Add(phrase);
        return hash.ToHashCode();
    }
}
