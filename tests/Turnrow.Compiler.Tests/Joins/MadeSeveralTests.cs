using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Patterns;
using Xunit;

namespace Turnrow.Compiler.Tests.Joins;

/// <summary>A piece that is told once and made several times.</summary>
public sealed class MadeSeveralTests
{
    private const string Sleeve = "piece sleeve, make 2\nbegin with 20 stitches\nboth edges are side\nrow 1 RS: dc across\nstraight 9 rows\n";
    private const string Body = "piece body\nbegin with 20 stitches\nrow 1 RS: dc across\nstraight 9 rows\n";

    [Fact]
    public void Each_is_joined_once()
    {
        var compiled = Compiled.Of(Sleeve + Body + "seam first sleeve last row with body last row\nseam second sleeve last row with body foundation\nseam sleeve right side with sleeve left side\nweave in ends\n").Clean();
        var seams = compiled.Pattern.Items.OfType<SeamInSizes>().Select(s => s.InSizes[0]!).ToList();
        Assert.Equal(["first-sleeve", "second-sleeve", "each-sleeve"], seams.Select(s => s.First.Piece.Name));
        Assert.Equal([2, 1], compiled.Pattern.Pieces.Select(p => p.Copies));
    }

    [Fact]
    public void An_edge_of_one_is_used_once() => Assert.Contains(
        EdgeTwice.Kind.Name,
        Compiled.Of(Sleeve + Body + "seam first sleeve last row with body last row\nseam first sleeve last row with body foundation\n").Found);

    [Fact]
    public void What_is_said_of_each_is_used_of_each() => Assert.Contains(
        EdgeTwice.Kind.Name,
        Compiled.Of(Sleeve + Body + "seam sleeve right side with sleeve left side\nseam second sleeve left side with body right edge\n").Found);

    [Fact]
    public void One_that_is_joined_to_nothing_is_told() => Assert.Contains(
        Compiled.Of(Sleeve + Body + "seam first sleeve last row with body last row\n").Compilation.Diagnostics,
        d => d.Kind == PieceUnjoined.Kind && d.Message.Contains("second-sleeve", StringComparison.Ordinal));

    [Theory]
    [InlineData("seam sleeve last row with body last row\n")]
    [InlineData("seam third sleeve last row with body last row\n")]
    [InlineData("piece cuff picked up along sleeve foundation: 1 sc in each st\n")]
    [InlineData("piece cuff from sleeve: 10 stitches at right edge\nrow: dc across\n")]
    [InlineData("piece cuff, make 2 from body: 10 stitches at right edge\nrow: dc across\n")]
    [InlineData("piece cuff, make 5\nbegin with 10 stitches\nrow 1 RS: dc across\n")]
    public void What_can_not_be_said_of_several(string line) =>
        Assert.Contains(MadeSeveral.Kind.Name, Compiled.Of(Sleeve + Body + line).Found);

    [Fact]
    public void A_band_is_picked_up_along_one_of_them() =>
        Assert.Equal([20], Compiled.Of(Sleeve + Body + "piece cuff picked up along second sleeve foundation: 1 sc in each st\n").Counts("cuff"));

    [Fact]
    public void Its_yarn_counts_each_time()
    {
        const string head = "yarn wool, 50 g\nswatch dc: 20 stitches and 10 rows weigh 10 g\n";
        var once = YarnNeed.Of(Compiled.Of(head + Sleeve.Replace(", make 2", "", StringComparison.Ordinal)).Pattern);
        var twice = YarnNeed.Of(Compiled.Of(head + Sleeve).Pattern);
        Assert.Equal(once!.Grams![0] * 2, twice!.Grams![0]);
    }
}
