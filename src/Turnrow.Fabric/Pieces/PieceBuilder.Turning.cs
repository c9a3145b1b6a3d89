using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Pieces;

/// <content>How rows are turned, from here on or in one row alone.</content>
public sealed partial class PieceBuilder
{
    private List<(int Row, Stitch Stitch, TurnRule Rule)>? _turnedAlone;

    /// <summary>The rule by which rows of a stitch are turned here.</summary>
    public TurnRule RuleOf(Stitch stitch) => _rules.Of(stitch);

    /// <summary>True if the pattern or the piece says how rows of a stitch are turned.</summary>
    public bool SaysRuleOf(Stitch stitch) => _rules.Says(stitch);

    /// <summary>Sets the rule from here on, or for the next row alone.</summary>
    public void SetRule(Stitch stitch, TurnRule rule, bool nextRowOnly)
    {
        _events.Add(new RuleEvent(stitch, rule, nextRowOnly));
        if (nextRowOnly) (_turnedAlone ??= []).Add((_rows.Count, stitch, rule));
        _rules.Set(stitch, rule, nextRowOnly);
        _cache = _book.For(_rules);
    }

    /// <summary>Sets for the next row the rules that were said for an earlier one alone: a row that is worked again is turned as it was.</summary>
    /// <param name="index">That row, from 0.</param>
    public void TurnAs(int index)
    {
        if (_turnedAlone is null) return;
        foreach (var (row, stitch, rule) in _turnedAlone.ToList())
        {
            if (row == index) SetRule(stitch, rule, true);
        }
    }
}
