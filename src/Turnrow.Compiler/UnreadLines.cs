using Turnrow.Syntax;
using Turnrow.Syntax.Text;
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
        "notation", "pattern", "version", "terms", "sizes", "skill", "notion", "wearer", "yarn", "hook", "gauge", "turn", "claims", "measure", "count", "body", "ease", "swatch", "finished", "made", "accept", "use", "stitch", "key", "floats", ">",
    ];

    private readonly Dictionary<LineSyntax, IReadOnlySet<string>> _inside = new(ReferenceEqualityComparer.Instance);
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
    public IReadOnlySet<string> Inside(LineSyntax line) =>
        _inside.TryGetValue(line, out var known) ? known : _inside[line] = WordsOf(tree.Source.Text.AsSpan(line.Span.Start, line.Span.Length), line.Keyword?.Length ?? 0);

    // From the end, so that it is known of each word whether a colon comes behind it and before any claim.
    private static HashSet<string> WordsOf(ReadOnlySpan<char> text, int from)
    {
        var words = new HashSet<string>();
        var colonBehind = false;
        for (var i = text.Length - 1; i >= from; i--)
        {
            if (text[i] == ':') colonBehind = true;
            else if (text[i] == '=') colonBehind = false;
            var end = i + 1;
            while (i >= from && char.IsAsciiLetter(text[i])) i--;
            if (i + 1 < end) AddEnd(words, text[(i + 1)..end], text[end..], colonBehind);
            if (i + 1 < end) i++;
        }

        return words;
    }

    /// <summary>True if a broken line may have said how all claims count: it has no colon and no count, and speaks of chains that are in or out.</summary>
    public bool MayBeClaims(LineSyntax line)
    {
        if (!MayBe(line, "claims")) return false;
        var text = tree.Source.Text.AsSpan(line.Span.Start, line.Span.Length);
        if (text.IndexOfAny(':', '=') >= 0 || !text.Contains("chain", StringComparison.OrdinalIgnoreCase)) return false;
        if (text.IndexOf("with", StringComparison.OrdinalIgnoreCase) is not (>= 0 and var with)) return false;
        // The end of another line's claim says what is counted, and a beginning how many.
        if (text.TrimStart().StartsWith("st", StringComparison.OrdinalIgnoreCase) || text.IndexOfAnyInRange('0', '9') >= 0) return false;
        // Before it stands the line's own word, whatever has become of that.
        return text.Contains("claim", StringComparison.OrdinalIgnoreCase) || !text[..with].Trim().Contains(' ');
    }

    /// <summary>True if a broken line may have brought in a stitch pattern: it begins so, or speaks of a multiple as only that does.</summary>
    public bool MayBeStitchPattern(LineSyntax line) => MayBe(line, "stitch") || MayBe(line, "use")
        || (line.Broken && tree.Source.Text.AsSpan(line.Span.Start, line.Span.Length).Contains("over multiple", StringComparison.OrdinalIgnoreCase));

    /// <summary>True if a broken line may have defined a stitch: it begins so, or says what something is.</summary>
    public bool MayDefineStitch(LineSyntax line)
    {
        if (!MayBe(line, "stitch")) return false;
        if (tree.Source.Text.AsSpan(line.Span.Start, line.Span.Length).TrimStart().StartsWith("stitch pattern ", StringComparison.OrdinalIgnoreCase)) return false;
        return line.Keyword == "stitch" || tree.Source.Text.AsSpan(line.Span.Start, line.Span.Length).Contains(" is ", StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>True if a name in a broken line is surely a whole one: neither cut short at the line's end nor grown together with the `is` behind it.</summary>
    public bool NamesWhole(LineSyntax line, TextSpan name)
    {
        var rest = tree.Source.Text.AsSpan(name.End, line.Span.End - name.End);
        // Grown together with what stands behind it, or with the definition in the next line.
        if (rest.Length > 1 && rest[0] is ',' or '.' && char.IsAsciiDigit(rest[1])) return false;
        if (rest.Contains("stitch ", StringComparison.OrdinalIgnoreCase)) return false;
        var behind = rest.TrimStart();
        if (behind.StartsWith("is ", StringComparison.OrdinalIgnoreCase) || behind.StartsWith("of ", StringComparison.OrdinalIgnoreCase)) return true;
        var text = tree.Source.Text.AsSpan(name.Start, name.Length);
        return behind.Length > 0 && !text.EndsWith("is", StringComparison.OrdinalIgnoreCase) && !text.EndsWith("of", StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>True if a broken line may have left stitches for later.</summary>
    public bool MayLeaveForLater(LineSyntax line)
    {
        var text = tree.Source.Text.AsSpan(line.Span.Start, line.Span.Length);
        if (text.Contains("later", StringComparison.OrdinalIgnoreCase)) return true;
        if (text.IndexOf("leave", StringComparison.OrdinalIgnoreCase) is not (>= 0 and var at)) return false;
        // Up to the next word of the row; what is held is for something too.
        var left = text[at..];
        var end = left.IndexOfAny(',', ';', '=');
        if (end >= 0) left = left[..end];
        return left.Contains("for", StringComparison.OrdinalIgnoreCase) && !left.Contains("hold", StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>True if a broken line may have moved a marker: its claim then says what it made, and not how many come next.</summary>
    public bool MayMoveMarker(LineSyntax line)
    {
        var text = tree.Source.Text.AsSpan(line.Span.Start, line.Span.Length);
        return text.Contains("marker", StringComparison.OrdinalIgnoreCase) || text.Contains("move ", StringComparison.OrdinalIgnoreCase) && !text.Contains("remove", StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>True if a broken line may have made a bridge, which its claim does not count.</summary>
    public bool MayBridge(LineSyntax line)
    {
        for (var i = 0; i < tree.Lines.Count; i++)
        {
            // A line may have been cut in two behind the bridge.
            if (ReferenceEquals(tree.Lines[i], line)) return SpeaksOfBridge(line) || (i > 0 && tree.Lines[i - 1].Broken && SpeaksOfBridge(tree.Lines[i - 1]));
        }

        return false;
    }

    private bool SpeaksOfBridge(LineSyntax line)
    {
        var text = tree.Source.Text.AsSpan(line.Span.Start, line.Span.Length);
        return text.Contains("bridge", StringComparison.OrdinalIgnoreCase) || text.Contains("hold ", StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>True if a broken line may have been for some sizes only: a size stands before its colon.</summary>
    public bool MayBeForSomeSizes(LineSyntax line, IReadOnlyList<string> sizes)
    {
        if (line.Keyword == "for") return true;
        var text = tree.Source.Text.AsSpan(line.Span.Start, line.Span.Length);
        if (text.IndexOf(':') is not (>= 0 and var colon)) return false;
        var before = text[..colon].TrimEnd().TrimEnd('"');
        foreach (var size in sizes)
        {
            if (size.Length == 0 || !before.EndsWith(size, StringComparison.OrdinalIgnoreCase)) continue;
            // Sizes that are numbers: `row 4:` and `shape rows 2 to 10:` speak of rows.
            if (size.AsSpan().IndexOfAnyExceptInRange('0', '9') < 0 && SpeaksOfRows(before)) continue;
            if (before.Length == size.Length || before[^(size.Length + 1)] is ' ' or ',' or '"') return true;
        }

        return false;
    }

    private static bool SpeaksOfRows(ReadOnlySpan<char> text) =>
        text.Contains("row", StringComparison.OrdinalIgnoreCase) || text.Contains("round", StringComparison.OrdinalIgnoreCase) || text.Contains("shape", StringComparison.OrdinalIgnoreCase);

    // Many a line speaks of rows; only with a colon behind does it make them, and several are told from which to which before it.
    private static void AddEnd(HashSet<string> words, ReadOnlySpan<char> letters, ReadOnlySpan<char> behind, bool colonBehind)
    {
        // The grammar's word for a round is that for a row.
        if (letters.EndsWith("round", StringComparison.Ordinal)) letters = "row";
        else if (letters.EndsWith("rounds", StringComparison.Ordinal)) letters = "rows";
        foreach (var word in NotationWords.Statements)
        {
            if (word.Text is "row" or "rows" or "for" && !colonBehind) continue;
            if (word.Text == "rows" && behind.TrimStart().StartsWith(':')) continue;
            if (letters.EndsWith(word.Text, StringComparison.Ordinal)) words.Add(word.Text);
        }
    }

    private bool Fits(LineSyntax line) => line.Keyword is { } word && (line.Span.Start > _firstPiece || Header.Contains(word));
}
