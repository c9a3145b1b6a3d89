using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.StitchPatterns;

/// <summary>The lines of one stitch pattern: its heading and what belongs to it.</summary>
/// <param name="Heading">The line that begins it.</param>
/// <param name="Lines">Its rows, the lines of its picture and of its key, in order.</param>
internal sealed record StitchPatternBlock(LineSyntax Heading, IReadOnlyList<LineSyntax> Lines)
{
    /// <summary>What it is called; null where its heading can't be read.</summary>
    public StitchPatternStatement? Statement => Heading.Broken ? null : Heading.Statement as StitchPatternStatement;

    /// <summary>True if a line of it can't be read: then nobody knows what its rows are.</summary>
    public bool InDoubt => Heading.Broken || EndsInDoubt || Lines.Any(static line => line.Broken);

    /// <summary>True if the line behind its last can't be read: it may have been a row of it.</summary>
    public bool EndsInDoubt { get; init; }
}

/// <summary>Finds the stitch patterns of a file: each goes from its heading to the first line that can't belong to it.</summary>
internal sealed class StitchPatternLines
{
    private readonly HashSet<LineSyntax> _lines = new(ReferenceEqualityComparer.Instance);

    public StitchPatternLines(SyntaxTree tree)
    {
        var blocks = new List<StitchPatternBlock>();
        List<LineSyntax>? open = null;
        foreach (var line in tree.Lines)
        {
            if (IsHeading(line, tree))
            {
                blocks.Add(new StitchPatternBlock(line, open = []));
                _lines.Add(line);
            }
            else if (open is not null && Belongs(line))
            {
                open.Add(line);
                _lines.Add(line);
            }
            else if (line.Statement is not ProseStatement)
            {
                if (open is not null && line.Broken) blocks[^1] = blocks[^1] with { EndsInDoubt = true };
                open = null;
            }
        }

        Blocks = blocks;
    }

    /// <summary>The stitch patterns, in order.</summary>
    public IReadOnlyList<StitchPatternBlock> Blocks { get; }

    /// <summary>True if a line belongs to a stitch pattern.</summary>
    public bool Has(LineSyntax line) => _lines.Contains(line);

    // A stitch of the designer's own has the same first word.
    private static bool IsHeading(LineSyntax line, SyntaxTree tree) =>
        line.Statement is StitchPatternStatement || (line is { Broken: true, Keyword: "stitch" } && tree.Source.Text.AsSpan(line.Span.Start, line.Span.Length).Contains("pattern", StringComparison.Ordinal));

    // A line that can't be read and begins with no word of the notation is taken for one of the rows among which it stands.
    private static bool Belongs(LineSyntax line) =>
        line.Statement is RowStatement or PatternRepeatStatement or RepeatStatement or KeyStatement or PictureRowStatement
        || (line.Broken && line.Keyword is null or "row" or "rows" or "repeat" or "key");
}
