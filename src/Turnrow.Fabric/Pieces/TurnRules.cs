using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Pieces;

/// <summary>How rows of each stitch are turned in a piece, from where it has got to.</summary>
internal sealed class TurnRules(IReadOnlyDictionary<Stitch, TurnRule> pattern)
{
    // Most pieces go by the pattern's rules and say none of their own.
    private Dictionary<Stitch, TurnRule>? _own;
    private Dictionary<Stitch, TurnRule>? _forNextRow;

    private IReadOnlyDictionary<Stitch, TurnRule> Rules => _own ?? pattern;

    /// <summary>The rule for the next row.</summary>
    public TurnRule Of(Stitch stitch) => Said(stitch) ?? (stitch.Base is { } other ? Said(other) : null) ?? TurnRule.CustomOf(stitch.Rule);

    /// <summary>All that is said for the next row; what is not said goes by custom.</summary>
    public IReadOnlyDictionary<Stitch, TurnRule> ForNextRow()
    {
        if (_forNextRow is null) return Rules;
        var all = new Dictionary<Stitch, TurnRule>(Rules);
        foreach (var (stitch, rule) in _forNextRow) all[stitch] = rule;
        return all;
    }

    private TurnRule? Said(Stitch stitch) =>
        _forNextRow is not null && _forNextRow.TryGetValue(stitch, out var next) ? next : Rules.GetValueOrDefault(stitch);

    /// <summary>True if a rule was said and custom is not all there is.</summary>
    public bool Says(Stitch stitch) => Rules.ContainsKey(stitch);

    /// <summary>Sets a rule from here on, or for the next row alone.</summary>
    public void Set(Stitch stitch, TurnRule rule, bool nextRowOnly)
    {
        if (nextRowOnly) (_forNextRow ??= [])[stitch] = rule;
        else (_own ??= new Dictionary<Stitch, TurnRule>(pattern))[stitch] = rule;
    }

    /// <summary>Ends a row: true if a rule that was for it alone is gone.</summary>
    public bool EndRow()
    {
        if (_forNextRow is null) return false;
        _forNextRow = null;
        return true;
    }
}
