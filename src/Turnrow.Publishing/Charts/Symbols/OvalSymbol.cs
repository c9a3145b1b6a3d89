using Turnrow.Publishing.Charts.Drawing;

namespace Turnrow.Publishing.Charts.Symbols;

/// <summary>A chain: an open oval that lies along the chain.</summary>
internal sealed class OvalSymbol : Symbol
{
    public const double Across = 3.6;

    private const double Longest = 8;
    private const double Gap = 0.6;

    public static OvalSymbol Instance { get; } = new();

    /// <inheritdoc/>
    public override void Leg(Ink ink, Point foot, Point head, int bars) => Chain(ink, foot, head, 1);

    /// <summary>So many chains one after the other, from point to point.</summary>
    public static void Chain(Ink ink, Point from, Point to, int chains) => Arc(ink, from, to, chains, 0);

    /// <summary>Chains that bow upwards between two points: a space.</summary>
    public static void Arc(Ink ink, Point from, Point to, int chains, double bow)
    {
        for (var i = 0; i < chains; i++)
        {
            var (start, end) = (OnArc(i, chains), OnArc(i + 1, chains));
            var along = Math.Clamp(((end - start).Length / 2) - Gap, 1, Longest);
            ink.Oval(start.Towards(end, 0.5), end - start, along, Math.Min(Across, along * 0.75));
        }

        Point OnArc(int step, int steps)
        {
            var part = (double)step / steps;
            return from.Towards(to, part) - new Point(0, bow * 4 * part * (1 - part));
        }
    }
}
