using System.Text.RegularExpressions;

namespace Turnrow.Compiler.Tests.Manual;

/// <summary>A fenced block of a page.</summary>
/// <param name="Page">The page's file name.</param>
/// <param name="Line">The line of the page, from 1, that its first line is.</param>
/// <param name="Info">What stands behind the opening fence.</param>
/// <param name="Lines">What it holds.</param>
internal sealed record ManualBlock(string Page, int Line, string Info, IReadOnlyList<string> Lines)
{
    private const string FileInfo = "turnrow file ";

    /// <summary>Whether it is written in the notation: such blocks are compiled.</summary>
    public bool IsNotation => Info.Split(' ')[0] == "turnrow" && !Info.StartsWith(ManualFrames.FrameInfo, StringComparison.Ordinal);

    /// <summary>The name of the file that it is said to be (<c>turnrow file cloth.turnrow</c>); null if it is none.</summary>
    public string? FileName => Info.StartsWith(FileInfo, StringComparison.Ordinal) ? Info[FileInfo.Length..] : null;

    /// <summary>Whether it is what the block before it prints when it is compiled.</summary>
    public bool IsMessage => Info == "text message";

    public override string ToString() => $"{Page}:{Line}";
}

/// <summary>A page of the manual.</summary>
internal sealed partial record ManualPage(string Name, string Text, IReadOnlyList<ManualBlock> Blocks)
{
    public const string Folder = "grammar/manual";
    private const string Fence = "```";

    /// <summary>All pages, in the order of their names.</summary>
    public static IReadOnlyList<ManualPage> All { get; } =
    [
        .. Directory.GetFiles(Repository.PathOf(Folder), "*.md")
            .Order(StringComparer.Ordinal)
            .Select(path => Read(Path.GetFileName(path), File.ReadAllText(path))),
    ];

    /// <summary>Every block that is written in the notation.</summary>
    public static IEnumerable<ManualBlock> Examples => All.SelectMany(page => page.Blocks).Where(block => block.IsNotation);

    /// <summary>The targets of its links.</summary>
    public IEnumerable<string> Links => Link().Matches(Prose).Select(match => match.Groups[1].Value);

    /// <summary>What it says outside of blocks.</summary>
    public string Prose { get; } = Block().Replace(Text, "\n");

    /// <summary>The names that GitHub and its like give to a page's headings.</summary>
    public IEnumerable<string> Headings =>
        Heading().Matches(Prose).Select(match => NotInAnchor().Replace(match.Groups[1].Value.ToLowerInvariant(), "").Replace(' ', '-'));

    public static ManualPage Read(string name, string text)
    {
        var lines = text.ReplaceLineEndings("\n").Split('\n');
        var blocks = new List<ManualBlock>();
        for (var i = 0; i < lines.Length; i++)
        {
            if (!lines[i].StartsWith(Fence, StringComparison.Ordinal)) continue;
            var end = Array.FindIndex(lines, i + 1, line => line == Fence);
            if (end < 0) throw new InvalidDataException($"{name}:{i + 1}: this block has no end");
            blocks.Add(new ManualBlock(name, i + 2, lines[i][Fence.Length..].Trim(), lines[(i + 1)..end]));
            i = end;
        }

        return new ManualPage(name, text.ReplaceLineEndings("\n"), blocks);
    }

    [GeneratedRegex(@"\]\(([^)\s]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex(@"^```.*?^```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Block();

    [GeneratedRegex(@"^#+ (.+)$", RegexOptions.Multiline)]
    private static partial Regex Heading();

    [GeneratedRegex(@"[^\w\- ]")]
    private static partial Regex NotInAnchor();
}
