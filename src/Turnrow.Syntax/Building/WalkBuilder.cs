using Turnrow.Syntax.Diagnostics.Kinds;
using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Building;

/// <summary>Walks along edges: seams, pick-ups, and the rates at which they are worked.</summary>
internal static class WalkBuilder
{
    private static readonly NumberSyntax One = new(1, 1, default);

    public static PickUpOriginSyntax PickUp(TurnrowParser.OriginContext context, LineBuilding line)
    {
        var walks = new List<WalkSyntax>(context._walks.Count);
        SideSyntax? side = null;
        foreach (var along in context._walks)
        {
            SelectionSyntax? selection = null;
            foreach (var part in along._parts)
            {
                if (part.rows is not null) selection = Once(selection, Selection(part.rows, line), line);
                else side = Once(side, LineBuilding.Side(part.facing), line);
            }

            walks.Add(Walk(along._words, selection, line));
        }

        var span = LineBuilding.Span(context);
        if (context._rates is [{ } alone] && IsStitchAlone(alone))
            return new PickUpOriginSyntax(walks, side, [], line.Joined(alone._words), span);
        var rates = new List<RateSyntax>(context._rates.Count);
        foreach (var rate in context._rates) rates.Add(Rate(rate, line));
        return new PickUpOriginSyntax(walks, side, rates, null, span);
    }

    public static SeamStatement Seam(TurnrowParser.SeamLineContext context, LineBuilding line)
    {
        SelectionSyntax? selection = null;
        SeamOrderSyntax? order = null;
        var eased = false;
        foreach (var part in context._parts)
        {
            if (part.rows is not null)
            {
                selection = Once(selection, Selection(part.rows, line), line);
                continue;
            }

            eased |= part.order is null;
            if (part.order is null) continue;
            order = Once(order, new SeamOrderSyntax(part.order.Type == TurnrowLexer.SAME ? SeamOrder.Same : SeamOrder.Opposite, LineBuilding.Span(part)), line);
        }

        var firstSelection = context.rows is null ? null : Selection(context.rows, line);
        return new SeamStatement(
            Walk(context._first, firstSelection, line),
            Walk(context._second, selection, line),
            order,
            eased,
            context.worked is null ? null : Rate(context.worked, line),
            LineBuilding.Span(context));
    }

    private static WalkSyntax Walk(IList<TurnrowParser.WalkWordContext> context, SelectionSyntax? selection, LineBuilding line)
    {
        var words = new List<NameSyntax>(context.Count);
        foreach (var word in context) words.Add(line.Name(word));
        var span = words[0].Span.To(selection?.Span ?? words[^1].Span);
        return new WalkSyntax(words, selection, span);
    }

    private static SelectionSyntax Selection(TurnrowParser.SelectionContext context, LineBuilding line)
    {
        var span = LineBuilding.Span(context);
        if (context.from is not null)
            return new RangeSelection(ExpressionBuilder.Count(context.from, line), ExpressionBuilder.Count(context.to, line), span);
        var rows = context.amount is not null
            ? ExpressionBuilder.Count(context.amount, line)
            : new NumberExpression(One with { Span = LineBuilding.Span(context.Stop) }, null, LineBuilding.Span(context.Stop));
        return new EndSelection(context.all is not null, context.which.Type == TurnrowLexer.FIRST, rows, span);
    }

    private static bool IsStitchAlone(TurnrowParser.RateContext context) =>
        context.amount is null && context.way is null;

    // `n dc in each row`: without a number in front, the first word is the count.
    private static RateSyntax Rate(TurnrowParser.RateContext context, LineBuilding line)
    {
        var span = LineBuilding.Span(context);
        var words = line.Words(context._words);
        ExpressionSyntax? count = context.amount is null ? null : ExpressionBuilder.List(context.amount, null, line);
        if (context.way is null)
            line.Report(LineUnfinished.AfterRate(span, line.Text(span)));
        else if (count is null && words.Count < 2)
            line.Report(UnexpectedWord.RateWithoutNumber(words[0].Span, words[0].Text));
        var first = count is null && words.Count > 1 ? 1 : 0;
        count ??= ExpressionBuilder.Name(words[0]);
        var per = context.over is null ? null : ExpressionBuilder.Count(context.over, line);
        var ofRows = context.row is not null || context.rows is not null;
        return new RateSyntax(count, LineBuilding.Joined(words, first), per, !ofRows, span);
    }

    // What may stand once only.
    private static T? Once<T>(T? before, T? now, LineBuilding line)
        where T : SyntaxNode
    {
        if (before is not null && now is not null) line.Report(UnexpectedWord.Twice(now.Span, line.Text(now.Span)));
        return before ?? now;
    }
}
