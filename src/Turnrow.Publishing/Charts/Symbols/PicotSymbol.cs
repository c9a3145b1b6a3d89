using Turnrow.Publishing.Charts.Drawing;

namespace Turnrow.Publishing.Charts.Symbols;

/// <summary>A picot: chains in a ring on the stitch below, closed by a slip stitch.</summary>
internal sealed class PicotSymbol(int chains) : Symbol
{
    private const int MostDrawn = 8;
    private const double Radius = 5.2;

    // Corners of a ring, as parts of its radius: a square root is exact to the last bit on every machine, a sine is not.
    private static readonly Point[] Corners =
    [
        new(0, 1), new(-0.7071, 0.7071), new(-1, 0), new(-0.7071, -0.7071), new(0, -1), new(0.7071, -0.7071), new(1, 0), new(0.7071, 0.7071),
    ];

    /// <inheritdoc/>
    public override void Leg(Ink ink, Point foot, Point head, int bars)
    {
        var middle = foot - new Point(0, Radius + 1);
        var drawn = Math.Clamp(chains, 2, MostDrawn);
        for (var i = 0; i < drawn; i++)
        {
            // Between the slip stitch at the foot and itself again, the chains stand evenly.
            var at = Corners[(2 * (i + 1) * Corners.Length + drawn + 1) / (2 * (drawn + 1)) % Corners.Length];
            ink.Oval(middle + (at * Radius), at.Across(), 3.1, 2);
        }

        ink.Dot(foot, DotSymbol.Radius * 0.7);
    }
}
