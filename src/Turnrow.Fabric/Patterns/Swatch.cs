using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Patterns;

/// <summary>A swatch that was weighed.</summary>
/// <param name="Stitch">The stitch it is worked in, or the fabric of a stitch pattern.</param>
/// <param name="Stitches">How many wide; of a stitch pattern, in the places that its repeats are counted in.</param>
/// <param name="Rows">How many rows high.</param>
/// <param name="Grams">What it weighs.</param>
/// <param name="Yarn">Which yarn; null for the pattern's first.</param>
public sealed record Swatch(Stitch Stitch, Rational Stitches, Rational Rows, Rational Grams, string? Yarn)
{
    /// <summary>Grams a stitch, exactly; null if it does not fit.</summary>
    public Rational? GramsPerStitch => Stitches * Rows is { } all ? Grams / all : null;
}
