using Antlr4.Runtime;
using Turnrow.Syntax.Building;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Diagnostics.Kinds;
using Turnrow.Syntax.Generated;

namespace Turnrow.Syntax.Reading;

/// <summary>Looks at a line's brackets before the parser does, since the parser goes as deep as they are nested.</summary>
internal static class Brackets
{
    /// <summary>More brackets inside each other are not read.</summary>
    public const int Deepest = 16;

    /// <summary>What is wrong with the brackets from <paramref name="first"/> on; null for nothing.</summary>
    public static Diagnostic? Fault(IReadOnlyList<IToken> tokens, int first = 0)
    {
        var open = new Stack<IToken>();
        for (var i = first; i < tokens.Count; i++)
        {
            var token = tokens[i];
            if (token.Type == TurnrowLexer.OPEN)
            {
                if (open.Count == Deepest) return BracketDepth.At(LineBuilding.Span(token), Deepest);
                open.Push(token);
            }
            else if (token.Type == TurnrowLexer.CLOSE && !open.TryPop(out _))
            {
                return BracketPair.NotOpened(LineBuilding.Span(token));
            }
        }

        if (open.Count == 0) return null;
        var last = tokens[^1];
        return BracketPair.NotClosed(LineBuilding.Span(open.Pop()), LineBuilding.Span(last).End);
    }
}
