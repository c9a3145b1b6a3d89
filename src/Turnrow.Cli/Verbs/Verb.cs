using System.CommandLine;

namespace Turnrow.Cli.Verbs;

/// <summary>One thing that the command can do. A verb is one file: what it takes, its help, and the doing.</summary>
internal abstract class Verb(string name, string summary) : Command(name, summary)
{
    /// <summary>How it is typed.</summary>
    public abstract string Usage { get; }

    /// <summary>What it does, in a few sentences; lines are broken as they are to be shown.</summary>
    public abstract string About { get; }

    /// <summary>A line that could be typed as it is.</summary>
    public abstract string Example { get; }

    /// <summary>Does it.</summary>
    /// <returns>The exit code.</returns>
    public abstract int Run(ParseResult line, Terminal terminal);
}
