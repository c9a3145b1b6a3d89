using Turnrow.Compiler;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Instructions;
using Turnrow.Publishing.Tests.Reader;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Publishing.Tests.Instructions;

/// <summary>Rows that differ only in how often one repeat is worked are told once, and each has its own number and count.</summary>
public sealed class GrowingRowsTests
{
    private const string Head = "notation 1\npattern \"P\"\nterms US\nhook 4 mm\nturn dc: ch 3 counts\nturn sc: ch 1 does not count\n";

    private const string Square = "begin with ring of 4 chains; round 1: (3 dc, ch 2, mark corner) 4 times in ring; round 2: ((3 dc, ch 2, 3 dc) in next corner, ch 1) around; ";

    private const string Side = "((3 dc, ch 2, 3 dc) in next corner, ch 1, (3 dc in next ch-1 sp, ch 1) until 3 remain before corner) around";

    private const string Mesh = "begin with 3 stitches; row 1 RS: dc across; row 2: 3 dc in first, dc until 1 remains, 3 dc in last; row 3: 3 dc in first, dc until 1 remains, 3 dc in last; "
        + "row 4: 3 dc in first, (ch 1, skip 1, dc) until 2 remain, ch 1, skip 1, 3 dc in last; row 5: 3 dc in first, dc in each st and sp until 1 remains, 3 dc in last; ";

    [Fact]
    public void What_draws_in_by_pairs_of_rounds_is_told_once_with_its_counts()
    {
        var panel = Written.Piece(Head + "piece panel\nbegin with 36 stitches\nround 1: sc around\nshape 10 rounds: dec 4 evenly every 2 rounds, stacked\n");
        Assert.Contains("Repeat the last 2 rounds 4 more times, but work 1 sc fewer before each sc2tog than the time before:\n- Round 5 [28 sc]\n", panel, StringComparison.Ordinal);
    }

    [Fact]
    public void A_square_that_grows_is_told_once()
    {
        var panel = Panel("", $"{Square}rounds 3 to 8: {Side}");
        Assert.EndsWith(
            """
            Rounds 5-8: As Round 4, but work [3 dc in next ch-1 sp, ch 1] 1 more time in each place than in the round before:
            - Round 5: 3 times [60 dc, 4 ch-2 sps, 16 ch-1 sps]
            - Round 6: 4 times [72 dc, 4 ch-2 sps, 20 ch-1 sps]
            - Round 7: 5 times [84 dc, 4 ch-2 sps, 24 ch-1 sps]
            - Round 8: 6 times [96 dc, 4 ch-2 sps, 28 ch-1 sps]
            Fasten off.
            """.ReplaceLineEndings("\n"),
            panel, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_a_size_has_more_of_them_their_lines_are_for_it_alone()
    {
        var panel = Panel("sizes S, M\n", $"{Square}rounds 3 to 7 (8): {Side}");
        Assert.EndsWith(
            """
            Rounds 5-7 (5-8): As Round 4, but work [3 dc in next ch-1 sp, ch 1] 1 more time in each place than in the round before:
            - Round 5: 3 times [60 dc, 4 ch-2 sps, 16 ch-1 sps]
            - Round 6: 4 times [72 dc, 4 ch-2 sps, 20 ch-1 sps]
            - Round 7: 5 times [84 dc, 4 ch-2 sps, 24 ch-1 sps]
            - Size M only: Round 8: 6 times [96 dc, 4 ch-2 sps, 28 ch-1 sps]
            Fasten off.
            """.ReplaceLineEndings("\n"),
            panel, StringComparison.Ordinal);
    }

    [Fact]
    public void Rows_that_come_round_with_one_that_grows_have_a_line_for_each_time()
    {
        var panel = Panel("", $"{Mesh}repeat rows 2 to 5, 4 more times");
        Assert.EndsWith(
            """
            Rows 10-21: Repeat the last 4 rows 3 more times, but work [ch 1, skip next dc, dc in next dc] 8 more times than the time before:
            - Row 12, 20 times [26 dc, 21 ch-1 sps]; Row 13 [51 dc]
            - Row 16, 28 times [34 dc, 29 ch-1 sps]; Row 17 [67 dc]
            - Row 20, 36 times [42 dc, 37 ch-1 sps]; Row 21 [83 dc]
            Fasten off.
            """.ReplaceLineEndings("\n"),
            panel, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("rounds 3 to 6: ", 0)]
    [InlineData("rounds 3 to 7: ", 1)]
    [InlineData("rounds 3 to 12 (12): ", 1)]
    [InlineData("rounds 3 to 7 (9): ", 1)]
    [InlineData("rounds 3 to 6 (9): ", 0)]
    public void Few_rows_are_told_one_by_one(string rounds, int lists)
    {
        var page = Page(rounds.Contains('(', StringComparison.Ordinal) ? "sizes S, M\n" : "", $"{Square}{rounds}{Side}", Terms.US);
        Assert.Equal(lists, page.Split(" than in the round before:").Length - 1);
    }

    [Theory]
    [InlineData("", Square + "rounds 3 to 9: " + Side)]
    [InlineData("sizes S, M\n", Square + "rounds 3 to 9: " + Side)]
    [InlineData("sizes S, M\n", Square + "rounds 3 to 9 (12): " + Side)]
    [InlineData("", Mesh + "repeat rows 2 to 5, 7 more times")]
    [InlineData("", Mesh + "repeat rows 2 to 5, 3 more times; row 18: 3 dc in first, dc until 1 remains, 3 dc in last")]
    [InlineData("sizes S, M\n", Mesh + "repeat rows 2 to 5, 5 (7) more times")]
    [InlineData("sizes S, M, L\n", Mesh + "repeat rows 2 to 5, 5 (7, 7) more times")]
    [InlineData("sizes S, M, L\n", Square + "rounds 3 to 9 (12, 10): " + Side)]
    public void They_read_back_in_both_terms(string sizes, string lines)
    {
        Page(sizes, lines, Terms.US);
        Page(sizes, lines, Terms.UK);
    }

    private static string Panel(string sizes, string lines) => Written.Piece($"{Head}{sizes}piece panel\n  {lines.Replace("; ", "\n  ", StringComparison.Ordinal)}\n");

    private static string Page(string sizes, string lines, Terms terms)
    {
        var notation = $"{Head}{sizes}piece panel\n  {lines.Replace("; ", "\n  ", StringComparison.Ordinal)}\n";
        var compilation = Compilation.Of(new SourceText("growing.turnrow", notation));
        Assert.Equal(0, compilation.Pattern.Errors);
        var page = WrittenInstructions.Write(compilation.Pattern, terms);
        var found = ReadBack.Differences(compilation.Pattern, page);
        Assert.True(found.Count == 0, $"{string.Join('\n', found.Take(5))}\n{page}");
        return page;
    }
}
