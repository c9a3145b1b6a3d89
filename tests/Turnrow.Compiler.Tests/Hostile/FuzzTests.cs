using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Xunit;

namespace Turnrow.Compiler.Tests.Hostile;

/// <summary>
/// Random input, from noise to spliced patterns: the compiler always answers, and soon. What was found once stands in
/// <see cref="FoundByFuzzing"/>; how time and memory are measured, in <see cref="FuzzRun"/>.
/// </summary>
[Collection(nameof(Alone))]
public sealed class FuzzTests
{
    private const int Printed = 5;

    [Fact]
    public void No_input_is_too_strange()
    {
        var faults = new FuzzRun(Compile).Faults(FuzzRun.Inputs);
        Assert.True(faults.Count == 0, string.Join("\n\n", faults));
    }

    private static void Compile(SourceText source)
    {
        var found = Compilation.Of(source).Diagnostics;
        foreach (var diagnostic in found.Take(Printed)) DiagnosticPrinter.Print(diagnostic, source);
        foreach (var diagnostic in found)
            Assert.True(diagnostic.Span.Start >= 0 && diagnostic.Span.End <= source.Text.Length && diagnostic.Message.Length > 0, diagnostic.Kind.Name);
    }
}
