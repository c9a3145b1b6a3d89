using System.Xml.Linq;
using Turnrow.Compiler;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Publishing.Tests.Hostile;

/// <summary>
/// Whatever the compiler makes of random input can be published, with errors (as a draft) or without. A tenth of the inputs that the
/// compiler is tried with, since publishing one takes so much longer.
/// </summary>
[Collection(nameof(Alone))]
public sealed class FuzzTests
{
    private const int OneIn = 10;

    [Fact]
    public void Whatever_compiles_can_be_published()
    {
        var faults = new FuzzRun(Publish).Faults(FuzzRun.Inputs / OneIn);
        Assert.True(faults.Count == 0, string.Join("\n\n", faults));
    }

    private static void Publish(SourceText source)
    {
        var compilation = Compilation.Of(source);
        var pattern = compilation.Pattern;
        var terms = source.Text.Length % 2 == 0 ? Terms.US : Terms.UK;
        var options = new PublishOptions("fuzz", terms, Math.Max(0, pattern.Sizes.Count - 1)) { LineOf = compilation.LineOf };
        foreach (var file in Publisher.Publish(pattern, options))
        {
            Assert.NotEqual(string.Empty, file.Text);
            if (file.Name.EndsWith(".svg", StringComparison.Ordinal)) Assert.NotNull(XDocument.Parse(file.Text).Root);
        }
    }
}
