using System.Collections.Concurrent;
using System.Globalization;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;
using Xunit;
using Xunit.Abstractions;

namespace Turnrow.Compiler.Tests.Breaking;

/// <summary>
/// One wrong token costs its own line: every wrong claim whose value does not come from the broken line is still found, and nothing is said
/// that follows from the break alone.
/// </summary>
public sealed class BreakTests(ITestOutputHelper output)
{
    // So many breaks of a pattern, all through it; the waistcoat is always broken everywhere.
    private static readonly int Most = Breaks.Thorough ? 2000 : 100;

    private const string Waistcoat = "patterns/fenland-wrap-waistcoat.turnrow";
    private const double MostExcused = 0.22;

    // Where nearly every row goes on from the corners of the one below, or from the stitch pattern's row before, a row that can't be read leaves all below it in doubt.
    private const double MostExcusedAtCorners = 0.45;
    private const double MostExcusedInPatterns = 0.55;
    private const int Shown = 25;

    private static readonly ConcurrentDictionary<string, ICollection<(BrokenPattern Broken, int Times)>> Shapes = [];

    public static TheoryData<string> Paths => [.. Patterns.All];

    /// <summary>Those that make something: a library of stitch patterns claims nothing.</summary>
    public static TheoryData<string> Pieces => [.. Patterns.All.Where(path => Repository.PatternNames.Contains(Path.GetFileNameWithoutExtension(path)))];

    [Theory]
    [MemberData(nameof(Pieces))]
    public void A_claim_made_wrong_is_found(string path)
    {
        var pattern = ClaimedPattern.Read(path);
        Assert.Empty(Compilation.Of(pattern.Tree.Source, Repository.Beside).Diagnostics);
        Assert.Empty(Compilation.Of(pattern.Tree.Source, Repository.Beside).MissingClaims);
        Assert.NotEmpty(pattern.Plants);
        foreach (var plant in pattern.Plants)
        {
            var wrong = pattern.Tree.Source.Text.Insert(plant.Position, plant.Text);
            var found = Assert.Single(Compilation.Of(new SourceText(path, wrong), Repository.Beside).Diagnostics);
            Assert.Equal(RowCount.Kind, found.Kind);
        }
    }

    [Theory]
    [MemberData(nameof(Pieces))]
    public void A_broken_line_hides_no_wrong_claim_that_does_not_depend_on_it(string path)
    {
        var pattern = ClaimedPattern.Read(path);
        var (unreadable, changed) = (new Tally(), new Tally());
        ForEachShape(pattern, (broken, times) =>
        {
            var plants = pattern.Plants.Where(plant => !broken.Changed.Contains(plant.Line)).ToList();
            var due = plants.Where(plant => broken.Known.CanCheck(plant.Line)).ToList();
            (broken.IsUnreadable ? unreadable : changed).Count(plants.Count, due.Count, times);
            var found = broken.Compile(due).Where(f => f.Found.Kind == RowCount.Kind).Select(f => f.Line).ToHashSet();
            foreach (var plant in due.Where(plant => !found.Contains(plant.Line)))
                unreadable.Fault($"line {LineNumber(pattern, plant)} is not found wrong when {broken}");
        });
        output.WriteLine($"{path}: a wrong claim depends on a line that can't be read in {unreadable}, and on one that says something else in {changed}");
        unreadable.AssertNone();
        Assert.True(unreadable.Share < MostExcusedOf(pattern), $"a line that can't be read excuses more than it should: {unreadable}");
    }

    [Theory]
    [MemberData(nameof(Paths))]
    public void A_broken_line_says_nothing_but_what_is_wrong_with_it(string path)
    {
        var tally = new Tally();
        ForEachShape(ClaimedPattern.Read(path), (broken, _) =>
        {
            if (!broken.IsUnreadable) return;
            foreach (var (_, found) in broken.Compile([])) tally.Fault($"{found.Kind.Name}: {found.Message}: when {broken}");
        });
        tally.AssertNone();
    }

    // The compiler sees a line's tree and nothing else of it: breaks that leave the same tree are one.
    private static void ForEachShape(ClaimedPattern pattern, Action<BrokenPattern, int> check) =>
        Parallel.ForEach(Shapes.GetOrAdd(pattern.Tree.Source.FileName, _ => ShapesOf(pattern)), shape => check(shape.Broken, shape.Times));

    private static ICollection<(BrokenPattern Broken, int Times)> ShapesOf(ClaimedPattern pattern)
    {
        var shapes = new ConcurrentDictionary<string, (BrokenPattern Broken, int Times)>();
        var all = Breaks.Of(pattern.Tree).ToList();
        var step = pattern.Tree.Source.FileName == Waistcoat ? 1 : Math.Max(1, all.Count / Most);
        var edits = all.Where((_, i) => i % step == 0);
        Parallel.ForEach(edits, edit =>
        {
            var broken = new BrokenPattern(pattern.Words, edit);
            shapes.AddOrUpdate(broken.Shape, (broken, 1), (_, known) => (known.Broken, known.Times + 1));
        });
        return shapes.Values;
    }

    private static double MostExcusedOf(ClaimedPattern pattern) => IsAllCorners(pattern) ? MostExcusedAtCorners
        : pattern.Tree.Lines.Any(line => line.Statement is UseStatement or StitchPatternStatement) || IsAllKinds(pattern) ? MostExcusedInPatterns
        : MostExcused;

    private static bool IsAllCorners(ClaimedPattern pattern)
    {
        var rows = pattern.Tree.Lines.Select(line => line.Statement).OfType<RowStatement>().ToList();
        return 2 * rows.Count(row => KnownCounts.SpeaksOfCorners(row.Items)) > rows.Count;
    }

    // Claims by kind tell how many there are, and not in what order.
    private static bool IsAllKinds(ClaimedPattern pattern)
    {
        var claims = pattern.Tree.Lines.Select(line => Claims.Of(line.Statement)).OfType<ClaimSyntax>().ToList();
        return 2 * claims.Count(claim => claim.Parts.All(part => part.Kind is not null)) > claims.Count;
    }

    private static int LineNumber(ClaimedPattern pattern, Plant plant) =>
        pattern.Tree.Source.PositionOf(pattern.Tree.Lines[plant.Line].Span.Start).Line;

    private sealed class Tally
    {
        private readonly ConcurrentQueue<string> _faults = [];
        private long _pairs;
        private long _excused;

        public double Share => (double)_excused / Math.Max(1, _pairs);

        public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{_excused} of {_pairs} cases ({100 * Share:0.0} %)");

        public void Count(int pairs, int due, int times)
        {
            Interlocked.Add(ref _pairs, (long)pairs * times);
            Interlocked.Add(ref _excused, (long)(pairs - due) * times);
        }

        public void Fault(string text) => _faults.Enqueue(text);

        public void AssertNone() =>
            Assert.True(_faults.IsEmpty, $"{_faults.Count} faults:\n{string.Join('\n', _faults.Order(StringComparer.Ordinal).Take(Shown))}");
    }
}
