using Turnrow.Publishing.Charts.Drawing;

namespace Turnrow.Publishing.Charts.Symbols;

/// <summary>The taller stitches: a stem under a bar, with a slash for each yarn over but one.</summary>
internal sealed class StemSymbol : Symbol
{
    private const double HalfHead = 6.5;
    private const double HalfSlash = 4;
    private const double SlashFall = 2;
    private const double BetweenSlashes = 5.5;

    public static StemSymbol Instance { get; } = new();

    /// <inheritdoc/>
    public override void Leg(Ink ink, Point foot, Point head, int bars)
    {
        ink.Line(foot, head);
        var length = (head - foot).Length;
        var middle = 0.5 + (length < 1 ? 0 : BetweenSlashes * (bars - 1) / 2 / length);
        for (var i = 0; i < bars; i++)
        {
            var at = foot.Towards(head, middle - (length < 1 ? 0 : BetweenSlashes * i / length));
            ink.Line(at + new Point(-HalfSlash, -SlashFall), at + new Point(HalfSlash, SlashFall));
        }
    }

    /// <inheritdoc/>
    public override void Head(Ink ink, Point head, double pitch = 1) =>
        ink.Line(head - new Point(HalfHead * pitch, 0), head + new Point(HalfHead * pitch, 0));
}
