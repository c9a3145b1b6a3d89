using System.CommandLine;
using Turnrow.Cli.Files;
using Turnrow.Cli.Reports;
using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Patterns;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Cli.Verbs;

/// <summary><c>turnrow gauge</c>: the same pattern for a maker's own gauge.</summary>
internal sealed class GaugeVerb : Verb
{
    private readonly Argument<string> _path = new("FILE") { HelpName = "a FILE", Description = "a pattern" };
    private readonly Option<string?> _stitches = new("--stitches") { HelpName = "N", Description = "your stitches, over the length in the pattern's gauge; unsaid, the pattern's" };
    private readonly Option<string?> _rows = new("--rows") { HelpName = "N", Description = "your rows, over the length in the pattern's gauge; unsaid, the pattern's" };
    private readonly Option<string?> _stitch = new("--stitch") { HelpName = "dc", Description = "the stitch that you counted; unsaid, that of the first gauge" };
    private readonly Option<string?> _size = new("--size") { HelpName = "S", Description = "this size only" };

    public GaugeVerb() : base("gauge", "work a pattern out anew for your own gauge, beside its own counts")
    {
        Arguments.Add(_path);
        Options.Add(_stitches);
        Options.Add(_rows);
        Options.Add(_stitch);
        Options.Add(_size);
    }

    /// <inheritdoc/>
    public override string Usage => "turnrow gauge FILE --stitches N --rows N [--stitch dc] [--size S]";

    /// <inheritdoc/>
    public override string About => """
        Shows your counts beside the pattern's, what each piece measures if you work the pattern's
        counts as they are, and which size then comes nearest to each. What does not work out at your
        gauge is shown at the end. Nothing is written.
        """;

    /// <inheritdoc/>
    public override string Example => "turnrow gauge fenland-wrap-waistcoat.turnrow --stitches 17 --rows 9";

    /// <inheritdoc/>
    public override int Run(ParseResult line, Terminal terminal)
    {
        var (stitches, rows) = (line.GetValue(_stitches)?.Trim(), line.GetValue(_rows)?.Trim());
        if (stitches is null && rows is null) return terminal.Refuse($"gauge needs --stitches N or --rows N, what you counted on your swatch\n  {Usage}");
        foreach (var typed in new[] { stitches, rows })
        {
            if (typed is not null && MakersText.Number(typed) is null)
                return terminal.Refuse($"`{typed}` can't be counted on a swatch; write a number above 0, such as 17, 17.5 or \"17 1/2\"");
        }

        return InputFiles.One(line.GetValue(_path) ?? "", terminal, file => Show(terminal, file, stitches, rows, line.GetValue(_stitch), line.GetValue(_size)));
    }

    private static int Show(Terminal terminal, PatternFile file, string? stitches, string? rows, string? stitch, string? size)
    {
        var pattern = file.Compilation.Pattern;
        var code = Findings.Write(terminal.Error, file, terminal.ColourError);
        if (!Choice.TrySize(pattern, size, out var only, out var fault) || !TryGauge(pattern, stitch, out var gauge, out fault))
            return terminal.Refuse($"{file.Path} {fault}");
        if (LineOf(file, gauge) is not { } said) return terminal.Refuse($"{file.Path} has no gauge line that could be changed");

        var text = MakersText.Of(file.Compilation.Tree, pattern, said, stitches, rows);
        var hers = file.With(text.Worked);
        IReadOnlyList<int> sizes = only is { } one ? [one] : [.. Enumerable.Range(0, pattern.Sizes.Count)];
        WriteHead(terminal.Out, file, hers, gauge, text);
        WriteTables(terminal.Out, pattern, hers.Compilation.Pattern, sizes);
        return Math.Max(code, WriteFindings(terminal, file, hers, text.Shown));
    }

    private static bool TryGauge(Pattern pattern, string? word, out Gauge gauge, out string fault)
    {
        (gauge, fault) = (null!, string.Empty);
        var gauges = pattern.Gauges.Gauges;
        if (gauges.Count == 0)
        {
            fault = "gives no gauge, so there is nothing to put yours in the place of";
            return false;
        }

        if ((word is null ? gauges[0] : gauges.FirstOrDefault(each => IsOf(pattern, each, word))) is { } found)
        {
            gauge = found;
            return true;
        }

        fault = $"has no gauge for `{word}`{DidYouMean.Choice(word!, [.. gauges.Select(each => Word(pattern, each))])}";
        return false;
    }

    private static GaugeStatement? LineOf(PatternFile file, Gauge gauge)
    {
        foreach (var line in file.Compilation.Tree.Lines)
        {
            if (!line.Broken && line.Statement is GaugeStatement said && IsOf(file.Compilation.Pattern, gauge, said.Stitch.Text)) return said;
        }

        return null;
    }

    private static void WriteHead(TextWriter writer, PatternFile file, PatternFile hers, Gauge gauge, MakersText text)
    {
        var pattern = file.Compilation.Pattern;
        writer.WriteLine($"{file.Path}{(pattern.Sizes.Count > 1 ? $", sizes {SizedText.Of([.. pattern.Sizes])}" : string.Empty)}");
        writer.WriteLine($"  the pattern's gauge   {Written(file, gauge)}");
        writer.WriteLine($"  your gauge            {Written(hers, gauge)}");
        var others = pattern.Gauges.Gauges.Where(each => each.Stitch != gauge.Stitch).Select(each => Word(pattern, each)).ToList();
        if (others.Count > 0) writer.WriteLine($"  the gauge of {string.Join(", ", others)} stays as the pattern has it");
        if (text.ClaimsLeftOut > 0) writer.WriteLine($"  {Summary.Many(text.ClaimsLeftOut, "count")} behind `=` in plain numbers {(text.ClaimsLeftOut == 1 ? "is" : "are")} the pattern's own, and not held against yours");
    }

    private static string Written(PatternFile file, Gauge gauge)
    {
        if (LineOf(file, gauge) is not { } line) return "?";
        var source = file.Compilation.Tree.Source;
        string Over(GaugeSpanSyntax span) => $"{source.ToString(span.Length.Span)} {source.ToString(span.Unit.Span)}";
        var (stitches, rows) = (source.ToString(line.Stitches.Count.Span), source.ToString(line.Rows.Count.Span));
        var what = line.OfRepeats ? "repeats" : "stitches";
        return Over(line.Stitches) == Over(line.Rows)
            ? $"{line.Stitch.Text}: {stitches} {what} and {rows} rows to {Over(line.Rows)}"
            : $"{line.Stitch.Text}: {stitches} {what} to {Over(line.Stitches)}, {rows} rows to {Over(line.Rows)}";
    }

    private static void WriteTables(TextWriter writer, Pattern pattern, Pattern hers, IReadOnlyList<int> sizes)
    {
        var report = new GaugeReport(pattern, hers, sizes);
        var shown = pattern.Sizes.Count > 1 ? $", {(sizes.Count == 1 ? "size" : "sizes")} {SizedText.Of([.. sizes.Select(i => pattern.Sizes[i])])}" : string.Empty;
        writer.WriteLine($"\nYour counts{shown}");
        report.WriteCounts(writer);
        writer.WriteLine($"\nThe pattern's own counts, worked as they are{shown}");
        report.WriteMeasures(writer);
        if (pattern.Sizes.Count < 2) return;
        writer.WriteLine("\nThe size whose own counts come nearest, by the widths of all pieces together");
        new NearestSizes(pattern, hers.Gauges).Write(writer, sizes);
    }

    // What the pattern has of itself was told before; what the designer's sample measures, and has thought about, is not the maker's.
    private static int WriteFindings(Terminal terminal, PatternFile file, PatternFile hers, string shown)
    {
        var own = file.Compilation.Diagnostics.Select(finding => Key(file, finding)).ToHashSet();
        var found = hers.Compilation.Diagnostics
            .Where(finding => finding.Kind != MadeOff.Kind && finding.Kind != AcceptUnused.Kind && !own.Contains(Key(hers, finding)))
            .ToList();
        terminal.Out.WriteLine(found.Count == 0 ? "\nEvery row and seam works out at your gauge." : "\nAt your gauge, though not at the pattern's own, this is found:\n");
        var source = new SourceText(file.Path, shown);
        foreach (var finding in found.Take(Findings.Most)) terminal.Out.Write(DiagnosticPrinter.Print(finding, source, terminal.ColourOut) + "\n");
        if (found.Count > Findings.Most) terminal.Out.Write($"… and {found.Count - Findings.Most} more\n");
        return found.Exists(finding => finding.Kind.Severity == Severity.Error) ? ExitCode.Errors : ExitCode.Clean;
    }

    private static (string Code, int Line) Key(PatternFile file, Diagnostic finding) =>
        (finding.Kind.Code, file.Compilation.Tree.Source.PositionOf(finding.Span.Start).Line);

    // The name of a stitch pattern, or a stitch in the pattern's terms.
    private static bool IsOf(Pattern pattern, Gauge gauge, string word) => string.Equals(Word(pattern, gauge), word, StringComparison.OrdinalIgnoreCase);

    private static string Word(Pattern pattern, Gauge gauge) => gauge.Stitch.In(pattern.Terms).Abbreviation;
}
