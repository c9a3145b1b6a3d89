using Turnrow.Fabric.Words;
using Turnrow.Publishing.Charts.Drawing;

namespace Turnrow.Publishing.Charts.Symbols;

/// <summary>The mark at a stitch's foot that says where the hook goes, if it is not under both loops. Keys differ here, so ours is in every legend.</summary>
internal static class HookMark
{
    private const double HalfCup = 4.5;
    private const double Cup = 4;
    private const double Curl = 5;

    /// <summary>Draws the mark.</summary>
    public static void Draw(Ink ink, Point foot, HookInto hook)
    {
        switch (hook)
        {
            case HookInto.BackLoop: Bow(ink, foot, Cup); break;
            case HookInto.FrontLoop: Bow(ink, foot, -Cup); break;
            case HookInto.FrontPost: Hook(ink, foot, Curl); break;
            case HookInto.BackPost: Hook(ink, foot, -Curl); break;
        }
    }

    // Open above for the back loop, below for the front loop.
    private static void Bow(Ink ink, Point foot, double depth)
    {
        var middle = foot + new Point(0, depth < 0 ? Cup : 0);
        ink.Curve(middle - new Point(HalfCup, depth < 0 ? 0 : Cup / 2), middle + new Point(0, depth), middle + new Point(HalfCup, depth < 0 ? 0 : -Cup / 2));
    }

    private static void Hook(Ink ink, Point foot, double side)
    {
        ink.Curve(foot, foot + new Point(0, Curl), foot + new Point(side * 0.7, Curl * 0.7));
        ink.Curve(foot + new Point(side * 0.7, Curl * 0.7), foot + new Point(side * 1.1, 0), foot + new Point(side * 0.5, -1));
    }
}
