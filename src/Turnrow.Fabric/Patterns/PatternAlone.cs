using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Patterns;

/// <summary>A stitch pattern worked by itself over so many repeats, until each of its rows lies on the pattern itself.</summary>
internal sealed class PatternAlone
{
    private readonly StitchPattern _pattern;
    private readonly IReadOnlyList<Row> _rows;

    public PatternAlone(StitchPattern pattern, int repeats, IReadOnlyDictionary<Stitch, TurnRule> rules)
    {
        _pattern = pattern;
        var builder = new PieceBuilder(pattern.Name, rules);
        builder.BeginWithStitches((repeats * pattern.Multiple) + pattern.Plus);
        builder.WorkInRounds(pattern.IsRound);
        if (pattern.Rows[0].RightSide is { } side) builder.BeginOnSide(side);
        var count = pattern.Rows.Count + (pattern.Rows.Count - pattern.RepeatFrom);
        for (var row = 0; row < count; row++) builder.WorkRow(new WordsPlan(pattern.Rows[pattern.IndexOf(row)].Words), default, row);
        _rows = builder.Rows;
    }

    /// <summary>What a row of the pattern makes, the last time that it comes; null if it does not come out.</summary>
    public PlaceSequence? Tops(int index)
    {
        for (var row = _rows.Count - 1; row >= 0; row--)
        {
            if (_pattern.IndexOf(row) == index) return _rows[row].Work?.Tops;
        }

        return null;
    }
}
