using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Patterns;

/// <summary>How many stitches and rows of a fabric go to a length. Stitches and rows may be counted over lengths of their own.</summary>
/// <param name="Stitch">The fabric's stitch.</param>
/// <param name="Stitches">Number of stitches …</param>
/// <param name="StitchesOver">… over so many centimetres.</param>
/// <param name="Rows">Number of rows …</param>
/// <param name="RowsOver">… over so many centimetres.</param>
public sealed record Gauge(Stitch Stitch, Rational Stitches, Rational StitchesOver, Rational Rows, Rational RowsOver)
{
    /// <summary>The stitch pattern that it is of; null where it is of plain rows of a stitch.</summary>
    public StitchPattern? Pattern { get; init; }

    /// <summary>True if repeats of the pattern were counted, and not its stitches.</summary>
    public bool OfRepeats { get; init; }

    /// <summary>True if the designer gave it in inches.</summary>
    public bool InInches { get; init; }

    /// <summary>Width of so many stitches in centimetres; null if it does not fit.</summary>
    public Rational? WidthOf(Rational stitches) => stitches * StitchesOver is { } x ? x / Stitches : null;

    /// <summary>Height of so many rows in centimetres; null if it does not fit.</summary>
    public Rational? HeightOf(Rational rows) => rows * RowsOver is { } x ? x / Rows : null;

    /// <summary>Stitches in so many centimetres, exactly; null if it does not fit.</summary>
    public Rational? StitchesFor(Rational centimetres) => centimetres * Stitches is { } x ? x / StitchesOver : null;

    /// <summary>Rows in so many centimetres, exactly; null if it does not fit.</summary>
    public Rational? RowsFor(Rational centimetres) => centimetres * Rows is { } x ? x / RowsOver : null;
}
