namespace Turnrow.Cli.Tests;

/// <summary>Commands that a document shows.</summary>
/// <param name="Script">The commands, for a shell.</param>
/// <param name="Output">What they print; null if the document does not say.</param>
internal sealed record ReadmeExample(string Script, string? Output);

/// <summary>Finds the commands in a document, and compares what they print with what it says.</summary>
internal static class ReadmeExamples
{
    private const string FromSource = "dotnet run --project src/Turnrow.Cli -c Release -- ";
    private const string AnyLines = "…";

    /// <summary>The <c>sh</c> blocks, each with the <c>text</c> block that follows it, if nothing else stands between; tests are left out.</summary>
    public static IEnumerable<ReadmeExample> Of(string document)
    {
        string? script = null;
        foreach (var (language, text) in Parts(document.ReplaceLineEndings("\n")))
        {
            if (language is null && string.IsNullOrWhiteSpace(text)) continue;
            if (script is not null) yield return new ReadmeExample(script, language == "text" ? text : null);
            script = language == "sh" && !text.StartsWith("dotnet test", StringComparison.Ordinal) ? ScriptOf(text) : null;
        }

        if (script is not null) yield return new ReadmeExample(script, null);
    }

    /// <summary>The first line that differs, in words; null if none does.</summary>
    public static string? Difference(string shown, string printed)
    {
        var wanted = Lines(shown);
        var lines = Lines(printed);
        // As with a wildcard: on a mismatch the last `…` takes one line more.
        var (w, l, back, tried) = (0, 0, -1, 0);
        while (l < lines.Length)
        {
            if (w < wanted.Length && wanted[w] == AnyLines) (back, tried, w) = (w, l, w + 1);
            else if (w < wanted.Length && wanted[w] == lines[l]) (w, l) = (w + 1, l + 1);
            else if (back >= 0) (w, l, tried) = (back + 1, tried + 1, tried + 1);
            else return $"line {l + 1} is \"{lines[l]}\", README says {(w < wanted.Length ? $"\"{wanted[w]}\"" : "that there is none")}";
        }

        while (w < wanted.Length && wanted[w] == AnyLines) w++;
        return w == wanted.Length ? null : $"README's line \"{wanted[w]}\" is not printed";
    }

    private static string ScriptOf(string text) =>
        string.Join('\n', Lines(text).Select(line => line.StartsWith("$ ", StringComparison.Ordinal) ? line[2..] : line))
            .Replace(FromSource, "turnrow ", StringComparison.Ordinal);

    private static string[] Lines(string text) => text.Length == 0 ? [] : (text.EndsWith('\n') ? text[..^1] : text).Split('\n');

    /// <summary>The document as prose (without a language) and fenced blocks.</summary>
    private static IEnumerable<(string? Language, string Text)> Parts(string document)
    {
        string? language = null;
        var text = new System.Text.StringBuilder();
        foreach (var line in Lines(document))
        {
            if (!line.StartsWith("```", StringComparison.Ordinal))
            {
                text.Append(line).Append('\n');
                continue;
            }

            yield return (language, text.ToString());
            text.Clear();
            language = language is null ? line[3..].Trim() : null;
        }

        yield return (language, text.ToString());
    }
}
