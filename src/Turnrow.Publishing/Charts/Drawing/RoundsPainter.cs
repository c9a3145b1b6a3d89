using System.Globalization;
using System.Text;
using Turnrow.Fabric.Pieces;
using Turnrow.Publishing.Charts.Layout;
using Turnrow.Publishing.Charts.Layout.Rounds;
using Turnrow.Publishing.Charts.Symbols;

namespace Turnrow.Publishing.Charts.Drawing;

/// <summary>Draws rounds one round the other: the middle, the shade of wrong-side rounds, stitches, joins and numbers.</summary>
/// <param name="stack">The rounds.</param>
/// <param name="piece">The piece.</param>
/// <param name="svg">Where to.</param>
/// <param name="legend">What is drawn.</param>
/// <param name="yarns">The yarns to be told apart; none where one alone is worked with.</param>
/// <param name="middle">Where the middle is on the sheet.</param>
internal sealed class RoundsPainter(RoundStack stack, Piece piece, SvgWriter svg, Legend legend, IReadOnlyList<string> yarns, Point middle)
{
    /// <summary>Room round the rounds for the marks outside.</summary>
    public const double Room = 22;

    private const string Shaded = "#e4e4e4";
    private const double BesideEnd = 3;
    private const double Outside = 10;
    private const double HalfLetter = 0.36;
    private const double ChainAlong = 5.4;
    private const double HalfChain = 8.6;

    /// <summary>Draws them.</summary>
    public void Draw()
    {
        foreach (var round in stack.Rounds) Shade(round);
        var behind = new RoundYarns(svg, legend, yarns, middle);
        foreach (var round in stack.Rounds) behind.Draw(round, new RoundCells(stack, round, middle));
        DrawMiddle();
        foreach (var round in stack.Rounds) Draw(round);
    }

    // Where fills tell yarns apart, none tells sides: the counts below say which rounds are wrong-side rounds.
    private bool IsShaded(RoundLayout round) => !round.Row.Row.RightSide && yarns.Count < 2;

    private void Shade(RoundLayout round)
    {
        if (!IsShaded(round)) return;
        var path = new StringBuilder();
        if (stack.Wedge is not null)
        {
            AppendPart(path, round);
        }
        else
        {
            AppendOutline(path, round.Shape, round.Outer);
            AppendOutline(path, round.Shape, round.Inner);
        }

        svg.Open("path").With("d", path.ToString()).With("fill", Shaded).With("fill-rule", "evenodd").Close();
    }

    // Along its top and back along its foot.
    private void AppendPart(StringBuilder path, RoundLayout round)
    {
        const int Steps = 40;
        var open = stack.Open(round);
        double TurnAfter(int step) => round.TurnOf(open.From + (open.Length * step / Steps));
        Append(path, Enumerable.Range(0, Steps + 1).Select(step => round.Shape.At(TurnAfter(step), round.Outer))
            .Concat(Enumerable.Range(0, Steps + 1).Select(step => round.Shape.At(TurnAfter(Steps - step), round.Inner))));
    }

    private void AppendOutline(StringBuilder path, RingShape shape, double reach) => Append(path, shape.Outline(reach));

    private void Append(StringBuilder path, IEnumerable<Point> line)
    {
        var command = 'M';
        foreach (var at in line)
        {
            path.Append(command).Append(Decimals.Of(middle.X + at.X)).Append(' ').Append(Decimals.Of(middle.Y + at.Y));
            command = 'L';
        }

        path.Append('Z');
    }

    private void DrawMiddle()
    {
        var ink = new Ink();
        svg.Open("g").With("class", "base");
        switch (stack.Middle)
        {
            case RingGround { Chains: > 0 } ring:
                for (var i = 0; i < ring.Chains; i++)
                {
                    var up = Compass.Up(ring.Begins + ((i + 0.5) / ring.Chains));
                    ink.Oval(middle + (up * ring.Reach), up.Across(), ChainAlong, ChainAlong * 0.5);
                }

                legend.Add(LegendSign.Chain);
                legend.Add(LegendSign.Ring, count: ring.Chains);
                break;
            case RingGround ring:
                ink.Oval(middle, new Point(1, 0), ring.Reach, ring.Reach);
                legend.Add(LegendSign.Ring);
                break;
            case BothSidesGround chain:
                DrawChain(chain, ink);
                break;
        }

        ink.WriteTo(svg);
        svg.Close();
    }

    // It is made towards the first round's beginning, at its right end.
    private void DrawChain(BothSidesGround chain, Ink ink)
    {
        var left = middle.X - ((chain.Stitches - 1) * ChartScale.Column / 2);
        for (var i = 0; i < chain.Stitches; i++)
            ink.Oval(new Point(left + (i * ChartScale.Column), middle.Y), new Point(1, 0), HalfChain, OvalSymbol.Across);
        legend.Add(LegendSign.Chain);
    }

    private void Draw(RoundLayout round)
    {
        var ink = new Ink();
        var cells = new RoundCells(stack, round, middle);
        svg.Open("g").With("class", "row").With("data-row", round.Row.Row.Number.ToString(CultureInfo.InvariantCulture));
        new CellPainter(cells, legend, ink).Draw();
        if (stack.Wedge is null && RowPainter.IsJoined(piece, round.Row.Row)) DrawJoin(round, cells, ink);
        if (round == stack.Rounds[^1]) DrawOutside(round, cells, ink);
        ink.WriteTo(svg);
        Number(round);
        svg.Close();
    }

    private void DrawJoin(RoundLayout round, RoundCells cells, Ink ink)
    {
        ink.Dot(cells.At(round.TurnBehind(BesideEnd), round.Height - BesideEnd).At, RowPainter.JoinRadius);
        legend.Add(LegendSign.RoundJoin);
    }

    // Which way it is read, and where the yarn is cut.
    private void DrawOutside(RoundLayout round, RoundCells cells, Ink ink)
    {
        // Of a round that is read the other way, the mark for the end is on this side of the gap.
        var along = round.Shape.Along(round.Seam, round.Outer) + Room + Outside + (round.Direction > 0 ? 0 : round.Gap + Outside);
        ink.Stand = cells.At(round.Shape.TurnAt(along, round.Outer), round.Height + Outside);
        Marks.Arrow(ink, ink.Stand.At, towardsRight: false);
        legend.Add(LegendSign.Way);
        if (stack.Wedge is null && piece.FastenedOff && round.Row.Row.Number == piece.Rows.Count)
        {
            ink.Stand = cells.At(round.TurnBehind(Outside), round.Height + Outside);
            Marks.Cut(ink, ink.Stand.At, towardsRight: round.Direction > 0);
            legend.Add(LegendSign.Cut);
        }

        ink.Stand = new Stand(default, Stand.Upright);
    }

    private void Number(RoundLayout round)
    {
        var at = middle + (stack.Wedge is { } wedge ? round.NumberBeside(wedge.Direction == round.Direction) : round.NumberAt);
        var name = RoundFit.NameOf(round.Row.Row);
        // Where a round begins aside of the one below, a stitch may lean over its number.
        var (halfWidth, halfHeight) = (ChartScale.TextWidth(name, ChartScale.Label) / 2, ChartScale.Label * HalfLetter);
        svg.Open("rect").With("x", at.X - halfWidth).With("y", at.Y - halfHeight).With("width", 2 * halfWidth).With("height", 2 * halfHeight)
            .With("fill", IsShaded(round) ? Shaded : "#fff").Close();
        svg.Open("text").With("x", at.X).With("y", at.Y + (ChartScale.Label * HalfLetter)).With("font-size", ChartScale.Label)
            .With("text-anchor", "middle").With("font-weight", "bold").Text(name).Close();
        if (IsShaded(round)) legend.Add(LegendSign.Sides);
    }
}
