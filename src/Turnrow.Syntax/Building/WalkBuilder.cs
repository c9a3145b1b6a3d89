using Turnrow.Syntax.Diagnostics.Kinds;
using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Text;
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
            return new PickUpOriginSyntax(walks, side, [], line.Joined(alone._words), span) { Around = context.round is not null };
        var rates = new List<RateSyntax>(context._rates.Count);
        foreach (var rate in context._rates) rates.Add(Rate(rate, line));
        // So many in all may have so many in each corner among them.
        if (rates.FindAll(static r => !r.OfCorners).Count > 1 && rates.Find(static r => r.InAll) is { } evenly) line.Report(UnexpectedWord.EvenlyAlone(evenly.Span, line.Text(evenly.Span)));
        // What is skipped is skipped by a row of the stitch that goes into the rest.
        if (rates.Find(static r => !r.Skipped) is not { } worked) line.Report(UnexpectedWord.SkipsAll(rates[0].Span));
        else rates = rates.ConvertAll(r => r.Skipped ? r with { Stitch = worked.Stitch with { Span = r.Stitch.Span } } : r);
        return new PickUpOriginSyntax(walks, side, rates, null, span) { Around = context.round is not null };
    }

    public static SeamStatement Seam(TurnrowParser.SeamLineContext context, LineBuilding line)
    {
        SelectionSyntax? selection = null;
        SeamOrderSyntax? order = null;
        NameSyntax? yarn = null;
        SideSyntax? inside = null;
        ExpressionSyntax? foldedAt = null;
        TurnrowParser.SeamPartContext? eased = null;
        foreach (var part in context._parts)
        {
            if (part.rows is not null)
            {
                selection = Once(selection, Selection(part.rows, line), line);
            }
            else if (part.eased is not null)
            {
                eased = Once(eased, part, line);
            }
            else if (part.yarn is not null)
            {
                yarn = Once(yarn, line.Name(part.yarn), line);
            }
            else if (part.turned is not null)
            {
                foldedAt = Once(foldedAt, ExpressionBuilder.Count(part.turned, line), line);
            }
            else if (part.facing is not null)
            {
                inside = Once(inside, LineBuilding.Side(part.facing)!, line);
            }
            else
            {
                order = Once(order, new SeamOrderSyntax(part.order.Type == TurnrowLexer.SAME ? SeamOrder.Same : SeamOrder.Opposite, LineBuilding.Span(part)), line);
            }
        }

        var firstSelection = context.rows is null ? null : Selection(context.rows, line);
        var second = Edge(context._second, context._secondMore, selection, line);
        var itself = IsItself(second) ? second[0].Words[0] : null;
        return new SeamStatement(
            Edge(context._first, context._firstMore, firstSelection, line),
            itself is null ? second : [],
            order,
            eased is not null,
            context.worked is null ? null : SeamRate(context.worked, line),
            LineBuilding.Span(context))
        { Easing = eased?.least is null ? null : Easing(eased, line), Yarn = yarn, Inside = inside, Itself = itself, FoldedAt = foldedAt };
    }

    // A piece alone is no edge, so that one may be called so all the same.
    private static bool IsItself(List<WalkSyntax> edge) =>
        edge is [{ Words: [{ Text: var word }] }] && string.Equals(word, "itself", StringComparison.OrdinalIgnoreCase);

    private static EasingSyntax Easing(TurnrowParser.SeamPartContext context, LineBuilding line)
    {
        // The unit stands once, behind the larger number.
        var unit = ExpressionBuilder.Unit(context.measure);
        return new EasingSyntax(
            ExpressionBuilder.List(context.least, unit, line), ExpressionBuilder.List(context.most, unit, line), LineBuilding.Span(context));
    }

    // What is said of rows is said of the part it stands behind.
    private static List<WalkSyntax> Edge(
        IList<TurnrowParser.WalkWordContext> first, IList<TurnrowParser.WalkWordsContext> more, SelectionSyntax? selection, LineBuilding line)
    {
        var parts = new List<WalkSyntax>(more.Count + 1) { Walk(first, more.Count == 0 ? selection : null, line) };
        for (var i = 0; i < more.Count; i++) parts.Add(Walk(more[i]._words, i == more.Count - 1 ? selection : null, line));
        return parts;
    }

    /// <summary>A blanket of motifs.</summary>
    public static BlanketStatement Blanket(TurnrowParser.BlanketLineContext context, LineBuilding line) => new(
        line.Name(context.called),
        line.Name(context.motif),
        ExpressionBuilder.Count(context.across, line),
        context.between is null ? null : ExpressionBuilder.Count(context.between, line),
        ExpressionBuilder.Count(context.down, line),
        context.by is null ? null : line.Joined(context.by._words),
        RowBuilder.Place(context.at, line)!,
        ValueBuilder.Claim(context.claimed, line),
        LineBuilding.Span(context))
    { MoreMotifs = line.Words(context._more) };

    private static TurnrowParser.SeamPartContext Once(TurnrowParser.SeamPartContext? before, TurnrowParser.SeamPartContext now, LineBuilding line)
    {
        if (before is not null) line.Report(UnexpectedWord.Twice(LineBuilding.Span(now), line.Text(LineBuilding.Span(now))));
        return before ?? now;
    }

    /// <summary>One edge, as its words name it.</summary>
    public static WalkSyntax Walk(IList<TurnrowParser.WalkWordContext> context, SelectionSyntax? selection, LineBuilding line)
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
        context.amount is null && context.way is null && context.evenly is null && context.passed is null;

    // `n dc in each row`: without a number in front, the first word is the count.
    private static RateSyntax Rate(TurnrowParser.RateContext context, LineBuilding line)
    {
        var span = LineBuilding.Span(context);
        if (context.passed is not null) return Skipping(context, span, line);
        var words = line.Words(context._words);
        ExpressionSyntax? count = context.amount is null ? null : ExpressionBuilder.List(context.amount, null, line);
        if (context.way is null && context.evenly is null)
            line.Report(LineUnfinished.AfterRate(span, line.Text(span)));
        else if (count is null && words.Count < 2)
            line.Report(UnexpectedWord.RateWithoutNumber(words[0].Span, words[0].Text));
        var first = count is null && words.Count > 1 ? 1 : 0;
        count ??= ExpressionBuilder.Name(words[0]);
        var per = context.over is null ? null : ExpressionBuilder.Count(context.over, line);
        var ofRows = context.row is not null || context.rows is not null;
        return new RateSyntax(count, LineBuilding.Joined(words, first), per, !ofRows, line.Words(context._kind), span)
        {
            AlsoKind = line.Words(context._also),
            Evenly = context.evenly is not null,
            Along = context._walk.Count > 0 ? Walk(context._walk, null, line) : null,
            ToEachCorner = context.toCorners is not null,
        };
    }

    private static RateSyntax Skipping(TurnrowParser.RateContext context, TextSpan span, LineBuilding line)
    {
        var passed = LineBuilding.Span(context.passed);
        return new RateSyntax(new NumberExpression(new NumberSyntax(0, 1, passed), null, passed), new NameSyntax(line.Text(passed), passed), null, true, line.Words(context._kind), span)
        {
            AlsoKind = line.Words(context._also),
            Skipped = true,
        };
    }

    private static RateSyntax SeamRate(TurnrowParser.RateContext context, LineBuilding line)
    {
        var rate = Rate(context, line);
        if (rate.Evenly) line.Report(UnexpectedWord.EvenlyAlongSeam(LineBuilding.Span(context.evenly)));
        if (rate.Skipped) line.Report(UnexpectedWord.SkippedAlongSeam(rate.Span));
        return rate;
    }

    // What may stand once only.
    private static T? Once<T>(T? before, T? now, LineBuilding line)
        where T : SyntaxNode
    {
        if (before is not null && now is not null) line.Report(UnexpectedWord.Twice(now.Span, line.Text(now.Span)));
        return before ?? now;
    }
}
