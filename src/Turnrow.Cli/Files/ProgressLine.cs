namespace Turnrow.Cli.Files;

/// <summary>A line on the screen that says how far it is, drawn over itself.</summary>
internal sealed class ProgressLine(Terminal terminal, int total)
{
    private int _done;
    private int _drawn;

    /// <summary>Says which file is next.</summary>
    public void Next(string path)
    {
        _done++;
        var text = $"[{_done}/{total}] {path}";
        // A line that wraps could not be drawn over.
        if (text.Length > 79) text = text[..78] + "…";
        _drawn = text.Length;
        terminal.Out.Flush();
        terminal.Error.Write(text);
        terminal.Error.Flush();
    }

    /// <summary>Takes the line away, so that findings start on an empty one.</summary>
    public void Clear()
    {
        terminal.Error.Write("\r" + new string(' ', _drawn) + "\r");
        terminal.Error.Flush();
    }
}
