namespace Turnrow.Publishing.Instructions;

/// <summary>
/// The paragraphs of a piece. Those that only some sizes read are put together: sizes that part are told one group after the other, each from
/// where it parts to where it meets the others again, so that a maker reads on where she is and does not look for her next row.
/// </summary>
internal sealed class Paragraphs(SizeNames names)
{
    private readonly List<Paragraph> _all = [];

    /// <summary>How many there are.</summary>
    public int Count => _all.Count;

    /// <summary>Adds one that all sizes read.</summary>
    public void Add(string text) => _all.Add(new Paragraph(names.Indexes, text));

    /// <summary>Adds one that these sizes read; all others are told that it is not for them.</summary>
    public void Add(IReadOnlyList<int> sizes, string text) => _all.Add(new Paragraph(sizes, names.Only(sizes) + text));

    /// <summary>Adds several that all sizes read.</summary>
    public void AddRange(IEnumerable<string> texts)
    {
        foreach (var text in texts) Add(text);
    }

    /// <summary>Takes one out again.</summary>
    public void RemoveAt(int index) => _all.RemoveAt(index);

    /// <summary>Goes on with the last one.</summary>
    public void Append(string text) => _all[^1] = _all[^1] with { Text = _all[^1].Text + text };

    /// <summary>All of them as they are read.</summary>
    public IReadOnlyList<string> InOrder()
    {
        var ordered = new List<string>(_all.Count);
        Order(_all, names.Indexes, ordered);
        return ordered;
    }

    private sealed record Paragraph(IReadOnlyList<int> Sizes, string Text);

    // What all of these sizes read stays where it is; between, each group of sizes that have a paragraph in common is told to its end.
    private static void Order(IReadOnlyList<Paragraph> paragraphs, IReadOnlyList<int> sizes, List<string> ordered)
    {
        for (var i = 0; i < paragraphs.Count;)
        {
            var parted = paragraphs.Skip(i).TakeWhile(p => p.Sizes.Count < sizes.Count).ToList();
            foreach (var group in Groups(parted))
            {
                // There are never more groups within groups than there are sizes.
                if (group.Count < sizes.Count) Order([.. parted.Where(p => group.Contains(p.Sizes[0]))], group, ordered);
                else ordered.AddRange(parted.Select(static p => p.Text));
            }

            i += parted.Count;
            if (i == paragraphs.Count) break;
            ordered.Add(paragraphs[i++].Text);
        }
    }

    private static List<List<int>> Groups(List<Paragraph> paragraphs)
    {
        var groups = new List<List<int>>();
        foreach (var paragraph in paragraphs)
        {
            var shared = groups.FindAll(g => paragraph.Sizes.Any(g.Contains));
            groups.RemoveAll(shared.Contains);
            groups.Add([.. shared.SelectMany(static g => g).Union(paragraph.Sizes).Order()]);
        }

        return [.. groups.OrderBy(static g => g[0])];
    }
}
