using System.CommandLine;
using System.Text;
using Turnrow.Cli.Files;
using Turnrow.Cli.Start;

namespace Turnrow.Cli.Verbs;

/// <summary><c>turnrow new</c>: a first pattern to write on.</summary>
internal sealed class NewVerb : Verb
{
    private readonly Argument<string> _name = new("NAME") { HelpName = "a NAME", Description = "what to call it; it becomes NAME.turnrow" };

    public NewVerb() : base("new", "begin a pattern: a small complete one, with notes on how it is written")
    {
        Arguments.Add(_name);
    }

    /// <inheritdoc/>
    public override string Usage => "turnrow new NAME";

    /// <inheritdoc/>
    public override string About => """
        Writes NAME.turnrow, a small pattern that works out in all its sizes and says, line by line, what
        each line does. Change it into your own. A file that is there is never overwritten.
        """;

    /// <inheritdoc/>
    public override string Example => "turnrow new summer-bag";

    /// <inheritdoc/>
    public override int Run(ParseResult line, Terminal terminal)
    {
        var name = line.GetValue(_name) ?? "";
        if (name.EndsWith(PatternFinder.Ending, StringComparison.OrdinalIgnoreCase)) name = name[..^PatternFinder.Ending.Length];
        var title = StarterPattern.TitleOf(name);
        if (title.Length == 0) return terminal.Refuse($"a pattern can't be called `{name}`: a name needs a letter or a digit");
        var path = name + PatternFinder.Ending;
        try
        {
            WholeFile.Write(path, Encoding.UTF8.GetBytes(StarterPattern.Text(title)), overwrite: false);
        }
        catch (Exception fault) when (FileFault.Is(fault))
        {
            return terminal.Refuse(Path.Exists(path)
                ? $"{path} is there already, and is left as it is; choose another name"
                : $"{path} can't be written: {FileFault.Reason(fault)}");
        }

        terminal.Out.WriteLine($"{path} is written. Next:\n  turnrow check {Quoted(path)}\n  turnrow build {Quoted(path)} --out published");
        return ExitCode.Clean;
    }

    private static string Quoted(string path) => path.Contains(' ', StringComparison.Ordinal) ? $"\"{path}\"" : path;
}
