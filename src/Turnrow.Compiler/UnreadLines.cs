using Turnrow.Syntax;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler;

/// <summary>
/// What the lines that could not be read may have been. The word that a line begins with is believed where it fits its place; and a line
/// that lost its end, or got a comma there, goes on in the next one.
/// </summary>
internal sealed class UnreadLines(SyntaxTree tree)
{
    private static readonly string[] Header =
    [
        "notation", "pattern", "version", "terms", "sizes", "skill", "notion", "wearer", "yarn", "hook", "gauge", "turn", "claims", "measure", "count", "body", "ease", "swatch", "made", ">",
    ];

    private readonly int _firstPiece = tree.Lines.FirstOrDefault(line => line is { Broken: false, Statement: PieceStatement })?.Span.Start ?? int.MaxValue;

    /// <summary>True if a broken line may have been a statement that begins with the word.</summary>
    public bool MayBe(LineSyntax line, string word) =>
        line.Broken && (!Fits(line) || line.Keyword == word || Inside(line).Contains(word));

    /// <summary>True if any line may have been such a statement.</summary>
    public bool Any(string word)
    {
        foreach (var line in tree.Lines)
        {
            if (MayBe(line, word)) return true;
        }

        return false;
    }

    /// <summary>The statements' words that stand further on in a line, glued to what is before them or not.</summary>
    public IReadOnlySet<string> Inside(LineSyntax line)
    {
        var words = new HashSet<string>();
        var text = tree.Source.Text.AsSpan(line.Span.Start, line.Span.Length);
        for (var i = line.Keyword?.Length ?? 0; i < text.Length; i++)
        {
            var start = i;
            while (i < text.Length && char.IsAsciiLetter(text[i])) i++;
            if (i > start) AddEnd(words, text[start..i], text[i..]);
        }

        return words;
    }

    private static bool HasColon(ReadOnlySpan<char> behind)
    {
        var claim = behind.IndexOf('=');
        return (claim < 0 ? behind : behind[..claim]).Contains(':');
    }

    // Many a line speaks of rows; only with a colon behind does it make them, and several are told from which to which before it.
    private static void AddEnd(HashSet<string> words, ReadOnlySpan<char> letters, ReadOnlySpan<char> behind)
    {
        var makesRow = HasColon(behind);
        var makesRows = makesRow && !behind.TrimStart().StartsWith(':');
        foreach (var word in NotationWords.Statements)
        {
            if ((word.Text == "row" && !makesRow) || (word.Text == "rows" && !makesRows)) continue;
            if (letters.EndsWith(word.Text, StringComparison.Ordinal)) words.Add(word.Text);
        }
    }

    private bool Fits(LineSyntax line) => line.Keyword is { } word && (line.Span.Start > _firstPiece || Header.Contains(word));
}
