using System.Globalization;

namespace Turnrow.Compiler.Tests.Naive;

/// <summary>A number for all sizes (one value) or one a size, printed as the trade prints it: <c>5 (6, 7)</c>.</summary>
public sealed class Sized
{
    private readonly int[] _values;

    public Sized(params int[] values) => _values = [.. values];

    public bool IsSame => _values.Length == 1 || Array.TrueForAll(_values, v => v == _values[0]);

    public int this[int size] => _values.Length == 1 ? _values[0] : _values[size];

    public int Min => _values.Min();

    public static implicit operator Sized(int value) => new(value);

    public static Sized For(int sizes, Func<int, int> value)
    {
        var values = new int[sizes];
        for (var size = 0; size < sizes; size++)
            values[size] = value(size);
        return new Sized(values);
    }

    /// <summary>The same number with one size (or all, where one number stands for all) off by a little.</summary>
    public Sized Nudged(int size, int by)
    {
        var values = (int[])_values.Clone();
        values[size % values.Length] += by;
        return new Sized(values);
    }

    public override string ToString()
    {
        var texts = _values.Select(v => v.ToString(CultureInfo.InvariantCulture)).ToList();
        return IsSame ? texts[0] : $"{texts[0]} ({string.Join(", ", texts.Skip(1))})";
    }
}
