using System.Text.RegularExpressions;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>
/// `Repeat Row 2`, `Repeat the last 2 rows 6 more times, then Row 2 once more`: the rows to be worked again, by number.
/// </summary>
internal static partial class Fold
{
    /// <summary>The rows that the rows from <paramref name="from"/> to <paramref name="to"/> are worked like.</summary>
    public static IReadOnlyList<int> Models(string text, int from, int to)
    {
        var count = to - from + 1;
        if (OneRow().Match(text) is { Success: true } one) return [.. Enumerable.Repeat(Int(one, "row"), count)];
        if (InOrder().Match(text) is { Success: true } order)
        {
            var unit = Enumerable.Range(Int(order, "a"), Int(order, "b") - Int(order, "a") + 1).ToList();
            return Exactly(WithRest(Times(unit, order.Groups["times"].Success ? Int(order, "times") : 1), unit, order), count);
        }

        if (LastRows().Match(text) is not { Success: true } last) throw new Misread("a repeat that cannot be read");
        var rows = last.Groups["n"].Success ? Int(last, "n") : 1;
        var models = Enumerable.Range(from - rows, rows).ToList();
        return Exactly(WithRest(Times(models, last.Groups["times"].Success ? Int(last, "times") : 1), models, last), count);
    }

    /// <summary>`2 dc more every 2 rows`: what the rows are said to gain, and in how many rows; null if nothing is said.</summary>
    public static (int Change, int Every)? Gain(string text)
    {
        if (Gains().Match(text) is not { Success: true } gain) return null;
        var change = Int(gain, "n") * (gain.Groups["way"].Value == "more" ? 1 : -1);
        return (change, gain.Groups["every"].Success ? Int(gain, "every") : 1);
    }

    private static IEnumerable<int> Times(IReadOnlyList<int> unit, int times) => Enumerable.Repeat(unit, times).SelectMany(rows => rows);

    private static IEnumerable<int> WithRest(IEnumerable<int> rows, IEnumerable<int> unit, Match match)
    {
        if (match.Groups["row"].Success) return rows.Append(Int(match, "row"));
        return match.Groups["some"].Success ? rows.Concat(unit.Take(match.Groups["m"].Success ? Int(match, "m") : 1)) : rows;
    }

    private static List<int> Exactly(IEnumerable<int> rows, int count)
    {
        var list = rows.ToList();
        return list.Count == count ? list : throw new Misread($"the repeat makes {list.Count} rows, the heading says {count}");
    }

    private static int Int(Match match, string group) => Number.Of(match.Groups[group].Value);

    private const string Rest = @"(?:, then (?:(?:Row|Round) (?<row>\d+)|the (?<some>first)(?: (?<m>\d+))? of them) once more)?";

    private const string Tail = @"(?:; \d+ [a-z ]+ (?:more|fewer) (?:each (?:row|round)|every \d+ (?:rows|rounds)))?\.$";

    [GeneratedRegex($@"^Repeat (?:Row|Round) (?<row>\d+){Tail}")]
    private static partial Regex OneRow();

    [GeneratedRegex($@"^Repeat (?:Rows|Rounds) (?<a>\d+)-(?<b>\d+) in order, (?:(?<times>\d+) times|once){Rest}{Tail}")]
    private static partial Regex InOrder();

    [GeneratedRegex($@"^Repeat the last (?:(?<n>\d+) (?:rows|rounds)|row|round) (?:(?<times>\d+) more times?|once more){Rest}{Tail}")]
    private static partial Regex LastRows();

    [GeneratedRegex(@"; (?<n>\d+) [a-z ]+ (?<way>more|fewer) (?:each (?:row|round)|every (?<every>\d+) (?:rows|rounds))\.$")]
    private static partial Regex Gains();
}
