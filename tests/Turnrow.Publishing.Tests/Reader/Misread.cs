namespace Turnrow.Publishing.Tests.Reader;

/// <summary>A sentence that cannot be done with what is in the maker's hands.</summary>
internal sealed class Misread(string why) : Exception(why);

/// <summary>What the maker stumbled over: where, at which sentence, and why.</summary>
internal sealed record Stumble(string Part, string Sentence, string Why)
{
    public override string ToString() => $"{Part}: {Why}\n    {Sentence}";
}
