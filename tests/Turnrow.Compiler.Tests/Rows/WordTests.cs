using Turnrow.Fabric.Places;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Compiler.Tests.Rows;

/// <summary>Each word that the notation lists, over twenty plain dc or over a mesh.</summary>
public sealed class WordTests
{
    [Theory]
    [InlineData("dc, dc, dc 18", "20")]
    [InlineData("dc across", "20")]
    [InlineData("dc around", "20")]
    [InlineData("dc until 5 remain, sc 5", "20")]
    [InlineData("3 dc in next, dc across", "22")]
    [InlineData("3 dc in first, dc until 1 remain, 2 dc in last", "23")]
    [InlineData("dc, 2 dc in same, dc across", "22")]
    [InlineData("inc, dc until 1 remain, inc", "22")]
    [InlineData("dec, dc until 2 remain, dec", "18")]
    [InlineData("inc 3, dc across", "23")]
    [InlineData("dec 3, dc across", "17")]
    [InlineData("sc 4, hdc dec, dc across", "19")]
    [InlineData("dc3tog, dc across", "18")]
    [InlineData("dc2tog across", "10")]
    [InlineData("dc, skip 2, dc across", "18")]
    [InlineData("slip over 5, dc across", "15")]
    [InlineData("sl st 5, dc across", "20")]
    [InlineData("dc until 5 remain, leave 5", "15")]
    [InlineData("dc 12, leave the rest", "12")]
    [InlineData("(dc 4, inc) 4 times", "24")]
    [InlineData("(dc 4, inc) across", "24")]
    [InlineData("(dc 4, inc) until 5 remain, dc 5", "23")]
    [InlineData("dc in each st", "20")]
    [InlineData("back-loop dc 5, front-loop dc 5, front-post dc 5, back-post dc 5", "20")]
    [InlineData("BLO dc 5, FLO dc 5, FPdc 5, BPdc 5", "20")]
    [InlineData("dc inc 8 evenly", "28")]
    [InlineData("dc dec 8 evenly", "12")]
    [InlineData("inc 8 evenly", "28")]
    [InlineData("dec 8 evenly", "12")]
    [InlineData("sc inc across", "40")]
    [InlineData("(2 dc, ch 2, 2 dc) in first, dc across", "23")]
    [InlineData("sc 2, ch 3, skip 3, sc 15", "17")]
    [InlineData("dc 5 (4), sc across", "20")]
    [InlineData("dc 0 (2), (dc, inc) 0 (3) times, dc across", "20 (23)")]
    [InlineData("n dc in next, dc n, dc across", "22 (23)")]
    [InlineData("ch 3, skip 1, dc across", "19")]
    public void A_row_of_these_words_makes_so_many(string words, string expected) =>
        Assert.Equal(expected, Compiled.Of($"count n is 3 (4)\npiece back\nbegin with 20 stitches\nrow 1 RS: dc across\nrow 2: {words}").Clean().Last());

    [Theory]
    [InlineData("dc, (ch 1, skip 1, dc, ch 1, skip 1) 4 times, dc 7", "sp 1, sp 2, sp 2, sp 2, sp 1")]
    [InlineData("dc, (ch 1, skip 1, ch 2, dc, ch 3, skip 1) 3 times, dc 10", "sp 3, sp 6, sp 6, sp 3")]
    [InlineData("dc, (ch 2, ch 1, skip 1, (dc, ch 1) in next) 2 times, ch 3, dc across", "sp 3, sp 4, sp 4")]
    [InlineData("dc, (ch 1, (ch 2, dc, ch 3) in next, skip 1) 2 times, (ch 1, dc) in next, dc across", "sp 3, sp 6, sp 4")]
    [InlineData("dc, ((ch 1, skip 1) 2 times, dc) 3 times, dc across", "sp 2, sp 2, sp 2")]
    [InlineData("dc, (ch 1, (skip 1, ch 2, dc) 2 times, skip 1, ch 1) 2 times, dc across", "sp 3, sp 2, sp 4, sp 2, sp 1")]
    [InlineData("dc, (ch 1, dc, ch 2) in each st until 17 remain, dc across", "sp 1, sp 3, sp 2")]
    [InlineData("dc, ch 2, skip 1, picot, ch 2, dc across", "sp 2, sp 2")]
    public void Chains_side_by_side_are_one_space(string words, string spaces)
    {
        var tops = Compiled.Of($"piece back\nbegin with 20 stitches\nrow 1: dc across\nrow 2: {words}").Clean().Row(2).Work!.Tops;
        var found = new List<string>();
        for (var cursor = new PlaceCursor(tops); cursor.Remaining > 0; cursor.Pass(1))
        {
            if (cursor.Next.Chains > 0) found.Add($"sp {cursor.Next.Chains}");
        }

        Assert.Equal(spaces, string.Join(", ", found));
    }

    [Theory]
    [InlineData("(dc, ch 1) 8 times in ring", "(dc in next dc, ch 2) around", 8, 8)]
    [InlineData("(dc, ch 1) 8 times in ring", "dc in each st", 8, 0)]
    [InlineData("(dc, ch 1) 8 times in ring", "(dc in next dc, ch 2) 8 times", 8, 8)]
    [InlineData("(2 dc, ch 2, 2 dc) 5 times in ring", "(3 sc in next sp, ch 3) around", 15, 5)]
    [InlineData("(2 dc, ch 2, 2 dc) 5 times in ring", "(2 dc in next ch-2 sp, ch 1, 2 dc in same) 5 times", 20, 5)]
    [InlineData("(3 dc, ch 2, 3 dc) 4 times in ring", "((3 dc, ch 2, 3 dc) in next sp, skip 3, 3 dc in next, skip 2) 3 times, (3 dc, ch 2, 3 dc) in next sp", 33, 4)]
    public void What_is_left_of_a_round_is_passed_over_by_words_that_name_a_kind(string first, string words, int stitches, int spaces)
    {
        var compiled = Compiled.Of($"piece back\nbegin with ring\nround 1: {first}\nround 2: {words}").Clean();
        Assert.Equal((stitches, spaces), (compiled.Counts().Last(), compiled.Spaces()));
    }

    [Theory]
    [InlineData("dc 7, dc in next dc")]
    [InlineData("(dc in next sp, ch 1) 7 times")]
    [InlineData("(dc in next dc, ch 2, skip 1) 7 times, dc")]
    public void What_is_left_of_a_round_is_an_error_where_no_word_names_a_kind_or_some_of_it_is_left(string words) =>
        Assert.NotEmpty(Compiled.Of($"piece back\nbegin with ring\nround 1: (dc, ch 1) 8 times in ring\nround 2: {words}").Found);

    [Theory]
    [InlineData("in next corner")]
    [InlineData("in corner")]
    public void A_round_that_goes_to_a_corner_first_begins_there(string place)
    {
        var compiled = Compiled.Of($"piece back\nbegin with ring\nround 1: (3 dc, ch 2, 3 dc) 4 times in ring\nround 2: ((3 dc, ch 2, mark corner, 3 dc) in next sp) around\nround 3: ((3 dc, ch 2, 3 dc) {place}, skip 3, 3 dc in next, skip 2) around").Clean();
        Assert.Equal((36, 3), (compiled.Counts().Last(), compiled.Row(3).Work!.BegunAt));
    }

    [Theory]
    [InlineData("dc in each st and sp", 13, 0)]
    [InlineData("dc, 3 dc in each sp, dc in last", 20, 0)]
    [InlineData("dc, (ch 1, dc in next dc) across", 7, 6)]
    [InlineData("dc, (2 dc in next sp, dc in next dc) across", 19, 0)]
    [InlineData("(sc, ch 2, sc) in next ch-2 sp, (skip 1, 2 dc in next sp) until 1 remain, leave 1", 12, 1)]
    [InlineData("dc in each sp, leave the rest", 6, 0)]
    [InlineData("skip 1, (sc in next sp, sc in next st) across", 12, 0)]
    [InlineData("(2 dc, ch 1, 2 dc) in each sp, dc in last", 25, 6)]
    public void A_row_over_a_mesh_says_its_places(string words, int stitches, int spaces)
    {
        var compiled = Compiled.Of($"piece back\nbegin with 19 stitches\nrow 1: dc, (ch 2, skip 2, dc) across = 7 dc, 6 sp\nrow 2: {words}").Clean();
        Assert.Equal((stitches, spaces), (compiled.Counts().Last(), compiled.Spaces()));
    }

    [Theory]
    [InlineData("(sc, picot) 6 times in ring", "6, 6")]
    [InlineData("(bobble, picot of 4) 4 times in ring", "4, 4")]
    [InlineData("(3 dc, picot, ch 2) 4 times in ring", "12, 12")]
    public void A_picot_in_a_ring_is_no_stitch(string words, string expected)
    {
        var second = words.Contains("ch 2", StringComparison.Ordinal) ? "(dc 3, skip 1) 4 times" : "sc around";
        var compiled = Compiled.Of($"piece back\nbegin with ring\nround 1: {words}\nround 2: {second}").Clean();
        Assert.Equal(expected, string.Join(", ", compiled.Counts()));
    }

    [Theory]
    [InlineData("row 2: picot, dc across")]
    [InlineData("row 2: (picot, dc 4) across")]
    [InlineData("row 2: skip 1, (picot, dc) in next, dc across")]
    [InlineData("round 2: (picot, sc 3) until 2 remain, sc 2")]
    [InlineData("round 2: slip over 2, (picot of 4, sc 4) across")]
    public void A_picot_has_to_stand_on_something_in_its_row(string row) =>
        Assert.Equal(["stands-on-nothing"], Compiled.Piece(row).Found);

    [Theory]
    [InlineData("dc, picot, dc across", "20")]
    [InlineData("dc, ch 3, picot, ch 3, skip 4, dc across", "16")]
    [InlineData("(dc 4, picot) across, picot", "20")]
    public void A_picot_stands_on_what_was_made_last(string words, string expected) =>
        Assert.Equal(expected, Compiled.Piece($"row 2: {words}").Clean().Last());

    [Theory]
    [InlineData("5 dc", "stitch-number")]
    [InlineData("dc 5", "row-length")]
    [InlineData("dc 21", "row-length")]
    [InlineData("dc until 21 remain, dc 21", "row-length")]
    [InlineData("(dc 5, inc) across", "repeat-remainder")]
    [InlineData("dc3tog across", "repeat-remainder")]
    [InlineData("dc, ch across", "chain-place")]
    [InlineData("(ch 2) across", "repeat-endless")]
    [InlineData("dc in next sp, dc across", "no-such-place")]
    [InlineData("dc across, dc in last", "row-length")]
    [InlineData("dc in last, dc across", "place-in-row")]
    [InlineData("dc 4, dc in first, dc across", "place-in-row")]
    [InlineData("dc, slip over 3, dc across", "place-in-row")]
    [InlineData("dc in same, dc across", "place-in-row")]
    [InlineData("leave 3, dc across", "place-in-row")]
    [InlineData("dc dec 11 evenly", "spread-too-many")]
    [InlineData("sc 4, inc, dc across", "change-without-stitch")]
    [InlineData("(dc, ch 1)", "bracket-alone")]
    [InlineData("(dc, skip 1) in next, dc across", "not-in-one-place")]
    [InlineData("dc 3 in next, dc across", "stitch-both")]
    [InlineData("2 dc 3, dc across", "stitch-both")]
    [InlineData("dc in next banana, dc across", "unknown-stitch")]
    public void What_can_not_be_worked_is_told_once(string words, string name) =>
        Assert.Equal([name], Compiled.Piece($"row 2: {words}").Found);

    [Theory]
    [InlineData("dc, (front-post dc in next sp, dc in next dc) across", true)]
    [InlineData("dc, (back-loop dc in next sp, dc in next dc) across", true)]
    [InlineData("front-loop dc in each st and sp", true)]
    [InlineData("dc, ((back-post dc, dc) in next sp, dc in next dc) across", true)]
    [InlineData("dc, (dc in next sp, back-loop dc in same, dc in next dc) across", true)]
    [InlineData("dc, ((dc, back-loop dc) in next sp, dc in next dc) across", true)]
    [InlineData("dc, (ridge in next sp, dc in next dc) across", true)]
    [InlineData("dc, back-loop dc in each sp, dc", true)]
    [InlineData("dc, (dc in next sp, front-post dc in next dc) across", false)]
    [InlineData("dc, (dc in next sp, ridge in next) across", false)]
    [InlineData("dc, (dc in next sp, back-loop dc in next dc) across", false)]
    [InlineData("back-loop dc in each st and dc in each sp", false)]
    public void A_space_has_no_loops_and_no_post(string row, bool isFault)
    {
        var found = Compiled.Of($"stitch ridge is (back-loop sc, back-loop dc) in one place\npiece back\nbegin with 21 stitches\nrow 1 RS: dc across\nrow 2: dc, (ch 1, skip 1, dc) across\nrow 3: {row}\n").Found;
        Assert.Equal(isFault ? ["space-without-loops"] : [], found.Where(static f => f is not "stitch-unused"));
    }

    [Fact]
    public void A_stitch_does_not_go_into_a_space_unasked() => Assert.Equal(
        ["space-ahead"], Compiled.Of("piece back\nbegin with 19 stitches\nrow 1: dc, (ch 2, skip 2, dc) across\nrow 2: dc across").Found);

    [Fact]
    public void A_repeat_says_in_which_sizes_it_does_not_come_out()
    {
        var compiled = Compiled.Of("piece back\nbegin with 20 (21) stitches\nrow 1: dc across\nrow 2: (dc 4, inc) across");
        var found = Assert.Single(compiled.Compilation.Diagnostics);
        Assert.Equal(("repeat-remainder", "L"), (found.Kind.Name, Assert.Single(found.Sizes)));
        Assert.Equal(24, compiled.Counts().Last());
    }

    [Fact]
    public void Where_the_hook_goes_is_kept() => Assert.Equal(
        [HookInto.BackLoop, HookInto.FrontPost, HookInto.BothLoops],
        Compiled.Piece("row 2: BLO dc 5, FPdc 2, dc across").Clean().Row(2).Work!.Words.Cast<Work>().Select(w => w.Hook));

    [Fact]
    public void A_row_that_opens_with_a_space_turns_with_one_chain_for_both() =>
        Assert.Equal(5, Compiled.Piece("row 2: dc, ch 2, skip 2, dc across").Clean().Row(2).Work!.Opening.Chains);

    [Theory]
    [InlineData("dc 18", "dc across")]
    [InlineData("(sc 4, inc) 3 times", "sc across")]
    [InlineData("dc 16, (2 hdc, ch 2, 2 hdc) in next", "hdc across")]
    [InlineData("sc inc 3", "sc across")]
    public void What_is_left_over_is_to_be_worked_in_the_rows_own_stitch(string words, string mend)
    {
        var found = Assert.Single(Compiled.Piece($"row 2: {words}").Compilation.Diagnostics);
        Assert.Equal("row-length", found.Kind.Name);
        Assert.Contains($"`{mend}`", found.Help, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("dc across, dc across", true)]
    [InlineData("dc until 3 remain, sc until 3 remain, dc across", true)]
    [InlineData("dc in each st and sp, (dc, inc) across", true)]
    [InlineData("dc until 3 remain, dc across", false)]
    [InlineData("dc 20, dc across", false)]
    [InlineData("dc across, leave the rest", false)]
    public void Words_for_which_nothing_can_be_left_are_told(string words, bool told) =>
        Assert.Equal(told ? ["nothing-left"] : [], Compiled.Piece($"row 2: {words}").Found);
}
