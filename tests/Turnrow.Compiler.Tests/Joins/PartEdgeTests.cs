using Xunit;

namespace Turnrow.Compiler.Tests.Joins;

/// <summary>Parts of a last row that <c>divide</c> named, as edges: where they lie, and whose stitches they are.</summary>
public sealed class PartEdgeTests
{
    private const string Body = """
        piece back
        begin with 30 stitches
        row 1 RS: sc across
        straight 9 rows
        divide: 8 for right-shoulder, 14 for neck, 8 for left-shoulder
        fasten off
        piece front
        begin with 30 stitches
        row 1 RS: sc across
        straight 9 rows
        divide: 8 for left-shoulder, 14 for neck, 8 for right-shoulder
        fasten off
        seam front right-shoulder with back right-shoulder
        seam front left-shoulder with back left-shoulder

        """;

    [Theory]
    [InlineData("back right edge and front left edge")]
    [InlineData("front right edge and back left edge")]
    [InlineData("front left edge and back right edge", "pick-up-apart")]
    [InlineData("back right edge and front right edge", "pick-up-apart")]
    public void A_sleeve_goes_over_a_shoulder_that_is_sewn_part_to_part(string walk, params string[] found) =>
        Assert.Equal(found, Compiled.Of($"{Body}piece sleeve picked up along {walk}: 1 sc in each row\nrow 2: sc across").Found.Where(static n => n == "pick-up-apart").Distinct());

    [Theory]
    [InlineData("back last row")]
    [InlineData("back right-shoulder")]
    public void Stitches_that_are_sewn_are_not_picked_up_again(string edge) =>
        Assert.Contains("edge-twice", Compiled.Of($"{Body}piece band picked up along {edge}: 1 sc in each st\nrow 2: sc across").Found);

    [Fact]
    public void The_part_between_them_is_free() =>
        Assert.DoesNotContain("edge-twice", Compiled.Of($"{Body}piece band picked up along back neck: 1 sc in each st\nrow 2: sc across").Found);
}
