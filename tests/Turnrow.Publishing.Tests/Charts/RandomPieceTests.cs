using System.Xml.Linq;
using CsCheck;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Charts;
using Turnrow.Publishing.Charts.Layout;
using Xunit;

namespace Turnrow.Publishing.Tests.Charts;

/// <summary>Whatever can be worked can be drawn, and every place that the row model makes is in the chart's layout.</summary>
public sealed class RandomPieceTests
{
    private static readonly Gen<Stitch> Stitches = Gen.Int[2, 6].Select(static i => StitchBook.All[i]);

    private static readonly Gen<Action<PieceBuilder>> Steps = Gen.Select(Gen.Int[0, 9], Gen.Int[1, 9], Stitches, Gen.Bool, Gen.Bool.Select(static right => right ? Hand.Right : Hand.Left)).Select(
        (kind, count, stitch, grows, hand) => new Action<PieceBuilder>(piece => Do(piece, kind, count, stitch, grows, hand)));

    [Fact]
    public void Every_place_of_every_row_is_laid_out_and_the_drawing_can_be_read()
    {
        Gen.Select(Gen.Int[3, 90], Steps.Array[1, 30]).Sample((stitches, steps) =>
        {
            var builder = SamplePieces.Begun("x", stitches);
            foreach (var step in steps) step(builder);
            var piece = builder.Finish();
            foreach (var row in RowStack.Of(piece))
            {
                if (row.Strip is null) continue;
                Assert.Equal(row.Row.Work!.Tops.Count, row.Strip.Tops);
                var tops = 0;
                row.Strip.Visit(double.MinValue, double.MaxValue, cell =>
                {
                    Assert.Equal(tops, cell.Top);
                    tops += cell.Cell.Tops;
                    if (cell.Cell.Stitch is not null) Assert.InRange(cell.Foot, 0, row.BelowScale.Count - cell.Cell.Feet);
                });
                Assert.Equal(row.Strip.Tops, tops);
                StandsInOrder(row);
            }

            if (Chart.Of(piece, "x", "S", Terms.US) is { } chart) Assert.NotNull(XDocument.Parse(chart.Svg).Root);
        }, iter: 400);
    }

    // Stitches stand in the order in which they are worked, none on another, and a place of the sheet is found again.
    private static void StandsInOrder(RowLayout row)
    {
        for (var column = 0.0; column < row.Strip!.Columns; column += 0.5)
        {
            Assert.InRange(row.Direction * (row.TopColumn(column + 0.5) - row.TopColumn(column)), 0.01, double.MaxValue);
            Assert.Equal(column, row.InWorkingOrder(new Columns(row.TopColumn(column), row.TopColumn(column))).From, 6);
        }
    }

    private static void Do(PieceBuilder piece, int kind, int count, Stitch stitch, bool grows, Hand hand)
    {
        var change = new EdgeChange(grows ? count % 4 : -(count % 4), count % 3);
        switch (kind)
        {
            case 0: piece.AddStep(hand, grows, count, default); break;
            case 1: piece.WorkRow(new WordsPlan([Spread.Of(stitch, grows ? count : -count)]), default, 0); break;
            case 2: piece.WorkRow(new WordsPlan([Work.Plain(stitch, Amount.Once), new Repeat([new Chains(count), new Skip(1), Work.Plain(stitch, Amount.Once)], Amount.Across)]), default, 0); break;
            case 3: piece.WorkRow(new WordsPlan([Work.Plain(stitch, Amount.Once), new Repeat([SamplePieces.InSpace(stitch, count), Work.Plain(stitch, Amount.Once)], Amount.Across)]), default, 0); break;
            case 4: piece.WorkRow(new WordsPlan([new Repeat([Work.Plain(stitch, Amount.Of(2)), new Work(stitch, 3, 1, Amount.Once, Target.Next, HookInto.BackLoop)], Amount.Across)]), default, 0); break;
            case 5: piece.WorkRow(new WordsPlan([new SlipOver(count), Work.Plain(stitch, Amount.Until(count)), new Leave(count)]), default, 0); break;
            case 6: piece.WorkRow(hand == Hand.Right ? new ShapedPlan(stitch, change, default) : new ShapedPlan(stitch, default, change), default, 0); break;
            case 7: piece.WorkRow(new WordsPlan([new Work(stitch, 1, 1, Amount.Across, new Target(Aim.EachOfKind, new PlaceFilter(PlaceFilterKind.StitchOrSpace, null, 0)), HookInto.BothLoops)]), default, 0); break;
            default:
                for (var i = 0; i < count; i++) piece.WorkRow(ShapedPlan.Plain(stitch), default, i);
                break;
        }

        // After a row that does not come out, a claim says how many there are.
        if (piece.Ahead is null) piece.Trust(20 + count);
    }
}
