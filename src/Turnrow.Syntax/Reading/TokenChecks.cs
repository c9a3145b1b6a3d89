using Antlr4.Runtime;
using Turnrow.Syntax.Building;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Diagnostics.Kinds;
using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Reading;

/// <summary>Slips that a token or two show by themselves. They come before the parser's, which would speak of what follows from them.</summary>
internal static class TokenChecks
{
    /// <summary>The first slip among the tokens from <paramref name="first"/> on; null for none.</summary>
    public static Diagnostic? Fault(IReadOnlyList<IToken> tokens, int first, LineBuilding line)
    {
        for (var i = first; i < tokens.Count; i++)
        {
            var fault = tokens[i].Type switch
            {
                TurnrowLexer.JUNK => Junk(tokens, i, line),
                TurnrowLexer.PICTURE_ROW when i > 0 => PictureInside(tokens[i], line),
                TurnrowLexer.WRONG_QUOTE => QuoteOpen.At(LineBuilding.Span(tokens[i]), line.Text(tokens[i]), line.Before(tokens[i])),
                TurnrowLexer.WRONG_COMMA => NumberComma.At(LineBuilding.Span(tokens[i]), line.Text(tokens[i]), InList(tokens, i)),
                TurnrowLexer.NUMBER => Number(tokens, i, line),
                TurnrowLexer.FRACTION => Fraction(tokens, i, line),
                TurnrowLexer.ORDINAL or TurnrowLexer.DOTTED => TooLarge(tokens[i], line),
                TurnrowLexer.PLUS or TurnrowLexer.MINUS or TurnrowLexer.OVER_SIGN or TurnrowLexer.X => Operator(tokens, i, line),
                _ => null,
            };
            if (fault is not null) return fault;
        }

        return null;
    }

    private static Diagnostic Junk(IReadOnlyList<IToken> tokens, int i, LineBuilding line) => tokens[0].Type switch
    {
        TurnrowLexer.SIZES => SizeWord.At(Part(tokens, i), line.Text(Part(tokens, i))),
        TurnrowLexer.VERSION => UnexpectedWord.Version(Part(tokens, i), line.Text(Part(tokens, i))),
        _ => StrangeCharacter.At(LineBuilding.Span(tokens[i]), line.Text(tokens[i]), line.Before(tokens[i]), line.After(tokens[i])),
    };

    // A picture's row is a line by itself.
    private static Diagnostic PictureInside(IToken token, LineBuilding line)
    {
        var bar = new TextSpan(LineBuilding.Span(token).Start, 1);
        return StrangeCharacter.At(bar, line.Text(bar), line.Before(token), ' ');
    }

    // In brackets, and between the names of sizes, a comma parts two; elsewhere it is more likely a decimal comma.
    private static bool InList(IReadOnlyList<IToken> tokens, int index)
    {
        if (tokens[0].Type == TurnrowLexer.SIZES) return true;
        for (var i = index - 1; i >= 0; i--)
        {
            if (tokens[i].Type == TurnrowLexer.CLOSE) return false;
            if (tokens[i].Type == TurnrowLexer.OPEN) return true;
        }

        return false;
    }

    private static Diagnostic? TooLarge(IToken token, LineBuilding line)
    {
        var digits = 0;
        foreach (var c in line.Text(token))
        {
            digits = char.IsAsciiDigit(c) ? digits + 1 : c == '.' ? digits : 0;
            if (digits > NumberBuilder.MostDigits)
                return NumberLarge.At(LineBuilding.Span(token), NumberBuilder.MostDigits);
        }

        return null;
    }

    private static Diagnostic? Number(IReadOnlyList<IToken> tokens, int i, LineBuilding line)
    {
        if (TooLarge(tokens[i], line) is { } large) return large;
        if (i + 1 >= tokens.Count || tokens[i + 1].Type != TurnrowLexer.FRACTION) return null;
        var span = LineBuilding.Span(tokens[i]).To(LineBuilding.Span(tokens[i + 1]));
        return line.Text(tokens[i]).Contains('.', StringComparison.Ordinal)
            ? FractionSlip.OfDecimal(span, line.Text(span))
            : null;
    }

    private static Diagnostic? Fraction(IReadOnlyList<IToken> tokens, int i, LineBuilding line)
    {
        if (TooLarge(tokens[i], line) is { } large) return large;
        var (top, bottom) = NumberBuilder.Fraction(line.Text(tokens[i]));
        var span = LineBuilding.Span(tokens[i]);
        if (bottom == 0) return FractionSlip.OverNothing(span, line.Text(tokens[i]));
        return top >= bottom && i > 0 && tokens[i - 1].Type == TurnrowLexer.NUMBER
            ? FractionSlip.OverOne(LineBuilding.Span(tokens[i - 1]).To(span), line.Text(tokens[i]))
            : null;
    }

    private static Diagnostic? Operator(IReadOnlyList<IToken> tokens, int i, LineBuilding line)
    {
        var sign = LineBuilding.Span(tokens[i]);
        if (line.IsSpaced(sign)) return null;
        var opening = tokens[0].Type;
        if (opening == TurnrowLexer.VERSION) return UnexpectedWord.Version(Part(tokens, i), line.Text(Part(tokens, i)));
        if (opening == TurnrowLexer.SIZES)
            return tokens[i].Type == TurnrowLexer.X ? null : SizeWord.At(Part(tokens, i), line.Text(Part(tokens, i)));
        var before = i > 0 ? tokens[i - 1] : null;
        var after = i + 1 < tokens.Count ? tokens[i + 1] : null;
        if (tokens[i].Type == TurnrowLexer.MINUS && before?.Type == TurnrowLexer.NUMBER && after?.Type == TurnrowLexer.FRACTION)
            return FractionSlip.Hyphen(sign, line.Text(before), line.Text(after));
        var gap = TextSpan.FromBounds(
            before is null ? sign.Start : before.StopIndex + 1, after is null ? sign.End : after.StartIndex);
        var isRange = tokens[i].Type == TurnrowLexer.MINUS && before?.Type == TurnrowLexer.NUMBER
            && after?.Type == TurnrowLexer.NUMBER && HoldsRange(opening);
        return OperatorSpace.At(sign, line.Text(sign), gap, Value(before, line), Value(after, line), isRange);
    }

    // What an operator can stand beside.
    private static string? Value(IToken? token, LineBuilding line) => token?.Type switch
    {
        TurnrowLexer.NUMBER or TurnrowLexer.FRACTION or TurnrowLexer.WORD or TurnrowLexer.OPEN or TurnrowLexer.CLOSE
            or TurnrowLexer.CM or TurnrowLexer.MM or TurnrowLexer.M or TurnrowLexer.YD => line.Text(token),
        { } type when Words.MayBeName(type) => line.Text(token),
        _ => null,
    };

    private static bool HoldsRange(int opening) =>
        opening is TurnrowLexer.ROW or TurnrowLexer.ROWS or TurnrowLexer.REPEAT or TurnrowLexer.SHAPE or TurnrowLexer.SEAM or TurnrowLexer.PIECE;

    // What stands between two commas: a size, or a version.
    private static TextSpan Part(IReadOnlyList<IToken> tokens, int index)
    {
        int first = index, last = index;
        while (first > 1 && tokens[first - 1].Type != TurnrowLexer.COMMA) first--;
        while (last + 1 < tokens.Count && tokens[last + 1].Type != TurnrowLexer.COMMA) last++;
        return LineBuilding.Span(tokens[first]).To(LineBuilding.Span(tokens[last]));
    }
}
