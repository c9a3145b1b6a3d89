namespace Turnrow.Compiler.Tests.Naive.Making;

/// <summary>
/// A list of numbers that answers every choice of the generator. When it runs out, every answer is the first and
/// simplest one, so that a shorter tape is a simpler pattern: this is what lets a found fault be made small.
/// </summary>
public sealed class ChoiceTape(IReadOnlyList<int> numbers)
{
    private int _at;

    /// <summary>A number from 0 to below <paramref name="count"/>.</summary>
    public int Below(int count) => count <= 1 || _at >= numbers.Count ? 0 : numbers[_at++] % count;

    public int Between(int low, int high) => low + Below(high - low + 1);

    public bool OneIn(int count) => Below(count) == count - 1;

    public T Of<T>(params IReadOnlyList<T> choices) => choices[Below(choices.Count)];

    /// <summary>A number a size, half the time the same for all.</summary>
    public int[] Sizes(int sizes, int low, Func<int, int> high)
    {
        var same = !OneIn(2);
        var values = new int[sizes];
        var most = Enumerable.Range(0, sizes).Min(high);
        var first = Between(low, Math.Max(low, most));
        for (var size = 0; size < sizes; size++)
            values[size] = same ? first : Between(low, Math.Max(low, high(size)));
        return values;
    }
}
