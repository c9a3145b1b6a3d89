using Turnrow.Fabric.Bodies;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Tests.Breaking;

/// <summary>Which words stand where in a pattern, and which of its lines gives a name; looked up once, asked many thousand times.</summary>
internal sealed class PatternWords
{
    private readonly Dictionary<TextSpan, string[]> _words = [];
    private readonly Dictionary<string, int> _definitions = [];
    private readonly Dictionary<string, int> _pieces = [];
    private readonly int[][] _linesOfPiece;
    private readonly HashSet<string>[] _edges;

    public PatternWords(SyntaxTree tree)
    {
        Tree = tree;
        _linesOfPiece = new int[tree.Lines.Count][];
        _edges = new HashSet<string>[tree.Lines.Count];
        for (var i = 0; i < tree.Lines.Count; i++) Add(i);
    }

    public SyntaxTree Tree { get; }

    /// <summary>The words in a line, or in its claim.</summary>
    public string[] In(TextSpan span) => _words[span];

    /// <summary>The line that defines a measure, a count or a stitch.</summary>
    public int? DefinitionOf(string word) => _definitions.TryGetValue(word, out var line) ? line : null;

    /// <summary>The line that opens a piece.</summary>
    public int? PieceOf(string word) => _pieces.TryGetValue(word, out var line) ? line : null;

    /// <summary>The lines of the piece that a line belongs to, its opening first.</summary>
    public int[] LinesOfPiece(int line) => _linesOfPiece[line];

    /// <summary>True if the piece of a line has an edge of that name.</summary>
    public bool IsEdgeOf(int line, string word) => _edges[line].Contains(word);

    private void Add(int index)
    {
        var line = Tree.Lines[index];
        if (line.Statement is MeasureStatement measure) _definitions.TryAdd(measure.Name.Text, index);
        if (line.Statement is CountStatement count) _definitions.TryAdd(count.Name.Text, index);
        if (line.Statement is StitchStatement stitch) _definitions.TryAdd(stitch.Name.Text, index);
        if (line.Statement is BodyStatement body) AddBody(body, index);
        if (line.Statement is PieceStatement piece) _pieces.TryAdd(piece.Name.Text, index);
        AddWords(line.Span);
        if (Claims.Of(line.Statement) is { } claim) AddWords(claim.Span);
        _linesOfPiece[index] = [.. LinesAround(index)];
        _edges[index] = [.. _linesOfPiece[index].Select(i => Tree.Lines[i].Statement).OfType<EdgeNameStatement>().Select(named => named.Name.Text)];
    }

    // A table of bodies gives many names at once; a measure line of the same name goes before it, wherever it stands.
    private void AddBody(BodyStatement body, int index)
    {
        var table = BodyTables.Find(body.Table!.Text, body.Unit!.Unit == LengthUnit.Inch)!;
        var own = Tree.Lines.Select(l => l.Statement).OfType<MeasureStatement>().Select(m => m.Name.Text).ToHashSet(StringComparer.OrdinalIgnoreCase);
        foreach (var row in table.Rows.Where(r => !own.Contains(r.Name))) _definitions.TryAdd(row.Name, index);
    }

    private void AddWords(TextSpan span) => _words[span] =
    [
        .. Tree.Tokens.Where(t => t.Span.Start >= span.Start && t.Span.End <= span.End && t.Kind is TokenKind.Word or TokenKind.Keyword)
            .Select(t => Tree.Source.ToString(t.Span)).Distinct(),
    ];

    private IEnumerable<int> LinesAround(int line)
    {
        var first = line;
        while (first > 0 && Tree.Lines[first].Statement is not PieceStatement) first--;
        var last = first + 1;
        while (last < Tree.Lines.Count && Tree.Lines[last].Statement is not PieceStatement) last++;
        return Enumerable.Range(first, last - first);
    }
}
