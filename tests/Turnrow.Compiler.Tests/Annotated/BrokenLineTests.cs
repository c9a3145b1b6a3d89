using Xunit;

namespace Turnrow.Compiler.Tests.Annotated;

/// <summary>A broken line costs itself and what follows from it, and nothing else.</summary>
public sealed class BrokenLineTests
{
    private static string Annotated(string lines) => AnnotatedRows.Of("slip.turnrow", lines);

    [Fact]
    public void A_row_that_can_not_be_read_leaves_the_count_open_until_the_next_claim() => Assert.Equal(
        """
        piece back
            ~ back begins: 22 chains; right edge 4 -; left edge 4 -
          begin with 20 stitches
          row 1 RS: dc across
            ~ back row 1 RS: 20 dc; opens Foundation ch 22 counts in 4; hook left
          row 2: dc dc dc, =
            ~ back row 2 WS: ?; opens ?; hook right
            ! unexpected-word: `=` can't stand here; it should be a stitch, `leave`, `skip` or `slip`
          row 3: dc across = 20
            ~ back row 3 RS: ?; opens ?; hook left
          row 4: dc across = 21
            ~ back row 4 WS: 20 dc; opens Turned ch 3 counts; hook right
            ! row-count: the claim is 21 sts, and the row makes 20: 1 fewer

        """.ReplaceLineEndings("\n"),
        Annotated("piece back\n  begin with 20 stitches\n  row 1 RS: dc across\n  row 2: dc dc dc, =\n  row 3: dc across = 20\n  row 4: dc across = 21\n"));

    [Theory]
    [InlineData("shape 4 rws: inc 1 at both edges", "straight 2 rows\nrow 77 RS: dc across")] // how many rows there are is open
    [InlineData("leave two at both edges", "row 2: dc 3, leave the rest")] // how many places there are is open
    [InlineData("both edges are", "leave 2 at armhole")] // what the edges are called is open
    [InlineData("begin with stitches", "straight 3 rows")]
    public void What_a_broken_line_may_have_said_is_not_held_against_the_lines_below(string broken, string below)
    {
        var found = Compiled.Piece($"{broken}\n{below}").Compilation.Diagnostics.ToList();
        Assert.All(found, d => Assert.StartsWith("TR01", d.Kind.Code, StringComparison.Ordinal));
        Assert.NotEmpty(found);
    }
}
