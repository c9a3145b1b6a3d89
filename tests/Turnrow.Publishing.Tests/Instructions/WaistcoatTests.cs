using Turnrow.Compiler;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Instructions;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Publishing.Tests.Instructions;

/// <summary>The waistcoat's instructions, whole, in both terms.</summary>
public class WaistcoatTests
{
    [Theory]
    [InlineData(Terms.US, "patterns/fenland-wrap-waistcoat/fenland-wrap-waistcoat.md")]
    [InlineData(Terms.UK, "patterns/fenland-wrap-waistcoat/uk/fenland-wrap-waistcoat.md")]
    public void The_waistcoat_is_written_as_the_trade_prints_it(Terms terms, string golden)
    {
        var text = File.ReadAllText(Repository.PathOf("patterns/fenland-wrap-waistcoat.turnrow"));
        var pattern = Compilation.Of(new SourceText("fenland-wrap-waistcoat.turnrow", text)).Pattern;
        Golden.Matches(golden, WrittenInstructions.Write(pattern, terms));
    }
}
