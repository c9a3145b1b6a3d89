using Turnrow.Fabric.Places;
using Xunit;

namespace Turnrow.Compiler.Tests.Rows;

/// <summary>What a line says is worked, or is an error: no number, stitch or repeat is dropped without a word.</summary>
public sealed class NothingLostTests
{
    private const string Mesh = "piece net\nbegin with 21 stitches\nrow 1 RS: sc across\nrow 2: dc, (ch 1, skip 1, dc) across = 11 dc, 10 sp\n";

    [Theory]
    [InlineData("2 sc in each st and 3 sc in each sp = 52")]
    [InlineData("sc in each st and 2 sc in each sp = 31")]
    [InlineData("3 dc in each st and dc in each sp = 43")]
    public void Numbers_in_front_of_stitches_and_of_spaces_both_count(string row) => Compiled.Of(Mesh + $"row 3: {row}\n").Clean();

    [Theory]
    [InlineData("(sc, hdc) in each st and 2 sc in each sp")]
    [InlineData("sc in each st and picot in each sp")]
    [InlineData("sc in each st and 2 ch in each sp")]
    [InlineData("sc in each st and crossed in each sp")]
    public void What_does_not_go_into_one_place_is_refused_there(string row) =>
        Assert.Equal(["each-other"], Compiled.Of(Mesh + $"row 3: {row}\n").Found);

    [Theory]
    [InlineData("sc2tog in each st")]
    [InlineData("sc 9, sc2tog in same, sc across")]
    [InlineData("sc 9, 2 sc2tog in next, sc across")]
    public void Stitches_drawn_together_can_not_be_sent_to_one_place(string row) =>
        Assert.Equal(["stitch-here"], Compiled.Piece($"row 2: {row}\n").Found);

    [Fact]
    public void Nothing_can_be_spread_over_rows_of_a_stitch_pattern_between_edges() =>
        Assert.Equal(["pattern-shape"], Compiled.Of("""
            stitch pattern steps over multiple of 4 + 3
              row 1: sc 3, (ch 1, skip 1, sc 3) across
              row 2: sc in each st and sp

            piece wedge
              begin with 27 stitches
              straight 4 rows, in steps
              shape 10 rows, edges in sc: inc 2 evenly every 2 rows

            """).Found);

    [Theory]
    [InlineData("sc until 5 remain, dc 5", 3)]
    [InlineData("(sc, ch 1, skip 1) until 5 remain, dc 5", 3)]
    [InlineData("sc until 4 remain, dc 4", 1)]
    public void A_row_opens_for_what_is_worked_first_and_not_for_what_is_worked_no_times(string row, int chains) =>
        Assert.Equal(chains, Compiled.Of($"piece band\nbegin with 5 stitches\nrow 1 RS: dc across\nrow 2: {row}\n").Clean().Piece("band", 0).Rows[1].Work!.Opening.Chains);

    [Fact]
    public void A_repeat_that_goes_to_the_turn_looks_for_it_each_time() =>
        Assert.Single(Compiled.Of("piece p\nbegin with 24 stitches\nrow 1 RS: sc across\nrow 2: sc 4, leave the rest for later\nrow 3: sc across\nrow 4: (dc to turn, sc in next) 2 times, sc across\n").Found);

    [Fact]
    public void A_round_that_begins_in_a_space_comes_back_to_what_it_went_past() =>
        Compiled.Of("piece p\nbegin with ring\nround 1: (sc, ch 5) 12 times in ring\nround 2: (5 sc in next ch-5 sp, sl st in next sc) around = 60 sc\n").Clean();

    [Fact]
    public void Begun_further_on_it_comes_back_to_its_first_stitch() =>
        Compiled.Of("piece p\nbegin with ring\nround 1: (sc, ch 5) 12 times in ring\nround 2: slip over 1, (5 sc in next ch-5 sp, sl st in next sc) around = 60 sc\n").Clean();

    [Fact]
    public void A_row_that_was_turned_in_its_own_way_is_turned_so_when_it_is_repeated()
    {
        var rows = Compiled.Piece("turn dc, next row: ch 2 does not count\nrow 2: dc across\nrow 3: dc across\nrepeat rows 2 to 3, 2 more times\n").Clean().Piece("back", 0).Rows;
        Assert.Equal([2, 3, 2, 3, 2, 3], rows.Skip(1).Select(static row => row.Work!.Opening.Chains));
    }

    [Theory]
    [InlineData("solid dome 20 cm across, multiple of 5, closing", 10)]
    [InlineData("solid dome 20 cm across, multiple of 6, closing", 6)]
    public void A_solid_keeps_its_multiple_to_its_end(string solid, int last) =>
        Assert.Equal(last, Compiled.Of($"piece p\nbegin with 120 stitches\nround 1: sc around\n{solid}\n").Piece("p", 0).Rows[^1].Work!.Tops.CountWhere(static place => place.Kind != PlaceKind.Space));

    [Fact]
    public void A_stitch_that_goes_further_down_is_worked_behind_a_chain_that_does_not_count() =>
        Assert.False(Compiled.Piece("row 2: sc across\nrow 3: (spike dc, sc 3) across\n").Clean().Piece("back", 0).Rows[2].Work!.Opening.Counts);

    [Fact]
    public void A_key_wider_than_any_row_is_told() =>
        Assert.NotEmpty(Compiled.Of($"stitch pattern p over multiple of 1\n  key \"a\" is ({string.Join(", ", Enumerable.Repeat("sc20tog 1000000", 108))})\n  picture\n    \"a\"\n").Found);
}
