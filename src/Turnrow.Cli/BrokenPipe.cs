namespace Turnrow.Cli;

/// <summary>Tells an output whose reader is gone (<c>turnrow rows FILE | head</c>) from one that can't be written.</summary>
internal static class BrokenPipe
{
    private const int UnixEpipe = 32;
    private const int WindowsBrokenPipe = unchecked((int)0x8007006D);
    private const int WindowsNoData = unchecked((int)0x800700E8);

    /// <summary>True if the reader is gone.</summary>
    public static bool Is(IOException fault) => fault.HResult is UnixEpipe or WindowsBrokenPipe or WindowsNoData;
}
