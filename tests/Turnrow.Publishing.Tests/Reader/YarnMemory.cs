namespace Turnrow.Publishing.Tests.Reader;

/// <summary>The yarns of a piece: which is in the hand, which rest, and where. Whatever is taken up where it is not is a misreading.</summary>
internal sealed class YarnMemory
{
    private readonly Dictionary<string, (string Fate, Side At)> _resting = [];
    private string? _said;
    private bool _rowsSay;
    private bool _isOfAll;

    /// <summary>The yarn in the hand; null if the page has named none.</summary>
    public string? InHand { get; set; }

    /// <summary>Takes a row's yarns in; the yarns of its places, in words.</summary>
    public string Row(ReadRow row, WorkedRow worked, IReadOnlyList<Step> steps)
    {
        if (worked.Yarns.Count == 0) return InHand is null ? "" : _rowsSay ? throw new Misread("which yarn the row is worked with is not said") : OfAll(row, InHand);
        if (_isOfAll) throw new Misread("the rows before say of no yarn that it is theirs alone");
        _rowsSay = true;
        if (worked.Yarns[0].From != 0) throw new Misread("a row says at its beginning which yarn it is worked with");
        Begin(row, worked.Yarns[0].Yarn);
        foreach (var (yarn, _) in worked.Yarns.Skip(1))
        {
            if (yarn != worked.Yarns[0].Yarn && _resting.TryGetValue(yarn, out var rests) && rests.Fate.StartsWith("carried", StringComparison.Ordinal)) throw new Misread($"{yarn} is {rests.Fate} and not at hand");
        }

        InHand = worked.Yarns[^1].Yarn;
        _said = null;
        foreach (var step in steps) AtEnd(row, step);
        var made = row.Made.Count(place => place.Seen != Seen.SlipStitch);
        return Runs(worked.Yarns.Select((taken, i) => (taken.Yarn, (i + 1 < worked.Yarns.Count ? worked.Yarns[i + 1].From : made) - taken.From)));
    }

    // A piece of one yarn says it where it begins, and no row again.
    private string OfAll(ReadRow row, string yarn)
    {
        _isOfAll = true;
        return Runs([(yarn, row.Made.Count(place => place.Seen != Seen.SlipStitch))]);
    }

    /// <summary>Runs of yarns in words.</summary>
    public static string Runs(IEnumerable<(string Yarn, int Count)> runs)
    {
        var all = new List<(string Yarn, int Count)>();
        foreach (var (yarn, count) in runs.Where(run => run.Count > 0))
        {
            if (all.Count > 0 && all[^1].Yarn == yarn) all[^1] = (yarn, all[^1].Count + count);
            else all.Add((yarn, count));
        }

        return string.Join(", ", all.Select(run => $"{run.Yarn} {run.Count}"));
    }

    private void Begin(ReadRow row, string yarn)
    {
        if (InHand is not null && yarn != InHand && yarn != _said) throw new Misread($"that {yarn} is taken up was not said when the row before ended");
        if (_said is not null && yarn != _said) throw new Misread($"{_said} is in the hand, and the row begins with {yarn}");
        if (_resting.Remove(yarn, out var rests) && rests.Fate.StartsWith("carried", StringComparison.Ordinal) && !row.IsRound && row.StartsAt != rests.At)
            throw new Misread($"{yarn} hangs at the other edge");
    }

    private void AtEnd(ReadRow row, Step step)
    {
        if (step is ChangeAtEnd change)
        {
            if (change.AtJoin != (row.IsRound && row.IsJoined)) throw new Misread("the yarn is changed where nothing is joined");
            _said = change.Yarn;
        }
        else if (step is RestYarn rest)
        {
            if (rest.Rest == "carried up inside" != row.IsRound && rest.Rest.StartsWith("carried", StringComparison.Ordinal)) throw new Misread("there is no such side");
            _resting[rest.Yarn] = (rest.Rest, row.EndsAt);
        }
    }
}
