using System.Text;

namespace Turnrow.Cli.Tests;

/// <summary>What a run of the command gave.</summary>
internal sealed record Ran(int Code, string Out, string Error);

/// <summary>Runs the command within the test's own process.</summary>
internal static class InProcess
{
    public static Ran Turnrow(params string[] args)
    {
        using var output = new MemoryStream();
        using var error = new MemoryStream();
        int code;
        using (var terminal = new Terminal(output, error)) code = CommandLine.Run(args, terminal);
        return new Ran(code, Encoding.UTF8.GetString(output.ToArray()), Encoding.UTF8.GetString(error.ToArray()));
    }
}
