using Turnrow.Fabric.Numbers;

namespace Turnrow.Compiler.Values;

/// <summary>A plain number, or a length in centimetres.</summary>
/// <param name="Number">The number.</param>
/// <param name="IsLength">True if it is a length in centimetres.</param>
internal readonly record struct Value(Rational Number, bool IsLength);

/// <summary>A value for each size, in the pattern's order; null in a size where it is not known.</summary>
internal static class Sized
{
    /// <summary>The same for all sizes.</summary>
    public static T[] Same<T>(int sizes, T value)
    {
        var values = new T[sizes];
        Array.Fill(values, value);
        return values;
    }

    /// <summary>Another value for each size.</summary>
    public static TResult[] Select<T, TResult>(this T[] values, Func<T, TResult> result)
    {
        var results = new TResult[values.Length];
        for (var i = 0; i < results.Length; i++) results[i] = result(values[i]);
        return results;
    }

    /// <summary>A value made for each size.</summary>
    public static T[] Each<T>(int sizes, Func<int, T> value)
    {
        var values = new T[sizes];
        for (var i = 0; i < sizes; i++) values[i] = value(i);
        return values;
    }

    /// <summary>The indexes of the sizes that satisfy a condition.</summary>
    public static int[] Where(int sizes, Func<int, bool> condition)
    {
        // Nearly always a search for what is wrong, of which there is none.
        List<int>? found = null;
        for (var i = 0; i < sizes; i++)
        {
            if (condition(i)) (found ??= []).Add(i);
        }

        return found is null ? [] : [.. found];
    }
}
