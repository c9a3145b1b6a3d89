using Turnrow.Fabric.Numbers;

namespace Turnrow.Compiler.Header;

/// <summary>How far counts lie from the lengths that they stand for.</summary>
/// <param name="Asked">Centimetres asked for, a size.</param>
/// <param name="Counts">The counts.</param>
/// <param name="Measured">Centimetres that they measure.</param>
/// <param name="Most">Centimetres that they may lie away.</param>
/// <param name="Allowed">Which counts are allowed, a size.</param>
/// <param name="Measure">Centimetres that a count measures.</param>
/// <param name="Free">The nearest count of all, a size.</param>
internal sealed record CountDistance(
    Rational?[] Asked, int?[] Counts, Rational?[] Measured, Rational?[] Most, Func<int, Allowed> Allowed, Func<long, Rational?> Measure, Func<int, long?> Free);
