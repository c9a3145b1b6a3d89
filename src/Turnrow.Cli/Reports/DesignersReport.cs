using Turnrow.Cli.Files;
using Turnrow.Compiler;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Publishing;

namespace Turnrow.Cli.Reports;

/// <summary>
/// What a designer keeps of a pattern and no maker sees: how each size fits, what she has accepted and why, what is still open, the yarn,
/// the sample.
/// </summary>
internal static class DesignersReport
{
    /// <summary>The file that <c>build</c> writes beside the published ones.</summary>
    public static PublishedFile Of(PatternFile file, string name)
    {
        using var text = new StringWriter { NewLine = "\n" };
        Write(text, file.Compilation, name);
        return new PublishedFile($"{name}.report.md", text.ToString());
    }

    private static void Write(StringWriter text, Compilation compilation, string name)
    {
        var pattern = compilation.Pattern;
        text.WriteLine($"# {Plain(pattern.Title.Length > 0 ? pattern.Title : name)}: the designer's report\n");
        text.WriteLine("For the designer alone: nothing of this page is in the pattern.");
        Fit(text, pattern);
        Accepted(text, compilation);
        Open(text, compilation);
        Yarn(text, pattern);
        Sample(text, pattern);
    }

    private static void Fit(StringWriter text, Pattern pattern)
    {
        Heading(text, "Finished measures, bodies and ease");
        if (pattern.Finished.Count == 0) text.WriteLine("Nothing is stated: `finished bust is …` says what the garment measures.");
        else FitTable.Write(text, pattern);
        if (pattern.BodySource is { Length: > 0 } source) text.WriteLine($"\nBodies by {Plain(source)}{(pattern.BodyRemark is { } remark ? $" ({Plain(remark)})" : string.Empty)}.");
    }

    private static void Accepted(StringWriter text, Compilation compilation)
    {
        Heading(text, "Accepted");
        if (compilation.Accepted.Count == 0) text.WriteLine("No warning is accepted.");
        foreach (var (warning, reason) in compilation.Accepted)
            text.WriteLine($"- line {compilation.Tree.Source.PositionOf(warning.Span.Start).Line}, `{warning.Kind.Name}`: {Plain(warning.Message)}. Accepted: {Plain(reason)}");
    }

    private static void Open(StringWriter text, Compilation compilation)
    {
        Heading(text, "Open");
        var (errors, warnings) = Summary.Count(compilation.Diagnostics);
        text.WriteLine(errors + warnings == 0 ? "Nothing: no errors and no warnings." : $"{Summary.Findings(errors, warnings)}; `turnrow check` shows all of it.");
        foreach (var finding in compilation.Diagnostics.Take(Findings.Most))
            text.WriteLine($"- line {compilation.Tree.Source.PositionOf(finding.Span.Start).Line}, `{finding.Kind.Name}`: {Plain(finding.Message)}");
    }

    private static void Yarn(StringWriter text, Pattern pattern)
    {
        Heading(text, "Yarn");
        var needs = YarnNeed.All(pattern);
        if (needs.Count == 0) text.WriteLine("No yarn is named.");
        foreach (var need in needs)
        {
            if (need != needs[0]) text.WriteLine();
            Yarn(text, pattern, need);
        }
    }

    private static void Yarn(StringWriter text, Pattern pattern, YarnNeed need)
    {
        var missing = string.Join(", ", need.Unknown.Select(stitch => stitch.In(pattern.Terms).Abbreviation));
        if (need.Grams is not { } grams)
        {
            text.WriteLine($"`{Plain(need.Yarn.Name)}`: not worked out. Weigh a swatch of {missing}, `swatch … weigh … g`.");
            return;
        }

        text.WriteLine($"`{Plain(need.Yarn.Name)}`: {SizedText.Of([.. grams.Select(static g => g.ToTenths())])} g, {Extra(need.Yarn)}.");
        if (missing.Length > 0) text.WriteLine($"Not weighed, and left out: {missing}.");
    }

    private static string Extra(Yarn yarn) =>
        yarn.Extra is { } extra && extra > Rational.Zero ? $"{extra.ToTenths()} % of it added for seams and ends" : "nothing added for seams and ends";

    private static void Sample(StringWriter text, Pattern pattern)
    {
        Heading(text, "The finished sample");
        if (pattern.Made.Count == 0)
        {
            text.WriteLine("Nothing is measured: `made S: back 45.5 cm wide` says what the sample measures.");
            return;
        }

        text.WriteLine("```text");
        SampleReport.Write(text, pattern);
        text.WriteLine("```");
    }

    private static void Heading(StringWriter text, string heading) => text.WriteLine($"\n## {heading}\n");

    // One line, whatever the designer typed.
    private static string Plain(string words) => string.Join(' ', words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).Replace("|", "\\|", StringComparison.Ordinal).Replace("<", "\\<", StringComparison.Ordinal);
}
