using Turnrow.Fabric.Numbers;

namespace Turnrow.Fabric.Patterns;

/// <summary>
/// From when on a length is another one: more than 2 in 100 and more than half a centimetre off. A swatch counted to half a stitch is no
/// more exact than the one, and a tape on a soft piece no more than the other (common practice, no source).
/// </summary>
public static class Tolerance
{
    private static readonly Rational Share = Rational.Of(2, 100)!.Value;
    private static readonly Rational Length = Rational.Of(1, 2)!.Value;

    /// <summary>True if what is measured is not what was planned; both in centimetres.</summary>
    public static bool IsPassed(Rational measured, Rational planned) =>
        measured - planned is { } difference && difference.Magnitude() is var off && off > Length && planned * Share is { } share && off > share;
}
