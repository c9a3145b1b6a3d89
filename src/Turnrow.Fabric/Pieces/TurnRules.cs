using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Pieces;

/// <summary>How rows of each stitch are turned in a piece, from where it has got to.</summary>
internal sealed class TurnRules(IReadOnlyDictionary<Stitch, TurnRule> pattern)
{
    private readonly Dictionary<Stitch, TurnRule> _rules = new(pattern);
    private readonly Dictionary<Stitch, TurnRule> _forNextRow = [];

    /// <summary>The rule for the next row.</summary>
    public TurnRule Of(Stitch stitch) =>
        _forNextRow.TryGetValue(stitch, out var next) ? next
        : _rules.TryGetValue(stitch, out var rule) ? rule
        : TurnRule.CustomOf(stitch);

    /// <summary>True if a rule was said and custom is not all there is.</summary>
    public bool Says(Stitch stitch) => _rules.ContainsKey(stitch);

    /// <summary>Sets a rule from here on, or for the next row alone.</summary>
    public void Set(Stitch stitch, TurnRule rule, bool nextRowOnly) => (nextRowOnly ? _forNextRow : _rules)[stitch] = rule;

    /// <summary>Ends a row: true if a rule that was for it alone is gone.</summary>
    public bool EndRow()
    {
        if (_forNextRow.Count == 0) return false;
        _forNextRow.Clear();
        return true;
    }
}
