using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Charts.Layout;

namespace Turnrow.Publishing.Charts.Drawing;

/// <summary>The sheet that a chart is drawn on: where things lie in pixels, and what the legend has to explain.</summary>
internal sealed class Sheet(ChartLayout layout, Terms terms, Counting counting, SvgWriter svg, double width, double foot) : Paper(svg, width)
{
    private readonly double _width = width;

    public ChartLayout Layout { get; } = layout;

    public Terms Terms { get; } = terms;

    /// <summary>What a row's count takes in.</summary>
    public Counting Counting { get; } = counting;

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
    public Legend Legend { get; init; } = new();

    /// <summary>Where a column is.</summary>
    public double X(double column) => ((_width - Layout.Axis.Width) / 2) + Layout.Axis.X(column);

    /// <summary>Where a height above the foot of the first row is.</summary>
    public double Y(double above) => foot - above;
}
