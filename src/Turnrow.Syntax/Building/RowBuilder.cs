using Turnrow.Syntax.Diagnostics.Kinds;
using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Building;

/// <summary>Rows and the words in them.</summary>
internal static class RowBuilder
{
    public static RowStatement Row(TurnrowParser.RowLineContext context, LineBuilding line) =>
        new(
            context.count() is { } number ? ExpressionBuilder.Count(number, line) : null,
            null,
            LineBuilding.Side(context.side()),
            Items(context.items(), inOnePlace: false, line),
            ValueBuilder.Claim(context.claim(), line),
            LineBuilding.Span(context));

    public static RowStatement Rows(TurnrowParser.RowsLineContext context, LineBuilding line) =>
        new(
            ExpressionBuilder.Count(context.from, line),
            ExpressionBuilder.Count(context.to, line),
            LineBuilding.Side(context.side()),
            Items(context.items(), inOnePlace: false, line),
            ValueBuilder.Claim(context.claim(), line),
            LineBuilding.Span(context));

    public static RepeatStatement Repeat(TurnrowParser.RepeatLineContext context, LineBuilding line)
    {
        var counting = context.more is not null ? RepeatCounting.More
            : context.inAll is not null ? RepeatCounting.InAll
            : RepeatCounting.Unsaid;
        var times = ExpressionBuilder.Count(context.times, line);
        if (counting == RepeatCounting.Unsaid)
        {
            var span = times.Span.To(LineBuilding.Span(context.TIMES().Symbol));
            line.Report(RepeatTimes.At(span, times, line.Text(times.Span)));
        }

        return new RepeatStatement(
            ExpressionBuilder.Count(context.from, line),
            context.to is null ? null : ExpressionBuilder.Count(context.to, line),
            times,
            counting,
            ValueBuilder.Claim(context.claim(), line),
            LineBuilding.Span(context));
    }

    public static ChangeSyntax Change(TurnrowParser.ChangeContext context) =>
        new(context.INC() is null ? Tree.Change.Decrease : Tree.Change.Increase, LineBuilding.Span(context));

    private static List<RowItemSyntax> Items(TurnrowParser.ItemsContext context, bool inOnePlace, LineBuilding line)
    {
        var items = new List<RowItemSyntax>(context._each.Count);
        foreach (var item in context._each) items.Add(Item(item, inOnePlace, line));
        return items;
    }

    private static RowItemSyntax Item(TurnrowParser.ItemContext context, bool inOnePlace, LineBuilding line)
    {
        var span = LineBuilding.Span(context);
        switch (context.Start.Type)
        {
            case TurnrowLexer.OPEN:
                return Group(context, span, inOnePlace, line);
            case TurnrowLexer.SKIP_WORD:
                return new SkipItem(context.count() is { } skipped ? ExpressionBuilder.Count(skipped, line) : null, span);
            case TurnrowLexer.SLIP:
                return new SlipOverItem(ExpressionBuilder.Count(context.count(), line), span);
            case TurnrowLexer.LEAVE:
                return new LeaveItem(context.REST() is null ? ExpressionBuilder.Count(context.count(), line) : null, span);
            default:
                return Stitch(context, span, inOnePlace, line);
        }
    }

    private static GroupItem Group(TurnrowParser.ItemContext context, TextSpan span, bool inOnePlace, LineBuilding line)
    {
        var place = Place(context.place(), line);
        AmountSyntax? times = null;
        if (context.reach() is { } reach)
        {
            times = Reach(reach, line);
        }
        else if (context.count() is { } count)
        {
            var value = ExpressionBuilder.Count(count, line);
            times = new CountAmount(value, value.Span.To(LineBuilding.Span(context.TIMES().Symbol)));
        }

        return new GroupItem(Items(context.inside, inOnePlace || place is not null, line), times, place, span);
    }

    private static StitchItem Stitch(TurnrowParser.ItemContext context, TextSpan span, bool inOnePlace, LineBuilding line)
    {
        var before = context.before is null ? null : ExpressionBuilder.List(context.before, null, line);
        var words = line.Words(context._words);
        var change = context.change() is { } changed ? Change(changed) : null;
        var amount = context.amount is not null ? ChangeAmount(context.amount, line)
            : context.stitchAmount() is { } stitches ? StitchAmount(stitches, words, line)
            : null;
        var place = Place(context.place(), line);
        if (before is not null && change is null && amount is null && place is null && !inOnePlace)
            line.Report(StitchNumber.At(span, line.Text(before.Span), words));
        return new StitchItem(before, words, change, amount, place, span);
    }

    private static AmountSyntax StitchAmount(TurnrowParser.StitchAmountContext context, List<NameSyntax> words, LineBuilding line)
    {
        if (context.reach() is { } reach) return Reach(reach, line);
        if (context.numberCount() is { } number)
        {
            var first = ExpressionBuilder.List(number.list(), null, line);
            return new CountAmount(ExpressionBuilder.Calculation(first, number._rest, line), LineBuilding.Span(number));
        }

        // `dc hem - 4`: the last word is no stitch, the sum begins with it.
        var name = words[^1];
        words.RemoveAt(words.Count - 1);
        if (words.Count == 0) line.Report(UnexpectedWord.SumWithoutStitch(name.Span.To(LineBuilding.Span(context)), line.Text(name.Span.To(LineBuilding.Span(context)))));
        var sum = ExpressionBuilder.Calculation(ExpressionBuilder.Name(name), context._operations, line);
        return new CountAmount(sum, sum.Span);
    }

    private static AmountSyntax ChangeAmount(TurnrowParser.ChangeAmountContext context, LineBuilding line)
    {
        if (context.reach() is { } reach) return Reach(reach, line);
        var count = ExpressionBuilder.Count(context.count(), line);
        return context.EVENLY() is null
            ? new CountAmount(count, count.Span)
            : new EvenlyAmount(count, LineBuilding.Span(context));
    }

    private static AmountSyntax Reach(TurnrowParser.ReachContext context, LineBuilding line)
    {
        var span = LineBuilding.Span(context);
        return context.UNTIL() is null
            ? new AcrossAmount(context.AROUND() is not null, span)
            : new UntilAmount(ExpressionBuilder.Count(context.count(), line), span);
    }

    private static PlaceSyntax? Place(TurnrowParser.PlaceContext? context, LineBuilding line)
    {
        if (context is null) return null;
        var word = context.which.Type switch
        {
            TurnrowLexer.NEXT => PlaceWord.Next,
            TurnrowLexer.FIRST => PlaceWord.First,
            TurnrowLexer.LAST => PlaceWord.Last,
            TurnrowLexer.SAME => PlaceWord.Same,
            _ => PlaceWord.Each,
        };
        return new PlaceSyntax(word, line.Words(context._kind), line.Words(context._also), LineBuilding.Span(context));
    }
}
