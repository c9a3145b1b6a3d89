using System.Text.RegularExpressions;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>The chain that a row begins with: what it stands for, as its remark or the notes say.</summary>
internal sealed partial class RowBeginning(Ground ground, ChainRules rules, IReadOnlyList<Step> steps, List<string> doubts)
{
    /// <summary>True once the row's chain is made.</summary>
    public bool IsChained { get; private set; }

    /// <summary>True once chains are skipped that hang from the hook.</summary>
    public bool IsSkipped { get; private set; }

    /// <summary>Of the chains skipped at the hook, those that neither lift it nor make a space.</summary>
    public int PassedChains { get; private set; }

    /// <summary>True if that chain stands for the row's first stitch.</summary>
    public bool StandsForFirst { get; private set; }

    /// <summary>The chain made at the beginning of a row.</summary>
    public IReadOnlyList<Place> Chained(MakeChains chains)
    {
        IsChained = true;
        if (Together() is { } together)
        {
            if (Number.Of(together.Groups["chains"].Value) != chains.Count) throw new Misread("the ch of the remark is another one");
            StandsForFirst = true;
            return [new Place(Seen.TurningChain)];
        }

        var first = FirstStitch(steps) ?? ground.Hint ?? throw new Misread("what the ch is to stand for is not said");
        foreach (var remark in chains.Remarks)
        {
            if (remark == $"a ch-{chains.Count} sp") return [new Place(Seen.Space, Chains: chains.Count)];
            if (Remark().Match(remark) is not { Success: true } match) throw new Misread($"`({remark})` says nothing of a ch");
            return Remarked(chains.Count, match, first);
        }

        var rule = rules.Of(first) ?? throw new Misread($"whether ch {chains.Count} counts as {first} is not said");
        if (rule.Chains != chains.Count) throw new Misread($"of a row of {first} the notes say ch {rule.Chains}, not ch {chains.Count}");
        if (rule.Counts && ground.JoinedAt < 0 && steps.Any(IsSlip)) doubts.Add("which st the ch after the sl sts takes the place of");
        return Standing(rule.Counts, chains.Count, chains.Count, first, 0);
    }

    /// <summary>Chains from the hook that are skipped at the beginning of a row.</summary>
    public IReadOnlyList<Place> Skipped(int chains, IReadOnlyList<string> remarks)
    {
        IsSkipped = true;
        if (chains > ground.HangingChains) throw new Misread($"{chains} ch are to be skipped, {ground.HangingChains} hang from the hook");
        if (Together() is { } together)
        {
            if (Number.Of(together.Groups["chains"].Value) != chains) throw new Misread("the ch of the remark are not those that are skipped");
            return [new Place(Seen.BeginningChain)];
        }

        var match = remarks.Select(remark => SkippedRemark().Match(remark)).FirstOrDefault(m => m.Success)
            ?? throw new Misread("whether the skipped ch count is not said");
        if (match.Groups["chains"].Success && Number.Of(match.Groups["chains"].Value) != chains) throw new Misread($"{chains} ch are skipped, {match.Groups["chains"].Value} are spoken of");
        var first = FirstStitch(steps) ?? ground.Hint ?? "";
        if (!match.Groups["stitch"].Success)
        {
            if (rules.Of(first) is { Counts: false } rule) PassedChains = Math.Max(0, chains - rule.Chains);
            return [];
        }

        // Where they stand for the only one of their kind, the next stitch is another.
        if (rules.Words.Find(match.Groups["stitch"].Value) is not { } counted) throw new Misread($"the skipped ch count as {match.Groups["stitch"].Value}, which is no stitch");
        first = counted;
        var space = match.Groups["space"].Success ? Number.Of(match.Groups["space"].Value) : 0;
        var passed = match.Groups["passed"].Success ? Number.Of(match.Groups["passed"].Value) : 0;
        PassedChains = passed;
        var stands = new Place(Seen.BeginningChain, first, chains - passed, chains - passed - space);
        return space > 0 ? [stands, new Place(Seen.Space, Chains: space)] : [stands];
    }

    /// <summary>True of the stitch that is one decrease with the row's chain.</summary>
    public static bool PartnerOf(Step work) => work.Remarks.Any(remark => TogetherRemark().IsMatch(remark));

    private List<Place> Remarked(int chains, Match remark, string first)
    {
        if (!remark.Groups["stitch"].Success)
        {
            if (remark.Groups["throughout"].Success) rules.Set(first, new ChainRule(chains, false));
            return [];
        }

        first = rules.Words.Find(remark.Groups["stitch"].Value) ?? throw new Misread($"the ch counts as {remark.Groups["stitch"].Value}");
        var space = remark.Groups["space"].Success ? Number.Of(remark.Groups["space"].Value) : 0;
        if (remark.Groups["throughout"].Success) rules.Set(first, new ChainRule(chains, true));
        if (rules.Of(first) is { } rule && rule.Chains != chains - space) throw new Misread($"of a row of {first} the notes say ch {rule.Chains}, not ch {chains - space}");
        if (remark.Groups["slipped"].Success != steps.Any(IsSlip)) throw new Misread("the ch takes the place of a sl st, or does it not?");
        if (remark.Groups["joined"].Success && ground.JoinedAt < 0) throw new Misread("there is no joined st");
        return Standing(true, chains, chains - space, first, space);
    }

    private List<Place> Standing(bool counts, int chains, int top, string stitch, int space)
    {
        StandsForFirst = counts;
        Beside(counts);
        if (!counts) return [];
        var place = new Place(Seen.TurningChain, stitch, chains, top);
        return space > 0 ? [place, new Place(Seen.Space, Chains: space)] : [place];
    }

    // After sl sts a ch that stands for a st is in the last one's place. One that does not may rise from it, and then the first st goes into
    // the same place or into the next: that has to be said.
    private void Beside(bool counts)
    {
        if (ground.JoinedAt >= 0 || steps.OfType<WorkInto>().FirstOrDefault(s => s.Stitch == "sl st") is not { } slip) return;
        var left = slip.Remarks.Any(remark => remark is "this row works nothing else in it" or "this row works nothing else in them");
        if (counts && left) throw new Misread("the ch is in the place of the last sl st, and nothing is to go in that");
        if (!counts && !left) doubts.Add("whether the first st goes into the last sl st's place or beside it");
    }

    private Match? Together() => steps.SelectMany(step => step.Remarks).Select(remark => TogetherRemark().Match(remark)).FirstOrDefault(m => m.Success);

    private static bool IsSlip(Step step) => step is WorkInto { Stitch: "sl st" } or RepeatSteps { IsSlipping: true };

    private string? FirstStitch(IReadOnlyList<Step> steps)
    {
        foreach (var step in steps)
        {
            var stitch = step switch
            {
                WorkInto { Special: { } special } => rules.Of(special.Name) is null ? special.Base(rules.Words) : special.Name,
                WorkOver over => over.Special.Base(rules.Words),
                WorkInto { Stitch: not "sl st" } work => work.Stitch,
                WorkTogether together => together.Stitch,
                WorkGroup { Specials.Count: > 0 } group when group.Specials.TryGetValue(0, out var special) => special.Base(rules.Words),
                WorkGroup group => group.Parts.Select(p => p.Stitch).OfType<string>().FirstOrDefault(),
                RepeatSteps { IsSlipping: false } repeat => FirstStitch(repeat.Steps),
                _ => null,
            };
            if (stitch is not null) return stitch;
        }

        return null;
    }

    [GeneratedRegex(@"^(?:counts as 1 (?<stitch>\w+)(?: and ch (?<space>\d+))?(?<slipped>, in the place of the last sl st)?(?<joined>, in the joined st)?|does not count as a st)(?<throughout> here and throughout)?$")]
    private static partial Regex Remark();

    [GeneratedRegex(@"^(?:(?:skipped|missed) (?:(?<chains>\d+) )?ch |they )(?:counts? as 1 (?<stitch>\w+)(?:, ch (?<space>\d+) and (?<passed>\d+) (?:skipped|missed) ch| and ch (?<space>\d+)| and (?<passed>\d+) (?:skipped|missed) ch)?|do not count as sts|does not count as a st)$")]
    private static partial Regex SkippedRemark();

    [GeneratedRegex(@"^the (?:(?<skipped>skipped|missed) (?<chains>\d+) ch|ch (?<chains>\d+)) and this \w+ count as \w+\dtog$")]
    private static partial Regex TogetherRemark();
}
