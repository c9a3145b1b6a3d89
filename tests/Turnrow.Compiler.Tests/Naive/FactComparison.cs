namespace Turnrow.Compiler.Tests.Naive;

/// <summary>
/// Lays the facts of two models side by side. Ways of saying the same are made equal first: row-ends one by one or
/// in runs, decreases by themselves or as their base stitch, a count of nothing or no count.
/// </summary>
public static class FactComparison
{
    public static IReadOnlyList<string> Differences(PatternFacts naive, PatternFacts subject)
    {
        if (naive.Faults.Count > 0)
            return subject.Faults.Count > 0 ? [] : [$"taken for sound, but: {string.Join("; ", naive.Faults)}"];
        if (subject.Faults.Count > 0)
            return [$"taken for faulty: {string.Join("; ", subject.Faults)}"];
        return
        [
            .. Compare(naive.Rows.Select(Told), subject.Rows.Select(Told)),
            .. Compare(naive.Edges.Select(Told), subject.Edges.Select(Told)),
            .. naive.Inner.SequenceEqual(subject.Inner) ? (string[])[] : [$"edges inside: {string.Join("; ", subject.Inner)}, not {string.Join("; ", naive.Inner)}"],
            .. Compare(naive.Seams.Select(seam => $"{seam}"), subject.Seams.Select(seam => $"{seam}")),
            .. Compare(naive.UsedAgain.Select(seam => $"used again: {seam}"), subject.UsedAgain.Select(seam => $"used again: {seam}")),
            .. CompareStarts(naive.Starts, subject.Starts),
        ];
    }

    private static IEnumerable<string> Compare(IEnumerable<string> naive, IEnumerable<string> subject)
    {
        var (expected, actual) = (naive.ToList(), subject.ToList());
        return expected.Except(actual).Select(fact => $"not told: {fact}")
            .Concat(actual.Except(expected).Select(fact => $"told:     {fact}"))
            .Concat(expected.Count == actual.Count ? [] : ["not as many facts"]);
    }

    private static string Told(RowFact row)
    {
        var counts = row.Counts
            .GroupBy(count => Place.BaseOf(count.Key), count => count.Value)
            .Where(group => group.Sum() > 0)
            .OrderBy(group => group.Key, StringComparer.Ordinal)
            .Select(group => FormattableString.Invariant($"{group.Sum()} {group.Key}"));
        return FormattableString.Invariant(
            $"{row.Piece}, {row.Size}, {(row.IsRound ? "round" : "row")} {row.Row} {row.Side}, {row.Start} to {row.End}: {row.Stitches} = {string.Join(", ", counts)}; corners {string.Join(' ', row.Corners)}; {row.Yarns}");
    }

    private static string Told(EdgeFact edge) =>
        $"{edge.Piece}, {edge.Size}, {edge.Hand} edge: {string.Join(", ", InRuns(edge.Stretches).Select(Told))}";

    private static string Told(StretchFact stretch) =>
        FormattableString.Invariant($"{stretch.Count} {stretch.Kind} {stretch.Stitch} '{stretch.Name}'");

    private static List<StretchFact> InRuns(IReadOnlyList<StretchFact> stretches)
    {
        var runs = new List<StretchFact>();
        foreach (var stretch in stretches)
        {
            var next = stretch.Kind == StretchKind.RowEnd
                ? stretch with { Stitch = Place.BaseOf(stretch.Stitch) }
                : stretch with { Stitch = "" };
            if (runs.Count > 0 && runs[^1] with { Count = next.Count } == next)
                runs[^1] = next with { Count = runs[^1].Count + next.Count };
            else if (next.Count > 0)
                runs.Add(next);
        }
        return runs;
    }

    private static IEnumerable<string> CompareStarts(IReadOnlyList<StartFact> naive, IReadOnlyList<StartFact> subject)
    {
        foreach (var expected in naive)
        {
            var actual = subject.FirstOrDefault(start => (start.Piece, start.Size) == (expected.Piece, expected.Size));
            if (actual is null)
                yield return $"no start of {expected.Piece}, {expected.Size}";
            else if (Told(expected, expected) != Told(actual, expected))
                yield return $"begins {Told(actual, expected)}, not {Told(expected, expected)}";
        }
    }

    /// <summary>A start as far as the naive model knows it: picked-up stitches may go on with the yarn or not.</summary>
    private static string Told(StartFact start, StartFact known)
    {
        var yarn = known.PickedUpRows.Count > 0 ? "" : start.Yarn.ToString();
        var chains = known.FoundationChains is null ? null : start.FoundationChains;
        return FormattableString.Invariant($"{start.Piece}, {start.Size}: {yarn} {chains} [{string.Join(' ', start.PickedUpRows)}]");
    }
}
