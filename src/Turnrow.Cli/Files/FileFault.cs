using System.Security;

namespace Turnrow.Cli.Files;

/// <summary>Why a file can't be used, in words.</summary>
internal static class FileFault
{
    /// <summary>True for what the file system throws.</summary>
    public static bool Is(Exception fault) =>
        fault is IOException or UnauthorizedAccessException or SecurityException or ArgumentException or NotSupportedException;

    /// <summary>The reason, to stand after <c>can't be read: </c>.</summary>
    public static string Reason(Exception fault) => fault switch
    {
        FileNotFoundException or DirectoryNotFoundException => "it is not there",
        UnauthorizedAccessException or SecurityException => "you have no right to it",
        PathTooLongException => "its name is too long",
        ArgumentException or NotSupportedException => "that can't be a file's name",
        // The platform's own sentence: disk full, in use, a loop of links.
        _ => fault.Message,
    };
}
