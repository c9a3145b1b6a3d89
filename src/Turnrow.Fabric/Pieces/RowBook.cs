using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Pieces;

/// <summary>
/// The rows that were worked for any piece and size of a pattern: fronts that mirror each other and sizes that are near each other have
/// most rows in common. Rows turned by other rules are other rows.
/// </summary>
public sealed class RowBook
{
    private readonly List<(Dictionary<Stitch, TurnRule> Rules, RowCache Rows)> _byRules = [];

    internal RowCache For(TurnRules turning)
    {
        var rules = turning.ForNextRow();
        // The last first: a piece goes on by rules that it said not long ago.
        for (var i = _byRules.Count - 1; i >= 0; i--)
        {
            if (Same(_byRules[i].Rules, rules)) return _byRules[i].Rows;
        }

        var rows = new RowCache();
        _byRules.Add((new Dictionary<Stitch, TurnRule>(rules), rows));
        return rows;
    }

    private static bool Same(Dictionary<Stitch, TurnRule> a, IReadOnlyDictionary<Stitch, TurnRule> b)
    {
        if (a.Count != b.Count) return false;
        foreach (var (stitch, rule) in a)
        {
            if (!b.TryGetValue(stitch, out var other) || rule != other) return false;
        }

        return true;
    }
}
