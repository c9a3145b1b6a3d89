using Antlr4.Runtime;
using Turnrow.Syntax.Generated;

namespace Turnrow.Syntax.Reading;

/// <summary>
/// Says whether a line goes on in the next: after a comma or semicolon or inside an open bracket, but never past a blank line nor past
/// one that begins a statement. That last limit is what keeps a forgotten bracket from costing more than its own line.
/// </summary>
internal sealed class LineJoiner
{
    private readonly List<IToken> _tokens = [];
    private int _depth;

    /// <summary>The tokens of the line so far, with those that it went on to.</summary>
    public IReadOnlyList<IToken> Tokens => _tokens;

    /// <summary>True if the next line may belong to this one.</summary>
    public bool IsOpen =>
        _tokens.Count > 0 && (_depth > 0 || _tokens[^1].Type is TurnrowLexer.COMMA or TurnrowLexer.SEMICOLON);

    public bool GoesOnIn(PhysicalLine next) => IsOpen && !next.TooLong && !BeginsStatement(next.Tokens);

    public void Add(IReadOnlyList<IToken> tokens)
    {
        foreach (var token in tokens)
        {
            _tokens.Add(token);
            if (token.Type == TurnrowLexer.OPEN) _depth++;
            else if (token.Type == TurnrowLexer.CLOSE && _depth > 0) _depth--;
        }
    }

    public void Clear()
    {
        _tokens.Clear();
        _depth = 0;
    }

    // Some words begin statements and may also stand within one; a look along their own line tells which.
    private bool BeginsStatement(IReadOnlyList<IToken> next)
    {
        var opening = Opening();
        return next[0].Type switch
        {
            TurnrowLexer.LEAVE when opening is TurnrowLexer.ROW or TurnrowLexer.ROWS => NamesEdge(next),
            TurnrowLexer.MARK when opening is TurnrowLexer.ROW or TurnrowLexer.ROWS => next is not [_, { Type: TurnrowLexer.CORNER }, ..],
            // A whole line of it is the yarn from here on; more than that, what is joined or the rest of a row.
            TurnrowLexer.WITH => opening != TurnrowLexer.SEAM && next.Count == 2,
            TurnrowLexer.ROWS when opening is TurnrowLexer.SEAM or TurnrowLexer.PIECE => Has(next, TurnrowLexer.COLON) || next is [_, { Type: TurnrowLexer.ARE }, ..],
            var type => StatementStarts.Begins(type),
        };
    }

    // A line for some sizes is the line that stands behind its colon.
    private int Opening()
    {
        for (var i = 1; _tokens[0].Type == TurnrowLexer.FOR && i + 1 < _tokens.Count; i++)
        {
            if (_tokens[i].Type == TurnrowLexer.COLON) return _tokens[i + 1].Type;
        }

        return _tokens[0].Type;
    }

    private static bool NamesEdge(IReadOnlyList<IToken> tokens)
    {
        foreach (var token in tokens)
        {
            if (token.Type == TurnrowLexer.COMMA) return false;
            if (token.Type == TurnrowLexer.AT) return true;
        }

        return false;
    }

    private static bool Has(IReadOnlyList<IToken> tokens, int type)
    {
        foreach (var token in tokens)
        {
            if (token.Type == type) return true;
        }

        return false;
    }
}
