using Turnrow.Compiler;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Publishing.Tests;

/// <summary>What is drawn and listed of a whole garment, compiled from its text.</summary>
public sealed class WaistcoatTests
{
    private const string Name = "fenland-wrap-waistcoat";

    private static readonly Compilation Waistcoat =
        Compilation.Of(new SourceText(Name + ".turnrow", File.ReadAllText(Repository.PathOf($"patterns/{Name}.turnrow"))));

    [Theory]
    [InlineData(3, "left-front")]
    [InlineData(6, "back")]
    [InlineData(6, "right-front")]
    public void The_large_sizes_are_drawn_as_they_were(int size, string piece)
    {
        var golden = $"tests/Turnrow.Publishing.Tests/Golden/waistcoat-{Waistcoat.Pattern.Sizes[size]}-{piece}.svg";
        Golden.Matches(golden, Published(size, $"{Name}.{piece}.svg"));
    }

    [Fact]
    public void The_page_holds_the_instructions_and_every_chart_once()
    {
        var page = Published(0, Name + ".html");
        Assert.Contains("<title>Fenland Wrap Waistcoat</title>", page, StringComparison.Ordinal);
        Assert.Contains("Do not fasten off", page, StringComparison.Ordinal);
        foreach (var piece in Waistcoat.Pattern.Pieces)
            Assert.Equal(2, page.Split($"id=\"chart-{piece.Name}-title\"").Length);
        Assert.DoesNotContain("src=", page, StringComparison.Ordinal);
        Assert.DoesNotContain("href=", page, StringComparison.Ordinal);
    }

    private static string Published(int size, string file) =>
        Publisher.Publish(Waistcoat.Pattern, new PublishOptions(Name, Terms.US, size) { LineOf = Waistcoat.LineOf })
            .Single(published => published.Name == file).Text;
}
