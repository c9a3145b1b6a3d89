using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Building;

/// <summary>The lines that say what it is made of and how: yarn, hook, gauge, turning chains.</summary>
internal static class MaterialBuilder
{
    public static YarnStatement Yarn(TurnrowParser.YarnLineContext context, LineBuilding line)
    {
        var facts = new List<YarnFactSyntax>(context._facts.Count);
        foreach (var fact in context._facts)
            facts.Add(new YarnFactSyntax(FactOf(fact), NumberBuilder.Number(fact.value, line), LineBuilding.Span(fact)));
        var description = context.text is null ? null : line.Quoted(context.text);
        return new YarnStatement(line.Name(context.called), description, facts, LineBuilding.Span(context));
    }

    public static HookStatement Hook(TurnrowParser.HookLineContext context, LineBuilding line) =>
        new(NumberBuilder.Number(context.value, line), LineBuilding.Span(context));

    public static GaugeStatement Gauge(TurnrowParser.GaugeLineContext context, LineBuilding line)
    {
        var stitches = GaugeSpan(context.stitches, context.stitchesLength ?? context.rowsLength, line);
        var rows = GaugeSpan(context.rows, context.rowsLength, line);
        return new GaugeStatement(line.Joined(context.by._words), stitches, rows, LineBuilding.Span(context)) { OfRepeats = context.repeats is not null };
    }

    public static TurnStatement Turn(TurnrowParser.TurnLineContext context, LineBuilding line)
    {
        var notInFoundation = false;
        NumberSyntax? firstStitchIn = null;
        foreach (var part in context._parts)
        {
            notInFoundation |= part.nth is null;
            if (part.nth is not null) firstStitchIn = NumberBuilder.Ordinal(part.nth, line);
        }

        bool? counts = context.counts is not null ? true : context.doesNot is not null ? false : null;
        return new TurnStatement(
            line.Joined(context.by._words),
            context.nextRow is not null,
            NumberBuilder.Number(context.chains, line),
            counts,
            notInFoundation,
            firstStitchIn,
            LineBuilding.Span(context));
    }

    private static YarnFact FactOf(TurnrowParser.YarnFactContext context) => context.unitWord?.Type switch
    {
        TurnrowLexer.G => YarnFact.Grams,
        TurnrowLexer.OZ => YarnFact.Ounces,
        TurnrowLexer.M => YarnFact.Metres,
        TurnrowLexer.YD => YarnFact.Yards,
        _ => context.extra is not null ? YarnFact.Extra : YarnFact.Weight,
    };

    private static GaugeSpanSyntax GaugeSpan(
        TurnrowParser.NumberContext count, TurnrowParser.GaugeLengthContext length, LineBuilding line) =>
        new(
            NumberBuilder.Number(count, line),
            NumberBuilder.Number(length.value, line),
            ExpressionBuilder.Unit(length.measure),
            LineBuilding.Span(count).To(LineBuilding.Span(length)));
}
