using System.Text.RegularExpressions;
using Xunit;

namespace Turnrow.Compiler.Tests.Annotated;

/// <summary>A broken line costs itself and what follows from it, and nothing else.</summary>
public sealed partial class BrokenLineTests
{
    // What the messages say is tested where they are.
    private static string Annotated(string lines) => Message().Replace(AnnotatedRows.Of("slip.turnrow", lines), "$1");

    [Fact]
    public void A_row_that_can_not_be_read_leaves_the_count_open_until_the_next_claim() => Assert.Equal(
        """
        piece back
            ~ back begins: 22 chains; right edge 1 - + 2 - + 1 -; left edge 1 - + 2 - + 1 -
          begin with 20 stitches
          row 1 RS: dc across
            ~ back row 1 RS: 20 dc; opens Foundation ch 22 counts in 4; hook left
          row 2: dc dc dc, =
            ~ back row 2 WS: ?; opens ?; hook right
            ! unexpected-word
          row 3: dc across = 20
            ~ back row 3 RS: ?; opens ?; hook left
          row 4: dc across = 21
            ~ back row 4 WS: 20 dc; opens Turned ch 3 counts; hook right
            ! row-count

        """.ReplaceLineEndings("\n"),
        Annotated("piece back\n  begin with 20 stitches\n  row 1 RS: dc across\n  row 2: dc dc dc, =\n  row 3: dc across = 20\n  row 4: dc across = 21\n"));

    [Theory]
    [InlineData("shape 4 rws: inc 1 at both edges", "straight 2 rows\nrow 77 RS: dc across")] // how many rows there are is open
    [InlineData("leave 2 at at both edges", "row 2: dc 3, leave the rest")] // how many places there are is open
    [InlineData("leave 2 at left edge\nstraight 2 rows piece = 18", "add 2 at left edge = 20")] // whether a row was worked over the step is open
    [InlineData("both edges are", "leave 2 at armhole")] // what the edges are called is open
    [InlineData("begin with stitches", "straight 3 rows")]
    public void What_a_broken_line_may_have_said_is_not_held_against_the_lines_below(string broken, string below)
    {
        var found = Compiled.Piece($"{broken}\n{below}").Compilation.Diagnostics.ToList();
        Assert.All(found, d => Assert.StartsWith("TR01", d.Kind.Code, StringComparison.Ordinal));
        Assert.NotEmpty(found);
    }

    [GeneratedRegex("(! [a-z-]+):.*")]
    private static partial Regex Message();
}
