using Turnrow.Syntax.Diagnostics;
using Xunit;

namespace Turnrow.Compiler.Tests.Rows;

/// <summary>What is told of a repeat that does not come out: the places it has for itself, and the mend.</summary>
public sealed class RepeatRemainderTests
{
    private const string Square = "piece a\nbegin with 20 stitches\nround 1: sc around\nround 2: (sc 5, mark corner) 4 times\n";

    [Theory]
    [InlineData("round 3: ((sc 2, picot) until 1 remains before corner, sc, sc in corner) around", "of 3 stitches on the way to the corner 1 is left over", "`until 2 remain before corner`")]
    [InlineData("round 3: (sc 3 to corner, 3 sc in corner) around", null, null)]
    [InlineData("round 3: (sc 3) around", "each time takes 3, and of 20 stitches 2 are left over", "`until 2 remain`, and then what these are")]
    public void Up_to_a_corner_it_has_the_way_there(string line, string? message, string? help)
    {
        var found = Compiled.Of(Square + line).Compilation.Diagnostics.SingleOrDefault(static d => d.Kind.Name == "repeat-remainder");
        if (message is null) Assert.Null(found);
        else Assert.Contains(message, found!.Message, StringComparison.Ordinal);
        if (help is not null) Assert.Contains(help, found!.Help, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("row 3: dc, (dc in next sp, ch 1) across", "after 9 times 1 place is left over", "`until 1 remains`, and then what this is")]
    [InlineData("row 3: dc, (dc in next sp, ch 1, dc in next dc) until 5 remain, dc 5", "its last time takes what is to remain", "passes over")]
    public void Where_it_passes_places_over_it_says_how_often_it_went(string line, string message, string help)
    {
        var found = Of("piece a\nbegin with 19 stitches\nrow 1 RS: dc across\nrow 2: dc, (ch 1, skip 1, dc) across\n" + line);
        Assert.Contains(message, found.Message, StringComparison.Ordinal);
        Assert.Contains(help, found.Help, StringComparison.Ordinal);
    }

    private static Diagnostic Of(string lines) => Compiled.Of(lines).Compilation.Diagnostics.Single(static d => d.Kind.Name == "repeat-remainder");
}
