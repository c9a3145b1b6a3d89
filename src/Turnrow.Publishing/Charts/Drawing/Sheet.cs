using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Charts.Layout;

namespace Turnrow.Publishing.Charts.Drawing;

/// <summary>The sheet that a chart is drawn on: where things lie in pixels, and what the legend has to explain.</summary>
internal sealed class Sheet(ChartLayout layout, Terms terms, Counting counting, SvgWriter svg, double width, double foot)
{
    private const double HalfLetter = 0.36;
    private const double Margin = 12;

    public ChartLayout Layout { get; } = layout;

    public Terms Terms { get; } = terms;

    /// <summary>What a row's count takes in.</summary>
    public Counting Counting { get; } = counting;

    public SvgWriter Svg { get; } = svg;

    /// <summary>The yarns to be told apart; none where one alone is worked with.</summary>
    public IReadOnlyList<string> Yarns { get; init; } = [];

    /// <summary>A yarn's number among them.</summary>
    public int YarnNumber(string name)
    {
        for (var i = 0; i < Yarns.Count; i++)
        {
            if (Yarns[i] == name) return i;
        }

        return 0;
    }

    /// <summary>What was drawn.</summary>
    public Legend Legend { get; } = new();

    /// <summary>Where a column is.</summary>
    public double X(double column) => ((width - Layout.Axis.Width) / 2) + Layout.Axis.X(column);

    /// <summary>Where a height above the foot of the first row is.</summary>
    public double Y(double above) => foot - above;

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
