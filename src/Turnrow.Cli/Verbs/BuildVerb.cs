using System.CommandLine;
using Turnrow.Cli.Files;
using Turnrow.Cli.Reports;
using Turnrow.Fabric.Stitches;
using Turnrow.Publishing;

namespace Turnrow.Cli.Verbs;

/// <summary><c>turnrow build</c>: writes what is published.</summary>
internal sealed class BuildVerb : Verb
{
    private readonly Argument<string[]> _paths = new("FILE…")
    {
        HelpName = "a FILE",
        Description = "a pattern, or a folder to search for patterns (*.turnrow)",
        Arity = ArgumentArity.OneOrMore,
    };

    private readonly Option<string> _out = new("--out") { HelpName = "DIR", Description = "the folder to write to; it is made if it is not there" };
    private readonly Option<string?> _terms = new("--terms") { HelpName = "US|UK", Description = "the stitch names to write in; unsaid, the pattern's own" };
    private readonly Option<string?> _size = new("--size") { HelpName = "S", Description = "the size to draw charts for; unsaid, the first" };

    public BuildVerb() : base("build", "publish patterns: instructions, page, charts and counts")
    {
        Arguments.Add(_paths);
        Options.Add(_out);
        Options.Add(_terms);
        Options.Add(_size);
    }

    /// <inheritdoc/>
    public override string Usage => "turnrow build FILE… --out DIR [--terms US|UK] [--size S]";

    /// <inheritdoc/>
    public override string About => """
        Writes the instructions for all sizes, the same as a page that prints well, a chart for each
        piece and the counts as tables; and a report for the designer alone, NAME.report.md: how each
        size fits, what was accepted and why. A pattern with errors is published too, as a draft, as
        far as it can be understood. Files with the same names in DIR are replaced; nothing else is touched.
        """;

    /// <inheritdoc/>
    public override string Example => "turnrow build fenland-wrap-waistcoat.turnrow --out published --terms UK";

    /// <inheritdoc/>
    public override int Run(ParseResult line, Terminal terminal)
    {
        if (string.IsNullOrEmpty(line.GetValue(_out))) return terminal.Refuse($"build needs --out DIR, the folder to write to\n  {Usage}");
        Terms? terms = null;
        if (line.GetValue(_terms) is { } word)
        {
            terms = TermsOf(word);
            if (terms is null) return terminal.Refuse($"there are no `{word}` terms{DidYouMean.Choice(word, ["US", "UK"])}");
        }

        var folder = new OutputFolder(line.GetValue(_out)!);
        var taken = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        return InputFiles.ForEach(
            line.GetValue(_paths) ?? [], terminal, file => Publish(terminal, file, folder, terms, line.GetValue(_size), taken), progress: true);
    }

    private static Terms? TermsOf(string word) => word.ToUpperInvariant() switch
    {
        "US" => Terms.US,
        "UK" => Terms.UK,
        _ => null,
    };

    private static int Publish(
        Terminal terminal, PatternFile file, OutputFolder folder, Terms? terms, string? sizeName, Dictionary<string, string> taken)
    {
        var pattern = file.Compilation.Pattern;
        var code = Findings.Write(terminal.Error, file, terminal.ColourError);
        if (!Choice.TrySize(pattern, sizeName, out var size, out var fault)) return terminal.Refuse($"{file.Path} {fault}");
        var name = Path.GetFileNameWithoutExtension(file.Path);
        if (!taken.TryAdd(name, file.Path))
            return terminal.Refuse($"{file.Path} is not published: its files would have the same names as those of {taken[name]}");
        terminal.Error.Flush();
        var options = new PublishOptions(name, terms ?? pattern.Terms, size ?? 0) { LineOf = file.Compilation.LineOf };
        IReadOnlyList<PublishedFile> published = [.. Publisher.Publish(pattern, options), DesignersReport.Of(file, name)];
        try
        {
            var paths = folder.Write(published);
            folder.RemoveLeftCharts(name);
            terminal.Out.WriteLine(Summary.Of(file));
            foreach (var path in paths) terminal.Out.WriteLine("  " + path);
            return code;
        }
        catch (Exception reason) when (FileFault.Is(reason))
        {
            return terminal.Refuse($"{folder.Path} can't be written to: {FileFault.Reason(reason)}");
        }
    }
}
