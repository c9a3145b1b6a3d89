using System.Text.RegularExpressions;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>One edge of a seam as its sentence names it.</summary>
internal sealed record SeamEdge(string Piece, string Edge);

/// <summary>A seam: which row of one piece meets which of the other, or stitch meets stitch.</summary>
internal sealed partial record ReadSeam(SeamEdge First, SeamEdge Second, IReadOnlyList<(int First, int Second)> RowPairs, bool StitchForStitch)
{
    /// <summary>How it is worked: `2 sc in 1 row`; `sewn`.</summary>
    public string Rate { get; private init; } = "";

    /// <summary>The yarn that it is made with; empty where none is named.</summary>
    public string Yarn { get; private init; } = "";

    /// <summary>Which sides lie together: <c>RS</c>, <c>WS</c>; empty where they lie side by side.</summary>
    public string Inside { get; private init; } = "";

    /// <summary>The rows left open, by piece.</summary>
    public IReadOnlyList<string> Open { get; private init; } = [];

    /// <summary>The edges that each of the two goes on along.</summary>
    public (IReadOnlyList<SeamEdge> First, IReadOnlyList<SeamEdge> Second) GoesOn { get; private init; } = ([], []);

    /// <summary>True if rows are to meet row for row.</summary>
    public bool RowForRowOnly { get; private init; }

    /// <summary>The centimetres of both edges, where one is to be eased; <c>eased</c> without them; else empty.</summary>
    public string Ease { get; private init; } = "";

    /// <summary>Of stitches of one row that are folded on each other, those that meet at both ends and the one that meets no other; else empty.</summary>
    public string Fold { get; private init; } = "";

    /// <param name="paragraph">Its sentence.</param>
    /// <param name="stitches">The words of stitches.</param>
    /// <param name="endsAt">The rows that end at an edge of a piece, first row first.</param>
    public static ReadSeam? Of(string paragraph, StitchWords stitches, Func<SeamEdge, IReadOnlyList<int>> endsAt)
    {
        paragraph = OfEach().Replace(paragraph, piece => $"{piece.Groups["word"].Value} Each {piece.Groups["initial"].Value.ToLowerInvariant()}");
        if (Pinned().Match(paragraph) is { Success: true } pinned) return OfParts(pinned, stitches);
        if (Folded().Match(paragraph) is { Success: true } folded) return OfFold(folded, stitches);
        if (Seam().Match(paragraph) is not { Success: true } seam) return null;
        var first = new SeamEdge(seam.Groups["piece1"].Value, seam.Groups["edge1"].Value.ToLowerInvariant().Replace("round ", "row ", StringComparison.Ordinal));
        var second = new SeamEdge(seam.Groups["piece2"].Value, seam.Groups["edge2"].Value.ToLowerInvariant().Replace("round ", "row ", StringComparison.Ordinal));
        var text = seam.Groups["text"].Value;
        var laid = Laid().Match(text);
        if (!laid.Success || (laid.Groups["piece"].Success && laid.Groups["piece"].Value != first.Piece)) throw new Misread("how the edges lie is not said");
        if (laid.Groups["piece"].Success != (first == second)) throw new Misread("an edge is joined to itself by a fold, and no other way");
        foreach (var edge in new[] { first, second }) CheckTurns(text, edge, endsAt(edge));
        var open = Opened(text, piece => [.. new[] { first, second }.Where(edge => edge.Piece == piece).SelectMany(endsAt)]);
        return Met(first, second, text, endsAt) with { Rate = Rated(text, stitches), Open = [.. open], Ease = Eased(text), Yarn = YarnOf(text), Inside = InsideOf(laid) };
    }

    // The stitches of one row on each other: it stands there which meet.
    private static ReadSeam OfFold(Match folded, StitchWords stitches)
    {
        string Of(string group) => folded.Groups[group].Value;
        if (Of("piece") != Of("laid")) throw new Misread($"{Of("laid")} is not the piece that is folded");
        var text = Of("text");
        var row = folded.Groups["row"].Value;
        var (first, second) = folded.Groups["edge"].Success ? (Of("edge").ToLowerInvariant(), Of("edge").ToLowerInvariant()) : ($"stitches {Of("part1")} of the last {row}", $"stitches {Of("part2")} of the last {row}");
        return new ReadSeam(new(Of("piece"), first), new(Of("piece"), second), [], true)
        {
            Fold = $"{Of("a")}+{Of("b")}{(folded.Groups["c"].Success ? $" to {Of("c")}+{Of("d")}" : "")}{(folded.Groups["alone"].Success ? $" alone {Of("alone")}" : "")}",
            Rate = Rated(text, stitches),
            Yarn = YarnOf(text),
            Inside = InsideOf(folded),
        };
    }

    // Several edges end to end: `Right edge (cap), last row and left edge (cap) of Right sleeve`.
    private static ReadSeam OfParts(Match pinned, StitchWords stitches)
    {
        var (first, second) = (Edges(pinned.Groups["first"].Value), Edges(pinned.Groups["second"].Value));
        var text = pinned.Groups["text"].Value;
        return new ReadSeam(first[0], second[0], [], text.Contains("st for st.", StringComparison.Ordinal))
        {
            GoesOn = (first[1..], second[1..]),
            RowForRowOnly = text.Contains("row for row", StringComparison.Ordinal),
            Rate = Rated(text, stitches),
            Ease = Eased(text),
            Yarn = YarnOf(text),
            Inside = InsideOf(pinned),
        };
    }

    private static string YarnOf(string text) => With().Match(text).Groups["yarn"].Value;

    // A fold shows the side that is out.
    private static string InsideOf(Match laid) =>
        laid.Groups["out"] is { Success: true, Value: var outside } ? outside == "RS" ? "WS" : "RS" : laid.Groups["inside"].Value;

    private static SeamEdge[] Edges(string title) =>
        [.. title.Split(", then ").SelectMany(piece =>
        {
            var at = piece.LastIndexOf(" of ", StringComparison.Ordinal);
            if (at < 0) throw new Misread("an edge of the seam is of no piece");
            return EdgeOf().Matches(piece[..at]).Select(edge => new SeamEdge(piece[(at + 4)..], edge.Groups["edge"].Value.ToLowerInvariant()));
        })];

    private static string Eased(string text) => Easing().Match(text) is not { Success: true } ease ? ""
        : ease.Groups["a"].Success ? $"{Centimetres().Match(ease.Groups["a"].Value)} to {Centimetres().Match(ease.Groups["b"].Value)}" : "eased";

    private static string Rated(string text, StitchWords stitches)
    {
        if (Sewn().IsMatch(text)) return "sewn";
        if (Worked().Match(text) is not { Success: true } work) throw new Misread("how the seam is worked is not said");
        var per = work.Groups["per"].Success ? Number.Of(work.Groups["per"].Value) : 1;
        return $"{Number.Of(work.Groups["n"].Value)} {stitches.Find(work.Groups["stitch"].Value)} in {per} {work.Groups["unit"].Value}";
    }

    // Rows that turn before the edge have to be spoken of: else a maker counts them.
    private static void CheckTurns(string text, SeamEdge edge, IReadOnlyList<int> ends)
    {
        var turn = ends.Count > 0 && ends[^1] - ends[0] + 1 > ends.Count;
        var said = Turns().Match(text) is { Success: true } turns && turns.Groups["pieces"].Value.Split(" and ").Contains(edge.Piece);
        if (said && !turn) throw new Misread($"no row of {edge.Piece} turns before this edge");
    }

    private static IEnumerable<string> Opened(string text, Func<string, IReadOnlyList<int>> endsAt)
    {
        if (Leave().Match(text) is not { Success: true } leave) yield break;
        for (var i = 0; i < leave.Groups["piece"].Captures.Count; i++)
        {
            var rows = leave.Groups["rows"].Captures[i].Value.Split([" and ", ", "], StringSplitOptions.None).SelectMany(span =>
            {
                var ends = span[(span.IndexOf(' ', StringComparison.Ordinal) + 1)..].Split('-').Select(Number.Of).ToArray();
                return Enumerable.Range(ends[0], ends[^1] - ends[0] + 1);
            });
            var ends = endsAt(leave.Groups["piece"].Captures[i].Value);
            yield return $"{leave.Groups["piece"].Captures[i].Value} {string.Join(" ", rows.Where(row => ends.Count == 0 || ends.Contains(row) || row < ends.Min() || row > ends.Max()))}";
        }
    }

    private static ReadSeam Met(SeamEdge first, SeamEdge second, string text, Func<SeamEdge, IReadOnlyList<int>> endsAt)
    {
        if (OneRow().Match(text) is { Success: true } one)
        {
            Check(one, "p1", first.Piece);
            Check(one, "p2", second.Piece);
            return new(first, second, [(Number.Of(one.Groups["a"].Value), Number.Of(one.Groups["b"].Value))], false);
        }

        if (TwoEnds().Match(text) is { Success: true } ends)
        {
            if (first.Piece != second.Piece) throw new Misread("the two ends of a row are not at two pieces");
            var (from, to) = (Number.Of(ends.Groups["a"].Value), Number.Of(ends.Groups[ends.Groups["b"].Success ? "b" : "a"].Value));
            return new(first, second, [.. Enumerable.Range(from, to - from + 1).Where(row => endsAt(first).Contains(row)).Select(row => (row, row))], false);
        }

        if (RowForRow().Match(text) is not { Success: true } rows)
            return StitchForStitchSaid().IsMatch(text) ? new(first, second, [], true) : throw new Misread("how the edges meet is not said");
        Check(rows, "p1", first.Piece);
        Check(rows, "p2", second.Piece);
        string[] turns = [.. Turns().Match(text).Groups["pieces"].Value.Split(" and "), .. Rounds().Match(text).Groups["pieces"].Value.Split(" and ")];
        return new(first, second, Pairs(rows, first, second, edge => turns.Contains(edge.Piece) ? endsAt(edge) : null), rows.Groups["steps"].Success);
    }

    private static List<(int, int)> Pairs(Match rows, SeamEdge first, SeamEdge second, Func<SeamEdge, IReadOnlyList<int>?> turning)
    {
        int Row(string group) => Number.Of(rows.Groups[group].Value);
        var (a, b) = (Row("a"), Row("b"));
        if (!rows.Groups["c"].Success) return [(a, b)];
        var (c, d) = (Row("c"), Row("d"));
        // Eased, only the ends meet for certain.
        if (rows.Groups["ease"].Success) return [(a, b), (c, d)];
        var (one, other) = (Between(a, c, turning(first)), Between(b, d, turning(second)));
        if (one.Count != other.Count) throw new Misread($"{one.Count} rows meet {other.Count}");
        return [.. one.Zip(other)];
    }

    // Where short rows are spoken of, those that turn before the edge are passed over.
    private static List<int> Between(int from, int to, IReadOnlyList<int>? ends)
    {
        var rows = Enumerable.Range(0, Math.Abs(to - from) + 1).Select(i => from + (Math.Sign(to - from) * i));
        return [.. ends is null ? rows : rows.Where(row => ends.Contains(row))];
    }

    private static void Check(Match rows, string group, string piece)
    {
        foreach (Capture capture in rows.Groups[group].Captures)
        {
            if (capture.Value != piece) throw new Misread($"{capture.Value} is not a piece of this seam");
        }
    }

    [GeneratedRegex(@"^\*\*(?<edge1>Right edge|Left edge|[A-Z][a-z]+ side|Last row|Last round|Beginning edge|Free loops of (?:Row|Round) \d+)(?: \([^)]*\))? of (?<piece1>.+?) to (?<edge2>right edge|left edge|[a-z]+ side|last row|last round|beginning edge|free loops of (?:Row|Round) \d+)(?: \([^)]*\))? of (?<piece2>.+?):\*\* (?<text>.*)$")]
    private static partial Regex Seam();

    [GeneratedRegex(@"^\*\*(?:(?<edge>Last row|Last round|Beginning edge) of (?<piece>.+?) to itself|Stitch(?:es)? (?<part1>[\d-]+) \([^)]*\) to stitch(?:es)? (?<part2>[\d-]+) \([^)]*\) of the last (?<row>row|round) of (?<piece>.+?)):\*\* Fold (?<laid>.+?) flat, (?<out>RS|WS) out, so that the two halves of this edge lie together\. Match them st for st, stitch (?<a>\d+) with stitch (?<b>\d+)(?:, and so on to stitch (?<c>\d+) with stitch (?<d>\d+))?\.(?: Stitch (?<alone>\d+) lies in the fold and meets no other; take it in by itself\.)?(?<text> .*)$")]
    private static partial Regex Folded();

    [GeneratedRegex(@"\b(?<word>of|Fold) (?:each|the same) (?<initial>[A-Z])")]
    private static partial Regex OfEach();

    [GeneratedRegex(@"^\*\*(?<first>.+?) to (?<second>.+?):\*\* Pin the two edges together from end to end, part by part in the order named, (?:RS of both up|(?<inside>RS|WS) facing each other)\.(?<text>.*)$")]
    private static partial Regex Pinned();

    [GeneratedRegex(@"^(?:Fold (?<piece>.+?) across, (?<out>RS|WS) out, so that the two parts of this edge lie together|Lay the two edges (?:side by side, RS of both up|together, (?<inside>RS|WS) facing each other))\. ")]
    private static partial Regex Laid();

    [GeneratedRegex(@" (?:Sew them together with|Join) (?!yarn\b)(?<yarn>.+?)(?:\.| and work )")]
    private static partial Regex With();

    [GeneratedRegex(@" Sew them together(?: with .+?)?\.")]
    private static partial Regex Sewn();

    [GeneratedRegex(@"Match them st for st(?:, (?:the side )?from corner to corner)?\.|Match each st with a row-end\.|Pin both ends and the middle together\.")]
    private static partial Regex StitchForStitchSaid();

    [GeneratedRegex(@"(?<edge>[Rr]ight edge|[Ll]eft edge|[Ss]titch(?:es)? \d+(?:-\d+)? of the last (?:row|round)|[Ll]ast (?:row|round)|[Bb]eginning edge)")]
    private static partial Regex EdgeOf();

    [GeneratedRegex(@" Ease the longer edge to fit(?:: the first measures (?<a>.+?), the second (?<b>.+?))?\. (?:Sew|Join) ")]
    private static partial Regex Easing();

    [GeneratedRegex(@"[\d.]+(?= cm)")]
    private static partial Regex Centimetres();

    [GeneratedRegex(@" Join .+? and work (?<n>\d+) (?<stitch>\w+) in (?:each|every (?<per>\d+)) (?<unit>row|st)s? through both (?:edges|halves)\. Fasten off\.")]
    private static partial Regex Worked();

    [GeneratedRegex(@" Short rows of (?<pieces>.+?) turn before this edge and have no end here\.")]
    private static partial Regex Turns();

    [GeneratedRegex(@" Rounds of (?<pieces>.+?) have no end here\.")]
    private static partial Regex Rounds();

    [GeneratedRegex(@" Leave (?:(?: and )?(?<rows>Rows? \d+(?:-\d+)?(?:(?:,| and) Rows? \d+(?:-\d+)?)*) of (?<piece>.+?))+ open\.$")]
    private static partial Regex Leave();

    [GeneratedRegex(@"Match the end of Row (?<a>\d+) of (?<p1>.+?) with the end of Row (?<b>\d+) of (?<p2>.+?)\.")]
    private static partial Regex OneRow();

    [GeneratedRegex(@"Match the two ends of (?:each row from Row (?<a>\d+) to Row (?<b>\d+)|Row (?<a>\d+))\.")]
    private static partial Regex TwoEnds();

    [GeneratedRegex(@"Match them row for row, Row (?<a>\d+) of (?<p1>.+?) with Row (?<b>\d+) of (?<p2>.+?)(?:, and so on to Row (?<c>\d+) of (?<p1>.+?) with Row (?<d>\d+) of (?<p2>.+?))?(?<steps>, and the edges between rows st for st)?\.(?<ease> Ease the longer edge to fit[.:])?")]
    private static partial Regex RowForRow();
}
