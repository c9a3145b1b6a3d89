using System.Text.RegularExpressions;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>A blanket as the maker puts it together: how many motifs there are, and how those of each kind come out.</summary>
internal sealed partial record ReadBlanket(int Across, int Down, IReadOnlyList<(int Sides, int Count, ReadPiece Piece)> Joined)
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
        if (Number.Of(whole.Groups["all"].Value) != across * down) throw new Misread("there are not so many motifs");
        if (First().Match(paragraphs[1]) is not { Success: true } first || !pieces.TryGetValue(first.Groups["motif"].Value, out var plain)) throw new Misread("how the first motif is made is not said");
        var joined = new List<(int, int, ReadPiece)>();
        for (var i = 2; i + 2 < paragraphs.Count; i += 3)
        {
            if (Kind().Match(paragraphs[i]) is not { Success: true } kind || paragraphs[i + 2] != "Fasten off.") throw new Misread("how a joined motif is made is not said");
            var sides = kind.Groups["sides"].Value == "one side" ? 1 : 2;
            (string, string)[] beside = sides == 2 ? [("the motif before", "third side"), ("the motif below", "fourth side")]
                : kind.Groups["which"].Value.StartsWith("the first motif", StringComparison.Ordinal) ? [("the motif below", "fourth side")]
                : kind.Groups["which"].Value.Contains("below", StringComparison.Ordinal) ? [("the motif beside", "third side")]
                : [("the motif before", "third side")];
            joined.Add((sides, Number.Of(kind.Groups["n"].Value), motif(kind.Groups["motif"].Value, beside, paragraphs[i + 1])));
        }

        if (1 + joined.Sum(static j => j.Item2) != across * down) throw new Misread("the motifs of all kinds are not as many as there are");
        var rim = Rim(title, plain, across, down);
        if (Around().Match(paragraphs[^1]) is not { Success: true } around || Number.Of(around.Groups["sts"].Value) != rim.Rows[0].Made.Count(static p => p.Seen != Seen.Space)
            || (around.Groups["sps"].Success ? Number.Of(around.Groups["sps"].Value) : 0) != rim.Rows[0].Made.Count(static p => p.Seen == Seen.Space)) throw new Misread("there are not so many places all round");
        return (new ReadBlanket(across, down, joined), rim);
    }

    // From the top left corner she goes round against the clock: along each motif at the rim, both of its corners included.
    private static ReadPiece Rim(string title, ReadPiece motif, int across, int down)
    {
        var places = new List<Place>();
        var sides = new[] { "first side", "second side", "third side", "fourth side" };
        for (var side = 0; side < 4; side++)
        {
            var along = motif.SideOf(sides[side]);
            var many = side % 2 == 0 ? down : across;
            for (var n = 0; n < many; n++) places.AddRange(along.Select((place, at) => place with { IsMarked = n == 0 && at == 0 }));
            // The corner at the end of a whole side is the one that the next begins with.
            places.RemoveAt(places.Count - 1);
        }

        var rim = new ReadPiece(title) { IsFastenedOff = true };
        rim.Rows.Add(new ReadRow(1, true, places) { IsRound = true, IsJoined = true });
        return rim;
    }

    [GeneratedRegex(@"^\*\*(?<all>\d+) motifs, (?<across>\d+) across and (?<down>\d+) down, RS up\.\*\* Work them row by row from the bottom up, each row from left to right, and join each in its last round to those that lie beside it\. (?:All sides of a motif are alike: turn it as it comes|The first side of a motif, behind the first corner of its last round, lies at its left)\.$")]
    private static partial Regex Whole();

    [GeneratedRegex(@"^\*\*First motif:\*\* As (?<motif>[^.]+)\.$")]
    private static partial Regex First();

    [GeneratedRegex(@"^\*\*Motifs joined along (?<sides>one side|two sides) \(make (?<n>\d+)\):\*\* (?<which>.+)\. (?:Work|Begin) as (?<motif>.+?)(?: to the end of Round \d+)?, then:$")]
    private static partial Regex Kind();

    [GeneratedRegex(@"^All round there are (?<sts>\d+) sts(?: and (?<sps>\d+) sps)?: ")]
    private static partial Regex Around();
}
