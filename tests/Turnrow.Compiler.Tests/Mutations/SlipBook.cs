using System.Globalization;
using System.Text;

namespace Turnrow.Compiler.Tests.Mutations;

/// <summary>What came of all slips: the numbers by kind and by reason, as the page that a designer can read.</summary>
internal sealed class SlipBook
{
    /// <summary>Of each kind, as many of a pattern as the page counts.</summary>
    public const int MostOfKind = 12;

    private readonly IReadOnlyList<(Judged Judged, Reason? Reason)> _all;

    private SlipBook(IEnumerable<(Judged, Reason?)> all) => _all = [.. all];

    /// <summary>Number of slips.</summary>
    public int Slips => _all.Count;

    /// <summary>The share of slips that change what is made, and that the compiler lets pass.</summary>
    public double ShareExcused => (double)_all.Count(j => IsExcused(j.Reason)) / Slips;

    /// <summary>Those that are neither found nor explained.</summary>
    public IEnumerable<string> Unexplained => _all.Where(j => !j.Judged.Found && j.Reason is null).Select(j => $"{j.Judged.Slip.Shown} ({j.Judged.Difference})");

    /// <summary>Makes slips in every pattern, of each kind at most so many in one pattern and from all over it, and judges them.</summary>
    public static SlipBook Of(IReadOnlyList<string> paths, int mostOfKind)
    {
        var slips = paths.Select(path => new SlipPattern(path)).SelectMany(pattern => Some(All(pattern), mostOfKind)).ToArray();
        var judged = new (Judged, Reason?)[slips.Length];
        Parallel.For(0, slips.Length, i =>
        {
            var one = Judged.Of(slips[i]);
            judged[i] = (one, one.Found ? null : Reasons.All.FirstOrDefault(r => r.Covers(one)));
        });
        return new SlipBook(judged);
    }

    /// <summary>The share of all slips that a reason explains.</summary>
    public double ShareOf(Reason reason) => (double)_all.Count(j => j.Reason == reason) / Slips;

    /// <summary>The page.</summary>
    public string Page()
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"""
            # Slips: what is found, and what can't be

            A test makes {Slips} single changes to the patterns, one at a time, as a hand or a thought that slips would make them (of each kind
            at most {MostOfKind} in one pattern, from all over it), and asks whether `turnrow check` says anything in any size. Found are {_all.Count(j => j.Judged.Found)}; {_all.Count(j => j.Reason == Reasons.Same)} change nothing that is made; {_all.Count(j => IsExcused(j.Reason))} ({Percent(ShareExcused)}) make
            another thing, and nothing in the pattern says that it is not the one meant. Each of those falls under one of the reasons below, and the test
            fails when one does not. It writes this page: `tests/Turnrow.Compiler.Tests/Mutations`.

            ## By kind

            | slip | made | found | no change | passed | share passed |
            |---|--:|--:|--:|--:|--:|

            """);
        foreach (var kind in _all.GroupBy(j => j.Judged.Kind).OrderBy(k => k.Key, StringComparer.Ordinal)) AppendKind(text, kind.Key, [.. kind]);
        text.Append("\n## The reasons\n");
        foreach (var reason in Reasons.All) AppendReason(text, reason);
        return text.ToString();
    }

    private static IEnumerable<Slip> All(SlipPattern pattern) =>
        Enumerable.Range(0, pattern.Tree.Lines.Count).SelectMany(line =>
            NumberSlips.Of(pattern, line)
                .Concat(NameSlips.Of(pattern, line))
                .Concat(WordSlips.Of(pattern, line))
                .Concat(PartSlips.Of(pattern, line))
                .Concat(LineSlips.Of(pattern, line)));

    private static IEnumerable<Slip> Some(IEnumerable<Slip> all, int mostOfKind)
    {
        foreach (var kind in all.GroupBy(slip => slip.Kind))
        {
            var slips = kind.ToList();
            var made = Math.Min(slips.Count, mostOfKind);
            for (var i = 0; i < made; i++) yield return slips[(int)((long)i * slips.Count / made)];
        }
    }

    private static bool IsExcused(Reason? reason) => reason is not null && reason != Reasons.Same;

    private static void AppendKind(StringBuilder text, string kind, List<(Judged Judged, Reason? Reason)> slips)
    {
        var passed = slips.Count(j => IsExcused(j.Reason));
        text.Append(CultureInfo.InvariantCulture,
            $"| {kind} | {slips.Count} | {slips.Count(j => j.Judged.Found)} | {slips.Count(j => j.Reason == Reasons.Same)} | {passed} | {Percent((double)passed / slips.Count)} |\n");
    }

    private void AppendReason(StringBuilder text, Reason reason)
    {
        var slips = _all.Where(j => j.Reason == reason).ToList();
        var kinds = slips.GroupBy(j => j.Judged.Kind).OrderByDescending(k => k.Count()).ThenBy(k => k.Key, StringComparer.Ordinal).Select(k => $"{k.Key} {k.Count().ToString(CultureInfo.InvariantCulture)}");
        text.Append(CultureInfo.InvariantCulture, $"\n**{reason.Name}** ({slips.Count}). {reason.Explanation}\n\n> {string.Join("; ", kinds)}\n");
    }

    private static string Percent(double share) => share.ToString("P0", CultureInfo.InvariantCulture).Replace(" ", "", StringComparison.Ordinal);
}
