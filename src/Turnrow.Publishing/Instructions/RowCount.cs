using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions;

/// <summary>What a row counts, by kind: <c>14 dc, 6 ch-2 sps</c>.</summary>
internal sealed class RowCount
{
    private readonly List<(PlaceName Kind, Sized<int> Count)> _kinds;

    private RowCount(List<(PlaceName, Sized<int>)> kinds) => _kinds = kinds;

    /// <summary>The one stitch that the row is made of; null if it has several kinds.</summary>
    public Stitch? OnlyStitch => _kinds is [{ Kind: { Kind: PlaceNameKind.Stitch, Stitch: var stitch } }] ? stitch : null;

    /// <summary>Reads it off a row's work, in each size, in the pattern's own way of counting; null where a size's is not known.</summary>
    public static RowCount? Of(IEnumerable<RowWork?> works, Counting counting)
    {
        List<(PlaceName, Sized<int>)>? all = null;
        var totals = new List<int>();
        var alike = true;
        foreach (var work in works)
        {
            if (work is null) return null;
            var kinds = KindsOf(work, counting);
            totals.Add(work.Count(counting));
            if (all is null) all = kinds;
            else if (alike) alike = Join(all, kinds);
        }

        if (all is null) return null;
        // Sizes that differ in their kinds share the total alone.
        return alike && counting != Counting.WithChains ? new RowCount(all) : new RowCount([(PlaceName.AnyStitch, Sized.Over(totals))]);
    }

    /// <summary>True if two rows come to the same of each kind: the same total made of other stitches is another count to a maker.</summary>
    public static bool AreAlike(RowWork? one, RowWork? other)
    {
        if (ReferenceEquals(one, other)) return true;
        if (one is null || other is null) return false;
        var (kinds, others) = (KindsOf(one, Counting.Usual), KindsOf(other, Counting.Usual));
        return kinds.Count == others.Count && kinds.TrueForAll(kind => others.Exists(o => o.Kind == kind.Kind && o.Count.Equals(kind.Count)));
    }

    /// <summary>The counts in words.</summary>
    public string Written(Wording words) => string.Join(", ", _kinds.Select(k => k.Kind.Counted(k.Count, words)));

    private static bool Join(List<(PlaceName Kind, Sized<int> Count)> all, List<(PlaceName Kind, Sized<int> Count)> others)
    {
        if (all.Count != others.Count) return false;
        for (var i = 0; i < all.Count; i++)
        {
            var at = others.FindIndex(o => o.Kind == all[i].Kind);
            if (at < 0) return false;
            all[i] = (all[i].Kind, all[i].Count.And(others[at].Count));
        }

        return true;
    }

    // Places of a special stitch are counted by it, once for each; all others by their kind.
    private static IEnumerable<PlaceRun> Runs(PlaceSequence tops)
    {
        if (!tops.HasParts) return tops.Kinds();
        var runs = new List<PlaceRun>();
        foreach (var segment in tops.Segments)
        {
            foreach (var run in segment.Unit)
            {
                if (run.Place.Part is null or { Index: 0 }) runs.Add(run with { Count = run.Count * segment.Times });
            }
        }

        return runs;
    }

    private static List<(PlaceName Kind, Sized<int> Count)> KindsOf(RowWork work, Counting counting)
    {
        var kinds = new List<(PlaceName Kind, Sized<int> Count)>();
        foreach (var run in Runs(work.Tops))
        {
            if (counting == Counting.WithoutTurningChain && run.Place is { Part: null, Kind: PlaceKind.TurningChain or PlaceKind.SkippedChains }) continue;
            var name = run.Place.Part is { } part ? new PlaceName(PlaceNameKind.Stitch, part.Special) : PlaceName.Of(run.Place);
            var at = kinds.FindIndex(k => k.Kind == name);
            if (at < 0) kinds.Add((name, Sized.Of(run.Count)));
            else kinds[at] = (name, Sized.Of(kinds[at].Count.First + run.Count));
        }

        return kinds;
    }
}
