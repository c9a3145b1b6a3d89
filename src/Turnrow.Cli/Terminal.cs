using System.Text;

namespace Turnrow.Cli;

/// <summary>Where a command writes to, and what may be written there. UTF-8 without a byte order mark, lines ended by \n.</summary>
internal sealed class Terminal : IDisposable
{
    private const int BufferSize = 4 * 1024;
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <param name="output">What was asked for: findings, rows, pages.</param>
    /// <param name="error">What went wrong, and progress.</param>
    public Terminal(Stream output, Stream error)
    {
        Stream = output;
        Out = new StreamWriter(output, Utf8, BufferSize, leaveOpen: true) { NewLine = "\n" };
        Error = new StreamWriter(error, Utf8, BufferSize, leaveOpen: true) { NewLine = "\n" };
    }

    /// <summary>The stream under <see cref="Out"/>; flush that first.</summary>
    public Stream Stream { get; }

    /// <summary>What was asked for.</summary>
    public TextWriter Out { get; }

    /// <summary>What went wrong, and progress.</summary>
    public TextWriter Error { get; }

    /// <summary>Whether colour may be written to <see cref="Out"/>.</summary>
    public bool ColourOut { get; init; }

    /// <summary>Whether colour may be written to <see cref="Error"/>.</summary>
    public bool ColourError { get; init; }

    /// <summary>Whether a person watches <see cref="Error"/>, so that a line may be drawn over.</summary>
    public bool ShowsProgress { get; init; }

    /// <summary>The terminal of this process.</summary>
    public static Terminal OfProcess()
    {
        // Elsewhere the bytes go out as they are.
        if (OperatingSystem.IsWindows()) Console.OutputEncoding = Utf8;
        var colour = MayColour(Environment.GetEnvironmentVariable("NO_COLOR"), Environment.GetEnvironmentVariable("TERM"));
        var watched = !Console.IsErrorRedirected;
        return new Terminal(Console.OpenStandardOutput(), Console.OpenStandardError())
        {
            ColourOut = colour && !Console.IsOutputRedirected,
            ColourError = colour && watched,
            ShowsProgress = watched && Environment.GetEnvironmentVariable("TERM") != "dumb",
        };
    }

    /// <summary>Whether a terminal with these settings wants colour: NO_COLOR, set to anything, says no.</summary>
    public static bool MayColour(string? noColour, string? kind) => string.IsNullOrEmpty(noColour) && kind != "dumb";

    /// <summary>Says what kept the command from doing something.</summary>
    /// <returns><see cref="ExitCode.WrongUse"/>, for the caller to return.</returns>
    public int Refuse(string message)
    {
        // What stands above it on a screen was said before it.
        Out.Flush();
        Error.WriteLine("turnrow: " + message);
        Error.Flush();
        return ExitCode.WrongUse;
    }

    /// <summary>Writes what is still held back.</summary>
    public void Flush()
    {
        Out.Flush();
        Error.Flush();
    }

    /// <summary>Lets go of both streams without writing to them: whatever had to be written was flushed.</summary>
    public void Dispose()
    {
        Stream.Dispose();
    }
}
