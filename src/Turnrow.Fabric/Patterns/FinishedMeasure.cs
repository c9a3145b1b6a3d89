using Turnrow.Fabric.Numbers;

namespace Turnrow.Fabric.Patterns;

/// <summary>What the finished garment measures somewhere, a size, in centimetres.</summary>
/// <param name="Name">The measure's name.</param>
/// <param name="Centimetres">The garment.</param>
/// <param name="Body">The body there; null if it is not known.</param>
public sealed record FinishedMeasure(string Name, IReadOnlyList<Rational> Centimetres, IReadOnlyList<Rational>? Body)
{
    /// <summary>
    /// The body's measure that it is held against where that has another name, since the garment passes over it: the head, for a neck
    /// opening; null where the body's has the same name.
    /// </summary>
    public string? Over { get; init; }

    /// <summary>True if it goes along the body, so that its difference is a length more or less, and no ease.</summary>
    public bool Along { get; init; }

    /// <summary>True if it is so many rows long, and not so many stitches wide.</summary>
    public bool InRows { get; init; }

    /// <summary>True if something opens there.</summary>
    public bool Opens { get; init; }

    /// <summary>How many in a hundred it stretches; null if it is not said.</summary>
    public Rational? Stretch { get; init; }

    /// <summary>The garment less the body, a size; null if the body is not known, or a difference does not fit.</summary>
    public IReadOnlyList<Rational>? Ease { get; } = Differences(Centimetres, Body);

    private static List<Rational>? Differences(IReadOnlyList<Rational> garment, IReadOnlyList<Rational>? body)
    {
        if (body is null) return null;
        var differences = new List<Rational>(garment.Count);
        for (var i = 0; i < garment.Count; i++)
        {
            if (garment[i] - body[i] is not { } difference) return null;
            differences.Add(difference);
        }

        return differences;
    }
}
