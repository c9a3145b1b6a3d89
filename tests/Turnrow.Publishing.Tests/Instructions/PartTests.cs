using Turnrow.Compiler;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Instructions;
using Turnrow.Publishing.Tests.Reader;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Publishing.Tests.Instructions;

/// <summary>Pieces on a part of an earlier row, with chains added beside it: where one ends and the other begins is always said.</summary>
public sealed class PartTests
{
    private const string Yoke = "notation 1\npattern \"P\"\nterms US\nhook 4 mm\nturn dc: ch 3 counts\nturn sc: ch 1 does not count\npiece yoke\n  begin with 30 stitches\n  row 1 RS: dc across\n  row: dc across\n  divide: skip 8, 10 for sleeve, skip 12\n";

    private const string Panels = "notation 1\npattern \"P\"\nterms US\nhook 4 mm\nturn dc: ch 3 counts\nturn sc: ch 1 does not count\n"
        + "piece one\n  begin with 10 stitches\n  row 1 RS: dc across\n  row: dc across\n  fasten off\npiece two\n  begin with 12 stitches\n  row 1 RS: dc across\n  row: dc across\n  fasten off\n";

    [Fact]
    public void A_row_on_new_chains_says_where_it_goes_over_to_the_earlier_row()
    {
        var sleeve = Written.Piece(Yoke + "piece sleeve from yoke: sleeve\n  add 4 at both edges\n  row 1: dc across", piece: "Sleeve");
        Assert.StartsWith(
            "With RS of Yoke facing, join a separate length of yarn with sl st in the 18th st of its last row, counted from its right edge, ch 4, fasten off.\nWith new yarn ch 6.\n"
            + "Row 1 (RS): Dc in 4th ch from hook (skipped 3 ch count as 1 dc), dc in each of next 2 ch, then, with RS of Yoke facing, beginning with the 9th st of its last row, counted from its right edge, dc in each of next 10 dc, dc in each of the 4 added ch, leave the other 12 sts unworked. [18 dc]",
            sleeve, StringComparison.Ordinal);
    }

    [Fact]
    public void Behind_a_part_the_length_is_joined_in_its_last_stitch()
    {
        var front = Written.Piece(Yoke[..Yoke.IndexOf("  divide", StringComparison.Ordinal)] + "piece front from yoke: 10 stitches at right edge\n  add 4 at left edge\n  row 1: dc across", piece: "Front");
        Assert.StartsWith(
            "Go on from the last row of Yoke, with the same yarn.\nLeave the yarn where it is; with RS of Yoke facing, join another length of yarn with sl st in the 10th st of its last row, counted from its right edge, ch 4, fasten off.\nRow 1 (RS): Ch 3, turn,",
            front, StringComparison.Ordinal);
    }

    [Fact]
    public void Chains_at_the_hook_are_told_apart_from_the_row_that_goes_on()
    {
        var front = Written.Piece(Yoke[..Yoke.IndexOf("  divide", StringComparison.Ordinal)] + "piece front from yoke: 10 stitches at right edge\n  add 4 at right edge\n  row 1: dc across", piece: "Front");
        Assert.Contains("The yarn is at the right edge: ch 6.\nRow 1 (RS): Turn, dc in 4th ch from hook (skipped 3 ch count as 1 dc), dc in each of next 2 ch, dc in each of next 10 dc, leave the other 20 sts unworked. [14 dc]", front, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stitch_over_both_leaves_no_place_to_say_it()
    {
        var sleeve = Written.Piece(Yoke + "piece sleeve from yoke: sleeve\n  add 4 at right edge\n  row 1: dc 3, dc dec, dc across", piece: "Sleeve");
        Assert.StartsWith("With new yarn ch 6.\nThe row goes on, with RS of Yoke facing, in the 9th st of its last row, counted from its right edge.\nRow 1 (RS): ", sleeve, StringComparison.Ordinal);
    }

    [Fact]
    public void A_length_at_an_edge_is_joined_in_the_first_stitch_of_the_row_that_began_there()
    {
        var panel = Written.Piece("pattern \"P\"\npiece panel\nbegin with 10 stitches\nright edge is hem\nleft edge is neck\nrow 1 RS: sc across\nrow: sc across\nadd 4 at neck\nrow: sc across");
        Assert.Contains("Leave the yarn at the hem edge; at the neck edge, join another length of yarn with sl st in the first st of Row 2, ch 4, fasten off.\n", panel, StringComparison.Ordinal);
    }

    [Fact]
    public void A_row_over_several_pieces_has_chains_at_both_ends()
    {
        var body = Written.Piece(Panels + "piece body across one, two\n  add 4 at both edges\n  row 1: dc across", piece: "Body");
        Assert.Contains(
            "With RS of Two facing, join a separate length of yarn with sl st in the first st of its last row, counted from its left edge, ch 4, fasten off.\nWith new yarn ch 6.\n"
            + "Row 1 (RS): Dc in 4th ch from hook (skipped 3 ch count as 1 dc), dc in each of next 2 ch, then, with RS of One facing, beginning with the first st of its last row, counted from its right edge, dc in each of next 9 dc,",
            body, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("across one, two; add 4 at both edges; row 1: dc across; straight 2 rows")]
    [InlineData("across one, two; add 4 at left edge; row 1: dc across; straight 2 rows")]
    [InlineData("across one, two; add 4 at right edge; row 1: dc across; straight 2 rows")]
    [InlineData("across one, two; add 5 at both edges; row 1: sc across; row 2: (sc, ch 1, skip 1) 5 times, sc across")]
    [InlineData("across one, two; row 1: dc across; add 5 at both edges; row 2: dc across; row 3: dc across")]
    public void Rows_over_several_pieces_read_back_in_both_terms(string lines)
    {
        foreach (var end in new[] { "  fasten off\n", "" }) ReadsBack($"{Panels.Replace("  fasten off\n", end, StringComparison.Ordinal)}piece body {string.Join("\n  ", lines.Split("; "))}\n");
    }

    [Theory]
    [InlineData("sleeve; add 4 at both edges; row 1: dc across; straight 2 rows")]
    [InlineData("sleeve; add 1 at both edges; row 1: dc across; straight 2 rows")]
    [InlineData("sleeve; add 6 at both edges; row 1: sc across; row 2: sc across")]
    [InlineData("sleeve; add 5 at right edge; row 1: (dc, ch 1, skip 1) 7 times, dc; row 2: dc, (dc in next sp, dc in next dc) across")]
    [InlineData("sleeve; add 6 at right edge; row 1: (dc, ch 1, skip 1) 7 times, dc across")]
    [InlineData("sleeve; add 4 at both edges; row 1: dc 3, dc dec, dc across")]
    [InlineData("sleeve; add 4 at both edges; row 1: dc 2, skip 4, dc across")]
    [InlineData("sleeve; add 4 at both edges; row 1: dc 4, skip 2, 3 dc in next, dc across")]
    [InlineData("sleeve; add 2 at right edge; row 1: dc dec, dc across")]
    [InlineData("10 stitches at left edge; add 4 at right edge; row 1: dc across; straight 2 rows")]
    [InlineData("10 stitches at right edge; add 4 at left edge; row 1: dc across; straight 2 rows")]
    [InlineData("10 stitches at left edge; add 4 at both edges; row 1: dc across")]
    [InlineData("10 stitches at left edge; add 4 at left edge; row 1: dc across")]
    [InlineData("30 stitches at left edge; add 4 at both edges; row 1: dc across")]
    public void They_read_back_in_both_terms(string lines)
    {
        // The sleeve is a part with a name, the others are free to be of any width.
        var yoke = lines.StartsWith("sleeve", StringComparison.Ordinal) ? Yoke : Yoke[..Yoke.IndexOf("  divide", StringComparison.Ordinal)];
        foreach (var mirrored in new[] { "", "piece twin is part mirrored\n" })
        {
            var notation = yoke + "piece part from yoke: " + string.Join("\n  ", lines.Split("; ")) + "\n" + mirrored;
            var compilation = Compilation.Of(new SourceText("part.turnrow", notation));
            if (mirrored.Length > 0 && compilation.Pattern.Errors > 0) continue;
            ReadsBack(notation);
        }
    }

    private static void ReadsBack(string notation)
    {
        var compilation = Compilation.Of(new SourceText("part.turnrow", notation));
        Assert.Equal([], compilation.Diagnostics.Select(d => d.Message));
        foreach (var terms in new[] { Terms.US, Terms.UK })
        {
            var page = WrittenInstructions.Write(compilation.Pattern, terms);
            var found = ReadBack.Differences(compilation.Pattern, page);
            Assert.True(found.Count == 0, $"{string.Join('\n', found.Take(5))}\n{page}");
        }
    }
}
