using Turnrow.Fabric.Patterns;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Sections;

/// <summary>The work itself, in the pattern's own order: pieces, and how they are joined and finished.</summary>
internal static class WorkSection
{
    public static IReadOnlyList<string> Write(Pattern pattern, SizeNames names, Wording words)
    {
        var paragraphs = new List<string>();
        var items = pattern.Items.SkipWhile(static i => i is ProseItem).ToList();
        var inPieces = false;
        var told = new Dictionary<string, IReadOnlyList<string>>(StringComparer.OrdinalIgnoreCase);
        for (var i = 0; i < items.Count; i++)
        {
            if (i == 0 || inPieces != IsMade(items[i])) paragraphs.Add(Heading(items, i));
            inPieces = IsMade(items[i]);
            switch (items[i])
            {
                case PieceInSizes piece:
                    paragraphs.AddRange(AsBefore(pattern, piece, new PieceWriter(pattern, names, words).Write(piece), told));
                    break;
                case BlanketInSizes blanket:
                    paragraphs.AddRange(new BlanketWriter(pattern, names, words).Write(blanket));
                    break;
                case SeamInSizes seam:
                    paragraphs.AddRange(SeamWriter.Write(seam, names, words, pattern.InInches));
                    break;
                case WeaveInItem:
                    paragraphs.Add("Weave in all ends.");
                    break;
                // Lines of prose one after the other are one paragraph.
                case ProseItem prose when i > 0 && items[i - 1] is ProseItem:
                    paragraphs[^1] += $"\n{prose.Text}";
                    break;
                case ProseItem prose:
                    paragraphs.Add(prose.Text);
                    break;
            }
        }

        return paragraphs;
    }

    // A mirrored piece that is worked word for word as the other one is not told again.
    private static IReadOnlyList<string> AsBefore(Pattern pattern, PieceInSizes piece, IReadOnlyList<string> written, Dictionary<string, IReadOnlyList<string>> told)
    {
        told[piece.Name] = written;
        if (piece.MirrorOf is not { } name || !told.TryGetValue(name, out var other) || !other.Skip(1).SequenceEqual(written.Skip(1))) return written;
        return pattern.Errors > 0 ? written : [written[0], $"Work as {Names.Title(name)}."];
    }

    private static bool IsMade(PatternItem item) => item is PieceInSizes or BlanketInSizes;

    private static string Heading(List<PatternItem> items, int at)
    {
        if (IsMade(items[at])) return at == 0 ? "## Instructions" : "## Instructions, continued";
        if (items.Skip(at).Any(IsMade)) return "## Joining";
        return items.Skip(at).Any(static i => i is SeamInSizes) ? "## Joining and finishing" : "## Finishing";
    }
}
