using System.CommandLine;
using Turnrow.Cli.Reports;

namespace Turnrow.Cli.Verbs;

/// <summary><c>turnrow explain</c>: the page of an error or a warning.</summary>
internal sealed class ExplainVerb : Verb
{
    private readonly Argument<string?> _name = new("NAME|CODE")
    {
        Description = "as a finding shows it: row-count, TR0301; without it, the list of all",
        Arity = ArgumentArity.ZeroOrOne,
    };

    public ExplainVerb() : base("explain", "explain an error or a warning, with an example; without a name, list them all")
    {
        Arguments.Add(_name);
    }

    /// <inheritdoc/>
    public override string Usage => "turnrow explain [NAME|CODE]";

    /// <inheritdoc/>
    public override string About => """
        Prints what an error or a warning means, how to mend it, a small pattern that gives it and the
        same pattern mended.
        """;

    /// <inheritdoc/>
    public override string Example => "turnrow explain row-count";

    /// <inheritdoc/>
    public override int Run(ParseResult line, Terminal terminal)
    {
        if (line.GetValue(_name) is not { } name)
        {
            ExplainPages.WriteList(terminal.Out);
            return ExitCode.Clean;
        }

        if (ExplainPages.Find(name) is not { } kind)
        {
            var known = ExplainPages.All.SelectMany(each => new[] { each.Name, each.Code });
            return terminal.Refuse($"no finding is called `{name}`{DidYouMean.Clause(name, known)}\n  the list of all: turnrow explain");
        }

        ExplainPages.Write(terminal.Out, kind);
        return ExitCode.Clean;
    }
}
