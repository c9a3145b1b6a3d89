using System.Globalization;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Diagnostics.Kinds;

/// <summary>A repeat of rows that does not say whether the first time is counted.</summary>
public static class RepeatTimes
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "repeat-times",
        "TR0112",
        Severity.Error,
        """
        The rows stand there once already when they are repeated. Print uses `repeat rows 3 to 6, 9 times` both for nine times more and for
        nine times in all. So it has to be said: `9 more times` or `10 times in all`.
        """,
        Coaster.With("row 2: dc across\n  repeat row 2, 9 times"),
        Coaster.With("row 2: dc across\n  repeat row 2, 9 more times"));

    /// <param name="span">The number and its <c>times</c>.</param>
    /// <param name="times">The number.</param>
    /// <param name="text">The same, as text.</param>
    internal static Diagnostic At(TextSpan span, ExpressionSyntax times, string text)
    {
        var more = $"{text} more times";
        var inAll = times is NumberExpression { Number: { Denominator: 1 } number }
            ? string.Create(CultureInfo.InvariantCulture, $"{number.Numerator + 1} times in all")
            : $"{text} + 1 times in all";
        return new Diagnostic(Kind, span, $"`{Quote.Short(text)} times` can be meant in two ways, since the rows were worked once already")
        {
            Help = $"write `{Quote.Short(more)}` or, for the same, `{Quote.Short(inAll)}`",
            Mends =
            [
                new Mend($"write `{Quote.Short(more)}`", span, more),
                new Mend($"write `{Quote.Short(text)} times in all`, if the first time is one of them", span, text + " times in all"),
            ],
        };
    }
}
