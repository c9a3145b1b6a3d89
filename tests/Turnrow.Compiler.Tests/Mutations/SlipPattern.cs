using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Tests.Mutations;

/// <summary>A pattern without a fault, with what is asked of it again and again while slips are made.</summary>
internal sealed class SlipPattern
{
    private readonly PieceStatement?[] _pieces;
    private readonly List<Token>[] _tokens;
    private readonly IReadOnlyList<NodeInLine>[] _nodes;

    public SlipPattern(string path)
    {
        Path = path;
        Compilation = Compilation.Of(Patterns.Read(path), Repository.Beside);
        _pieces = new PieceStatement?[Tree.Lines.Count];
        _tokens = new List<Token>[Tree.Lines.Count];
        _nodes = new IReadOnlyList<NodeInLine>[Tree.Lines.Count];
        PieceStatement? piece = null;
        for (var i = 0; i < Tree.Lines.Count; i++)
        {
            var line = Tree.Lines[i];
            if (line.Statement is PieceStatement opened) piece = opened;
            if (line.Statement is SeamStatement or WeaveInStatement) piece = null;
            _pieces[i] = piece;
            _tokens[i] = [.. Tree.Tokens.Where(t => line.Span.Start <= t.Span.Start && t.Span.End <= line.Span.End && IsSaid(t.Kind))];
            _nodes[i] = NodeInLine.All(line.Statement!);
        }

        PieceNames = [.. Statements.OfType<PieceStatement>().Select(p => p.Name.Text)];
        CountNames = [.. Statements.OfType<CountStatement>().Select(c => c.Name.Text)];
        MeasureNames = [.. Statements.OfType<MeasureStatement>().Select(m => m.Name.Text)];
        EdgeNames = [.. Statements.OfType<EdgeNameStatement>().Select(e => e.Name.Text).Distinct()];
    }

    public string Path { get; }

    /// <summary>What the compiler makes of it as it should be.</summary>
    public Compilation Compilation { get; }

    public SyntaxTree Tree => Compilation.Tree;

    public IEnumerable<StatementSyntax> Statements => Tree.Lines.Select(l => l.Statement!);

    public IReadOnlyList<string> PieceNames { get; }

    public IReadOnlyList<string> CountNames { get; }

    public IReadOnlyList<string> MeasureNames { get; }

    public IReadOnlyList<string> EdgeNames { get; }

    /// <summary>The piece that a line belongs to; null for none.</summary>
    public PieceStatement? PieceAt(int index) => _pieces[index];

    /// <summary>The words, numbers and signs of a line.</summary>
    public IReadOnlyList<Token> TokensOf(int index) => _tokens[index];

    /// <summary>The nodes of a line, each with those that hold it.</summary>
    public IReadOnlyList<NodeInLine> NodesOf(int index) => _nodes[index];

    public string Text(TextSpan span) => Tree.Source.ToString(span);

    /// <summary>A slip in a line.</summary>
    public Slip Slip(string kind, int index, TextSpan span, string newText) => new(kind, this, index, Edit.Of(Tree.Source.Text, span, newText));

    private static bool IsSaid(TokenKind kind) => kind is not (TokenKind.WhiteSpace or TokenKind.Comment or TokenKind.LineEnd);
}
