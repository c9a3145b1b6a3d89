using System.Globalization;
using System.Text.RegularExpressions;

namespace Turnrow.Publishing.Tests.Reader;

/// <content>Rows in which one repeat is worked more often each time, with a line for each that says how often.</content>
internal sealed partial class PieceReader
{
    private void Grow(RowParagraph row)
    {
        if (Grown().Match(row.Text) is not { Success: true } grown) throw new Misread("what is worked more often cannot be read");
        var (what, step, unread) = (grown.Groups["what"].Value, Number.Of(grown.Groups["step"].Value), row.Lines.ToList());
        var fewer = grown.Groups["decrease"].Success;
        var models = grown.Groups["row"].Success
            ? Enumerable.Repeat(Number.Of(grown.Groups["row"].Value), row.To - row.From + 1).ToList()
            : Fold.Models(grown.Groups["how"].Value + ".", row.From, row.To);
        var come = new Dictionary<int, int>();
        for (var number = row.From; number <= row.To; number++)
        {
            var model = models[number - row.From];
            come[model] = come.GetValueOrDefault(model) + 1;
            var line = unread.FindIndex(l => l.Row == number);
            var said = line < 0 ? null : unread[line].Times;
            var text = piece.Texts.GetValueOrDefault(model) is not { } known ? null
                : fewer ? Fewer(known, what, grown.Groups["decrease"].Value, come[model] * step)
                : Again(known, what, come[model] * step, said, grown.Groups["places"].Success);
            if (fewer ? said is not null || (text is not null && line < 0) : text is null != said is null) throw new Misread($"whether Row {number} works it more often is not as said");
            Work(row, number, text is null ? Model(model) : RowSentence.Read(text, stitches));
            if (line < 0) continue;
            claims.Check(unread[line].Count, piece.Rows[^1]);
            unread.RemoveAt(line);
        }

        if (unread.Count > 0 || row.Lines[^1].Row != row.To) throw new Misread("there are lines for rows that are not made, or none for the last");
    }

    // The words of the row with what grows worked more often; null if it is not among them.
    private static string? Again(string text, string what, int more, int? said, bool inPlaces)
    {
        var found = Regex.Matches(text, $@"{Regex.Escape($"[{what}] ")}(?<n>\d+) times");
        if (found.Count == 0) return null;
        if (found.Count > 1 != inPlaces) throw new Misread($"it is worked in {found.Count} places");
        if (found.Any(place => Number.Of(place.Groups["n"].Value) + more != said)) throw new Misread($"it is not worked {said} times, going by the time before");
        return Regex.Replace(text, $@"(?<={Regex.Escape($"[{what}] ")})\d+(?= times)", said!.Value.ToString(CultureInfo.InvariantCulture));
    }

    // The words of the row with fewer stitches before each decrease; null if it has none.
    private static string? Fewer(string text, string stitch, string decrease, int fewer)
    {
        var before = new Regex($@"(?<stitch>\b{stitch}) in (?:each of next (?<n>\d+)|next) (?<place>\w+), (?={decrease} over)", RegexOptions.IgnoreCase);
        return !before.IsMatch(text) ? null : before.Replace(text, stretch =>
        {
            var left = (stretch.Groups["n"].Success ? Number.Of(stretch.Groups["n"].Value) : 1) - fewer;
            if (left < 1) throw new Misread($"there are not so many {stitch} before {decrease}");
            return string.Create(CultureInfo.InvariantCulture, $"{stretch.Groups["stitch"].Value} in {(left == 1 ? "next" : $"each of next {left}")} {stretch.Groups["place"].Value}, ");
        });
    }

    [GeneratedRegex(@"^(?<how>As (?:Row|Round) (?<row>\d+)|Repeat .+), but work (?:\[(?<what>.+)\] (?<step>\d+) more times?(?<places> in each place)?|(?<step>\d+) (?<what>\w+) fewer before each (?<decrease>\w+)) than (?:in the (?:row|round) before|the time before):$")]
    private static partial Regex Grown();
}
