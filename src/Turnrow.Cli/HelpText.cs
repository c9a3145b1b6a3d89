using Turnrow.Cli.Verbs;

namespace Turnrow.Cli;

/// <summary>The pages that <c>--help</c> prints.</summary>
internal static class HelpText
{
    private const int Gutter = 2;

    /// <summary>The page of a verb, or of the whole command if it is null.</summary>
    public static void Write(TextWriter writer, IReadOnlyList<Verb> verbs, Verb? verb)
    {
        if (verb is null) WriteAll(writer, verbs);
        else WriteOne(writer, verb);
    }

    private static void WriteAll(TextWriter writer, IReadOnlyList<Verb> verbs)
    {
        writer.WriteLine($"turnrow {TurnrowVersion.Text}: crochet patterns written as plain text, checked in every size and published\n");
        WriteColumns(writer, [.. verbs.Select(verb => (verb.Usage, verb.Description))]);
        writer.WriteLine("\nWhat each of them does: turnrow check --help\n");
        writer.WriteLine("For example:");
        foreach (var verb in verbs) writer.WriteLine("  " + verb.Example);
        writer.WriteLine("\nIt ends with 0 if all is well (there may be warnings), 1 if a pattern has errors,");
        writer.WriteLine("2 if it was typed wrongly or a file can't be read or written.");
    }

    private static void WriteOne(TextWriter writer, Verb verb)
    {
        writer.WriteLine($"{verb.Usage}\n\n{verb.About.ReplaceLineEndings("\n")}\n");
        var rows = new List<(string, string?)>();
        foreach (var argument in verb.Arguments) rows.Add((argument.Name, argument.Description));
        foreach (var option in verb.Options) rows.Add((option.HelpName is { } value ? $"{option.Name} {value}" : option.Name, option.Description));
        WriteColumns(writer, rows);
        writer.WriteLine($"\nFor example:\n  {verb.Example}");
    }

    private static void WriteColumns(TextWriter writer, IReadOnlyList<(string Left, string? Right)> rows)
    {
        const int widest = 34;
        var width = rows.Where(row => row.Left.Length <= widest).Max(row => row.Left.Length) + Gutter;
        foreach (var (left, right) in rows)
        {
            // What is too long for the column stands on a line of its own.
            writer.WriteLine(left.Length > widest ? $"  {left}\n  {new string(' ', width)}{right}" : $"  {left.PadRight(width)}{right}");
        }
    }
}
