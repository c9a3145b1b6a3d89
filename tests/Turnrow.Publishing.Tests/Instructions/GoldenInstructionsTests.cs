using Turnrow.Fabric.Stitches;
using Xunit;

namespace Turnrow.Publishing.Tests.Instructions;

/// <summary>The instructions of the patterns in <c>patterns/</c>, whole, in both terms.</summary>
public class GoldenInstructionsTests
{
    [Theory]
    [InlineData("fenland-wrap-waistcoat")]
    [InlineData("tideline-slipover")]
    public void A_pattern_is_written_as_the_trade_prints_it(string name)
    {
        var notation = File.ReadAllText(Repository.PathOf($"patterns/{name}.turnrow"));
        Golden.Matches($"patterns/{name}/{name}.md", Written.Of(notation, Terms.US));
        Golden.Matches($"patterns/{name}/uk/{name}.md", Written.Of(notation, Terms.UK));
    }
}
