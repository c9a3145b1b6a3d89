namespace Turnrow.Publishing.Tests.Reader;

/// <summary>What stands behind a row must be what came out, counted as the notes say.</summary>
internal sealed class Claims(IReadOnlyList<string> notes)
{
    private readonly bool _withoutFirst = notes.Any(note => note.EndsWith("The ch that stands for a row's first st is not in the count.", StringComparison.Ordinal));
    private readonly bool _withChains = notes.Any(note => note.EndsWith("Each ch of a ch sp is in the count.", StringComparison.Ordinal));

    public void Check(IReadOnlyDictionary<string, int> printed, ReadRow row)
    {
        var made = new SortedDictionary<string, int>(StringComparer.Ordinal);
        var counted = new HashSet<MadeSpecial>();
        foreach (var place in row.Made)
        {
            if (place.With is { } with && !printed.ContainsKey("st"))
            {
                if (counted.Add(with)) made[with.Name] = made.GetValueOrDefault(with.Name) + 1;
                continue;
            }

            if (place.Seen == Seen.SlipStitch || (_withoutFirst && place.Seen is Seen.TurningChain or Seen.BeginningChain)) continue;
            var key = place.Seen == Seen.Space ? $"ch-{place.Chains} sp" : place.Seen == Seen.BridgeChain ? "ch" : place.Stitch;
            made[key] = made.GetValueOrDefault(key) + 1;
        }

        // Where kinds are not told apart, or not the same in all sizes, the sts are counted together.
        if (printed.ContainsKey("st"))
        {
            var sts = made.Where(kind => kind.Key != "ch" && !kind.Key.EndsWith("sp", StringComparison.Ordinal)).Sum(kind => kind.Value);
            var chains = _withChains ? row.Made.Where(place => place.Seen == Seen.Space).Sum(place => place.Chains) : 0;
            var bridged = made.GetValueOrDefault("ch");
            made = new(StringComparer.Ordinal) { ["st"] = sts + chains };
            if (bridged > 0) made["ch"] = bridged;
        }

        var said = new SortedDictionary<string, int>(printed.ToDictionary(), StringComparer.Ordinal);
        if (!made.SequenceEqual(said)) throw new Misread($"Row {row.Number} comes to {Words(made)}, printed is {Words(said)}");
    }

    /// <summary>`1 dc more every 2 rows`: each row against the one so many before it.</summary>
    public static void Check((int Change, int Every) gain, ReadPiece piece, int from)
    {
        for (var i = from - 1; i < piece.Rows.Count; i++)
        {
            if (i < gain.Every) throw new Misread("there is no row to gain on");
            var grown = piece.Rows[i].Stitches - piece.Rows[i - gain.Every].Stitches;
            if (grown != gain.Change) throw new Misread($"Row {i + 1} has {grown} sts more than {gain.Every} rows before, {gain.Change} are said");
        }
    }

    private static string Words(IEnumerable<KeyValuePair<string, int>> counts) => string.Join(", ", counts.Select(c => $"{c.Value} {c.Key}"));
}
