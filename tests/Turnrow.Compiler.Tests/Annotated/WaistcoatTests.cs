using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Compiler.Tests.Annotated;

/// <summary>What the compiler must find out by itself in the waistcoat, in all seven sizes.</summary>
public sealed class WaistcoatTests
{
    private static readonly Compiled _waistcoat =
        Compiled.Whole(File.ReadAllText(Repository.PathOf("patterns/fenland-wrap-waistcoat.turnrow")));

    private static string Sized(string piece, Func<Piece, object> value) => InSizes.Text(_waistcoat.InSizes(piece).Select(value));

    [Fact]
    public void Nothing_is_wrong_with_it() => _waistcoat.Clean();

    [Fact]
    public void Its_foundation_has_two_chains_more_than_the_hem() =>
        Assert.Equal("79 (87, 97, 107, 117, 127, 135)", Sized("back", p => ((FoundationStart)p.Start!).Chains));

    [Fact]
    public void A_designer_who_thinks_in_chains_gets_what_79_chains_give() =>
        Assert.Equal("77", Compiled.Of("piece back\nchain 79\nrow 1: dc across").Clean().Last());

    [Fact]
    public void The_hem_is_the_nearest_odd_count_and_the_back_is_narrower_above_the_armholes()
    {
        Assert.Equal("77 (85, 95, 105, 115, 125, 133)", Sized("back", p => p.Rows[0].Work!.Stitches));
        Assert.Equal("69 (71, 77, 81, 85, 89, 91)", Sized("back", p => p.LastStitches));
    }

    [Fact]
    public void Leaving_and_adding_make_no_row() => Assert.Equal("36 (38, 38, 40, 40, 42, 42)", _waistcoat.Rows());

    [Fact]
    public void The_neck_is_what_the_shoulders_leave() => Assert.Equal(
        "31 (31, 33, 35, 37, 39, 39)", Sized("right-front", p => ((PartStart)p.Start!).FromLeft - p.Rows[0].Work!.Stitches));

    [Fact]
    public void The_right_front_goes_straight_on_and_the_left_front_needs_its_yarn_joined_at_the_neck_right_side_facing()
    {
        Assert.All(_waistcoat.InSizes("right-front"), p => Assert.Equal((false, RowBegins.Turned), (((PartStart)p.Start!).Joined, p.Rows[0].Begins)));
        Assert.All(_waistcoat.InSizes("left-front"), p =>
        {
            Assert.True(((PartStart)p.Start!).Joined);
            Assert.Equal((true, Hand.Right, "neck"), (p.Rows[0].RightSide, p.Rows[0].StartsAt, p.Right.Stretches[0].Name));
        });
    }

    [Fact]
    public void On_the_right_front_the_neck_is_at_the_end_of_right_side_rows_and_on_the_left_front_at_their_beginning()
    {
        foreach (var (piece, neck) in new[] { ("right-front", Hand.Left), ("left-front", Hand.Right) })
        {
            foreach (var row in _waistcoat.InSizes(piece).SelectMany(p => p.Rows).Where(r => r.Work!.Words.OfType<Work>().Any(w => w.Makes == 2)))
            {
                var increase = row.Work!.Words[row.StartsAt == neck ? 0 : ^1];
                Assert.Equal(2, Assert.IsType<Work>(increase).Makes);
            }
        }
    }

    [Fact]
    public void The_right_front_s_chain_is_worked_on_and_the_left_front_s_is_a_separate_length()
    {
        Assert.Equal("4 (7, 9, 12, 15, 18, 21)", Sized("right-front", p => p.Rows.Single(r => r.Start is { Adds: true }).Start!.Count));
        Assert.Equal("4 (7, 9, 12, 15, 18, 21)", Sized("left-front", p => p.Rows.Single(r => r.End is { Adds: true }).End!.Count));
        Assert.Equal("17 (19, 19, 21, 21, 23, 23)", Sized("left-front", p => p.Rows.Single(r => r.End is { Adds: true }).Number));
    }

    [Theory]
    [InlineData("right-front")]
    [InlineData("left-front")]
    public void A_front_has_these_counts(string front)
    {
        Assert.Equal("19 (20, 22, 23, 24, 25, 26)", Sized(front, p => p.Rows[0].Work!.Stitches));
        Assert.Equal("34 (37, 39, 42, 43, 46, 47)", Sized(front, p => p.Rows[^21].Work!.Stitches));
        Assert.Equal("38 (44, 48, 54, 58, 64, 68)", Sized(front, p => p.Rows[^20].Work!.Stitches));
        Assert.Equal("48 (54, 58, 64, 68, 74, 78)", _waistcoat.Last(front));
    }

    [Fact]
    public void The_mirror_begins_from_the_other_shoulder_and_its_edges_are_exchanged()
    {
        foreach (var (right, left) in _waistcoat.InSizes("right-front").Zip(_waistcoat.InSizes("left-front")))
        {
            Assert.Equal(((PartStart)right.Start!).FromRight, ((PartStart)left.Start!).FromLeft);
            Assert.Equal(right.Right.Stretches, left.Left.Stretches);
            Assert.Equal(right.Left.Stretches, left.Right.Stretches);
        }
    }

    [Fact]
    public void A_tie_has_six_stitches_picked_up_from_the_last_row_down_with_yarn_joined_anew()
    {
        Assert.All(_waistcoat.InSizes("right-tie"), p =>
        {
            var start = (PickUpStart)p.Start!;
            var leg = Assert.Single(start.Walk);
            Assert.Equal((6, true, true, false), (p.Rows[0].Work!.Stitches, start.Joined, start.RightSide, leg.Upwards));
            Assert.Equal((leg.Piece.Rows.Count, 3), (leg.Stretch.LastRow, leg.Stretch.Count));
            Assert.True(p.Rows[0].Work!.Opening.Counts);
        });
        Assert.All(_waistcoat.InSizes("left-tie"), p => Assert.True(((PickUpStart)p.Start!).Walk[0].Upwards));
        Assert.Equal("55 (60, 65, 70, 75, 80, 85)", _waistcoat.Rows("left-tie"));
    }

    [Theory]
    [InlineData(0, 17)]
    [InlineData(1, 20)]
    public void A_seam_joins_as_many_rows_the_front_s_last_to_the_back_s_first(int index, int rows)
    {
        for (var size = 0; size < 7; size++)
        {
            var seam = _waistcoat.Seam(index, size);
            Assert.Equal((rows, rows, true), (seam.First.RowEnds, seam.Second.RowEnds, seam.OppositeOrder));
        }
    }

    [Fact]
    public void A_row_more_on_one_piece_is_an_error_at_the_seam()
    {
        var text = File.ReadAllText(Repository.PathOf("patterns/fenland-wrap-waistcoat.turnrow"))
            .Replace("shape 20 rows: inc 1", "shape 20 (20, 20, 21, 20, 20, 20) rows: inc 1", StringComparison.Ordinal);
        var found = Compiled.Whole(text).Compilation.Diagnostics.Where(d => d.Kind.Name == "seam-length").ToList();
        Assert.Equal(2, found.Count);
        Assert.All(found, d => Assert.Equal(["L"], d.Sizes));
    }
}
