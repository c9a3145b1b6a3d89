using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Charts.Layout;
using Xunit;

namespace Turnrow.Publishing.Tests.Charts;

public sealed class LayoutTests
{
    [Fact]
    public void Plain_stitches_stand_straight_over_each_other()
    {
        foreach (var row in RowStack.Of(SamplePieces.Back()))
            row.Strip!.Visit(0, row.Strip.Columns, cell => Assert.Equal(row.FootColumn(cell.Foot), row.TopColumn(cell.Middle)));
    }

    [Fact]
    public void Steps_move_the_edges()
    {
        var rows = RowStack.Of(SamplePieces.Back(hem: 77, drop: 4));
        Assert.Equal(new Columns(0, 77), rows[19].Tops);
        Assert.Equal(new Columns(4, 73), rows[20].Tops);
        Assert.Equal(new Columns(0, 4), rows[20].LeftAtStart);
        Assert.Equal(new Columns(73, 77), rows[20].LeftAtEnd);
    }

    [Fact]
    public void An_increase_leans_over_the_edge_it_is_at()
    {
        var back = SamplePieces.Back();
        var rows = RowStack.Of(SamplePieces.RightFront(back));
        Assert.Equal(new Columns(0, 19), rows[0].Tops);
        Assert.Equal(new Columns(0, 34), rows[15].Tops);
        Assert.Equal(new Columns(-4, 34), rows[16].Tops);
        Assert.Equal(new Columns(-4, 35), rows[17].Tops);
    }

    [Fact]
    public void A_mirrored_piece_is_laid_out_mirrored()
    {
        var back = SamplePieces.Back();
        var right = SamplePieces.RightFront(back);
        var (a, b) = (RowStack.Of(right), RowStack.Of(SamplePieces.LeftFront(back, right)));
        for (var i = 0; i < a.Count; i++)
            Assert.Equal(a[i].Tops, new Columns(19 - b[i].Tops.To, 19 - b[i].Tops.From));
    }

    [Fact]
    public void Decreases_in_the_middle_lean_on_both_sides_alike()
    {
        var piece = SamplePieces.Plain(SamplePieces.Begun("x", 40), StitchBook.Single, 1);
        SamplePieces.Row(piece, Spread.Of(StitchBook.Single, -4));
        var rows = RowStack.Of(piece.Finish());
        Assert.Equal(36, rows[1].Tops.Length);
        Assert.Equal(rows[1].Tops.From, 40 - rows[1].Tops.To, 1.0);
    }

    [Fact]
    public void A_space_is_as_wide_as_what_it_leads_over()
    {
        var rows = RowStack.Of(SamplePieces.Sampler());
        Assert.Equal(25, rows[2].Strip!.Columns);
        Assert.Equal(25, rows[8].Strip!.Columns);
        Assert.Equal([5, 3], rows[8].Strip!.Root.Children.OfType<Loop>().Select(static loop => loop.Children[0]).OfType<Cell>().SelectMany(static c => new[] { c.Chains, c.Columns }));
    }

    [Theory]
    [InlineData(3, 1, 4)]
    [InlineData(2, 2, 4)]
    [InlineData(1, 0, 9)]
    public void Counting_a_part_of_a_row_agrees_with_visiting_it(int first, int step, int width)
    {
        var strip = RowStack.Of(SamplePieces.Sampler())[6].Strip!;
        for (double from = first; from < strip.Columns; from += step + 1)
        {
            var visited = new Tally();
            strip.Visit(from, from + width, cell => visited.Add(cell.Cell, 1));
            Assert.Equal(visited.In(Terms.US), strip.Count(from, from + width).In(Terms.US));
        }
    }

    [Fact]
    public void Wide_middles_are_folded_and_edges_are_not()
    {
        var layout = ChartLayout.Of(SamplePieces.Back(hem: 133, drop: 21, armhole: 22), Terms.US)!;
        Assert.Equal(3, layout.Axis.Folds.Count);
        Assert.All(layout.Axis.Folds, fold => Assert.DoesNotContain(fold.Columns, (Columns[])[new(0, 2), new(20, 22), new(111, 113), new(131, 133)]));
        Assert.True(layout.Axis.Width < 600);
        Assert.True(layout.Height < 600);
    }

    [Fact]
    public void Folding_keeps_the_columns_in_order()
    {
        var axis = ChartLayout.Of(SamplePieces.Back(hem: 133, drop: 21, armhole: 22), Terms.US)!.Axis;
        for (var column = 0; column < 133; column++) Assert.True(axis.X(column) > axis.X(column + 1));
        Assert.Equal(axis.Width, axis.X(0), 6);
        Assert.Equal(0, axis.X(133), 6);
    }

    [Fact]
    public void Few_like_rows_are_all_drawn()
    {
        Assert.Empty(LikeRows.Of(SamplePieces.Plain(SamplePieces.Begun("x", 9), StitchBook.Double, 7).Finish().Rows));
        Assert.Equal([new HiddenRows(3, 4, 2, false)], LikeRows.Of(SamplePieces.Plain(SamplePieces.Begun("x", 9), StitchBook.Double, 8).Finish().Rows));
    }

    [Fact]
    public void Rows_that_come_again_come_again_whole()
    {
        // Five rows of sc, two of dc, and sc for ever: the first of the later sc are no repeat of the five and the two.
        var piece = SamplePieces.Plain(SamplePieces.Begun("x", 12), StitchBook.Single, 5);
        SamplePieces.Plain(piece, StitchBook.Double, 2);
        SamplePieces.Plain(piece, StitchBook.Single, 16);
        Assert.Equal([new HiddenRows(9, 13, 2, false)], LikeRows.Of(piece.Finish().Rows));
    }

    [Fact]
    public void Rows_of_a_pattern_are_folded_by_the_pattern()
    {
        var piece = SamplePieces.Plain(SamplePieces.Begun("x", 12), StitchBook.Single, 1);
        for (var i = 0; i < 5; i++)
        {
            SamplePieces.Plain(piece, StitchBook.Single, 2);
            SamplePieces.Plain(piece, StitchBook.Double, 2);
        }

        Assert.Equal([new HiddenRows(5, 15, 4, false)], LikeRows.Of(piece.Finish().Rows));
    }

    [Theory]
    [InlineData(12, true, 3)]
    [InlineData(12, false, 3)]
    public void Standing_chains_are_what_the_opening_leaves(int stitches, bool counts, int chains)
    {
        var piece = SamplePieces.Begun("x", stitches, (StitchBook.Double, TurnRule.Of(chains, counts)));
        SamplePieces.Plain(piece, StitchBook.Double, 2);
        foreach (var row in RowStack.Of(piece.Finish()))
        {
            Assert.Equal(chains, row.StandingChains);
            Assert.Equal(counts, row.ChainIsStitch);
        }
    }

    [Fact]
    public void A_row_that_slips_past_all_of_the_row_before_stands_by_itself()
    {
        var builder = SamplePieces.Begun("x", 5);
        builder.WorkRow(new WordsPlan([Work.Plain(StitchBook.Single, Amount.Of(2)), new Leave(3)]), default, 0);
        builder.AddStep(builder.HookAt.Opposite(), true, 7, default);
        builder.WorkRow(new WordsPlan([new SlipOver(3), Work.Plain(StitchBook.Single, Amount.Across)]), default, 0);
        var row = RowStack.Of(builder.Finish())[^1];
        Assert.Equal((6, 6), (row.BelowScale.Count, row.Strip!.Tops));
    }

    [Fact]
    public void A_step_without_a_row_before_it_is_drawn_nowhere_else()
    {
        var piece = new PieceBuilder("x", new Dictionary<Stitch, TurnRule>());
        piece.BeginPart(new PartStart(SamplePieces.Back(), 0, 19, true));
        piece.AddStep(Hand.Right, true, 4, default);
        SamplePieces.Plain(piece, StitchBook.Double, 2);
        Assert.Equal(23, RowStack.Of(piece.Finish())[1].Tops.Length);
    }

    [Theory]
    [InlineData("  begin with 19 stitches\n  row 1 RS: dc across\n  row 2: sc, (ch 5, skip 2, sc in next) across\n  row 3: dc, ch 2, sc in next sp, (ch 5, sc in next sp) until 1 remains, ch 2, dc in last")]
    [InlineData("  begin with 13 stitches\n  row 1 RS: sc across\n  row 2: sc, (ch 4, skip 2, sc in next) across\n  row 3: sc, (ch 6, sc in next sc) across\n  row 4: sc, (ch 8, sc in next sc) across")]
    [InlineData("  begin with 53 stitches\n  row 1 RS: sc across\n  row 2: dc, (ch 3, skip 6, lace-shell in next, ch 3, skip 5, V-st in next) until 0 remain\n  row 3: dc in first, (V-st in next V-st, ch 2, 9 tr in next lace-shell, ch 2) 4 times, skip 3, dc in last\n  row 4: dc in first, (ch 2, (dc in next tr, ch 1) 8 times, dc in next tr, ch 2, V-st in next V-st) 4 times, skip 1, dc in last")]
    public void Chains_arch_over_what_they_skip(string lines)
    {
        var rows = RowStack.Of(SampleRounds.Piece(lines));
        foreach (var row in rows)
        {
            Assert.InRange(row.Tops.From, rows[0].Tops.From - 1.5, rows[0].Tops.From + 1.5);
            Assert.InRange(row.Tops.To, rows[0].Tops.To - 1.5, rows[0].Tops.To + 1.5);
        }
    }

    [Theory]
    [InlineData("3 dc", "dc", 9)]
    [InlineData("3 dc", "2 dc", 9)]
    [InlineData("2 dc", "2 dc", 30)]
    public void Rows_that_grow_from_a_centre_stand_evenly_over_it(string atCorner, string atEdge, int rows)
    {
        var grow = $"{atEdge} in first, dc to corner, ({atCorner}, ch 2, {atCorner}) in corner, dc until 1 remains, {atEdge} in last";
        var lines = $"  begin with ring\n  row 1 RS: (3 dc, ch 2, mark corner, 3 dc) in ring\n  row 2: {grow}\n  repeat row 2, {rows} more times";
        var laid = RowStack.Of(SampleRounds.Piece(lines));
        var spine = (laid[0].Tops.From + laid[0].Tops.To) / 2;
        foreach (var row in laid)
        {
            Assert.Equal(spine, (row.Tops.From + row.Tops.To) / 2, 0.01);
            Assert.Equal(spine, row.TopColumn(row.Strip!.Columns / 2.0), 0.01);
        }
    }

    [Fact]
    public void An_edge_that_is_worked_straight_stays_so()
    {
        const string lines = """
              begin with 6 stitches
              row 1 RS: dc across
              row 2: dc 3, ch 2, skip 2, dc
              row 3: (dc, ch 3, dc) in first, 3 dc in next sp, dc 3
              row 4: dc 6, leave the rest
              repeat rows 1 to 4, 5 more times
            """;
        foreach (var row in RowStack.Of(SampleRounds.Piece(lines))) Assert.Equal(6, row.Tops.To, 0.01);
    }
}
