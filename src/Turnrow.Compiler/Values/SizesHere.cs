namespace Turnrow.Compiler.Values;

/// <summary>The sizes that the line being read is for: all of them, unless it says which.</summary>
internal sealed class SizesHere
{
    private bool[]? _only;

    /// <summary>True if the line is for all sizes.</summary>
    public bool AreAll => _only is null;

    /// <summary>True if the line is for a size.</summary>
    public bool Has(int size) => _only is null || _only[size];

    /// <summary>Values that are not looked at in the other sizes.</summary>
    public Value?[] Only(Value?[] values)
    {
        if (_only is not { } only) return values;
        var here = new Value?[values.Length];
        for (var i = 0; i < here.Length; i++) here[i] = only[i] ? values[i] : null;
        return here;
    }

    /// <summary>Reads a line for some sizes.</summary>
    public void During(bool[] sizes, Action read)
    {
        _only = sizes;
        read();
        _only = null;
    }
}
