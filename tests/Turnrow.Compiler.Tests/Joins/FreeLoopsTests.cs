using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Xunit;

namespace Turnrow.Compiler.Tests.Joins;

/// <summary>Loops that a row through one loop left free, worked into later.</summary>
public sealed class FreeLoopsTests
{
    private static Compiled Body(string rows, string more) => Compiled.Of($"turn sc: ch 1 does not count\ncount nth is 2\npiece body\nbegin with 12 stitches\n{rows}\nfasten off\n{more}");

    [Theory]
    [InlineData("round 1: sc around\nround 2: sc around\nround 3: back-loop sc around", "2", true)]
    [InlineData("round 1: sc around\nround 2: sc around\nround 3: back-loop sc around", "nth", true)]
    [InlineData("round 1: sc around\nround 2: sc around\nround 3: front-loop sc inc 3 evenly\nround 4: sc around", "2", false)]
    [InlineData("round 1: sc around\nround 2: sc around\nround 3: back-loop dc 6, back-loop sc around", "2", true)]
    [InlineData("row 1 RS: sc across\nrow 2: sc across\nrow 3: back-loop sc across", "2", true)]
    [InlineData("row 1 WS: sc across\nrow 2: sc across\nrow 3: back-loop sc across", "2", false)]
    public void Loops_left_free_are_an_edge_on_the_side_where_they_lie(string rows, string row, bool rightSide)
    {
        var compiled = Body(rows, $"piece skirt picked up along body round {row}: 2 sc in each st = 24").Clean();
        var leg = Assert.Single(((PickUpStart)compiled.Piece("skirt", 0).Start!).Walk);
        Assert.Equal((StretchKind.FreeLoops, 2, 12), (leg.Stretch.Kind, leg.Stretch.FirstRow, leg.Stretch.Count));
        Assert.Equal(rightSide, FreeLoops.LieOnRightSide(leg.Piece, 2));
    }

    [Theory]
    [InlineData("round 2: sc around\nround 3: sc around", "2", "is not worked through one loop of round 2")]
    [InlineData("round 2: sc around\nround 3: (back-loop sc, sc) around", "2", "is not worked through one loop of round 2")]
    [InlineData("round 2: sc around\nround 3: (back-loop sc, front-loop sc) around", "2", "and through the back loop of others")]
    [InlineData("round 2: sc around\nround 3: (back-loop sc, skip 1) around", "2", "is not worked into every stitch of round 2")]
    [InlineData("round 2: (sc, ch 1, skip 1) around\nround 3: (back-loop sc in next st, skip 1) around", "2", "has chain spaces")]
    [InlineData("round 2: back-loop sc around", "2", "is the last of body")]
    [InlineData("round 2: back-loop sc around", "3", "has 2 rounds, and no round 3")]
    public void A_row_that_leaves_none_is_told(string rows, string row, string message)
    {
        var found = Body("round 1: sc around\n" + rows, $"piece skirt picked up around body round {row}: 1 sc in each st").Compilation.Diagnostics;
        Assert.Contains(message, Assert.Single(found, d => d.Kind.Name == "loops-taken").Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_loops_are_taken_once()
    {
        const string Rows = "round 1: sc around\nround 2: back-loop sc around\nround 3: back-loop sc around";
        const string Skirt = "picked up around body round 1: 1 sc in each st\nfasten off\n";
        Assert.Contains("edge-twice", Body(Rows, $"piece skirt {Skirt}seam skirt last row with body row 1").Found);
        Assert.DoesNotContain("edge-twice", Body(Rows, $"piece skirt {Skirt}seam skirt last row with body row 2").Found);
    }
}
