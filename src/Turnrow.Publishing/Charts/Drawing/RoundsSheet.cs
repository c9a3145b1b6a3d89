using System.Globalization;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Publishing.Charts.Layout;
using Turnrow.Publishing.Charts.Layout.Rounds;

namespace Turnrow.Publishing.Charts.Drawing;

/// <summary>The part of a chart that is drawn round the middle: the rounds, what they begin from, and how many stitches each has.</summary>
internal sealed class RoundsSheet(RoundStack stack, Piece piece, SvgWriter svg, Legend legend, IReadOnlyList<string> yarns, double width, Counting counting) : Paper(svg, width)
{
    private const double TextSize = 13;
    private const double LineHeight = 18;
    private const double Margin = 12;

    private readonly double _width = width;

    /// <summary>Draws it from a height on down, and returns where it ends.</summary>
    public double Draw(double top, string begins, params ReadOnlySpan<string?> notes)
    {
        var extent = stack.Extent;
        var middle = new Point((_width - extent.Left - extent.Right) / 2, top + RoundsPainter.Room - extent.Top);
        new RoundsPainter(stack, piece, Svg, legend, yarns, middle).Draw();
        top += extent.Height + (2 * RoundsPainter.Room) + LineHeight;
        Svg.Open("g").With("class", "counts");
        Write(Margin, top, TextSize, "start", begins);
        top += LineHeight;
        foreach (var line in Lines())
        {
            Write(Margin, top, TextSize, "start", line);
            top += LineHeight;
        }

        foreach (var note in notes)
        {
            if (note is null) continue;
            Write(Margin, top, TextSize, "start", note);
            top += LineHeight;
        }

        Svg.Close();
        return top;
    }

    private IEnumerable<string> Lines()
    {
        var line = "Stitches:";
        for (var i = 0; i < stack.Rounds.Count; i++)
        {
            var row = stack.Rounds[i].Row.Row;
            var end = i + 1 < stack.Rounds.Count ? "," : string.Empty;
            var said = string.Create(CultureInfo.InvariantCulture, $"{(i == 0 ? "round " : string.Empty)}{row.Number}{(row.RightSide ? string.Empty : " WS")} ({row.Work!.Count(counting)}){end}");
            if (ChartScale.TextWidth(line + said, TextSize) > _width - (2 * Margin))
            {
                yield return line;
                line = said;
                continue;
            }

            line += " " + said;
        }

        yield return line;
    }
}
