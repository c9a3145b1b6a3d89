using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Xunit;

namespace Turnrow.Compiler.Tests.Pieces;

/// <summary>Rounds, what is held inside them and rows over several pieces, with counts done by hand.</summary>
public sealed class RoundTests
{
    private const string Header = "notation 1\npattern \"Round\"\nterms US\n";

    [Fact]
    public void A_ring_has_a_chain_for_each_stitch_and_every_round_the_right_side()
    {
        var hat = Sound("sizes S", "piece hat\n  begin with 60 stitches\n  round 1: dc around = 60\n  straight 2 rounds = 60\n").Piece("hat");
        Assert.Equal(60, Assert.IsType<FoundationStart>(hat.Start).Chains);
        Assert.All(hat.Rows, row => Assert.True(row is { RightSide: true, IsRound: true }));
        Assert.Equal([RowBegins.Ring, RowBegins.Round, RowBegins.Round], hat.Rows.Select(row => row.Begins));
        Assert.Empty(hat.Right.Stretches);
    }

    [Fact]
    public void So_many_picked_up_evenly_around_are_a_round()
    {
        var pattern = Sound("sizes S", """
            piece mitt
              begin with 30 stitches
              round 1: sc around
              round 2: sc 3, hold 6 for thumb, bridge 6 for gap, sc around
              round 3: sc around

            piece thumb picked up around mitt thumb and mitt gap: 14 sc evenly = 14
              straight 2 rounds = 14
            """);
        Assert.All(pattern.Piece("thumb").Rows, row => Assert.True(row.IsRound));
    }

    [Fact]
    public void Behind_a_bracket_that_goes_from_corner_to_corner_a_row_goes_on() =>
        Assert.DoesNotContain("nothing-left", Names("sizes S", """
            piece shawl
              begin with 21 stitches
              row 1 RS: sc 10, sc, mark corner, sc across
              row 2: (sc to corner, 3 sc in corner) across, sc across = 23
            """));

    [Fact]
    public void A_mirrored_pick_up_joins_the_mirror_that_it_is_taken_up_from()
    {
        const string Pieces = """
            piece mitt
              begin with 30 stitches
              round 1: sc around
              round 2: sc 3, hold 6 for thumb, bridge 6 for gap, sc around
              round 3: sc around
            piece other is mitt mirrored

            piece thumb picked up around mitt thumb and mitt gap: 1 sc in each st
              straight 2 rounds
            piece other-thumb is thumb mirrored
            weave in ends
            """;
        Assert.DoesNotContain("piece-unjoined", Names("sizes S", Pieces));
        var pattern = Sound("sizes S", Pieces);
        Assert.Equal(12, pattern.Piece("other-thumb").Rows[0].Work!.Stitches);
    }

    [Fact]
    public void Chains_given_are_the_rings_own() =>
        Assert.Equal(24, Sound("sizes S", "piece cuff\n  chain 24\n  round 1: dc around = 24\n").Piece("cuff").Rows[0].Work!.Stitches);

    [Fact]
    public void A_chain_that_counts_makes_the_first_stitch_and_one_that_does_not_makes_none()
    {
        var counts = Sound("sizes S", "piece hat\n  begin with 20 stitches\n  round 1: dc around\n  round 2: sc around\n  round 3: dec, dc around = 19\n").Piece("hat");
        Assert.Equal((true, 3), (counts.Rows[0].Work!.Opening.Counts, counts.Rows[0].Work!.Opening.Chains));
        Assert.Equal((false, 1), (counts.Rows[1].Work!.Opening.Counts, counts.Rows[1].Work!.Opening.Chains));
        // A decrease on the first stitches: a chain of one less, and one dc.
        Assert.Equal(2, counts.Rows[2].Work!.Opening.Chains);
    }

    [Fact]
    public void A_space_at_the_beginning_of_a_round_is_of_chains_alone()
    {
        var opening = Sound("sizes S", "piece hat\n  begin with 20 stitches\n  round 1: dc around\n  round 2: (ch 1, skip 1, dc) around = 10\n").Piece("hat").Rows[1].Work!.Opening;
        Assert.Equal((1, 1, false), (opening.Chains, opening.Space, opening.Counts));
    }

    [Fact]
    public void A_round_goes_on_from_an_RS_row_and_is_turned_to_from_a_WS_row()
    {
        string Rows(int rows) => $"piece tube\n  begin with 20 stitches\n  row 1 RS: dc across\n  straight {rows} rows\n  round: dc around = 20\n";
        Assert.Equal(RowBegins.Round, Sound("sizes S", Rows(2)).Piece("tube").Rows[^1].Begins);
        Assert.Equal(RowBegins.Turned, Sound("sizes S", Rows(1)).Piece("tube").Rows[^1].Begins);
    }

    [Fact]
    public void A_raglan_in_rounds_gains_two_a_corner()
    {
        // 40 with four corners: 48, 56; the corners stand where they were marked, each two further on than the last.
        var yoke = Sound("sizes S", """
            piece yoke
              begin with 40 stitches
              round 1: dc 8, mark corner, dc 12, mark corner, dc 8, mark corner, dc 12, mark corner
              round 2: (dc to corner, 3 dc in corner) 4 times, dc around = 48
              round 3: (dc to corner, 3 dc in corner) 4 times, dc around = 56
              round 4: remove corners, dc around = 56
            """).Piece("yoke");
        var tops = yoke.Rows[2].Work!.Tops;
        Assert.Equal([10, 26, 38, 54], Enumerable.Range(1, 56).Where(n => tops.Slice(n - 1, 1).First.IsCorner));
    }

    [Fact]
    public void Bridged_chains_count_with_chains_only_and_then_as_what_is_worked_into_them()
    {
        // 60 less 10 held: 50, with 6 chains 56, and 56 in the next round.
        Sound("sizes S", """
            piece yoke
              begin with 60 stitches
              round 1: dc around
              round 2: dc 20, hold 10 for thumb, bridge 6 for gap, dc around = 50
              round 3: dc around = 56

            piece thumb picked up around yoke thumb and yoke gap: 1 sc in each st = 16
              straight 2 rounds = 16
              fasten off
            """);
        Sound("sizes S", "piece yoke\n  begin with 60 stitches\n  round 1: dc around\n  round 2: dc 20, hold 10 for thumb, bridge 6, dc around = 56 sts with chains\n\npiece thumb picked up along yoke thumb: 1 sc in each st = 10\n");
    }

    [Fact]
    public void What_is_held_is_taken_up_once()
    {
        const string yoke = "piece yoke\n  begin with 30 stitches\n  round 1: sc around\n  round 2: sc 5, hold 6 for thumb, bridge 6, sc around\n\n";
        const string thumb = "piece NAME picked up around yoke thumb: 1 sc in each st\n\n";
        Assert.Equal(["held-unused"], Names("sizes S", yoke).Except(["piece-unjoined"]));
        Assert.Empty(Names("sizes S", yoke + thumb.Replace("NAME", "one", StringComparison.Ordinal)));
        Assert.Equal(["edge-twice"], Names("sizes S", yoke + thumb.Replace("NAME", "one", StringComparison.Ordinal) + thumb.Replace("NAME", "other", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("hold 5 for thumb, sc around", "hold-at-edge")]
    [InlineData("bridge 5, skip 5, sc around", "hold-at-edge")]
    [InlineData("sc 20, hold 10 for thumb", "hold-at-edge")]
    [InlineData("(sc 5, hold 5 for thumb) 3 times", "hold-in-bracket")]
    [InlineData("(sc 7) around", "repeat-remainder")]
    public void What_a_round_can_not_do_is_said_once(string words, string expected) =>
        Assert.Equal([expected], Errors("sizes S", $"piece mitten\n  begin with 30 stitches\n  round 1: sc around\n  round 2: {words}\n\npiece thumb picked up along mitten thumb: 1 sc in each st\n").Where(name => name != "edge-unknown"));

    [Fact]
    public void A_round_that_does_not_come_out_is_called_a_round()
    {
        var found = Compilation("sizes S", "piece hat\n  begin with 30 stitches\n  round 1: sc around\n  round 2: sc 28\n").Diagnostics;
        var error = Assert.Single(found, d => d.Kind.Name == "row-length");
        Assert.Contains("round 2 of hat", error.Message, StringComparison.Ordinal);
        Assert.Contains("round 2 of hat", string.Join('\n', error.Ledger), StringComparison.Ordinal);
    }

    [Fact]
    public void A_broken_round_costs_its_own_line() =>
        Assert.Single(Compilation("sizes S", "piece hat\n  begin with 30 stitches\n  round 1: sc around\n  round 2: sc sc of\n  round 3: sc around = 30\n  straight 2 rounds = 30\n").Diagnostics, d => d.Kind.Severity == Turnrow.Syntax.Diagnostics.Severity.Error);

    [Fact]
    public void Rounds_of_some_sizes_leave_the_others_alone()
    {
        var pattern = Sound("sizes S, M", "piece hat\n  begin with 30 stitches\n  round 1: sc around\n  for M: straight 2 rounds\n  round: sc around = 30\n");
        Assert.Equal([2, 4], pattern.Pattern.Pieces.Single().InSizes.Select(piece => piece.Rows.Count));
    }

    [Fact]
    public void Rounds_are_repeated_and_worked_to_a_length()
    {
        // 8 rows to 10 cm: 20 cm are 16 rounds.
        var hat = Sound("sizes S\ngauge dc: 16 stitches and 8 rows to 10 cm", """
            piece hat
              begin with 40 stitches
              round 1: dc around
              round 2: (dc 8, dec) around = 36
              repeat round 1, 1 more times
              straight to 20 cm = 36
            """).Piece("hat");
        Assert.Equal(16, hat.Rows.Count);
        Assert.All(hat.Rows, row => Assert.True(row.IsRound));
    }

    [Fact]
    public void A_row_goes_over_parts_that_divide_named_and_its_mirror_over_their_mirrors()
    {
        var pattern = Sound("sizes S", """
            piece front
              begin with 10 stitches
              row 1 RS: dc across
              straight 1 rows
              fasten off

            piece back
              begin with 20 stitches
              row 1 RS: dc across
              straight 1 rows
              fasten off

            piece front-two is front mirrored

            piece back-two is back mirrored

            piece yoke across front, back
              row: dc 10, bridge 4, dc around = 30
              row: dc across = 34

            piece yoke-two is yoke mirrored
            """);
        var parts = Assert.IsType<AcrossStart>(pattern.Piece("yoke-two").Start).Parts;
        Assert.Equal(["back-two", "front-two"], parts.Select(part => part.Base.Name));
        Assert.Equal([30, 34], pattern.Piece("yoke-two").Rows.Select(row => row.Work!.Stitches));
    }

    [Fact]
    public void A_mirrored_row_over_the_same_pieces_takes_their_stitches_twice() => Assert.Equal(["part-overlap"], Errors("sizes S", """
        piece front
          begin with 10 stitches
          row 1 RS: dc across

        piece back
          begin with 20 stitches
          row 1 RS: dc across

        piece yoke across front, back
          row: dc across

        piece yoke-two is yoke mirrored
        """));

    [Fact]
    public void A_mirrored_sleeve_is_a_tube_too()
    {
        var sleeve = Sound("sizes S", """
            piece yoke
              begin with 60 stitches
              round 1: dc around
              round 2: dc 10, hold 10 for one, bridge 4 for one-arm, dc 10, hold 10 for other, bridge 4 for other-arm, dc around = 40

            piece one picked up around yoke one and yoke one-arm: 1 dc in each st = 14
              straight 2 rounds

            piece other is one mirrored
            """).Piece("other");
        Assert.All(sleeve.Rows, row => Assert.True(row.IsRound));
        Assert.Equal(["other-arm", "other"], Assert.IsType<PickUpStart>(sleeve.Start).Walk.Select(leg => leg.Stretch.Name));
    }

    [Theory]
    [InlineData("row RS", "right", false)]
    [InlineData("row WS", "right", true)]
    [InlineData("row WS", "left", false)]
    [InlineData("row RS", "left", true)]
    [InlineData("round", "right", false)]
    public void The_yarn_of_a_tube_goes_on_where_its_rounds_are_joined(string row, string edge, bool joined)
    {
        var part = Sound("sizes S", $"piece tube\n  begin with 20 stitches\n  round 1: dc around\n\npiece front from tube: 9 stitches at {edge} edge\n  {row}: dc across\n").Piece("front");
        Assert.Equal(joined, Assert.IsType<PartStart>(part.Start).Joined);
    }

    private static Made Sound(string sizes, string pieces)
    {
        var compilation = Compilation(sizes, pieces);
        Assert.DoesNotContain(compilation.Diagnostics, d => d.Kind.Severity == Turnrow.Syntax.Diagnostics.Severity.Error);
        return new Made(compilation.Pattern);
    }

    private static Compilation Compilation(string sizes, string pieces)
    {
        var head = sizes.Contains("gauge", StringComparison.Ordinal) ? sizes : sizes + "\ngauge dc: 16 stitches and 8 rows to 10 cm\ngauge sc: 16 stitches and 16 rows to 10 cm";
        return Turnrow.Compiler.Compilation.Of(new Turnrow.Syntax.Text.SourceText("round.turnrow", $"{Header}{head}\n\n{pieces}\n"));
    }

    private static IEnumerable<string> Names(string sizes, string pieces) => Compilation(sizes, pieces).Diagnostics.Select(d => d.Kind.Name);

    private static IEnumerable<string> Errors(string sizes, string pieces) =>
        Compilation(sizes, pieces).Diagnostics.Where(d => d.Kind.Severity == Turnrow.Syntax.Diagnostics.Severity.Error).Select(d => d.Kind.Name);

    private sealed record Made(Turnrow.Fabric.Patterns.Pattern Pattern)
    {
        public Piece Piece(string name) => Pattern.Pieces.Single(piece => piece.Name == name).InSizes[0];
    }
}
