namespace Turnrow.Publishing.Instructions;

/// <summary>The sizes' names, as a text for some of them names them.</summary>
internal sealed class SizeNames(IReadOnlyList<string> names)
{
    /// <summary>True if there is more than one size.</summary>
    public bool AreSeveral => names.Count > 1;

    /// <summary><c>XS (S, M)</c>.</summary>
    public string All => Listed([.. Enumerable.Range(0, names.Count)]);

    /// <summary><c>Sizes L (1X, 2X) only: </c>; empty for all sizes.</summary>
    public string Only(IReadOnlyList<int> sizes)
    {
        if (sizes.Count == names.Count || names.Count == 0) return string.Empty;
        return sizes.Count == 1 ? $"*Size {names[sizes[0]]} only:* " : $"*Sizes {Listed(sizes)} only:* ";
    }

    /// <summary><c>sizes L (1X, 2X) only</c> within a sentence.</summary>
    public string OnlyWithin(IReadOnlyList<int> sizes) =>
        sizes.Count == 1 ? $"size {names[sizes[0]]} only" : $"sizes {Listed(sizes)} only";

    private string Listed(IReadOnlyList<int> sizes) => sizes.Count == 1
        ? names[sizes[0]]
        : $"{names[sizes[0]]} ({string.Join(", ", sizes.Skip(1).Select(i => names[i]))})";
}
