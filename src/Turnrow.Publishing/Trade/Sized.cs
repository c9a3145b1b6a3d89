namespace Turnrow.Publishing.Trade;

/// <summary>One value a size, in the order of the sizes that a text is about.</summary>
internal sealed class Sized<T>(IReadOnlyList<T> values) : IEquatable<Sized<T>>
    where T : IEquatable<T>
{
    /// <summary>The values, smallest size first; at least one.</summary>
    public IReadOnlyList<T> Values { get; } = values;

    /// <summary>The first size's value.</summary>
    public T First => Values[0];

    /// <summary>True if it is the same in all sizes.</summary>
    public bool IsOne => All(v => v.Equals(First));

    /// <summary>These sizes and then those.</summary>
    public Sized<T> And(Sized<T> others) => new([.. Values, .. others.Values]);

    /// <summary>True if it holds in every size.</summary>
    public bool All(Func<T, bool> holds)
    {
        for (var i = 0; i < Values.Count; i++)
        {
            if (!holds(Values[i])) return false;
        }

        return true;
    }

    /// <summary>What becomes of each size's value.</summary>
    public Sized<TResult> Select<TResult>(Func<T, TResult> change)
        where TResult : IEquatable<TResult> => new([.. Values.Select(change)]);

    /// <summary>As the trade writes it: <c>5 (6, 7, 8)</c>, one value alone where it is the same in all sizes.</summary>
    public string Written(Func<T, string> one)
    {
        var first = one(First);
        return IsOne ? first : $"{first} ({string.Join(", ", Values.Skip(1).Select(one))})";
    }

    /// <inheritdoc/>
    public bool Equals(Sized<T>? other) => other is not null && Values.SequenceEqual(other.Values);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Sized<T>);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        for (var i = 0; i < Values.Count; i++) hash.Add(Values[i]);
        return hash.ToHashCode();
    }
}

/// <summary>Makes and writes values in sizes.</summary>
internal static class Sized
{
    /// <summary>The value of one size.</summary>
    public static Sized<T> Of<T>(T value)
        where T : IEquatable<T> => new([value]);

    /// <summary>Values of several sizes.</summary>
    public static Sized<T> Over<T>(IEnumerable<T> values)
        where T : IEquatable<T> => new([.. values]);

    /// <summary><c>5 (6, 7)</c>.</summary>
    public static string Written(this Sized<int> number) => number.Written(Numbers.Plain);

    /// <summary><c>5th (6th, 7th)</c>.</summary>
    public static string WrittenNth(this Sized<int> number) => number.Written(Numbers.Nth);

    /// <summary>Both ends of a stretch of rows, size by size: <c>3-20 (3-22)</c>; a single row stands alone.</summary>
    public static string WrittenTo(this Sized<int> first, Sized<int> last) =>
        Over(first.Values.Zip(last.Values, Numbers.Range)).Written(static s => s);
}
