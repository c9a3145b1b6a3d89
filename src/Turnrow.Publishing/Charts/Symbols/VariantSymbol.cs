using Turnrow.Publishing.Charts.Drawing;

namespace Turnrow.Publishing.Charts.Symbols;

/// <summary>What marks a variant of a basic stitch.</summary>
internal enum VariantMark : byte
{
    /// <summary>A loop at the foot of the stem: extended.</summary>
    Loop,

    /// <summary>A short line from the stem to the stitch beside it: linked.</summary>
    Link,

    /// <summary>A wave above it: worked backwards.</summary>
    Wave,
}

/// <summary>A basic stitch with a mark.</summary>
internal sealed class VariantSymbol(Symbol of, VariantMark mark) : Symbol
{
    private const double LoopAlong = 3;
    private const double LoopAcross = 2.2;
    private const double LoopAt = 0.2;
    private const double LinkAt = 0.42;
    private const double LinkLength = 9;
    private const double Wave = 5;

    /// <inheritdoc/>
    public override void Leg(Ink ink, Point foot, Point head, int bars)
    {
        of.Leg(ink, foot, head, bars);
        switch (mark)
        {
            case VariantMark.Loop:
                ink.Oval(foot.Towards(head, LoopAt), head - foot, LoopAlong, LoopAcross);
                break;
            case VariantMark.Link:
                var at = foot.Towards(head, LinkAt);
                ink.Line(at, at + new Point(LinkLength, 0));
                break;
            default:
                ink.Curve(head - new Point(Wave, 0), head - new Point(Wave / 2, Wave), head);
                ink.Curve(head, head + new Point(Wave / 2, Wave), head + new Point(Wave, 0));
                break;
        }
    }

    /// <inheritdoc/>
    public override void Head(Ink ink, Point head, double pitch = 1) => of.Head(ink, head, pitch);
}
