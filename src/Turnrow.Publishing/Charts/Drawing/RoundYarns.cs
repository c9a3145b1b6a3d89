using System.Text;
using Turnrow.Fabric.Colours;
using Turnrow.Publishing.Charts.Layout;
using Turnrow.Publishing.Charts.Layout.Rounds;

namespace Turnrow.Publishing.Charts.Drawing;

/// <summary>Shows the yarn of each stitch of a round behind its symbol, as <see cref="YarnPainter"/> does in a band.</summary>
internal sealed class RoundYarns(SvgWriter svg, Legend legend, IReadOnlyList<string> yarns, Point middle)
{
    private const double BetweenStrokes = 7;
    private const int StepsOfColumn = 2;

    /// <summary>Draws what lies behind a round's stitches.</summary>
    public void Draw(RoundLayout round, RoundCells cells)
    {
        if (yarns.Count < 2) return;
        var places = new YarnPlaces(round.Row.Row);
        var hatching = new Ink();
        foreach (var open in cells.Open) round.Row.Strip!.Visit(open.From, open.To, placed =>
        {
            if (placed.Cell.Columns == 0 || places.Of(placed.Top) is not { } name) return;
            var yarn = NumberOf(name);
            legend.Add(LegendSign.Yarn, count: yarn);
            if (yarn == 0) return;
            Fill(round, placed, YarnPainter.FillOf(yarn));
            for (var i = 0; i < placed.Cell.Columns; i++) Hatch(hatching, YarnPainter.KindOf(yarn), round, cells, placed.Column + i);
        });
        svg.Open("g").With("color", "#8a8a8a").With("stroke-width", 0.7);
        hatching.WriteTo(svg);
        svg.Close();
    }

    private int NumberOf(string name)
    {
        for (var i = 0; i < yarns.Count; i++)
        {
            if (yarns[i] == name) return i;
        }

        return 0;
    }

    private void Fill(RoundLayout round, PlacedCell placed, string fill)
    {
        var steps = placed.Cell.Columns * StepsOfColumn;
        var path = new StringBuilder();
        for (var i = 0; i <= steps; i++) Add(i, round.Outer);
        for (var i = steps; i >= 0; i--) Add(i, round.Inner);
        svg.Open("path").With("d", path.Append('Z').ToString()).With("fill", fill).Close();

        void Add(int step, double reach)
        {
            var at = middle + round.Shape.At(round.TurnOf(placed.Column + ((double)step / StepsOfColumn)), reach);
            path.Append(path.Length == 0 ? 'M' : 'L').Append(Decimals.Of(at.X)).Append(' ').Append(Decimals.Of(at.Y));
        }
    }

    // The strokes of a band's hatching, bent with the round: what a stroke would have beyond the stitch's field is cut off.
    private static void Hatch(Ink ink, int kind, RoundLayout round, RoundCells cells, int column)
    {
        if (kind == 3)
        {
            Stroke(0.25, 0, 0.25, round.Height);
            Stroke(0.75, 0, 0.75, round.Height);
            return;
        }

        var rise = kind == 2 ? 0 : round.Pitch / 2;
        for (var y = (BetweenStrokes / 2) - rise; y < round.Height; y += BetweenStrokes)
        {
            if (kind != 1) Slanted(y, y + rise);
            if (kind is 1 or 4) Slanted(y + rise, y);
        }

        void Slanted(double from, double to)
        {
            var (start, end) = (PartWithin(from, to), PartWithin(to, from));
            if (start + end < 1) Stroke(start, from + ((to - from) * start), 1 - end, to + ((from - to) * end));
        }

        // How much of a stroke lies outside before it comes in.
        double PartWithin(double from, double to) => from < 0 && to > from ? -from / (to - from) : from > round.Height && to < from ? (from - round.Height) / (from - to) : 0;

        void Stroke(double fromColumn, double from, double toColumn, double to) =>
            ink.Line(cells.At(round.TurnOf(column + fromColumn), from).At, cells.At(round.TurnOf(column + toColumn), to).At);
    }
}
