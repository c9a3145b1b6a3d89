using System.Text.RegularExpressions;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>One edge of a seam as its sentence names it.</summary>
internal sealed record SeamEdge(string Piece, string Edge);

/// <summary>A seam: which row of one piece meets which of the other, or stitch meets stitch.</summary>
internal sealed partial record ReadSeam(SeamEdge First, SeamEdge Second, IReadOnlyList<(int First, int Second)> RowPairs, bool StitchForStitch)
{
    public static ReadSeam? Of(string paragraph)
    {
        if (Seam().Match(paragraph) is not { Success: true } seam) return null;
        var first = new SeamEdge(seam.Groups["piece1"].Value, seam.Groups["edge1"].Value.ToLowerInvariant());
        var second = new SeamEdge(seam.Groups["piece2"].Value, seam.Groups["edge2"].Value.ToLowerInvariant());
        var text = seam.Groups["text"].Value;
        if (!text.StartsWith("Lay the two edges side by side, RS of both up. ", StringComparison.Ordinal)) throw new Misread("how the edges lie is not said");
        if (TwoEnds().Match(text) is { Success: true } ends)
        {
            if (first.Piece != second.Piece) throw new Misread("two pieces have more than two ends");
            var (from, to) = (Number.Of(ends.Groups["a"].Value), Number.Of(ends.Groups[ends.Groups["c"].Success ? "c" : "a"].Value));
            return new(first, second, [.. Enumerable.Range(from, to - from + 1).Select(row => (row, row))], false);
        }

        if (RowForRow().Match(text) is not { Success: true } rows)
            return text.Contains("Match them st for st.", StringComparison.Ordinal) ? new(first, second, [], true) : throw new Misread("how the edges meet is not said");
        Check(rows, "p1", first.Piece);
        Check(rows, "p2", second.Piece);
        return new(first, second, Pairs(rows), rows.Groups["steps"].Success);
    }

    private static List<(int, int)> Pairs(Match rows)
    {
        int Row(string group) => Number.Of(rows.Groups[group].Value);
        var (a, b) = (Row("a"), Row("b"));
        if (!rows.Groups["c"].Success) return [(a, b)];
        var (c, d) = (Row("c"), Row("d"));
        // Eased, only the ends meet for certain.
        if (rows.Groups["ease"].Success) return [(a, b), (c, d)];
        if (Math.Abs(c - a) != Math.Abs(d - b)) throw new Misread($"{Math.Abs(c - a) + 1} rows meet {Math.Abs(d - b) + 1}");
        return [.. Enumerable.Range(0, Math.Abs(c - a) + 1).Select(i => (a + Math.Sign(c - a) * i, b + Math.Sign(d - b) * i))];
    }

    private static void Check(Match rows, string group, string piece)
    {
        foreach (Capture capture in rows.Groups[group].Captures)
        {
            if (capture.Value != piece) throw new Misread($"{capture.Value} is not a piece of this seam");
        }
    }

    [GeneratedRegex(@"^\*\*(?<edge1>Right edge|Left edge|Last row|Beginning edge)(?: \([^)]*\))? of (?<piece1>.+?) to (?<edge2>right edge|left edge|last row|beginning edge)(?: \([^)]*\))? of (?<piece2>.+?):\*\* (?<text>.*)$")]
    private static partial Regex Seam();

    [GeneratedRegex(@"Match the two ends of (?:each row from )?Row (?<a>\d+)(?: to Row (?<c>\d+))?\.")]
    private static partial Regex TwoEnds();

    [GeneratedRegex(@"Match them row for row, Row (?<a>\d+) of (?<p1>.+?) with Row (?<b>\d+) of (?<p2>.+?)(?:, and so on to Row (?<c>\d+) of (?<p1>.+?) with Row (?<d>\d+) of (?<p2>.+?))?(?<steps>, and the edges between rows st for st)?\.(?<ease> Ease the longer edge to fit\.)?")]
    private static partial Regex RowForRow();
}
