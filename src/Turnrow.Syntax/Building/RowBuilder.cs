using Turnrow.Syntax.Diagnostics.Kinds;
using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Building;

/// <summary>Rows and the words in them.</summary>
internal static partial class RowBuilder
{
    public static RowStatement Row(TurnrowParser.RowLineContext context, LineBuilding line) =>
        new(
            context.from is null ? null : ExpressionBuilder.Count(context.from, line),
            null,
            LineBuilding.Side(context.facing),
            Items(context.words, inOnePlace: false, line),
            ValueBuilder.Claim(context.claimed, line),
            LineBuilding.Span(context))
        { IsRound = line.IsRound(context.Start) };

    public static StatementSyntax Rows(TurnrowParser.RowsLineContext context, LineBuilding line)
    {
        if (context.way is not null) return RoundsAre(context, line);
        return new RowStatement(
            ExpressionBuilder.Count(context.from, line),
            ExpressionBuilder.Count(context.to, line),
            LineBuilding.Side(context.facing),
            Items(context.words, inOnePlace: false, line),
            ValueBuilder.Claim(context.claimed, line),
            LineBuilding.Span(context))
        { IsRound = line.IsRound(context.Start) };
    }

    private static RoundsAreStatement RoundsAre(TurnrowParser.RowsLineContext context, LineBuilding line)
    {
        var (way, also) = (line.Name(context.way), context.also is null ? null : line.Name(context.also));
        var said = also is null ? way.Span : way.Span.To(also.Span);
        Tree.RoundsAre? known = (way.Text, also?.Text) switch
        {
            ("joined", null) => Tree.RoundsAre.Joined,
            ("joined", "turned") => Tree.RoundsAre.Turned,
            ("spiral", null) => Tree.RoundsAre.Spiral,
            _ => null,
        };
        if (known is null || !line.IsRound(context.Start)) line.Report(UnexpectedWord.RoundsWay(said, line.Text(said)));
        return new RoundsAreStatement(known ?? Tree.RoundsAre.Joined, LineBuilding.Span(context));
    }

    public static StatementSyntax Repeat(TurnrowParser.RepeatLineContext context, LineBuilding line)
    {
        var rows = Repeated(context, line);
        if (context.times is null) return new PatternRepeatStatement(rows, LineBuilding.Span(context));
        var counting = context.more is not null ? RepeatCounting.More
            : context.inAll is not null ? RepeatCounting.InAll
            : RepeatCounting.Unsaid;
        var times = ExpressionBuilder.Count(context.times, line);
        if (counting == RepeatCounting.Unsaid)
        {
            var span = times.Span.To(LineBuilding.Span(context.end));
            line.Report(RepeatTimes.At(span, times, line.Text(times.Span)));
        }

        return new RepeatStatement(rows, times, counting, ValueBuilder.Claim(context.claimed, line), LineBuilding.Span(context));
    }

    private static RepeatedRowsSyntax Repeated(TurnrowParser.RepeatLineContext context, LineBuilding line)
    {
        var word = LineBuilding.Span(context.word);
        if (context.one is not null)
        {
            var one = LineBuilding.Span(context.one);
            return new RepeatedRowsSyntax(new NumberExpression(new NumberSyntax(1, 1, one), null, one), null, word.To(one)) { AreLast = true };
        }

        var first = ExpressionBuilder.Count(context.from, line);
        if (context.counted is not null) return new RepeatedRowsSyntax(first, null, word.To(LineBuilding.Span(context.counted))) { AreLast = true };
        var last = context.to is null ? null : ExpressionBuilder.Count(context.to, line);
        return new RepeatedRowsSyntax(first, last, word.To((last ?? first).Span));
    }

    public static ChangeSyntax Change(TurnrowParser.ChangeContext context) =>
        new(context.Start.Type == TurnrowLexer.INC ? Tree.Change.Increase : Tree.Change.Decrease, LineBuilding.Span(context));

    /// <summary>The words of a row, or of a part of one.</summary>
    public static List<RowItemSyntax> Items(TurnrowParser.ItemsContext context, bool inOnePlace, LineBuilding line)
    {
        var items = new List<RowItemSyntax>(context._each.Count);
        foreach (var item in context._each)
        {
            if (item.ends is null) items.Add(Item(item, inOnePlace, line));
            else AtEachEnd(item, items, line);
        }

        return items;
    }

    private static RowItemSyntax Item(TurnrowParser.ItemContext context, bool inOnePlace, LineBuilding line)
    {
        var span = LineBuilding.Span(context);
        switch (context.Start.Type)
        {
            case TurnrowLexer.OPEN:
                var group = Group(context, span, inOnePlace, line);
                return context.joined is null ? group : new TogetherItem(group, span);
            case TurnrowLexer.SKIP_WORD:
                return new SkipItem(Amount(context, line), span);
            case TurnrowLexer.SLIP:
                return new SlipOverItem(Amount(context, line)!, span);
            case TurnrowLexer.LEAVE:
                return new LeaveItem(Amount(context, line), span) { ForLater = context.later is not null };
            case TurnrowLexer.HOLD:
                return new HoldItem(Amount(context, line)!, line.Name(context.called), span);
            case TurnrowLexer.BRIDGE:
                return new BridgeItem(Amount(context, line)!, context.called is null ? null : line.Name(context.called), span);
            case TurnrowLexer.WITH:
                return new YarnItem(line.Name(context.yarn), span);
            case TurnrowLexer.JOIN:
                return new JoinItem(context.by is null ? null : line.Joined(context.by._words), WalkBuilder.Walk(context._walk, null, line), Amount(context, line), Place(context.at, line), span);
            default:
                return Stitch(context, span, inOnePlace, line);
        }
    }

    private static GroupItem Group(TurnrowParser.ItemContext context, TextSpan span, bool inOnePlace, LineBuilding line)
    {
        var place = Place(context.at, line);
        AmountSyntax? times = null;
        if (context.far is not null)
        {
            times = Reach(context.far, line);
        }
        else if (Amount(context, line) is { } value)
        {
            times = new CountAmount(value, value.Span.To(LineBuilding.Span(context.end)));
        }

        var group = new GroupItem(Items(context.inside, inOnePlace || place is not null || context.joined is not null, line), times, place, span);
        return group;
    }

    /// <summary>A stitch of the designer's own.</summary>
    public static StitchStatement StitchDefinition(TurnrowParser.StitchLineContext context, LineBuilding line)
    {
        var special = context.asSpecial;
        return new StitchStatement(
            line.Name(special.called),
            special.by is null ? null : line.Name(special.by),
            special.text is null ? null : line.Quoted(special.text),
            Items(special.made, inOnePlace: false, line),
            LineBuilding.Span(context));
    }

    private static RowItemSyntax Stitch(TurnrowParser.ItemContext context, TextSpan span, bool inOnePlace, LineBuilding line)
    {
        var before = context.before is null ? null : ExpressionBuilder.List(context.before, null, line);
        var words = line.Words(context._words);
        var change = context.changed is null ? null : Change(context.changed);
        if (context.nth is not null) return Centre(context, words, span, line);
        if (before is null && change is null && context.worked is null && context.at is null && OfCorners(words, span) is { } corners) return corners;
        var amount = context.changedBy is not null ? ChangeAmount(context.changedBy, line)
            : context.worked is not null ? StitchAmount(context.worked, words, line)
            : null;
        var place = Place(context.at, line);
        if (context.joined is not null) return new TogetherItem(new StitchItem(before, words, null, null, place, span), span);
        if (context.spread is not null) return Spread(context, new StitchItem(before, words, null, amount, place, span), inOnePlace, line);
        if (before is not null && change is null && amount is null && place is null && !inOnePlace)
            line.Report(StitchNumber.At(span, line.Text(before.Span), words));
        return new StitchItem(before, words, change, amount, place, span);
    }

    // Words that place or take out markers; null if they are a stitch.
    private static RowItemSyntax? OfCorners(List<NameSyntax> words, TextSpan span) => words switch
    {
        [{ Text: "mark" }, { Text: "corner" }] => new MarkCornerItem(span),
        [{ Text: "remove" }, { Text: "corners" or "corner" }] => new RemoveCornersItem(span),
        [{ Text: "move" }, { Text: "marker" }] => new MoveMarkerItem(span),
        _ => null,
    };

    private static AmountSyntax StitchAmount(TurnrowParser.StitchAmountContext context, List<NameSyntax> words, LineBuilding line)
    {
        if (context.far is not null) return Reach(context.far, line);
        if (context.first is not null)
        {
            var first = ExpressionBuilder.List(context.first, null, line);
            return new CountAmount(ExpressionBuilder.Calculation(first, context._operations, line), LineBuilding.Span(context));
        }

        // `dc hem - 4`: the last word is no stitch, the sum begins with it.
        var name = words[^1];
        words.RemoveAt(words.Count - 1);
        var sum = ExpressionBuilder.Calculation(ExpressionBuilder.Name(name), context._operations, line);
        if (words.Count == 0) line.Report(UnexpectedWord.SumWithoutStitch(sum.Span, line.Text(sum.Span)));
        return new CountAmount(sum, sum.Span);
    }

    private static AmountSyntax ChangeAmount(TurnrowParser.ChangeAmountContext context, LineBuilding line)
    {
        if (context.far is not null) return Reach(context.far, line);
        var count = ExpressionBuilder.Count(context.amount, line);
        return context.evenly is null
            ? new CountAmount(count, count.Span)
            : new EvenlyAmount(count, LineBuilding.Span(context));
    }

    private static AmountSyntax Reach(TurnrowParser.ReachContext context, LineBuilding line)
    {
        var span = LineBuilding.Span(context);
        if (context.corner is not null) return new CornerAmount(context.remain is null ? null : ExpressionBuilder.Count(context.remain, line), span);
        if (context.turn is not null) return new TurnAmount(context.remain is null ? null : ExpressionBuilder.Count(context.remain, line), span);
        return context.remain is null
            ? new AcrossAmount(context.Start.Type == TurnrowLexer.AROUND, span)
            : new UntilAmount(ExpressionBuilder.Count(context.remain, line), span);
    }

    private static ExpressionSyntax? Amount(TurnrowParser.ItemContext context, LineBuilding line) =>
        context.amount is null ? null : ExpressionBuilder.Count(context.amount, line);
}
