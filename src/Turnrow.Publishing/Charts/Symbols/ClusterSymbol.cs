using Turnrow.Publishing.Charts.Drawing;

namespace Turnrow.Publishing.Charts.Symbols;

/// <summary>How stems that meet at both ends are joined at the top.</summary>
internal enum ClusterTop : byte
{
    /// <summary>By nothing: a puff's loops have no bars either.</summary>
    None,

    /// <summary>By a bar: a bobble, a cluster.</summary>
    Bar,

    /// <summary>By an oval across: a popcorn.</summary>
    Oval,
}

/// <summary>Stems from one foot that meet again at the top.</summary>
internal sealed class ClusterSymbol(int legs, ClusterTop top) : Symbol
{
    private const int MostDrawn = 7;
    private const double HalfWidth = 8;
    private const double HalfHead = 6;
    private const double HalfSlash = 2.6;
    private const double SlashFall = 1.3;
    private const double OvalAcross = 2.6;

    /// <inheritdoc/>
    public override void Leg(Ink ink, Point foot, Point head, int bars)
    {
        var drawn = Math.Clamp(legs, 1, MostDrawn);
        var middle = foot.Towards(head, 0.5);
        for (var i = 0; i < drawn; i++)
        {
            var bow = drawn == 1 ? 0 : HalfWidth * ((2.0 * i / (drawn - 1)) - 1);
            if (bow == 0) ink.Line(foot, head);
            else ink.Curve(foot, middle + new Point(2 * bow, 0), head);
            if (top == ClusterTop.None || bars == 0) continue;
            var at = middle + new Point(bow, 0);
            ink.Line(at + new Point(-HalfSlash, -SlashFall), at + new Point(HalfSlash, SlashFall));
        }
    }

    /// <inheritdoc/>
    public override void Head(Ink ink, Point head, double pitch = 1)
    {
        if (top == ClusterTop.Bar) ink.Line(head - new Point(HalfHead * pitch, 0), head + new Point(HalfHead * pitch, 0));
        else if (top == ClusterTop.Oval) ink.Oval(head - new Point(0, OvalAcross), new Point(1, 0), HalfHead * pitch, OvalAcross);
    }
}
