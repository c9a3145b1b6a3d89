using Turnrow.Publishing.Charts.Drawing;

namespace Turnrow.Publishing.Charts.Symbols;

/// <summary>A slip stitch: a filled dot.</summary>
internal sealed class DotSymbol : Symbol
{
    public const double Radius = 3;

    public static DotSymbol Instance { get; } = new();

    /// <inheritdoc/>
    public override void Leg(Ink ink, Point foot, Point head, int bars) => ink.Dot(foot.Towards(head, 0.5), Radius);
}
