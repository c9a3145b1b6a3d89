using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Compiler.Tests.StitchPatterns;

/// <summary>Stitch patterns of other files.</summary>
public sealed class UseTests
{
    private const string Rib = "terms US\nstitch pattern rib over multiple of 2 + 1\nrow 1: sc, (dc, sc) across\nrow 2: sc across\n";
    private const string Piece = "piece back\nbegin with 21 stitches\nstraight 6 rows, in rib\n";

    [Fact]
    public void They_are_worked_as_if_they_were_the_files_own() => Assert.Empty(Found("terms US\nuse \"rib.turnrow\"\n" + Piece, ("rib.turnrow", Rib)));

    [Fact]
    public void Words_mean_what_they_mean_in_their_own_file()
    {
        var compilation = Compile("terms UK\nuse \"rib.turnrow\"\n" + Piece, ("rib.turnrow", Rib));
        Assert.Empty(compilation.Diagnostics);
        Assert.Equal("sc", compilation.Pattern.Pieces.Single().InSizes[0].Rows[0].Work!.Tops.First.Stitch!.Id);
    }

    [Fact]
    public void A_file_brings_those_that_it_uses() =>
        Assert.Empty(Found("terms US\nuse \"all.turnrow\"\n" + Piece, ("all.turnrow", "use \"rib.turnrow\"\n"), ("rib.turnrow", Rib)));

    [Fact]
    public void A_file_may_be_reached_in_two_ways() => Assert.Empty(Found(
        "terms US\nuse \"a.turnrow\"\n" + Piece, ("a.turnrow", "use \"b.turnrow\"\nuse \"rib.turnrow\"\n"), ("b.turnrow", "use \"rib.turnrow\"\n"), ("rib.turnrow", Rib)));

    [Theory]
    [InlineData("use \"ribs.turnrow\"", "there is no file ribs.turnrow beside the pattern that could be read")]
    [InlineData("use \"rib.turnrow\"\nuse \"rib.turnrow\"", "rib.turnrow is used twice")]
    [InlineData("use \"test.turnrow\"", "test.turnrow uses itself")]
    [InlineData("use \"one.turnrow\"", "these files use each other: one.turnrow uses two.turnrow uses one.turnrow")]
    [InlineData("use \"back.turnrow\"", "these files use each other: test.turnrow uses back.turnrow uses test.turnrow")]
    [InlineData("use \"gone.turnrow\"", "there is no file away.turnrow beside the pattern that could be read (gone.turnrow uses it)")]
    [InlineData("use \"wrong.turnrow\"", "line 3 of wrong.turnrow: the repeat does not come out")]
    [InlineData("use \"broken.turnrow\"", "line 1 of broken.turnrow: ")]
    public void What_can_not_be_used_is_told_at_the_line_that_uses_it(string lines, string message)
    {
        var found = Compile(
            "terms US\n" + lines + "\n" + Piece,
            ("rib.turnrow", Rib),
            ("one.turnrow", "use \"two.turnrow\"\n" + Rib),
            ("two.turnrow", "use \"one.turnrow\"\n"),
            ("back.turnrow", "use \"test.turnrow\"\n" + Rib),
            ("gone.turnrow", "use \"away.turnrow\"\n"),
            ("wrong.turnrow", Rib.Replace("(dc, sc)", "(dc 2, sc)")),
            ("broken.turnrow", "stitch patern rib over multiple of 2\n")).Diagnostics.Where(d => d.Kind.Name == "use-file").ToList();
        Assert.StartsWith(message, Assert.Single(found).Message);
    }

    [Fact]
    public void Only_what_is_worked_in_is_looked_into()
    {
        var rest = "stitch pattern waves over multiple of 2 + 1\nrow 1: sc, (dc 2, sc) across\n";
        Assert.Empty(Found("terms US\nuse \"rib.turnrow\"\n" + Piece, ("rib.turnrow", Rib + rest)));
        var found = Compile("terms US\nuse \"rib.turnrow\"\n" + Piece.Replace("in rib", "in waves") + "straight 4 rows, in waves\n", ("rib.turnrow", Rib + rest)).Diagnostics;
        Assert.StartsWith("line 6 of rib.turnrow: the repeat does not come out", Assert.Single(found).Message);
    }

    [Fact]
    public void A_stitch_that_is_defined_further_down_is_not_known_above_it()
    {
        var late = "terms US\nstitch pattern pebbles over multiple of 2 + 1\nrow 1: sc, (pebble, sc) across\nrow 2: sc across\nstitch pebble is 4 dc together in one place\n";
        var found = Compile("terms US\nuse \"late.turnrow\"\n" + Piece, ("late.turnrow", late), ("rib.turnrow", Rib)).Diagnostics;
        Assert.Contains(found, d => d.Kind.Name == "use-file" && d.Message.StartsWith("line 3 of late.turnrow", StringComparison.Ordinal));
    }

    [Fact]
    public void A_name_that_both_have_is_told() =>
        Assert.Equal(["defined-twice"], Found("terms US\nuse \"rib.turnrow\"\n" + Rib.Replace("terms US\n", string.Empty) + Piece, ("rib.turnrow", Rib)));

    private static IEnumerable<string> Found(string text, params (string Name, string Text)[] beside) => Compile(text, beside).Diagnostics.Select(d => d.Kind.Name);

    private static Compilation Compile(string text, params (string Name, string Text)[] beside) =>
        Compilation.Of(new SourceText("test.turnrow", text), name => Array.Find(beside, file => file.Name == name).Text);
}
