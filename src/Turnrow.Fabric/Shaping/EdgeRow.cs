using System.Globalization;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Shaping;

/// <summary>The words of an edge in plain stitches beside a stitch pattern, and the pattern's own words between two such edges.</summary>
internal static class EdgeRow
{
    /// <summary>
    /// Words over places, from the edge inwards, with a change at the edge; null if there are too few stitches for it. A space gets as many stitches
    /// as it has chains.
    /// </summary>
    public static List<Word>? Words(PlaceSequence places, Stitch stitch, EdgeChange change)
    {
        var words = new List<Word>();
        var cursor = new PlaceCursor(places);
        if (change.Change != 0)
        {
            var takes = change.StitchesIn + change.Takes;
            if (takes > places.Count || !AllStitches(places.Slice(0, takes))) return null;
            if (change.StitchesIn > 0) words.Add(Work.Plain(stitch, Amount.Of(change.StitchesIn)));
            AddChange(words, stitch, change);
            cursor.Pass(takes);
        }

        while (cursor.Remaining > 0)
        {
            var run = cursor.CurrentRun(int.MaxValue);
            if (run.Place.TakesStitches) AddPlain(words, stitch, run.Count);
            for (var i = 0; i < run.Count && !run.Place.TakesStitches; i++) words.Add(IntoSpace(stitch, run.Place.Chains));
            cursor.Pass(run.Count);
        }

        return words;
    }

    /// <summary>How wide places are in stitches: a space is as wide as its chains.</summary>
    public static int Columns(PlaceSequence places)
    {
        var columns = 0;
        foreach (var run in places.Kinds()) columns += run.Count * Math.Max(1, run.Place.Chains);
        return columns;
    }

    /// <summary>How many places are so wide together; null if a space would be cut.</summary>
    public static int? PlacesOver(PlaceSequence places, int columns)
    {
        var cursor = new PlaceCursor(places);
        while (columns > 0 && cursor.Remaining > 0)
        {
            columns -= Math.Max(1, cursor.Next.Chains);
            cursor.Pass(1);
        }

        return columns == 0 ? places.Count - cursor.Remaining : null;
    }

    /// <summary>The words of a pattern's row with places before and behind them: what went to the end now goes up to those.</summary>
    public static IEnumerable<Word> Between(IReadOnlyList<Word> words, int before, int behind)
    {
        foreach (var word in words)
        {
            yield return word switch
            {
                Work work => work with { Amount = Within(work.Amount, behind), Target = Within(work.Target, before, behind) },
                Group group => group with { Target = Within(group.Target, before, behind) },
                Repeat repeat => repeat with { Amount = Within(repeat.Amount, behind) },
                ByPlace each => each with { Remain = each.Remain + behind },
                Spread spread => spread with { Over = Within(spread.Over, behind) },
                _ => word,
            };
        }
    }

    /// <summary>The same words, plain stitches of one kind side by side as one.</summary>
    public static List<Word> Joined(IReadOnlyList<Word> words)
    {
        var joined = new List<Word>(words.Count);
        foreach (var word in words)
        {
            if (joined.Count > 0 && IsPlain(joined[^1]) && IsPlain(word) && joined[^1] is Work last && word is Work next && last.Stitch == next.Stitch)
                joined[^1] = last with { Amount = Amount.Of(last.Amount.Count + next.Amount.Count) };
            else
                joined.Add(word);
        }

        return joined;
    }

    /// <summary>Words as a key: equal words, equal keys.</summary>
    public static string Key(IReadOnlyList<Word> words) => string.Join('|', words.Select(static word => word switch
    {
        Work work => string.Create(CultureInfo.InvariantCulture, $"{work.Stitch.Id} {work.Takes} {work.Makes} {work.Amount.Count} {work.Target.Aim}"),
        Skip skip => string.Create(CultureInfo.InvariantCulture, $"skip {skip.Count}"),
        _ => string.Empty,
    }));

    private static bool IsPlain(Word word) => word is Work { Takes: 1, Makes: 1, Target.Aim: Aim.Next, Hook: HookInto.BothLoops, Amount.Reach: Reach.Fixed };

    private static Amount Within(Amount amount, int behind) => amount.Reach switch
    {
        Reach.Across when behind > 0 => Amount.Until(behind),
        Reach.Until => Amount.Until(amount.Count + behind),
        _ => amount,
    };

    private static Target Within(Target target, int before, int behind) => target.Aim switch
    {
        Aim.First when before > 0 => target with { Aim = Aim.Next },
        Aim.Last when behind > 0 => target with { Aim = Aim.Next },
        Aim.EachOfKind when !target.ToCorner => target with { Remain = target.Remain + behind },
        _ => target,
    };

    private static bool AllStitches(PlaceSequence places) => places.CountWhere(static place => !place.TakesStitches) == 0;

    private static void AddChange(List<Word> words, Stitch stitch, EdgeChange change)
    {
        if (change.Change > 0) words.Add(Work.Increase(stitch, change.Change));
        else if (!change.Skips) words.Add(Work.Decrease(stitch, -change.Change));
        else
        {
            for (var i = 0; i < -change.Change; i++)
            {
                if (i > 0) AddPlain(words, stitch, 1);
                words.Add(new Skip(1));
            }
        }
    }

    private static void AddPlain(List<Word> words, Stitch stitch, int count)
    {
        if (words.Count > 0 && words[^1] is Work { Takes: 1, Makes: 1, Target.Aim: Aim.Next } last) words[^1] = last with { Amount = Amount.Of(last.Amount.Count + count) };
        else words.Add(Work.Plain(stitch, Amount.Of(count)));
    }

    private static Work IntoSpace(Stitch stitch, int chains) =>
        new(stitch, 1, chains, Amount.Once, new Target(Aim.NextOfKind, new PlaceFilter(PlaceFilterKind.AnySpace, null, 0)), HookInto.BothLoops);
}
