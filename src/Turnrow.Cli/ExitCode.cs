namespace Turnrow.Cli;

/// <summary>What the command tells whoever started it. Where several files were done, the largest stands.</summary>
internal static class ExitCode
{
    /// <summary>No errors; there may be warnings.</summary>
    public const int Clean = 0;

    /// <summary>The pattern has errors. Everything that could be done was done.</summary>
    public const int Errors = 1;

    /// <summary>Wrong use: a word that the command does not know, a file that can't be read or written.</summary>
    public const int WrongUse = 2;
}
