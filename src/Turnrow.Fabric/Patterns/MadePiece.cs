using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Patterns;

/// <summary>A piece of the finished sample, measured.</summary>
/// <param name="Piece">The piece's name.</param>
/// <param name="Size">Index of the size that was made.</param>
/// <param name="Width">At its widest row; null if it was not measured.</param>
/// <param name="Height">From its first row to its last; null if it was not measured.</param>
public sealed record MadePiece(string Piece, int Size, MadeLength? Width, MadeLength? Height);

/// <summary>A length of the sample, beside what the pattern's gauge gives for its stitches or rows.</summary>
/// <param name="Measured">What it measures, in centimetres.</param>
/// <param name="Planned">What it measures by the gauge, in centimetres.</param>
/// <param name="Fabrics">The fabrics that it goes over, and how many rows of each (of a width there is the one row).</param>
public sealed record MadeLength(Rational Measured, Rational Planned, IReadOnlyList<(Stitch Stitch, int Rows)> Fabrics)
{
    /// <summary>The one fabric; null if there are several, since then nobody can tell which of them is off.</summary>
    public Stitch? Fabric => Fabrics.Count == 1 ? Fabrics[0].Stitch : null;

    /// <summary>How much longer the sample is than by the gauge, in centimetres; null if it does not fit.</summary>
    public Rational? Difference => Measured - Planned;
}
