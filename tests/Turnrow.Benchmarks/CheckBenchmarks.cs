using BenchmarkDotNet.Attributes;
using Turnrow.Compiler;
using Turnrow.Syntax.Text;

namespace Turnrow.Benchmarks;

/// <summary>Checking a pattern in a process that is warm. Ratios are to the waistcoat.</summary>
[MemoryDiagnoser]
public class CheckBenchmarks
{
    private readonly string _waistcoat = Texts.Waistcoat;
    private readonly string _thousandLines = Texts.ThousandLines();
    private readonly string _shortBlanket = Texts.Blanket(10);
    private readonly string _longBlanket = Texts.Blanket(1000);

    /// <summary>The waistcoat: 55 lines, seven sizes, 1,808 rows.</summary>
    [Benchmark(Baseline = true)]
    public Compilation Waistcoat() => Check(_waistcoat);

    /// <summary>A thousand lines, three sizes.</summary>
    [Benchmark]
    public Compilation ThousandLines() => Check(_thousandLines);

    /// <summary>1,000 stitches, 10 rows.</summary>
    [Benchmark]
    public Compilation BlanketOfTenRows() => Check(_shortBlanket);

    /// <summary>1,000 stitches, 1,000 rows: a million stitches.</summary>
    [Benchmark]
    public Compilation BlanketOfAMillionStitches() => Check(_longBlanket);

    private static Compilation Check(string text) => Compilation.Of(new SourceText("benchmark.turnrow", text));
}
