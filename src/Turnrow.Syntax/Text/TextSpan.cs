namespace Turnrow.Syntax.Text;

/// <summary>A stretch of the source text, in UTF-16 units, the editor's own.</summary>
/// <param name="Start">Position of the first unit, from 0.</param>
/// <param name="Length">Number of units; 0 for a place between two characters.</param>
public readonly record struct TextSpan(int Start, int Length)
{
    /// <summary>Position just behind the last unit.</summary>
    public int End => Start + Length;

    /// <summary>The span from <paramref name="start"/> up to, not including, <paramref name="end"/>.</summary>
    public static TextSpan FromBounds(int start, int end) => new(start, end - start);

    /// <summary>The smallest span that covers both.</summary>
    public TextSpan To(TextSpan other) => FromBounds(Math.Min(Start, other.Start), Math.Max(End, other.End));
}
