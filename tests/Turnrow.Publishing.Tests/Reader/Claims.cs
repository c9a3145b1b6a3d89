namespace Turnrow.Publishing.Tests.Reader;

/// <summary>What stands behind a row must be what came out.</summary>
internal static class Claims
{
    public static void Check(IReadOnlyDictionary<string, int> printed, ReadRow row)
    {
        var made = new SortedDictionary<string, int>(StringComparer.Ordinal);
        foreach (var place in row.Made)
        {
            if (place.Seen == Seen.SlipStitch) continue;
            var key = place.Seen == Seen.Space ? $"ch-{place.Chains} sp" : place.Stitch;
            made[key] = made.GetValueOrDefault(key) + 1;
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
