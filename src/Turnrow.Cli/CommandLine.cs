using System.CommandLine;
using System.CommandLine.Parsing;
using Turnrow.Cli.Verbs;

namespace Turnrow.Cli;

/// <summary>Reads the command line, runs the verb it names, and keeps every fault of our own from reaching the user raw.</summary>
internal static class CommandLine
{
    // No response files: a file's name may begin with @.
    private static readonly ParserConfiguration Reading = new() { ResponseFileTokenReplacer = null, EnablePosixBundling = false };

    /// <summary>Does what the arguments say.</summary>
    /// <returns>The exit code.</returns>
    public static int Run(IReadOnlyList<string> args, Terminal terminal) => Guarded(() => Dispatch(args, terminal), args, terminal);

    /// <summary>Runs something; a fault of our own becomes an apology, an output that nobody reads any more a quiet end.</summary>
    internal static int Guarded(Func<int> work, IReadOnlyList<string> args, Terminal terminal)
    {
        try
        {
            var code = work();
            terminal.Flush();
            return code;
        }
        catch (IOException fault)
        {
            // Files are handled where they are used, so this is one of the two outputs.
            return BrokenPipe.Is(fault) ? ExitCode.Clean : Last(terminal, $"turnrow: the output can't be written: {fault.Message}");
        }
#pragma warning disable CA1031 // The one place where everything is caught, so that nobody ever sees a stack trace.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            return Last(terminal, Apology(args, fault));
        }
    }

    private static int Dispatch(IReadOnlyList<string> args, Terminal terminal)
    {
        var help = new Option<bool>("--help", "-h", "-?") { Description = "how to use it", Recursive = true };
        var version = new Option<bool>("--version") { Description = "the version" };
        Verb[] verbs = [new NewVerb(), new CheckVerb(), new RowsVerb(), new ClaimVerb(), new GaugeVerb(), new BuildVerb(), new ExplainVerb()];
        var root = new Command("turnrow") { help, version };
        foreach (var verb in verbs) root.Subcommands.Add(verb);

        var line = CommandLineParser.Parse(root, args, Reading);
        if (line.GetValue(help) || args.Count == 0)
        {
            HelpText.Write(terminal.Out, verbs, line.CommandResult.Command as Verb);
            return ExitCode.Clean;
        }

        if (line.CommandResult.Command is Verb chosen)
            return Misuse.Of(args, line, chosen) is { } misuse ? terminal.Refuse(misuse) : chosen.Run(line, terminal);
        if (!line.GetValue(version) || line.Errors.Count > 1)
            return terminal.Refuse(Misuse.OfRoot(args, verbs));
        terminal.Out.WriteLine("turnrow " + TurnrowVersion.Text);
        return ExitCode.Clean;
    }

    private static string Apology(IReadOnlyList<string> args, Exception fault) => $"""
        turnrow: sorry, this is a fault of turnrow's own, not of your pattern. Nothing was half written.
        Please send this, with the pattern if you may, to whoever you have turnrow from:
          turnrow {TurnrowVersion.Text}
          turnrow {string.Join(' ', args)}
          {fault.GetType().Name}: {fault.Message}
        """;

    // Whatever was held back is shown first if it can be; the message itself must not throw in turn.
    private static int Last(Terminal terminal, string message)
    {
        foreach (var (writer, text) in new[] { (terminal.Out, ""), (terminal.Error, message.ReplaceLineEndings("\n") + "\n") })
        {
            try
            {
                writer.Write(text);
                writer.Flush();
            }
            catch (IOException)
            {
                // Nobody is there to be told.
            }
        }

        return ExitCode.WrongUse;
    }
}
