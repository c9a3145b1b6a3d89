using Antlr4.Runtime;
using Turnrow.Syntax.Building;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Reading;

/// <summary>What can still be made out of a broken line. Looks at its tokens alone, so that it serves whatever is wrong.</summary>
internal static class Salvage
{
    public static StatementSyntax? Statement(IReadOnlyList<IToken> tokens, TextSpan span, LineBuilding line, LineParser parser, Diagnostic? fault)
    {
        switch (tokens[0].Type)
        {
            case TurnrowLexer.PIECE:
                return NameAt(tokens, 1, line) is { } piece ? new PieceStatement(piece, null, Claim(tokens, line, parser, fault), span) : null;
            case TurnrowLexer.SIZES:
                return new SizesStatement(SizeNames(tokens, line), span);
            case TurnrowLexer.TERMS:
                return NameAt(tokens, 1, line) is { } terms ? new TermsStatement(terms, span) : null;
            default:
                var names = GivenNames(tokens, line);
                var claim = Claim(tokens, line, parser, fault);
                return names.Count == 0 && claim is null ? null : new UnfinishedStatement(names, claim, span);
        }
    }

    private static List<NameSyntax> GivenNames(IReadOnlyList<IToken> tokens, LineBuilding line) => tokens[0].Type switch
    {
        TurnrowLexer.COUNT or TurnrowLexer.MEASURE or TurnrowLexer.YARN => One(NameAt(tokens, 1, line)),
        TurnrowLexer.STITCH => StitchNames(tokens, line),
        TurnrowLexer.MARK => One(NameAt(tokens, 3, line)),
        TurnrowLexer.BOTH or TurnrowLexer.RIGHT or TurnrowLexer.LEFT or TurnrowLexer.FROM =>
            NamesBehind(tokens, line, TurnrowLexer.IS, TurnrowLexer.ARE),
        TurnrowLexer.DIVIDE => NamesBehind(tokens, line, TurnrowLexer.FOR, TurnrowLexer.FOR),
        _ => [],
    };

    private static List<NameSyntax> One(NameSyntax? name) => name is null ? [] : [name];

    // A stitch is known by its name and by its abbreviation.
    private static List<NameSyntax> StitchNames(IReadOnlyList<IToken> tokens, LineBuilding line)
    {
        var names = new List<NameSyntax>();
        if (tokens.Count < 2 || tokens[1].Type != TurnrowLexer.WORD) return names;
        names.Add(line.Name(tokens[1]));
        // Two lines that have become one define a stitch each.
        for (var i = 2; i < tokens.Count; i++)
        {
            if (tokens[i].Type == TurnrowLexer.QUOTED) names.Add(new NameSyntax(line.Quoted(tokens[i]).Text, LineBuilding.Span(tokens[i])));
            if (tokens[i].Type != TurnrowLexer.IS) continue;
            var name = tokens[i - 1].Type == TurnrowLexer.QUOTED ? tokens[i - 2] : tokens[i - 1];
            if (name.Type == TurnrowLexer.WORD) names.Add(line.Name(name));
        }

        return names;
    }

    private static NameSyntax? NameAt(IReadOnlyList<IToken> tokens, int index, LineBuilding line) =>
        index < tokens.Count && (tokens[index].Type == TurnrowLexer.WORD || Words.MayBeName(tokens[index].Type))
            ? line.Name(tokens[index])
            : null;

    private static List<NameSyntax> NamesBehind(IReadOnlyList<IToken> tokens, LineBuilding line, int one, int other)
    {
        var names = new List<NameSyntax>();
        for (var i = 1; i < tokens.Count; i++)
        {
            if ((tokens[i - 1].Type == one || tokens[i - 1].Type == other) && NameAt(tokens, i, line) is { } name) names.Add(name);
        }

        return names;
    }

    // What stands between two commas is a size, whatever it is; so their number is most likely right.
    private static List<NameSyntax> SizeNames(IReadOnlyList<IToken> tokens, LineBuilding line)
    {
        var names = new List<NameSyntax>();
        for (var first = 1; first < tokens.Count; first++)
        {
            if (tokens[first].Type == TurnrowLexer.COMMA) continue;
            var last = first;
            while (last + 1 < tokens.Count && tokens[last + 1].Type != TurnrowLexer.COMMA) last++;
            var span = LineBuilding.Span(tokens[first]).To(LineBuilding.Span(tokens[last]));
            names.Add(tokens[first].Type == TurnrowLexer.QUOTED && first == last
                ? new NameSyntax(line.Quoted(tokens[first]).Text, span)
                : new NameSyntax(line.Text(span), span));
            first = last;
        }

        return names;
    }

    // An = that the line should not have at its place was perhaps typed for something else.
    private static ClaimSyntax? Claim(IReadOnlyList<IToken> tokens, LineBuilding line, LineParser parser, Diagnostic? fault)
    {
        if (OnlyEquals(tokens) is not { } i || fault?.Span == LineBuilding.Span(tokens[i])) return null;
        var isSound = TokenChecks.Fault(tokens, i, line) is null && Brackets.Fault(tokens, i) is null;
        return isSound ? ValueBuilder.Claim(parser.Claim(tokens, i), line) : null;
    }

    // Of two, one was typed for something else, and no one knows which.
    private static int? OnlyEquals(IReadOnlyList<IToken> tokens)
    {
        int? found = null;
        for (var i = 1; i < tokens.Count; i++)
        {
            if (tokens[i].Type != TurnrowLexer.EQUALS) continue;
            if (found is not null) return null;
            found = i;
        }

        return found;
    }
}
