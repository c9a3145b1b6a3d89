using System.Globalization;
using Antlr4.Runtime;
using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Building;

/// <summary>Reads numbers, exactly: <c>12</c>, <c>1.5</c>, <c>1/2</c>, <c>7 1/2</c>, <c>7½</c>.</summary>
internal static class NumberBuilder
{
    /// <summary>More digits than these are no count and no length of any garment.</summary>
    public const int MostDigits = 9;

    private const string Signs = "¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞↉";

    private static readonly (long Numerator, long Denominator)[] SignValues =
    [
        (1, 4), (1, 2), (3, 4), (1, 7), (1, 9), (1, 10), (1, 3), (2, 3), (1, 5), (2, 5), (3, 5), (4, 5), (1, 6), (5, 6),
        (1, 8), (3, 8), (5, 8), (7, 8), (0, 3),
    ];

    public static NumberSyntax Number(TurnrowParser.NumberContext context, LineBuilding line)
    {
        var (numerator, denominator) = context.whole is null ? (0, 1) : Decimal(line.Text(context.whole));
        if (context.part is not null)
        {
            // A decimal with a fraction behind it was reported before the line was built; it must only not overflow.
            var part = Fraction(line.Text(context.part));
            (numerator, denominator) = denominator == 1
                ? (numerator * part.Denominator + part.Numerator, part.Denominator)
                : (numerator, denominator);
        }

        return Lowest(numerator, denominator, LineBuilding.Span(context));
    }

    public static NumberSyntax Ordinal(IToken token, LineBuilding line) =>
        Lowest(long.Parse(line.Text(token).AsSpan()[..^2], CultureInfo.InvariantCulture), 1, LineBuilding.Span(token));

    /// <summary>Top and bottom of a fraction token, not in lowest terms; the bottom may be 0.</summary>
    public static (long Numerator, long Denominator) Fraction(string text)
    {
        var sign = Signs.IndexOf(text[0], StringComparison.Ordinal);
        if (sign >= 0) return SignValues[sign];
        var stroke = text.IndexOf('/', StringComparison.Ordinal);
        return (long.Parse(text.AsSpan(0, stroke), CultureInfo.InvariantCulture),
            long.Parse(text.AsSpan(stroke + 1), CultureInfo.InvariantCulture));
    }

    private static (long Numerator, long Denominator) Decimal(string text)
    {
        long numerator = 0, denominator = 1;
        var behindPoint = false;
        foreach (var c in text)
        {
            if (c == '.')
            {
                behindPoint = true;
                continue;
            }

            numerator = numerator * 10 + (c - '0');
            if (behindPoint) denominator *= 10;
        }

        return (numerator, denominator);
    }

    private static NumberSyntax Lowest(long numerator, long denominator, TextSpan span)
    {
        var (a, b) = (numerator, denominator);
        while (b != 0) (a, b) = (b, a % b);
        return new NumberSyntax(numerator / a, denominator / a, span);
    }
}
