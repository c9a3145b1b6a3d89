using System.Text.RegularExpressions;
using Turnrow.Tests.Motifs;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>A blanket as the maker puts it together: how many motifs there are, and how those of each kind come out.</summary>
internal sealed partial record ReadBlanket(int Across, int Between, int Down, IReadOnlyList<(int Sides, int Count, ReadPiece Piece)> Joined)
{
    /// <summary>Reads the paragraphs of a blanket; null if they are another piece's.</summary>
    /// <param name="paragraphs">The paragraphs, as they are in her size.</param>
    /// <param name="title">What it is called.</param>
    /// <param name="pieces">The pieces that are made.</param>
    /// <param name="motif">Makes a motif by its name but for its last round, and then the round that is read out.</param>
    public static (ReadBlanket Made, ReadPiece Rim)? Of(IReadOnlyList<string> paragraphs, string title, IReadOnlyDictionary<string, ReadPiece> pieces, Func<string, IReadOnlyList<(string Edge, string Side)>, string, ReadPiece> motif)
    {
        if (paragraphs.Count < 3 || Whole().Match(paragraphs[0]) is not { Success: true } whole) return null;
        var (across, down) = (Number.Of(whole.Groups["across"].Value), Number.Of(whole.Groups["down"].Value));
        var between = whole.Groups["between"] is { Success: true } said ? Number.Of(said.Value) : across;
        if (First().Match(paragraphs[1]) is not { Success: true } first || !pieces.TryGetValue(first.Groups["motif"].Value, out var plain)) throw new Misread("how the first motif is made is not said");
        var sides = plain.Rows[^1].Made.Count(static place => place.IsMarked);
        if ((sides == 6 && down > 1 && !whole.Groups["off"].Success) || (sides == 4 && whole.Groups["off"].Success)) throw new Misread("whether the rows are set off is not said rightly");
        if (whole.Groups["right"].Success && across != between && !whole.Groups["in"].Success) throw new Misread("how the rows lie is not said rightly");
        var laid = LaidOutMotifs.Of(sides, across, between, down);
        if (Number.Of(whole.Groups["all"].Value) != laid.Joined.Count) throw new Misread("there are not so many motifs");
        var turns = whole.Groups["turns"] is { Success: true } kinds ? kinds.Value.Replace(" and ", ", ", StringComparison.Ordinal).Split(", ") : [first.Groups["motif"].Value];
        var lying = laid.Turns(turns.Length);
        if (turns[0] != first.Groups["motif"].Value || (turns.Length > 1 && (whole.Groups["one"].Value != turns[0] || whole.Groups["two"].Value != turns[1]))) throw new Misread("which kind comes first is not said rightly");
        if (turns.Length > 1 && whole.Groups["each"].Value != string.Join(", ", turns.Select((name, at) => FormattableString.Invariant($"{lying.Count(kind => kind == at)} {name}")))) throw new Misread("there are not so many of each kind");
        var joined = new List<(int, int, ReadPiece)>();
        for (var i = 2; i + 2 < paragraphs.Count; i += 3)
        {
            if (Kind().Match(paragraphs[i]) is not { Success: true } kind || paragraphs[i + 2] != "Fasten off.") throw new Misread("how a joined motif is made is not said");
            var which = kind.Groups["which"].Value;
            var along = Along(which, sides);
            if (along.Count != Array.IndexOf(["", "one side", "two sides", "three sides"], kind.Groups["sides"].Value)) throw new Misread($"`{which}` are not joined along so many sides");
            var many = Number.Of(kind.Groups["n"].Value);
            var name = kind.Groups["motif"].Value;
            if (turns.Length > 1 ? kind.Groups["kind"].Value != name || kind.Groups["turn"].Value != name : kind.Groups["kind"].Value != "Motifs") throw new Misread($"it is not said that `{which}` are {name}");
            if (many != laid.Joined.Select((on, at) => (On: string.Join(' ', on), Kind: turns[lying[at]])).Skip(1).Count(one => one.Kind == name && IsMeant(which, one.On, sides))) throw new Misread($"of `{which}` there are not {many}");
            joined.Add((along.Count, many, motif(name, along, paragraphs[i + 1])));
        }

        if (1 + joined.Sum(static j => j.Item2) != laid.Joined.Count) throw new Misread("the motifs of all kinds are not as many as there are");
        var rim = Rim(title, plain, laid);
        if (Around().Match(paragraphs[^1]) is not { Success: true } around || Number.Of(around.Groups["sts"].Value) != rim.Rows[0].Made.Count(static p => p.Seen != Seen.Space)
            || (around.Groups["sps"].Success ? Number.Of(around.Groups["sps"].Value) : 0) != rim.Rows[0].Made.Count(static p => p.Seen == Seen.Space)) throw new Misread("there are not so many places all round");
        return (new ReadBlanket(across, between, down, joined), rim);
    }

    // Which motif lies along each of the joined sides, and the side of it that does.
    private static IReadOnlyList<(string Edge, string Side)> Along(string which, int sides)
    {
        var opposite = sides == 4 ? new[] { "third side", "fourth side" } : ["fourth side", "fifth side", "sixth side"];
        string[] named = which switch
        {
            "all others, each to the one before it and to the two below it" => ["the motif before", "the motif below left", "the motif below right"],
            "all others, each to the one before it and to the one below it" => ["the motif before", "the motif below"],
            "the first motif of each further row, to the one below it" => [string.Empty, "the motif below"],
            "those that lie beside one motif when their turn comes" => ["the motif beside"],
            "those that lie beside two motifs when their turn comes" => ["the motif beside", "the next motif beside"],
            _ when Alone().Match(which) is { Success: true } alone => Lying(alone.Groups["motifs"].Value),
            _ when which.Contains("below", StringComparison.Ordinal) => ["the motif beside"],
            _ => ["the motif before"],
        };
        return [.. named.Select((edge, at) => (edge, opposite[at])).Where(static n => n.edge.Length > 0)];
    }

    private static string[] Lying(string motifs)
    {
        var named = motifs.Split(" and ");
        return [.. new[] { "the motif before", "the motif below left", "the motif below right" }.Select(one => named.Contains(one) ? one : string.Empty)];
    }

    // Of the motifs as they lie, those that the words mean.
    private static bool IsMeant(string which, string on, int sides)
    {
        var many = on.Split(' ').Length;
        if (which.StartsWith("all others", StringComparison.Ordinal)) return many == (sides == 4 ? 2 : 3);
        if (which.StartsWith("those that lie beside one motif ", StringComparison.Ordinal)) return many == 1;
        if (which.StartsWith("those that lie beside two ", StringComparison.Ordinal)) return many == 2;
        if (Alone().Match(which) is { Success: true } alone)
            return on == string.Join(' ', Lying(alone.Groups["motifs"].Value).Select(static (one, at) => one.Length > 0 ? at.ToString(System.Globalization.CultureInfo.InvariantCulture) : string.Empty).Where(static n => n.Length > 0));
        return (on == "0" && which.Contains("first row", StringComparison.Ordinal)) || (on == "1" && which.Contains("below", StringComparison.Ordinal));
    }

    // From the top left corner she goes round against the clock: along each side that lies outside, both of its corners included.
    private static ReadPiece Rim(string title, ReadPiece motif, LaidOutMotifs laid)
    {
        var places = new List<Place>();
        var names = new[] { "first side", "second side", "third side", "fourth side", "fifth side", "sixth side" };
        foreach (var (side, isOther) in laid.Rim())
        {
            // At a corner of one motif alone both its sides have the one place.
            if (!isOther && places.Count > 0) places.RemoveAt(places.Count - 1);
            places.AddRange(motif.SideOf(names[side]).Select((place, at) => place with { IsMarked = at == 0 && !isOther }));
        }

        places.RemoveAt(places.Count - 1);
        var rim = new ReadPiece(title) { IsFastenedOff = true };
        rim.Rows.Add(new ReadRow(1, true, places) { IsRound = true, IsJoined = true });
        return rim;
    }

    [GeneratedRegex(@"^\*\*(?<all>\d+) motifs, (?<across>\d+)(?: and (?<between>\d+) by turns)? across and (?<down>\d+) down, RS up\.\*\* Work them row by row from the bottom up, each row from left to right, and join each in its last round to those that lie beside it\. (?<off>The rows are set off: (?:(?:where they have as many motifs as each other, )?(?<right>every second row begins and ends half a motif further right))?(?:; )?(?:(?:where they have not, )?(?<in>the shorter rows begin and end half a motif further in))?\. )?(?:(?<turns>[^.:]+) take turns along each row, and each row begins with the next of them: Row 1, the lowest, with (?<one>[^,]+), Row 2 with (?<two>[^,]+), and so on\. There are (?<each>[^.]+)\. )?(?:All sides of a motif are alike: turn it as it comes|The first side of a motif, behind the first corner of its last round, lies at its left|Each stands upright: the beginning edge of [^.]+ lies at its bottom)\.$")]
    private static partial Regex Whole();

    [GeneratedRegex(@"^\*\*First motif:\*\* As (?<motif>[^.]+)\.$")]
    private static partial Regex First();

    [GeneratedRegex(@"^\*\*(?<kind>.+?) joined along (?<sides>one side|two sides|three sides) \(make (?<n>\d+)\):\*\* (?<which>.+?)(?:, wherever it is the turn of (?<turn>[^.]+))?\. (?:Work|Begin) as (?<motif>.+?)(?: to the end of Round \d+)?, then:$")]
    private static partial Regex Kind();

    [GeneratedRegex(@"^those that lie beside (?<motifs>.+) alone when their turn comes$")]
    private static partial Regex Alone();

    [GeneratedRegex(@"^All round there are (?<sts>\d+) sts(?: and (?<sps>\d+) sps)?: ")]
    private static partial Regex Around();
}
