using Turnrow.Syntax.Diagnostics.Kinds;
using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Building;

/// <content>Where a stitch goes, and what is spread over plain stitches.</content>
internal static partial class RowBuilder
{
    private static SpreadItem Spread(TurnrowParser.ItemContext context, StitchItem stitch, bool inOnePlace, LineBuilding line)
    {
        var spread = context.spread;
        var last = stitch.Amount?.Span ?? stitch.Words[^1].Span;
        var plain = stitch with { Span = TextSpan.FromBounds(stitch.Span.Start, last.End) };
        if (stitch is { Amount: null, Words.Count: 1 }) line.Report(UnexpectedWord.SpreadOverWhat(LineBuilding.Span(spread.Start), last));
        return new SpreadItem(plain, Items(spread.inside, inOnePlace, line), ExpressionBuilder.Count(spread.amount, line), null, stitch.Span);
    }

    // `3 at each end` stands behind a comma, and belongs to what is spread before it.
    private static void AtEachEnd(TurnrowParser.ItemContext context, List<RowItemSyntax> items, LineBuilding line)
    {
        var span = LineBuilding.Span(context);
        var words = line.Words(context._words);
        ExpressionSyntax? count = (context.before, words) switch
        {
            ({ } number, []) => ExpressionBuilder.List(number, null, line),
            (null, [var name]) => ExpressionBuilder.Name(name),
            _ => null,
        };
        if (count is not null && context.at is null && items is [.., SpreadItem { AtEachEnd: null } spread])
            items[^1] = spread with { AtEachEnd = count, Span = spread.Span.To(span) };
        else
            line.Report(UnexpectedWord.AtEachEnd(span, line.Text(span)));
    }

    // `centre is 3rd dc`: its words are two names that only mean something together.
    private static RowItemSyntax Centre(TurnrowParser.ItemContext context, List<NameSyntax> words, TextSpan span, LineBuilding line)
    {
        var nth = LineBuilding.Span(context.nth);
        var which = new NthSyntax(NumberBuilder.Ordinal(context.nth, line), line.Words(context._of), nth.To(LineBuilding.Span(context._of[^1])));
        if (words is not [{ Text: "centre" or "center" }, { Text: "is" }] || context.before is not null || context.at is not null)
            line.Report(UnexpectedWord.Nth(which.Span, line.Text(which.Span)));
        return new CentreItem(which, span);
    }

    /// <summary>Where a stitch goes.</summary>
    public static PlaceSyntax? Place(TurnrowParser.PlaceContext? context, LineBuilding line)
    {
        if (context is null) return null;
        var word = context.which.Type switch
        {
            TurnrowLexer.NEXT => PlaceWord.Next,
            TurnrowLexer.FIRST => PlaceWord.First,
            TurnrowLexer.LAST => PlaceWord.Last,
            TurnrowLexer.SAME => PlaceWord.Same,
            TurnrowLexer.CORNER => PlaceWord.Corner,
            TurnrowLexer.SKIPPED => PlaceWord.Skipped,
            TurnrowLexer.ONE => PlaceWord.One,
            TurnrowLexer.ORDINAL => PlaceWord.Nth,
            TurnrowLexer.RING => PlaceWord.Ring,
            _ => PlaceWord.Each,
        };
        var remain = context.remain is null ? null : ExpressionBuilder.Count(context.remain, line);
        if (remain is not null && word != PlaceWord.Each)
        {
            var said = LineBuilding.Span(context.until).To(LineBuilding.Span(context));
            line.Report(UnexpectedWord.UntilWithoutEach(said, line.Text(said)));
        }

        var place = new PlaceSyntax(word, line.Words(context._kind), line.Words(context._also), remain, LineBuilding.Span(context))
        {
            ToCorner = context.corner is not null,
            Crossing = context.crossing?.Type switch
            {
                TurnrowLexer.FRONT => CrossingWord.InFront,
                TurnrowLexer.BEHIND => CrossingWord.Behind,
                _ => null,
            },
            Nth = word == PlaceWord.Nth ? NumberBuilder.Ordinal(context.which, line) : null,
        };
        if (word == PlaceWord.Nth && !place.Kind.Any(static w => w.Text == "of")) line.Report(UnexpectedWord.ChainFromHook(LineBuilding.Span(context.which), line.Text(context.which)));
        if (context._other.Count == 0)
        {
            if (context.many is not null) line.Report(UnexpectedWord.NumberBeforeKind(LineBuilding.Span(context.many), line.Text(LineBuilding.Span(context.many))));
            return place;
        }

        var many = context.many is null ? null : ExpressionBuilder.List(context.many, null, line);
        var kind = line.Words(context._other);
        var start = many?.Span ?? place.AndKind[0].Span;
        return place with { AndKind = [], Other = new OtherPlaceSyntax(many, place.AndKind, kind, start.To(kind[^1].Span)) };
    }
}
