namespace Turnrow.Publishing.Instructions;

/// <summary>The sizes' names, as a text for some of them names them.</summary>
internal sealed class SizeNames(IReadOnlyList<string> asTheyAre)
{
    private readonly IReadOnlyList<string> _names = [.. asTheyAre.Select(MarkdownText.Of)];

    /// <summary>True if there is more than one size.</summary>
    public bool AreSeveral => _names.Count > 1;

    /// <summary><c>XS (S, M)</c>.</summary>
    public string All => Listed([.. Enumerable.Range(0, _names.Count)]);

    /// <summary>All sizes by their index; one where the pattern names none.</summary>
    public IReadOnlyList<int> Indexes { get; } = [.. Enumerable.Range(0, Math.Max(1, asTheyAre.Count))];

    /// <summary><c>Sizes L (1X, 2X) only: </c>; empty for all sizes.</summary>
    public string Only(IReadOnlyList<int> sizes)
    {
        if (sizes.Count == _names.Count || _names.Count == 0) return string.Empty;
        return sizes.Count == 1 ? $"*Size {_names[sizes[0]]} only:* " : $"*Sizes {Listed(sizes)} only:* ";
    }

    /// <summary><c>sizes L (1X, 2X) only</c> within a sentence.</summary>
    public string OnlyWithin(IReadOnlyList<int> sizes) => $"{Sizes(sizes)} only";

    /// <summary><c>sizes L (1X, 2X)</c>, <c>size L</c>.</summary>
    public string Sizes(IReadOnlyList<int> sizes) => $"{(sizes.Count == 1 ? "size" : "sizes")} {Listed(sizes)}";

    private string Listed(IReadOnlyList<int> sizes) => sizes.Count == 1
        ? _names[sizes[0]]
        : $"{_names[sizes[0]]} ({string.Join(", ", sizes.Skip(1).Select(i => _names[i]))})";
}
