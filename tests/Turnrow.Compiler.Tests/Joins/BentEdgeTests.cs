using Xunit;

namespace Turnrow.Compiler.Tests.Joins;

/// <summary>How long the edge of a piece is whose rows bend at a corner or open like a fan: as long as its rows are high.</summary>
public sealed class BentEdgeTests
{
    private const string Gauge = "gauge sc: 16 stitches and 16 rows to 10 cm\n";

    [Theory]
    // A mitred square, its rows from two sides in to a corner: 16 rows, 10 cm.
    [InlineData("begin with 33 stitches\nrow 1: sc 17, mark corner, sc across\nrow 2: sc until 1 remains before corner, sc3tog, sc across\nrepeat row 2, 14 more times", 16, true)]
    [InlineData("begin with 33 stitches\nrow 1: sc 17, mark corner, sc across\nrow 2: sc until 1 remains before corner, sc3tog, sc across\nrepeat row 2, 14 more times", 24, false)]
    // A half circle of rows round a ring.
    [InlineData("begin with ring\nrow 1 RS: 6 sc in ring\nrow 2: inc across\nrow 3: (sc, inc) across\nrow 4: (sc 2, inc) across\nrow 5: (sc 3, inc) across\nrow 6: (sc 4, inc) across\nrow 7: (sc 5, inc) across\nrow 8: (sc 6, inc) across", 8, true)]
    // What grows at the edge slopes it: a triangle with as many rows as stitches at each side of its middle, 45 degrees.
    [InlineData("begin with 3 stitches\nrow 1: sc across\nrow 2: inc, sc until 1 remains, inc\nrepeat row 2, 14 more times", 22, true)]
    [InlineData("begin with 3 stitches\nrow 1: sc across\nrow 2: inc, sc until 1 remains, inc\nrepeat row 2, 14 more times", 16, false)]
    public void So_many_lie_flat_along_it(string piece, int stitches, bool flat)
    {
        var found = Compiled.Whole(FormattableString.Invariant($"notation 1\npattern \"Bent\"\nterms US\nhook 4 mm\n{Gauge}piece one\n{piece}\nfasten off\npiece band picked up along one right edge: {stitches} sc evenly\nrow 2: sc across\n")).Found;
        Assert.Equal(!flat, found.Contains("pick-up-flat"));
    }
}
