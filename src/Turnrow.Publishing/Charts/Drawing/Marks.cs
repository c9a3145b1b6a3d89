namespace Turnrow.Publishing.Charts.Drawing;

/// <summary>The marks for where work starts, where yarn is joined and where it is cut.</summary>
internal static class Marks
{
    private const double Half = 4.5;
    private const double Long = 9;
    private const double Shaft = 20;

    /// <summary>An arrow whose tip is at a point.</summary>
    public static void Arrow(Ink ink, Point tip, bool towardsRight)
    {
        var back = new Point(towardsRight ? -1 : 1, 0);
        ink.Line(tip + (back * Long), tip + (back * (Long + Shaft)));
        Tip(ink, tip, towardsRight, filled: true);
    }

    /// <summary>Yarn is joined: an open triangle whose tip is at a point.</summary>
    public static void Join(Ink ink, Point tip, bool towardsRight) => Tip(ink, tip, towardsRight, filled: false);

    /// <summary>Yarn is joined to what lies above: an open triangle whose tip is at a point.</summary>
    public static void JoinAbove(Ink ink, Point tip) =>
        ink.Triangle(tip, tip + new Point(Half, Long), tip + new Point(-Half, Long), filled: false);

    /// <summary>Yarn is cut: a filled triangle whose flat side is at a point.</summary>
    public static void Cut(Ink ink, Point at, bool towardsRight) => Tip(ink, at + new Point(towardsRight ? Long : -Long, 0), towardsRight, filled: true);

    private static void Tip(Ink ink, Point tip, bool towardsRight, bool filled)
    {
        var back = tip + new Point(towardsRight ? -Long : Long, 0);
        ink.Triangle(tip, back + new Point(0, Half), back - new Point(0, Half), filled);
    }
}
