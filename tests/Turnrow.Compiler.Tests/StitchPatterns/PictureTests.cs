using Turnrow.Fabric.Places;
using Xunit;

namespace Turnrow.Compiler.Tests.StitchPatterns;

/// <summary>Stitch patterns drawn as pictures.</summary>
public sealed class PictureTests
{
    private const string Keys = "key first is (dc)\nkey \".\" is (ch 2, skip 2, dc)\nkey \"x\" is (dc 3)\n";

    [Fact]
    public void Open_and_filled_squares_are_as_wide_as_each_other()
    {
        var piece = Filet("| x . |\n| . x |\n| . . |", 19, "straight 9 rows, in squares");
        Assert.Equal(19, piece.Row(1, "mat").Work!.Below.Count);
        // Each row has 6 squares: an open one leaves a stitch and a space, a filled one three stitches.
        Assert.Equal([(7, 6), (13, 3), (13, 3)], Enumerable.Range(1, 3).Select(row => (piece.Row(row, "mat").Work!.Stitches, piece.Row(row, "mat").Work!.Spaces)));
        Assert.All(Enumerable.Range(1, 9), row => Assert.Equal(19, Columns(piece, row)));
    }

    [Fact]
    public void Wrong_side_rows_are_read_from_the_left()
    {
        // The same picture row twice: on the right side the filled square comes last, on the wrong side first.
        var piece = Filet("| x . |\n| x . |", 7, "straight 2 rows, in squares");
        Assert.Equal("dc 1, sp 1, dc 4", Made(piece, 1));
        Assert.Equal("dc 4, sp 1, dc 1", Made(piece, 2));
    }

    [Fact]
    public void The_bottom_line_is_the_first_row()
    {
        var piece = Filet("| x x |\n| . . |", 7, "straight 2 rows, in squares");
        Assert.Equal((3, 2), (piece.Row(1, "mat").Work!.Stitches, piece.Row(1, "mat").Work!.Spaces));
        Assert.Equal((7, 0), (piece.Row(2, "mat").Work!.Stitches, piece.Row(2, "mat").Work!.Spaces));
    }

    [Fact]
    public void A_picture_of_an_odd_number_of_rows_goes_on_on_the_other_side()
    {
        var piece = Filet("| x . . |\n| . x . |\n| . . x |", 19, "straight 12 rows, in squares");
        Assert.Equal(Made(piece, 1).Length, Made(piece, 7).Length);
        Assert.All(Enumerable.Range(1, 12), row => Assert.Equal(19, Columns(piece, row)));
    }

    [Theory]
    [InlineData("| . x |\n| x |", "this row of the picture is 3 stitches wide, and the top one 6")]
    [InlineData("| . o |", "no key says what `o` stands for")]
    [InlineData("| . x . |", "the picture is 9 stitches wide, with 1 at the ends of its rows, and the heading says 6 + 1")]
    [InlineData("| . x |\nrow 1: dc across", "a stitch pattern from a picture has no rows in words")]
    [InlineData("| . x |\nkey \"x\" is (dc 3)", "`x` has a key already")]
    [InlineData("| . x |\nkey \"w\" is (dc 3, ch 1)", "this is 3 wide below and 4 above")]
    [InlineData("| . x |\nkey \"w\" is (dc across)", "a letter stands for stitches, chains and `skip` with their numbers")]
    [InlineData("", "squares has no picture")]
    public void A_picture_that_can_not_be_worked_is_told(string lines, string message)
    {
        var found = Compiled.Of($"stitch pattern squares from picture, over multiple of 6 + 1\n{Keys}{lines}\npiece mat\nbegin with 19 stitches\nstraight 4 rows, in squares").Compilation.Diagnostics;
        Assert.Equal(message, found[0].Message);
        Assert.Equal("picture", found[0].Kind.Name);
    }

    [Fact]
    public void Spaces_that_do_not_meet_are_told()
    {
        const string Text = "stitch pattern odd from picture, over multiple of 6\nkey \"a\" is (ch 2, skip 2, dc)\nkey \"b\" is (dc, ch 2, skip 2)\n| b b |\n| b b |\npiece mat\nbegin with 18 stitches\nstraight 4 rows, in odd";
        Compiled.Of(Text.Replace("| b b |\n| b b |", "| a a |\n| b b |")).Compilation.Diagnostics.ToList().ForEach(d => Assert.Equal("picture", d.Kind.Name));
    }

    [Fact]
    public void The_heading_says_that_it_is_a_picture() =>
        Assert.Equal(["picture"], Compiled.Of($"stitch pattern squares over multiple of 6 + 1\n{Keys}| . x |\npiece mat\nbegin with 19 stitches\nstraight 4 rows, in squares").Found);

    private static Compiled Filet(string picture, int stitches, string line)
    {
        var width = (picture.Split('\n')[0].Split(' ').Length - 2) * 3;
        return Compiled.Whole($"terms US\nstitch pattern squares from picture, over multiple of {width} + 1\n{Keys}{picture}\npiece mat\nbegin with {stitches} stitches\n{line}").Clean();
    }

    private static int Columns(Compiled piece, int row) => piece.Row(row, "mat").Work!.Tops.Kinds().Sum(kind => kind.Count * Math.Max(1, kind.Place.Chains));

    private static string Made(Compiled piece, int row)
    {
        var runs = new List<string>();
        var cursor = new PlaceCursor(piece.Row(row, "mat").Work!.Tops);
        var (name, count) = (string.Empty, 0);
        while (cursor.Remaining > 0)
        {
            var here = cursor.Next.Kind == PlaceKind.Space ? "sp" : cursor.Next.Stitch!.Id;
            if (here != name && count > 0) runs.Add($"{name} {count}");
            count = here == name ? count + 1 : 1;
            name = here;
            cursor.Pass(1);
        }

        runs.Add($"{name} {count}");
        return string.Join(", ", runs);
    }
}
