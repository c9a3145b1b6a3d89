using Turnrow.Publishing.Charts.Drawing;

namespace Turnrow.Publishing.Charts.Symbols;

/// <summary>A single crochet (US): an upright cross. Two that share a foot or a top lean, as the taller stitches do.</summary>
internal sealed class CrossSymbol : Symbol
{
    private const double Arm = 5.5;

    public static CrossSymbol Instance { get; } = new();

    /// <inheritdoc/>
    public override void Leg(Ink ink, Point foot, Point head, int bars)
    {
        ink.Line(foot, head);
        var middle = foot.Towards(head, 0.5);
        ink.Line(middle - new Point(Arm, 0), middle + new Point(Arm, 0));
    }
}
