using Turnrow.Publishing.Charts.Layout;

namespace Turnrow.Publishing.Charts.Drawing;

/// <summary>What text is written on.</summary>
/// <param name="svg">Where to.</param>
/// <param name="width">Its width in pixels.</param>
internal class Paper(SvgWriter svg, double width)
{
    private const double HalfLetter = 0.36;
    private const double Margin = 12;

    public SvgWriter Svg { get; } = svg;

    /// <summary>Writes a line that begins at a place, or as far left of it as it needs to stay on the sheet.</summary>
    public void WriteLine(double x, double middle, double size, string text) =>
        Write(Math.Max(Margin, Math.Min(x, width - Margin - ChartScale.TextWidth(text, size))), middle, size, "start", text);

    /// <summary>Writes a text in black over what is drawn.</summary>
    /// <param name="x">Where it is anchored.</param>
    /// <param name="middle">Its middle's height.</param>
    /// <param name="size">Its size.</param>
    /// <param name="anchor"><c>start</c>, <c>middle</c> or <c>end</c>.</param>
    /// <param name="text">The text.</param>
    /// <param name="bold">True for bold.</param>
    public void Write(double x, double middle, double size, string anchor, string text, bool bold = false)
    {
        Svg.Open("text").With("x", x).With("y", middle + (size * HalfLetter)).With("font-size", size);
        if (anchor != "start") Svg.With("text-anchor", anchor);
        if (bold) Svg.With("font-weight", "bold");
        Svg.Text(text).Close();
    }
}
