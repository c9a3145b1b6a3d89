using CsCheck;
using Turnrow.Fabric.Colours;
using Xunit;

namespace Turnrow.Compiler.Tests.StitchPatterns;

/// <summary>A picture worked round: what stands in the fabric is what was drawn, whichever way each round goes.</summary>
public sealed class PictureRoundTests
{
    private const string Yarns = "yarn navy\nyarn cream\n";

    private static readonly Gen<string[]> _pictures = Gen.Int[1, 6].SelectMany(static width => Gen.Bool.Array[width].Array[1, 4])
        .Select(static lines => lines.Select(static line => string.Concat(line.Select(static navy => navy ? 'x' : '.'))).ToArray());

    [Fact]
    public void The_fabric_shows_the_picture() => Gen.Select(_pictures, Gen.Int[2, 4], Gen.OneOf(Gen.Const("joined"), Gen.Const("joined and turned"), Gen.Const("spiral")), Gen.Int[1, 9]).Sample(
        (lines, repeats, way, rounds) =>
        {
            var (width, isTurned) = (lines[0].Length, way == "joined and turned");
            var places = width * repeats;
            var text = $"{Definition(lines)}\npiece back\nrounds are {way}\nbegin with {places} stitches\nround 1: sc around\n{(isTurned ? "round 2: sc around\n" : string.Empty)}straight {rounds} rounds, in tile\n";
            var rows = Compiled.Of(text).Piece("back", 0).Rows.Skip(isTurned ? 2 : 1).ToList();
            Assert.Equal(rounds, rows.Count);
            for (var round = 0; round < rounds; round++)
            {
                var line = lines[lines.Length - 1 - (round % lines.Length)];
                var (yarns, isWrongSide) = (new YarnPlaces(rows[round]), isTurned && round % 2 != 0);
                Assert.Equal(!isWrongSide, rows[round].RightSide);
                for (var place = 0; place < places; place++)
                {
                    // From the join to the left as the right side is seen.
                    var column = isWrongSide && place > 0 ? places - place : place;
                    Assert.Equal(line[width - 1 - (column % width)] == 'x' ? "navy" : "cream", yarns.Of(place));
                }
            }
        },
        iter: 200,
        threads: 1);

    [Fact]
    public void A_piece_that_begins_with_the_picture_takes_what_the_line_counts()
    {
        var definition = Definition(["x.", "x."]);
        Assert.True(Compiled.Of($"{definition}\npiece back\nbegin with 8 stitches\nstraight 4 rounds, in tile = 8\nfasten off\n").Clean().Row(1).IsRound);
        Assert.False(Compiled.Of($"{definition}\npiece back\nbegin with 8 stitches\nstraight 4 rows, in tile = 8\nfasten off\n").Clean().Row(1).IsRound);
    }

    [Fact]
    public void A_round_leaves_out_the_stitches_at_a_rows_ends()
    {
        const string Net = "stitch pattern net from picture, over multiple of 4 + 1\nkey \".\" is (dc, ch 1, skip 1)\nkey \"x\" is (dc 2)\nkey last is (dc)\n| . x |\n| x . |\n";
        Assert.Equal([16, 12, 12, 12], Compiled.Of($"{Net}piece back\nbegin with 16 stitches\nround 1: dc around\nstraight 3 rounds, in net = 12, 4 sp\nfasten off\n").Clean().Counts());
        Assert.Equal([17, 13, 13, 13], Compiled.Of($"{Net}piece back\nbegin with 17 stitches\nrow 1 WS: dc across\nstraight 3 rows, in net = 13, 4 sp\nfasten off\n").Clean().Counts());
    }

    [Fact]
    public void A_wide_letter_does_not_lie_across_a_join_that_is_turned() => Assert.Equal(
        ["picture-rounds"],
        Compiled.Of("stitch pattern net from picture, over multiple of 2\nkey \".\" is (dc, ch 1, skip 1)\n| . |\npiece back\nrounds are joined and turned\nbegin with 16 stitches\nround 1: dc around\nround 2: dc around\nstraight 3 rounds, in net\n").Found);

    [Fact]
    public void A_picture_is_not_gone_on_with_when_its_lines_are_read_another_way() => Assert.Equal(
        ["picture-rounds"],
        Compiled.Of($"{Definition(["x.", ".x"])}\npiece back\nbegin with 8 stitches\nstraight 4 rounds, in tile\nrounds are joined and turned\nstraight 2 rounds\n").Found);

    [Fact]
    public void Rows_that_are_written_out_are_for_one_way() => Assert.Equal(
        ["pattern-here"],
        Compiled.Of("stitch pattern moss over multiple of 2\nrow 1: (sc 2) across\npiece back\nbegin with 16 stitches\nround 1: sc around\nstraight 3 rounds, in moss\n").Found.Where(static name => name == "pattern-here"));

    [Theory]
    [InlineData("straight 2 rounds, in tile", "7 stitches over the join into round 3")]
    [InlineData("round 2: sc 9, with cream, sc 3\nround 3: with navy, sc 12", null)]
    [InlineData("round 2: sc 3, with cream, sc 3, with navy, sc 6\nround 3: sc 3, with cream, sc 3, with navy, sc 6", "9 stitches over the join into round 3")]
    [InlineData("round 2: sc 6, with cream, sc 3, with navy, sc 3\nround 3: sc 2, with cream, sc 6, with navy, sc 4", null)]
    [InlineData("rounds are joined and turned\nround 2: sc 3, with cream, sc 3, with navy, sc 6\nround 3: sc 3, with cream, sc 3, with navy, sc 6", null)]
    public void What_is_carried_over_the_join_counts(string rounds, string? told)
    {
        var tile = "stitch pattern tile from picture in sc, over multiple of 12\nkey \"x\" is navy\nkey \".\" is cream\n| x x x x x x x x x x . . |\n| . . . . . x x x x . . . |\n";
        var found = Compiled.Of($"{Yarns}floats at most 6 stitches\n{tile}piece back\nbegin with 12 stitches\nround 1: sc around\n{rounds}\n").Compilation.Diagnostics.Where(d => d.Kind.Name == "float-long" && d.Message.Contains("join", StringComparison.Ordinal)).ToList();
        if (told is null) Assert.Empty(found);
        else Assert.Contains(told, Assert.Single(found).Message, StringComparison.Ordinal);
    }

    private static string Definition(string[] lines) =>
        $"{Yarns}stitch pattern tile from picture in sc, over multiple of {lines[0].Length}\nkey \"x\" is navy\nkey \".\" is cream\n{string.Join('\n', lines.Select(static line => $"| {string.Join(' ', line.ToCharArray())} |"))}\n";
}
