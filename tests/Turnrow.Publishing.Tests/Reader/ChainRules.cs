using System.Text.RegularExpressions;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>What a chain at the beginning of a row is to a stitch.</summary>
internal sealed record ChainRule(int Chains, bool Counts);

/// <summary>What the notes, and `here and throughout`, say of the chains at the beginnings of rows.</summary>
internal sealed partial class ChainRules
{
    private readonly Dictionary<string, ChainRule> _rules = [];

    public ChainRules(IEnumerable<string> notes, StitchWords words)
    {
        Words = words;
        foreach (var note in notes)
        {
            if (Note().Match(note) is not { Success: true } match) continue;
            var stitch = words.Find(match.Groups["stitch"].Value) ?? throw new Misread($"a note speaks of `{match.Groups["stitch"].Value}`");
            Set(stitch, new ChainRule(Number.Of(match.Groups["chains"].Value), match.Groups["counts"].Success));
        }
    }

    public StitchWords Words { get; }

    public ChainRule? Of(string stitch) => _rules.GetValueOrDefault(stitch);

    /// <summary>`here and throughout`; it must not say another thing than was said before.</summary>
    public void Set(string stitch, ChainRule rule)
    {
        if (_rules.TryGetValue(stitch, out var known) && known != rule) throw new Misread($"of the ch at the beginning of a row of {stitch} two things are said");
        _rules[stitch] = rule;
    }

    [GeneratedRegex(@"^At the beginning of a (?:row|round) of (?<stitch>\w+), ch (?<chains>\d+) (?:(?<counts>counts as 1 \k<stitch>)|does not count as a st)")]
    private static partial Regex Note();
}
