namespace Turnrow.Publishing.Tests.Reader;

/// <summary>A headed part of the page: a piece, or what is joined.</summary>
internal sealed record PublishedPart(string Title, bool IsPiece, IReadOnlyList<string> Paragraphs);

/// <summary>The published page, cut along its headings.</summary>
/// <param name="Uk">True if it says that it is in UK terms.</param>
/// <param name="Special">The lines that explain special stitches.</param>
/// <param name="Sizes">Its sizes; one without a name if it gives none.</param>
/// <param name="Notes">The lines of its notes.</param>
/// <param name="Parts">Pieces and joins in order.</param>
internal sealed record PublishedText(
    bool Uk, IReadOnlyList<string> Special, IReadOnlyList<string> Sizes, IReadOnlyList<string> Notes, IReadOnlyList<PublishedPart> Parts)
{
    public static PublishedText Of(string markdown)
    {
        var paragraphs = markdown.Split("\n\n", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        var (section, sizes) = ("", new List<string>());
        var notes = new List<string>();
        var special = new List<string>();
        var parts = new List<(string Title, bool IsPiece, List<string> Paragraphs)>();
        foreach (var paragraph in paragraphs)
        {
            if (paragraph.StartsWith("## ", StringComparison.Ordinal))
            {
                section = paragraph[3..];
                if (IsJoining(section)) parts.Add((section, false, []));
            }
            else if (section == "Sizes" && sizes.Count == 0)
                sizes.AddRange(SizeChoice.Split(paragraph));
            else if (section == "Special stitches")
                special.AddRange(paragraph.Split('\n').Select(line => line.TrimStart('-', ' ')));
            else if (section == "Notes")
                notes.AddRange(paragraph.Split('\n').Select(line => line.TrimStart('-', ' ')));
            else if (section.StartsWith("Instructions", StringComparison.Ordinal) && paragraph.StartsWith("### ", StringComparison.Ordinal))
                parts.Add((paragraph[4..], true, []));
            else if (parts.Count > 0 && (IsJoining(section) || section.StartsWith("Instructions", StringComparison.Ordinal)))
                parts[^1].Paragraphs.Add(paragraph);
        }

        var uk = markdown.Contains("\nWritten in UK terms.", StringComparison.Ordinal) || markdown.Contains(" Written in UK terms.", StringComparison.Ordinal);
        return new PublishedText(uk, special, sizes.Count > 0 ? sizes : [""], notes, [.. parts.Select(p => new PublishedPart(p.Title, p.IsPiece, p.Paragraphs))]);
    }

    private static bool IsJoining(string section) => section == "Finishing" || section.StartsWith("Joining", StringComparison.Ordinal);
}
