using System.CommandLine;
using Turnrow.Cli.Files;
using Turnrow.Cli.Reports;

namespace Turnrow.Cli.Verbs;

/// <summary><c>turnrow check</c>: what does not work out, and where.</summary>
internal sealed class CheckVerb : Verb
{
    private readonly Argument<string[]> _paths = new("FILE|FOLDER…")
    {
        HelpName = "a FILE or a FOLDER",
        Description = "a pattern, or a folder to search for patterns (*.turnrow)",
        Arity = ArgumentArity.OneOrMore,
    };

    private readonly Option<bool> _json = new("--json") { Description = "the findings as JSON, for other programs" };

    public CheckVerb() : base("check", "look through patterns and say what does not work out")
    {
        Arguments.Add(_paths);
        Options.Add(_json);
    }

    /// <inheritdoc/>
    public override string Usage => "turnrow check FILE|FOLDER… [--json]";

    /// <inheritdoc/>
    public override string About => """
        Works every row of every piece in every size, on paper, and shows each stitch count that does
        not come out, each seam that does not fit and each word that can't be read, with what to do.
        A pattern that says what its finished sample measures gets the true gauge, and what each size
        will measure by it. Nothing is written.
        """;

    /// <inheritdoc/>
    public override string Example => "turnrow check fenland-wrap-waistcoat.turnrow";

    /// <inheritdoc/>
    public override int Run(ParseResult line, Terminal terminal)
    {
        var paths = line.GetValue(_paths) ?? [];
        return line.GetValue(_json) ? AsJson(paths, terminal) : AsText(paths, terminal);
    }

    private static int AsJson(string[] paths, Terminal terminal)
    {
        using var records = new JsonRecords(terminal);
        var code = InputFiles.ForEach(paths, terminal, file =>
        {
            foreach (var finding in file.Compilation.Diagnostics)
                records.Add(json => FindingJson.Write(json, file.Compilation.Tree.Source, finding));
            return Findings.CodeOf(file);
        });
        records.End();
        return code;
    }

    private static int AsText(string[] paths, Terminal terminal)
    {
        var (patterns, errors, warnings) = (0, 0, 0);
        var code = InputFiles.ForEach(paths, terminal, file =>
        {
            var (worse, milder) = Summary.Count(file.Compilation.Diagnostics);
            (patterns, errors, warnings) = (patterns + 1, errors + worse, warnings + milder);
            var own = Findings.Write(terminal.Out, file, terminal.ColourOut);
            terminal.Out.WriteLine(Summary.Of(file));
            foreach (var accepted in Summary.Accepted(file)) terminal.Out.WriteLine(accepted);
            SampleReport.Write(terminal.Out, file.Compilation.Pattern);
            return own;
        });
        if (patterns > 1) terminal.Out.WriteLine($"{patterns} patterns: {Summary.Findings(errors, warnings)}");
        return code;
    }
}
