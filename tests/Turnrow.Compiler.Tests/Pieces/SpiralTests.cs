using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Rows;
using Xunit;

namespace Turnrow.Compiler.Tests.Pieces;

/// <summary>Rounds of a spiral that end before their marker, or a few stitches past the one before.</summary>
public sealed class SpiralTests
{
    private const string Begin = "rounds are spiral\npiece back\nbegin with 12 stitches\nround 1: sc around\nround 2: sc around = 12\n";

    [Theory]
    [InlineData("round: sc 5, move marker = 5", 5)]
    [InlineData("round: sc until 3 remain, move marker = 9", 9)]
    [InlineData("round: sc 2, inc 2, move marker = 6", 6)]
    public void A_round_ends_where_its_marker_is_moved(string line, int made) =>
        Assert.Equal([12, 12, made], Compiled.Of($"{Begin}{line}\nfasten off\n").Clean().Counts());

    [Fact]
    public void The_next_round_begins_where_it_ended_and_has_as_many_as_before()
    {
        var rows = Compiled.Of($"{Begin}round 3: dc 3, hdc 2, move marker\nround 4: sc in next sc, sc 6, dc in next dc, dc 2, hdc in next hdc, hdc = 12\nround 5: sc around = 12\n").Clean().Piece("back", 0).Rows;
        Assert.Equal((7, 5), (rows[2].Unworked!.Count, rows[2].Work!.Below.Count));
        Assert.Equal(12, rows[2].Next!.Count);
        Assert.Equal(RowBegins.Spiral, rows[3].Begins);
        Assert.All(rows, row => Assert.True(row.RightSide));
    }

    [Fact]
    public void Moved_on_and_back_again_it_is_where_it_was() =>
        Assert.Equal([12, 12, 4, 12, 8, 12], Compiled.Of($"{Begin}round: sc 4, move marker\nround: sc around\nround: sc until 4 remain, move marker\nround: sc around = 12\n").Clean().Counts());

    [Fact]
    public void A_round_climbs_by_the_part_of_its_way_that_it_goes()
    {
        var pattern = Compiled.Of($"{Begin}round: sc 3, move marker\nround: sc until 3 remain, move marker\n");
        Assert.Equal(Rational.Of(3, 2), pattern.Pattern.Gauges.HeightOf(pattern.Piece("back", 0).Rows));
    }

    [Fact]
    public void Where_it_ends_at_its_marker_nothing_is_moved() =>
        Assert.Null(Compiled.Of($"{Begin}round: sc around, move marker\n").Clean().Row(3).Unworked);

    [Theory]
    [InlineData("round 3: move marker")]
    [InlineData("round 3: move marker, sc around")]
    [InlineData("round 3: (sc, move marker) around")]
    [InlineData("rounds are joined\nround 3: sc 4, move marker")]
    [InlineData("row 3: sc 4, move marker")]
    public void A_marker_is_moved_only_at_the_end_of_a_round_that_goes_on(string line) =>
        Assert.Equal(["marker-moved"], Compiled.Of($"{Begin}{line}\n").Found);

    [Fact]
    public void Its_mirror_image_would_begin_elsewhere() =>
        Assert.Contains("round-mirrored", Compiled.Of($"{Begin}round: sc 4, move marker\nround: sc around\nfasten off\npiece front is back mirrored\n").Found);

    [Fact]
    public void Repeated_it_moves_on_each_time()
    {
        var rows = Compiled.Of($"{Begin}round 3: sc 4, move marker\nround 4: sc around\nrepeat rows 3 to 4, 2 more times = 12\n").Clean().Piece("back", 0).Rows;
        Assert.Equal([12, 12, 4, 12, 4, 12, 4, 12], rows.Select(row => row.Work!.Stitches));
    }

    [Theory]
    [InlineData("move mraker")]
    [InlineData("mvoe marker")]
    public void A_misspelt_move_is_one_error(string words) =>
        Assert.Equal(["unknown-stitch"], Compiled.Of($"{Begin}round 3: sc 4, {words} = 4\nround 4: sc around = 12\nround 5: sc around = 12\n").Found);
}
