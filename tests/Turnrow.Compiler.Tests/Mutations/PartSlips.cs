using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Tests.Mutations;

/// <summary>Slips with parts of a line: one missing, twice or changed round; a unit, an edge, a place that is another.</summary>
internal static class PartSlips
{
    private static readonly (LengthUnit Unit, string[] Others)[] Units =
    [
        (LengthUnit.Centimetre, ["in", "mm"]), (LengthUnit.Inch, ["cm", "mm"]), (LengthUnit.Millimetre, ["cm", "in"]),
    ];

    public static IEnumerable<Slip> Of(SlipPattern pattern, int index) => pattern.NodesOf(index).SelectMany(node => node.Node switch
    {
        UnitSyntax unit => Units.First(u => u.Unit == unit.Unit).Others.Select(other => pattern.Slip("a unit", index, unit.Span, other)),
        EdgeSyntax edge => Edges(pattern, index, edge),
        RowStatement row => RowParts(pattern, index, row.Items),
        GroupItem group => RowParts(pattern, index, group.Items),
        PlaceSyntax place => Places(pattern, index, place),
        RowFixSyntax or CountFixSyntax or SolveOptionSyntax => Without(pattern, index, node.Node.Span, "a wish behind a comma missing"),
        SelectionSyntax selection => Selections(pattern, index, selection),
        RepeatStatement { Counting: RepeatCounting.More } repeat => InAll(pattern, index, repeat),
        MirrorOriginSyntax { TurnedOver: false } mirror => [pattern.Slip("a mirror turned over", index, new TextSpan(mirror.Span.End, 0), ", turned over")],
        SizesStatement sizes => Sizes(pattern, index, sizes.Names),
        ClaimPartSyntax part when Name(part.Count) => Claims(pattern, index, part),
        _ => [],
    });

    private static bool Name(ExpressionSyntax count) => count is NameExpression or CalculationExpression;

    private static IEnumerable<Slip> Claims(SlipPattern pattern, int index, ClaimPartSyntax part) =>
        new[] { " + 1", " - 1" }.Select(more => pattern.Slip("a claim wrong by one", index, new TextSpan(part.Count.Span.End, 0), more));

    private static IEnumerable<Slip> Edges(SlipPattern pattern, int index, EdgeSyntax edge)
    {
        if (edge.Word != EdgeWord.Both) return [pattern.Slip("both edges instead of one", index, edge.Span, "both edges")];
        return new[] { "right edge", "left edge" }.Select(one => pattern.Slip("one edge instead of both", index, edge.Span, one));
    }

    private static IEnumerable<Slip> RowParts(SlipPattern pattern, int index, IReadOnlyList<RowItemSyntax> items)
    {
        for (var i = 0; i < items.Count; i++)
        {
            var span = items[i].Span;
            yield return pattern.Slip("a part of a row twice", index, new TextSpan(span.End, 0), ", " + pattern.Text(span));
            if (items.Count > 1)
            {
                var gone = i == 0 ? TextSpan.FromBounds(span.Start, items[1].Span.Start) : TextSpan.FromBounds(items[i - 1].Span.End, span.End);
                yield return pattern.Slip("a part of a row missing", index, gone, "");
            }

            if (i == 0) continue;
            var (before, between) = (items[i - 1].Span, TextSpan.FromBounds(items[i - 1].Span.End, span.Start));
            if (pattern.Text(before) != pattern.Text(span))
                yield return pattern.Slip("two parts of a row changed round", index, before.To(span), pattern.Text(span) + pattern.Text(between) + pattern.Text(before));
        }
    }

    private static IEnumerable<Slip> Places(SlipPattern pattern, int index, PlaceSyntax place)
    {
        foreach (var other in new[] { "in next", "in each st", "in each sp", "in same", "in first", "in last" })
        {
            if (pattern.Text(place.Span) != other) yield return pattern.Slip("another place", index, place.Span, other);
        }
    }

    private static IEnumerable<Slip> Selections(SlipPattern pattern, int index, SelectionSyntax selection)
    {
        if (selection is EndSelection end)
        {
            var (text, turned) = (pattern.Text(end.Span), end.AllBut ? "all but " : "");
            yield return pattern.Slip("another part of an edge", index, end.Span, end.AllBut ? text[turned.Length..] : "all but " + text);
            yield return pattern.Slip("another part of an edge", index, end.Span, end.First ? text.Replace("first", "last", StringComparison.Ordinal) : text.Replace("last", "first", StringComparison.Ordinal));
        }

        foreach (var slip in Without(pattern, index, selection.Span, "another part of an edge")) yield return slip;
    }

    private static IEnumerable<Slip> InAll(SlipPattern pattern, int index, RepeatStatement repeat)
    {
        var times = repeat.Times.Span;
        var more = pattern.TokensOf(index).Last(t => pattern.Text(t.Span) == "times").Span;
        return [pattern.Slip("a number of times", index, TextSpan.FromBounds(times.End, more.End), " times in all")];
    }

    private static IEnumerable<Slip> Sizes(SlipPattern pattern, int index, IReadOnlyList<NameSyntax> names)
    {
        for (var i = 0; i < names.Count; i++)
        {
            foreach (var slip in Without(pattern, index, names[i].Span, "a size missing")) yield return slip;
        }
    }

    // With the comma before it.
    private static IEnumerable<Slip> Without(SlipPattern pattern, int index, TextSpan span, string kind)
    {
        var comma = pattern.TokensOf(index).LastOrDefault(t => t.Span.End <= span.Start && pattern.Text(t.Span) == ",");
        if (comma.Span.Length > 0) yield return pattern.Slip(kind, index, TextSpan.FromBounds(comma.Span.Start, span.End), "");
    }
}
