using System.Text.RegularExpressions;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>A paragraph `**Row 3 (RS):** … [77 dc]` or `**Rows 3-20:** …`, cut into its parts.</summary>
/// <param name="IsRound">True if it is called a round.</param>
/// <param name="From">Its first row.</param>
/// <param name="To">Its last row.</param>
/// <param name="RightSide">The side that its heading names; null for none.</param>
/// <param name="Text">What is to be done.</param>
/// <param name="Count">What stands in the square brackets; null for none.</param>
/// <param name="InEachRow">True if the count is said of each of the rows.</param>
internal sealed partial record RowParagraph(
    bool IsRound, int From, int To, bool? RightSide, string Text, IReadOnlyDictionary<string, int>? Count, bool InEachRow)
{
    /// <summary>Of rows that differ each time, a line each: its row, how often what grows is worked in it (null where nothing is said), and its count.</summary>
    public IReadOnlyList<(int Row, int? Times, IReadOnlyDictionary<string, int> Count)> Lines { get; init; } = [];

    /// <summary>What is said to measure so much behind it; null for nothing.</summary>
    public string? Measured { get; init; }

    /// <summary>Null if the paragraph is no row.</summary>
    public static RowParagraph? Of(string paragraph, StitchWords stitches)
    {
        var lines = paragraph.Split("\n- ");
        if (Row().Match(lines[0]) is not { Success: true } row) return null;
        var from = Number.Of(row.Groups["from"].Value);
        var to = row.Groups["to"].Success ? Number.Of(row.Groups["to"].Value) : from;
        var count = row.Groups["count"].Success ? row.Groups["count"].Value : null;
        var inEach = count is not null && InEach().IsMatch(count);
        return new RowParagraph(
            row.Groups["round"].Success,
            from,
            to,
            row.Groups["side"].Success ? row.Groups["side"].Value == "RS" : null,
            row.Groups["text"].Value,
            count is null ? null : Counts(inEach ? InEach().Replace(count, "") : count, stitches),
            inEach)
        {
            Measured = row.Groups["measured"].Success ? row.Groups["measured"].Value : null,
            Lines = [.. lines.Skip(1).SelectMany(line => line.Split("; ")).Select(line => Line(line, stitches))],
        };
    }

    private static (int Row, int? Times, IReadOnlyDictionary<string, int> Count) Line(string text, StitchWords stitches)
    {
        if (Each().Match(text) is not { Success: true } line) throw new Misread($"`{text}` tells no row");
        return (Number.Of(line.Groups["row"].Value), line.Groups["times"].Success ? Number.Of(line.Groups["times"].Value) : null, Counts(line.Groups["count"].Value, stitches));
    }

    private static Dictionary<string, int> Counts(string text, StitchWords stitches)
    {
        var counts = new Dictionary<string, int>();
        foreach (var one in text.Split(", "))
        {
            var words = one.Split(' ', 2);
            var key = words[1] is "st" or "sts" ? "st" : words[1] is "ch" or "sl st" ? words[1] : words[1].EndsWith("sp", StringComparison.Ordinal) ? words[1] : words[1].EndsWith("sps", StringComparison.Ordinal) ? words[1][..^1]
                : stitches.Find(words[1]) ?? throw new Misread($"the count speaks of `{words[1]}`");
            counts[key] = counts.GetValueOrDefault(key) + Number.Of(words[0]);
        }

        return counts;
    }

    [GeneratedRegex(@"^(?:Row|Round) (?<row>\d+)(?:[:,] (?<times>\d+) times)? \[(?<count>[^\[\]]+)\]$")]
    private static partial Regex Each();

    [GeneratedRegex(" in each (?:row|round)$")]
    private static partial Regex InEach();

    [GeneratedRegex(@"^\*\*(?:Row|(?<round>Round))(?:s|\(s\))? (?<from>\d+)(?:-(?<to>\d+))?(?: \((?<side>RS|WS)\))?:\*\* (?<text>.*?)(?: \[(?<count>\d+ [^\[\]]*)\])?(?: (?<measured>Piece|From its (?:Row|Round) 1, [^.\[\]]+) measures (?:[^.]|\.\d)*\.)?$")]
    private static partial Regex Row();
}
