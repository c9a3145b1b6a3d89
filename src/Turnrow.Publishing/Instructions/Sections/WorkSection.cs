using Turnrow.Fabric.Patterns;

namespace Turnrow.Publishing.Instructions.Sections;

/// <summary>The work itself, in the pattern's own order: pieces, and how they are joined and finished.</summary>
internal static class WorkSection
{
    public static IReadOnlyList<string> Write(Pattern pattern, SizeNames names, Wording words)
    {
        var paragraphs = new List<string>();
        var inPieces = false;
        string? prose = null;
        foreach (var item in pattern.Items.SkipWhile(static i => i is ProseItem))
        {
            if (item is ProseItem next)
            {
                Join(paragraphs, ref inPieces);
                prose = prose is null ? next.Text : $"{prose}\n{next.Text}";
                continue;
            }

            if (prose is not null) paragraphs.Add(prose);
            prose = null;
            if (item is PieceInSizes piece)
            {
                if (!inPieces) paragraphs.Add("## Instructions");
                inPieces = true;
                paragraphs.AddRange(new PieceWriter(pattern, names, words).Write(piece));
                continue;
            }

            Join(paragraphs, ref inPieces);
            if (item is SeamInSizes seam) paragraphs.AddRange(SeamWriter.Write(seam, names, words));
            else if (item is WeaveInItem) paragraphs.Add("Weave in all ends.");
        }

        if (prose is not null) paragraphs.Add(prose);
        return paragraphs;
    }

    private static void Join(List<string> paragraphs, ref bool inPieces)
    {
        if (inPieces || paragraphs.Count == 0) paragraphs.Add("## Joining and finishing");
        inPieces = false;
    }
}
