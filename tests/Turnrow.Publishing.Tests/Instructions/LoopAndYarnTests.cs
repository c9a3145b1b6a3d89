using Xunit;

namespace Turnrow.Publishing.Tests.Instructions;

/// <summary>Where the hook goes is told of stitches drawn together and spread too; a yarn that rests is cut where it can't be brought to.</summary>
public sealed class LoopAndYarnTests
{
    private const string Spiral = "terms US\nhook 4 mm\nturn dc: ch 3 counts\npiece panel\nbegin with ring\nrounds are spiral\nround 1: 6 sc in ring\nround 2: sc inc 6 evenly\nround 3: sc inc 6 evenly\n";
    private const string Flat = "terms US\nhook 4 mm\nyarn navy\nyarn cream\npiece panel\nbegin with 30 stitches\nrow 1 RS: sc across\nrow 2: sc across\n";

    [Theory]
    [InlineData("(sc, front-loop dec) around", "[Sc in next sc, sc2tog over front loops only of next 2 sc] 6 times.")]
    [InlineData("back-loop dec 9", "[Sc2tog over back loops only of next 2 sc] 9 times.")]
    [InlineData("back-loop sc inc 6 evenly", "[Sc in back loop only of each of next 2 sc, 2 sc in back loop only of next sc] 6 times.")]
    [InlineData("front-loop sc dec 6 evenly", "[Sc in front loop only of next sc, sc2tog over front loops only of next 2 sc] 6 times.")]
    [InlineData("front-post dc dec 6 evenly", "[FPdc around next sc, FPdc2tog around next 2 sc] 6 times.")]
    public void The_loop_stays_with_the_stitch(string round, string told) =>
        Assert.Contains(told, Written.Piece(Spiral + $"round 4: {round}\n"), StringComparison.Ordinal);

    [Theory]
    [InlineData("(back-loop dc, ch 1, back-loop dc) in next", "(Dc, ch 1, dc) in back loop only of next dc")]
    [InlineData("(2 back-loop dc, ch 1, dc) in next", "(2 dc in back loop only, ch 1, dc) in next dc")]
    [InlineData("(front-post dc, back-loop dc) in next", "(FPdc, dc in back loop only) in next dc")]
    [InlineData("(front-post dc, ch 1, front-post dc) in next", "(FPdc, ch 1, FPdc) around next dc")]
    [InlineData("((back-loop dc, ch 1) 3 times, back-loop dc) in next", "([dc, ch 1] 3 times, dc) in back loop only of next dc")]
    public void In_one_place_as_well(string words, string told) =>
        Assert.Contains(told, Written.Piece($"terms US\nhook 4 mm\nturn dc: ch 3 counts\npiece panel\nbegin with 20 stitches\nrow 1 RS: dc across\nrow 2: dc, {words}, dc across\n"), StringComparison.OrdinalIgnoreCase);

    [Fact]
    public void A_stitch_made_of_others_by_its_number_is_called_by_its_own() =>
        Assert.Contains("pair of 3 in next sc, pair of 2 in each of next 2 sc, sc in each sc across. [7 sc, 1 pair of 3, 2 pairs of 2]", Written.Of("terms US\nhook 4 mm\nstitch cone of n is n tr together in one place\nstitch pair of n is (cone of n, ch 1, cone of n) in one place\npiece panel\nbegin with 10 stitches\nrow 1 RS: sc across\nrow 2: sc, pair of 3 in next, pair of 2 in next, pair of 2 in next, sc across\n"), StringComparison.Ordinal);

    [Theory]
    [InlineData("(back-loop sc, back-loop hdc) in one place", "sc, hdc, all in back loop only of the place named. 2 sts.")]
    [InlineData("(back-loop sc, hdc) in one place", "sc in back loop only, hdc, all in the place named. 2 sts.")]
    [InlineData("(front-post dc, ch 1, front-post dc) in one place", "FPdc, ch 1, FPdc, all around the place named. 2 sts.")]
    [InlineData("3 back-loop dc together in one place", "begin dc 3 times, all in back loop only of the place named, each up to")]
    [InlineData("(back-loop sc, back-loop dc) together in one place", "begin sc, dc, all in back loop only of the place named, each up to")]
    [InlineData("(back-loop sc, dc) together in one place", "begin sc in back loop only, dc, all in the place named, each up to")]
    public void Of_a_stitch_of_the_designers_own_too(string made, string told) =>
        Assert.Contains(told, Written.Of($"terms US\nhook 4 mm\nstitch own is {made}\npiece panel\nbegin with 20 stitches\nrow 1 RS: sc across\nrow 2: sc, own in next, sc across\n"), StringComparison.Ordinal);

    [Theory]
    [InlineData("row 2: back-loop dc dec, dc across", "dc in back loop only of next dc (the ch 2 and this dc count as dc2tog)")]
    [InlineData("row 2: dc dec, dc across", "dc in next dc (the ch 2 and this dc count as dc2tog)")]
    public void At_the_beginning_too(string row, string told) =>
        Assert.Contains(told, Written.Piece($"terms US\nhook 4 mm\nturn dc: ch 3 counts\npiece panel\nbegin with 20 stitches\nrow 1 RS: dc across\n{row}\n"), StringComparison.Ordinal);

    [Theory]
    [InlineData("row 3 RS: sc 26, with cream, sc 4\nrow 4: sc across\nrow 5: with navy, sc across\n", "cut navy.")]
    [InlineData("row 3 RS: sc 26, with cream, sc 4\nrow 4: sc 4, with navy, sc across\n", null)]
    [InlineData("row 3 RS: sc 14, with cream, sc 2, with navy, sc 14\nrow 4: sc 14, with cream, sc 2, with navy, sc 14\n", null)]
    [InlineData("row 3 RS: sc 14, with cream, sc 2, with navy, sc 14\nrow 4: sc across\nrow 5: with cream, sc across\n", "cut cream.")]
    public void A_yarn_left_in_a_flat_row_is_cut_where_it_hangs_too_far_away(string rows, string? told)
    {
        var third = Written.Piece(Flat + rows).Split('\n').Single(static line => line.StartsWith("Row 3", StringComparison.Ordinal));
        var end = third[..third.IndexOf(" [", StringComparison.Ordinal)];
        if (told is null) Assert.DoesNotContain("cut", end, StringComparison.Ordinal);
        else Assert.EndsWith(told, end, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "; cut navy where it was left, change to navy (joined anew) in the last yarn over, cut cream.")]
    [InlineData("floats at most 20 stitches\n", "; change to navy in the last yarn over, cut cream.")]
    public void A_yarn_that_hangs_too_far_back_for_the_next_row_is_cut_there_and_joined_anew(string floats, string told) =>
        Assert.Contains(told, Written.Piece(Flat.Replace("piece", floats + "piece", StringComparison.Ordinal) + "row 3 RS: sc 22, with cream, sc 8\nrow 4: with navy, sc across\n"), StringComparison.Ordinal);

    [Fact]
    public void A_row_that_differs_in_its_yarn_alone_is_told_as_the_earlier_one()
    {
        const string Waves = "stitch pattern waves over multiple of 6 + 1\n  row 1: sc, (skip 2, 5 dc in next, skip 2, sc) across\n  row 2: 3 dc in first, (skip 2, sc in next, skip 2, 5 dc in next) until 6 remain, skip 2, sc in next, skip 2, 3 dc in last\n  row 3: sc, (skip 2, 5 dc in next, skip 2, sc in next) until 6 remain, skip 2, 5 dc in next, skip 2, sc in last\n  repeat rows 2 to 3\n";
        var told = Written.Piece($"terms US\nhook 4 mm\nyarn navy\nyarn cream\nyarn rust\nturn dc: ch 3 counts\n{Waves}piece panel\nbegin with 31 stitches\nstripes are navy 1 row, cream 1 row, rust 1 row\nstraight 9 rows, in waves\nfasten off\n");
        Assert.Contains("Row 4 (WS): As Row 2, with navy throughout; change to cream in the last yarn over, carry navy up the side. [", told, StringComparison.Ordinal);
        Assert.Contains("Row 9 (RS): As Row 3, with rust throughout. [", told, StringComparison.Ordinal);
    }

    [Fact]
    public void A_piece_of_one_yarn_says_it_once() =>
        Assert.Equal(1, Written.Piece("terms US\nhook 4 mm\nyarn navy\nyarn cream\npiece panel\nwith cream\nbegin with 9 stitches\nrow 1 RS: sc across\nstraight 3 rows\npiece other\nbegin with 9 stitches\nrow 1 RS: sc across\n").Split("cream").Length - 1);

    [Fact]
    public void A_piece_worked_word_for_word_like_an_earlier_one_is_not_told_again()
    {
        const string Rows = "begin with 9 stitches\nrow 1 RS: sc across\nstraight 3 rows\nfasten off\n";
        Assert.Equal("Work as Panel.", Written.Piece($"terms US\nhook 4 mm\npiece panel\n{Rows}piece other\n{Rows}", piece: "Other"));
        Assert.NotEqual("Work as Panel.", Written.Piece($"terms US\nhook 4 mm\npiece panel\n{Rows}piece other\n{Rows.Replace("straight 3", "straight 4", StringComparison.Ordinal)}", piece: "Other"));
    }

    [Fact]
    public void A_yarn_taken_up_behind_the_last_stitch_is_taken_up_at_the_row_s_end()
    {
        var text = Written.Piece("""
            notation 1
            pattern "Tube"
            terms US
            hook 4 mm
            yarn navy
            yarn cream
            rounds are spiral
            piece panel
            begin with 25 stitches
            round 1: sc around
            round 2: sc 8, with cream, move marker
            round 3: sc around
            fasten off
            """);
        Assert.Contains("Round 2: With navy, sc in each of next 8 sc; end the round here, the marker moves to the next st, change to cream in the last yarn over", text, StringComparison.Ordinal);
        Assert.Contains("Round 3: With cream, ", text, StringComparison.Ordinal);
    }
}
