using Turnrow.Syntax.Text;
using Xunit;
using Xunit.Abstractions;

namespace Turnrow.Compiler.Tests.Mutations;

public sealed class SlipTests(ITestOutputHelper output)
{
    [Fact]
    public void Explore()
    {
        var patterns = Patterns.All.Select(p => new SlipPattern(p)).ToList();
        var slips = patterns.SelectMany(p => Enumerable.Range(0, p.Tree.Lines.Count).SelectMany(i => NumberSlips.Of(p, i).Concat(LineSlips.Of(p, i)).Concat(NameSlips.Of(p, i)).Concat(PartSlips.Of(p, i)).Concat(WordSlips.Of(p, i)))).ToList();
        var lines = new System.Collections.Concurrent.ConcurrentBag<(string Kind, string Line)>();
        var watch = System.Diagnostics.Stopwatch.StartNew();
        Parallel.ForEach(slips, slip =>
        {
            var after = Compilation.Of(new SourceText("x", slip.Edit.Text));
            var how = after.Diagnostics.Count > 0 ? "FOUND " + after.Diagnostics[0].Kind.Name : SameGarment.Is(slip.Pattern.Compilation.Pattern, after.Pattern) ? "SAME" : "LIVES";
            lines.Add((slip.Kind, how + " " + slip.Shown));
        });
        output.WriteLine($"{slips.Count} {watch.Elapsed}");
        File.WriteAllLines("/tmp/mut_slips.txt", lines.OrderBy(l => l.Kind).ThenBy(l => l.Line).Select(l => l.Line));
    }
}
