using System.Globalization;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Tests.Mutations;

/// <summary>Slips in numbers: one up, one down, two digits or two sizes changed round.</summary>
internal static class NumberSlips
{
    /// <summary>What a number is, by where it stands; the first that fits.</summary>
    private static readonly (string Kind, Func<NodeInLine, bool> Fits)[] Kinds =
    [
        ("a claim wrong by one", n => n.In<ClaimSyntax>() is not null),
        ("a number of the heading", n => n.In<StatementSyntax>() is NotationStatement or YarnStatement or HookStatement or VersionStatement),
        ("a gauge's number", n => n.In<GaugeStatement>() is not null),
        ("a turning chain longer or shorter", n => n.In<TurnStatement>() is not null),
        ("a measurement, in one size too", n => n.In<MeasureStatement>() is not null),
        ("a count in one size", n => n.In<SizesExpression>() is not null && n.In<CountStatement>() is not null),
        ("a count's number", n => n.In<CountStatement>() is not null),
        ("an expected number", n => n.In<StatementSyntax>() is ExpectMeasureStatement or ExpectEqualStatement),
        ("a rate's number", n => n.In<RateSyntax>() is not null),
        ("the rows of a part of an edge", n => n.In<SelectionSyntax>() is not null),
        ("a number of times", n => n.IsIn("Times")),
        ("rows between two changes", n => n.IsIn("Interval", "ByTurns")),
        ("a row's own number", n => n.In<StatementSyntax>() is RowStatement or RepeatStatement && n.IsIn("First", "Last")),
        ("a number in a row", n => n.In<RowStatement>() is not null),
        ("a length, or a number of rows", n => n.In<StraightStatement>() is not null || n.IsIn("Rows", "After")),
        ("another number", _ => true),
    ];

    public static IEnumerable<Slip> Of(SlipPattern pattern, int index)
    {
        foreach (var node in pattern.NodesOf(index))
        {
            if (node.Node is NumberSyntax { Span: var span } && char.IsAsciiDigit(pattern.Text(span)[0]))
            {
                var text = pattern.Text(span);
                var kind = KindOf(node);
                foreach (var step in new[] { 1, -1 })
                {
                    if (Stepped(text, step) is { } other) yield return pattern.Slip(kind, index, span, other);
                }

                if (Turned(text) is { } turned) yield return pattern.Slip("two digits changed round", index, span, turned);
            }

            foreach (var slip in SizesChangedRound(pattern, index, node.Node)) yield return slip;
        }
    }

    private static string KindOf(NodeInLine node) => Kinds.First(k => k.Fits(node)).Kind;

    // One more or fewer of the whole ones; of 1/2 only 1 1/2 can come.
    private static string? Stepped(string text, int step)
    {
        var digits = text.TakeWhile(char.IsAsciiDigit).Count();
        if (digits < text.Length && text[digits] == '/') return step > 0 ? "1 " + text : null;
        var number = int.Parse(text[..digits], CultureInfo.InvariantCulture) + step;
        return number < 0 ? null : number.ToString(CultureInfo.InvariantCulture) + text[digits..];
    }

    private static string? Turned(string text) =>
        text.Length >= 2 && char.IsAsciiDigit(text[0]) && char.IsAsciiDigit(text[1]) && text[0] != text[1] ? $"{text[1]}{text[0]}{text[2..]}" : null;

    private static IEnumerable<Slip> SizesChangedRound(SlipPattern pattern, int index, SyntaxNode node)
    {
        if (node is not SizesExpression { Values: var values }) yield break;
        for (var i = 1; i < values.Count; i++)
        {
            var (a, b) = (pattern.Text(values[i - 1].Span), pattern.Text(values[i].Span));
            var between = TextSpan.FromBounds(values[i - 1].Span.End, values[i].Span.Start);
            if (a != b) yield return pattern.Slip("two sizes changed round", index, values[i - 1].Span.To(values[i].Span), b + pattern.Text(between) + a);
        }
    }
}
