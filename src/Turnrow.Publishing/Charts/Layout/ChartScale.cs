using Turnrow.Fabric.Stitches;

namespace Turnrow.Publishing.Charts.Layout;

/// <summary>The chart's measures in pixels: how wide a stitch is, and how high a row.</summary>
internal static class ChartScale
{
    /// <summary>Width of a stitch.</summary>
    public const double Column = 20;

    /// <summary>Height of the foundation chain.</summary>
    public const double Foundation = 16;

    /// <summary>Height of the band that stands for rows not drawn.</summary>
    public const double HiddenRows = 34;

    /// <summary>Height of a row's number.</summary>
    public const double Label = 13;

    private const double Lowest = 14;
    private const double PerChain = 11;

    /// <summary>Height of a stitch; of nothing known, a single crochet's.</summary>
    public static double HeightOf(Stitch? stitch) => stitch is null ? Lowest + PerChain : Lowest + (PerChain * stitch.Height);

    /// <summary>Width of a text, near enough to leave room for it.</summary>
    public static double TextWidth(string text, double size) => text.Length * size * 0.53;
}
