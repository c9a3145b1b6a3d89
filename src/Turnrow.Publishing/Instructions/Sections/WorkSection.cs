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
        var told = new List<PieceInSizes>();
        for (var i = 0; i < items.Count; i++)
        {
            if (i == 0 || inPieces != IsMade(items[i])) paragraphs.Add(Heading(items, i));
            inPieces = IsMade(items[i]);
            switch (items[i])
            {
                case PieceInSizes piece:
                    paragraphs.AddRange(AsBefore(pattern, piece, names, words, told));
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

    // What is worked word for word as an earlier piece is not told again. That one is written once more to compare, since what is explained at its
    // first use is not explained a second time.
    private static IReadOnlyList<string> AsBefore(Pattern pattern, PieceInSizes piece, SizeNames names, Wording words, List<PieceInSizes> told)
    {
        var written = new PieceWriter(pattern, names, words).Write(piece);
        if (pattern.Errors > 0) return written;
        foreach (var other in told)
        {
            if (!HasLikeRows(piece, other) || !written.Skip(1).SequenceEqual(new PieceWriter(pattern, names, words).Write(other).Skip(1))) continue;
            return [written[0], $"Work as {Names.Title(other.Name)}."];
        }

        told.Add(piece);
        return written;
    }

    // What is cheap to see: so many rows, and so many stitches in the last.
    private static bool HasLikeRows(PieceInSizes piece, PieceInSizes other)
    {
        for (var i = 0; i < piece.InSizes.Count; i++)
        {
            var (rows, before) = (piece.InSizes[i].Rows, other.InSizes[i].Rows);
            if (rows.Count != before.Count || (rows.Count > 0 && rows[^1].Work?.Stitches != before[^1].Work?.Stitches)) return false;
        }

        return true;
    }

    private static bool IsMade(PatternItem item) => item is PieceInSizes or BlanketInSizes;

    private static string Heading(List<PatternItem> items, int at)
    {
        if (IsMade(items[at])) return at == 0 ? "## Instructions" : "## Instructions, continued";
        if (items.Skip(at).Any(IsMade)) return "## Joining";
        return items.Skip(at).Any(static i => i is SeamInSizes) ? "## Joining and finishing" : "## Finishing";
    }
}
