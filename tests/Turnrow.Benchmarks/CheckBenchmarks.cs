using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Engines;
using Turnrow.Compiler;
using Turnrow.Syntax.Text;

namespace Turnrow.Benchmarks;

/// <summary>Checking a pattern in a process that is warm. Ratios are to the waistcoat.</summary>
[MemoryDiagnoser, MinColumn, MedianColumn]
public class CheckBenchmarks
{
    private readonly string _waistcoat = Texts.Waistcoat;
    private readonly string _thousandLines = Texts.ThousandLines();

    /// <summary>The waistcoat: 51 lines, seven sizes, 1,808 rows.</summary>
    [Benchmark(Baseline = true)]
    public Compilation Waistcoat() => Checked.Text(_waistcoat);

    /// <summary>A thousand lines, three sizes, 6,300 rows.</summary>
    [Benchmark]
    public Compilation ThousandLines() => Checked.Text(_thousandLines);
}

/// <summary>The first check in a process that compiles its own code as it goes.</summary>
[MinColumn, MedianColumn, SimpleJob(RunStrategy.ColdStart, launchCount: 10, warmupCount: 0, iterationCount: 1)]
public class ColdCheckBenchmarks
{
    private readonly string _waistcoat = Texts.Waistcoat;

    /// <summary>The waistcoat.</summary>
    [Benchmark]
    public Compilation Waistcoat() => Checked.Text(_waistcoat);
}

/// <summary>A million stitches cost what their words cost.</summary>
[MemoryDiagnoser, MinColumn, MedianColumn]
public class BlanketBenchmarks
{
    private readonly string _short = Texts.Blanket(10);
    private readonly string _long = Texts.Blanket(1000);

    /// <summary>1,000 stitches, 10 rows.</summary>
    [Benchmark(Baseline = true)]
    public Compilation TenRows() => Checked.Text(_short);

    /// <summary>1,000 stitches, 1,000 rows: a million stitches.</summary>
    [Benchmark]
    public Compilation ThousandRows() => Checked.Text(_long);
}

/// <summary>A round with corners costs what its words cost, however wide it is.</summary>
[MemoryDiagnoser, MinColumn, MedianColumn]
public class SquareBenchmarks
{
    private readonly string _small = Texts.Square(20);
    private readonly string _large = Texts.Square(200);

    /// <summary>20 rounds, 2,520 stitches.</summary>
    [Benchmark(Baseline = true)]
    public Compilation TwentyRounds() => Checked.Text(_small);

    /// <summary>200 rounds, 241,200 stitches.</summary>
    [Benchmark]
    public Compilation TwoHundredRounds() => Checked.Text(_large);
}

/// <summary>A slope over many rows, its schedule worked out anew in each of thirty sizes.</summary>
[MemoryDiagnoser, MinColumn, MedianColumn]
public class TaperBenchmarks
{
    private readonly string _plain = Texts.Tapers(0);
    private readonly string _short = Texts.Tapers(200);
    private readonly string _long = Texts.Tapers(2000);

    /// <summary>Thirty sizes, no slope.</summary>
    [Benchmark(Baseline = true)]
    public Compilation NoSlope() => Checked.Text(_plain);

    /// <summary>Thirty sizes, 200 rows each.</summary>
    [Benchmark]
    public Compilation TwoHundredRows() => Checked.Text(_short);

    /// <summary>Thirty sizes, 2,000 rows each.</summary>
    [Benchmark]
    public Compilation TwoThousandRows() => Checked.Text(_long);
}

internal static class Checked
{
    public static Compilation Text(string text) => Compilation.Of(new SourceText("benchmark.turnrow", text));
}
