using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Pieces;

/// <summary>Keeps the walk along one edge while a piece grows.</summary>
internal sealed class EdgeBuilder(Hand hand)
{
    private readonly List<Stretch> _stretches = [];
    private readonly List<string> _names = [];
    private int _rowsMore;
    private bool _nameUsed;

    /// <summary>The name from the next row on; null if it has none.</summary>
    public string? Name
    {
        get => _names.Count == 0 ? null : _names[^1];
        set
        {
            // A name that was given and taken back before anything was made under it never was.
            if (!_nameUsed && _names.Count > 0) _names.RemoveAt(_names.Count - 1);
            if (value is not null) _names.Add(value);
            _nameUsed = false;
        }
    }

    /// <summary>The names it has had.</summary>
    public IEnumerable<string> AllNames => _names.Distinct();

    /// <summary>True if it has had a name, in whatever letters.</summary>
    public bool HasHad(string name)
    {
        foreach (var had in _names)
        {
            if (string.Equals(had, name, StringComparison.OrdinalIgnoreCase)) return true;
        }

        return false;
    }

    /// <summary>The name, for something made under it now.</summary>
    public string? UseName()
    {
        _nameUsed = true;
        return Name;
    }

    /// <summary>Names what there is so far, too, if it has no name yet.</summary>
    public void NameAll(string name)
    {
        Name = name;
        for (var i = 0; i < _stretches.Count; i++)
        {
            if (_stretches[i].Name is null) _stretches[i] = _stretches[i] with { Name = UseName() };
        }
    }

    /// <summary>Adds a row's end, if it reaches the edge, and before it what a step left or added.</summary>
    public void Add(Row row, Step? step)
    {
        if (!row.Reaches(hand)) return;
        if (step is not null) Add(row.Number - 1, step);
        if (LeftInWords(row) is > 0 and var left)
        {
            Close();
            _stretches.Add(new Stretch(StretchKind.LeftStitches, row.Number - 1, left, null, Name));
        }

        var stitch = EndStitch(row);
        var name = UseName();
        if (_stretches.Count > 0 && _stretches[^1] is { Kind: StretchKind.RowEnds } last && last.Stitch == stitch && last.Name == name
            && last.FirstRow + last.Count + _rowsMore == row.Number)
        {
            _rowsMore++;
            return;
        }

        Close();
        _stretches.Add(new Stretch(StretchKind.RowEnds, row.Number, 1, stitch, name));
    }

    // What the words leave where a step is already: chains added, or stitches left by a statement.
    private int LeftInWords(Row row) => row.Work?.Words switch
    {
        [SlipOver slip, ..] when hand == row.StartsAt => slip.Count,
        [.., Leave leave] when hand == row.EndsAt => leave.Count,
        _ => 0,
    };

    // A step that was made under two names is two stretches, the earlier one first.
    private void Add(int rowBefore, Step step)
    {
        Close();
        var at = _stretches.Count;
        var kind = step.Adds ? StretchKind.AddedChain : StretchKind.LeftStitches;
        for (Step? part = step; part is not null; part = part.Earlier)
        {
            _stretches.Insert(at, new Stretch(kind, rowBefore, part.Count - (part.Earlier?.Count ?? 0), null, part.Edge));
        }
    }

    public EdgeWalk Walk()
    {
        Close();
        return new EdgeWalk(hand, [.. _stretches]);
    }

    // Row-ends that go on with the last stretch are counted, and added to it when it ends.
    private void Close()
    {
        if (_rowsMore > 0) _stretches[^1] = _stretches[^1] with { Count = _stretches[^1].Count + _rowsMore };
        _rowsMore = 0;
    }

    private Stitch? EndStitch(Row row)
    {
        if (row.Work is not { Tops.Count: > 0 } work) return (row.Plan as ShapedPlan)?.Stitch;
        return (hand == row.StartsAt ? work.Tops.First : work.Tops.Last).Stitch;
    }
}
