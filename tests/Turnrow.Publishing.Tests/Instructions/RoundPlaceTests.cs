using Xunit;

namespace Turnrow.Publishing.Tests.Instructions;

/// <summary>Where a maker finds a place that rounds made, and one of a row over several pieces.</summary>
public class RoundPlaceTests
{
    private const string Tube = "pattern \"P\"\npiece tube\nbegin with 20 stitches\nround 1: dc around\nstraight 1 round\nfasten off\n";

    [Theory]
    [InlineData("(3 dc, ch 2) 4 times in ring", "(sc in next sp, ch 4) around", "Sl st in each of next 2 dc and in next ch-2 sp, ch 1, sc in same ch-2 sp, ch 4, [sc in next ch-2 sp, ch 4] 3 times, join")]
    [InlineData("(3 dc, ch 2) 4 times in ring", "4 sc in each sp", "Sl st in each of next 2 dc and in next ch-2 sp, ch 1, 4 sc in same ch-2 sp, 4 sc in each ch-2 sp around, join")]
    [InlineData("(3 dc, ch 2, mark corner) 4 times in ring", "((2 bobble, ch 2, 2 bobble) in next corner) around", "Sl st in each of next 2 dc and in next ch-2 sp, ch 3, (2 BO, ch 2, 2 BO) in same ch-2 sp,")]
    [InlineData("12 sc in ring", "(skip 2, (sc, ch 1, sc) in next) around", "Ch 1, skip first 2 sc, (sc, ch 1, sc) in next sc, [skip next 2 sc, (sc, ch 1, sc) in next sc] 3 times, join")]
    [InlineData("(dc, ch 1) 8 times in ring", "(dc in next dc, ch 2) around", "Ch 5 (counts as 1 dc and ch 2), [dc in next dc, ch 2] 7 times, join")]
    [InlineData("(dc, ch 1) 8 times in ring", "sc in each st", "Ch 1, sc in same st, sc in each st around, join")]
    public void A_round_tells_how_to_get_to_the_place_of_its_first_stitch(string first, string second, string told) => Assert.Contains(
        $"Round 2: {told}",
        Written.Piece($"pattern \"P\"\npiece panel\nbegin with ring\nround 1: {first}\nround 2: {second}")
            .Replace(" (does not count as a st here and throughout)", "", StringComparison.Ordinal)
            .Replace(" (does not count as a st)", "", StringComparison.Ordinal),
        StringComparison.Ordinal);

    [Theory]
    [InlineData("", "RS")]
    [InlineData(", WS facing", "WS")]
    public void A_rings_beginning_edge_is_begun_where_the_ring_was_joined(string facing, string side) => Assert.StartsWith(
        $"With {side} facing, join yarn with sl st at the beginning edge of Tube, in the ch where the ring was joined.\nRound 1",
        Written.Piece($"{Tube}piece band picked up around tube foundation{facing}: 1 sc in each st", piece: "Band"),
        StringComparison.Ordinal);

    [Fact]
    public void A_flat_beginning_edge_is_begun_at_an_edge() => Assert.StartsWith(
        "With RS facing, join yarn with sl st at the beginning edge of Tube, in its first ch at the left edge.",
        Written.Piece(Tube.Replace("round 1: dc around\nstraight 1 round", "row 1 RS: dc across\nround: dc around", StringComparison.Ordinal) + "piece band picked up along tube foundation: 1 sc in each st", piece: "Band"),
        StringComparison.Ordinal);

    [Theory]
    [InlineData("", "RS", "first")]
    [InlineData(", WS facing", "WS", "last")]
    public void A_last_round_has_a_first_and_a_last_stitch_and_no_edge(string facing, string side, string which) => Assert.StartsWith(
        $"With {side} facing, join yarn with sl st at the last round of Tube, in its {which} st.",
        Written.Piece($"{Tube}piece band picked up around tube last row{facing}: 1 sc in each st", piece: "Band"),
        StringComparison.Ordinal);

    // 12 and 24 stitches, each less one at the beginning of its last row, which is a WS row: the ch 2 and the dc beside it are one stitch.
    [Theory]
    [InlineData("RS")]
    [InlineData("WS")]
    public void A_decrease_at_the_end_of_each_piece_is_worked_into_as_a_stitch(string side)
    {
        var yoke = Written.Piece($"pattern \"P\"\n{Panel("front", 12, "dec, dc across", side)}{Panel("back", 24, "dec, dc across", side)}piece yoke across front, back\nrow {side}: dc across\n", piece: "Yoke");
        Assert.EndsWith($"Ch 3 (counts as 1 dc, in the joined st), dc in each dc across. [34 dc]\nFasten off.", yoke, StringComparison.Ordinal);
    }

    [Fact]
    public void A_chain_that_stands_for_a_stitch_stays_the_top_of_a_chain_beside_a_decrease()
    {
        var yoke = Written.Piece($"pattern \"P\"\n{Panel("front", 12, "dec, dc across")}{Panel("back", 24, "dc across")}piece yoke across front, back\nrow RS: dc across\n", piece: "Yoke");
        Assert.Contains("dc in each dc across, dc in top of turning ch. [35 dc]", yoke, StringComparison.Ordinal);
    }

    // The top of the turning chain, where the two meet, is among those that are passed over.
    [Theory]
    [InlineData("hold 14 for pocket", "skip next 14 sts (held for pocket)")]
    [InlineData("skip 14", "skip next 14 sts")]
    [InlineData("skip 3", "skip next 3 dc")]
    public void What_is_passed_over_where_two_pieces_meet_is_stitches_of_no_one_kind(string words, string told)
    {
        var yoke = Written.Piece($"pattern \"P\"\n{Panel("front", 12, "dc across")}{Panel("back", 24, "dc across")}piece yoke across front, back\nrow RS: dc 6, {words}, dc across\n", piece: "Yoke");
        Assert.Contains(told + ",", yoke, StringComparison.Ordinal);
    }

    [Fact]
    public void A_row_over_a_piece_made_twice_says_first_and_second()
    {
        var panel = Panel("sleeve", 12, "dc across").Replace("piece sleeve", "piece sleeve, make 2", StringComparison.Ordinal);
        var yoke = Written.Piece($"pattern \"P\"\n{panel}{Panel("front", 24, "dc across")}piece yoke across first sleeve, front, second sleeve\nrow RS: dc across\n", piece: "Yoke");
        Assert.Contains("all 12 sts of First sleeve, all 24 sts of Front and all 12 sts of Second sleeve.", yoke, StringComparison.Ordinal);
        Assert.Contains("of First sleeve facing, join yarn", yoke, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void A_round_that_goes_on_from_a_row_has_no_slip_stitches_at_its_end()
    {
        var tube = Written.Piece("pattern \"P\"\npiece tube\nbegin with 20 stitches\nrow 1 WS: dc across\nleave 4 at both edges\nrow 2: dc across\nround: dc around\n", piece: "Tube");
        Assert.Contains("sl st in each of first", tube, StringComparison.Ordinal);
        Assert.DoesNotContain("leave the sl sts", tube, StringComparison.Ordinal);
    }

    // 15 dc, 5 ch, 15 dc: the 20th st back from the join is a ch, and before the 10th there is none.
    [Theory]
    [InlineData(20, "20th st of its last round, counted back from where that was joined (each bridging ch counts as a st here).\n")]
    [InlineData(10, "10th st of its last round, counted back from where that was joined.\n")]
    public void Chains_of_a_bridge_that_are_counted_are_told(int stitches, string expected) => Assert.Contains(
        expected,
        Written.Piece($"pattern \"P\"\npiece yoke\nbegin with 40 stitches\nround 1: dc around\nround 2: dc 15, hold 10 for thumb, bridge 5, dc around\nfasten off\npiece part from yoke: {stitches} stitches at left edge\nrow RS: dc across\n", piece: "Part"),
        StringComparison.Ordinal);

    private static string Panel(string name, int stitches, string last, string firstSide = "RS") =>
        $"piece {name}\nbegin with {stitches} stitches\nrow 1 {firstSide}: dc across\nrow: {last}\nfasten off\n";
}
