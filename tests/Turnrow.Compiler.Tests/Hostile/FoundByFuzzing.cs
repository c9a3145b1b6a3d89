using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Compiler.Tests.Hostile;

/// <summary>Inputs that once made the compiler fail, as short as they can be.</summary>
public sealed class FoundByFuzzing
{
    [Theory]
    [InlineData("piece a from a: 3 stitches at right edge\npiece a is a mirrored")]
    [InlineData("piece a\nbegin with 2 stitches\nleave 1 at both edges\nrow: dc across\npiece b from a: 1 stitches at left edge\npiece c is b mirrored")]
    public void Is_answered(string text) => Assert.NotNull(Compilation.Of(new SourceText("found", text)).Diagnostics);
}
