using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Building;

/// <summary>The lines that fit a garment to bodies and to the yarn: body tables, ease, finished measures, swatches, the sample made.</summary>
internal static class GradingBuilder
{
    public static BodyStatement Body(TurnrowParser.BodyLineContext context, LineBuilding line) =>
        new(
            context.table is null ? null : line.Name(context.table),
            context.measure is null ? null : ExpressionBuilder.Unit(context.measure),
            context.file is null ? null : line.Quoted(context.file),
            LineBuilding.Span(context));

    public static EaseStatement Ease(TurnrowParser.EaseLineContext context, LineBuilding line) =>
        new(line.Name(context.called), ExpressionBuilder.Sum(context.value, line), context.less is not null, LineBuilding.Span(context));

    public static FinishedStatement Finished(TurnrowParser.FinishedLineContext context, LineBuilding line)
    {
        var value = context.value;
        var of = value.of?.Type switch
        {
            TurnrowLexer.STITCHES => CountOf.Stitches,
            TurnrowLexer.ROWS => CountOf.Rows,
            _ => CountOf.Number,
        };
        var statement = new FinishedStatement(
            line.Name(context.called), ValueBuilder.Counted(value, line), of, value.by is null ? null : line.Name(value.by), LineBuilding.Span(context));
        foreach (var part in context._parts)
            statement = part.opens is null ? statement with { Stretch = NumberBuilder.Number(part.stretch, line) } : statement with { Opens = true };
        return statement;
    }

    public static AcceptStatement Accept(TurnrowParser.AcceptLineContext context, LineBuilding line) =>
        new(line.Name(context.called), context.which is null ? null : line.Name(context.which), line.Quoted(context.reason), LineBuilding.Span(context));

    public static SwatchStatement Swatch(TurnrowParser.SwatchLineContext context, LineBuilding line) =>
        new(
            line.Joined(context.by._words),
            NumberBuilder.Number(context.stitches, line),
            NumberBuilder.Number(context.rows, line),
            NumberBuilder.Number(context.value, line),
            context.unitWord.Type == TurnrowLexer.OZ,
            context.yarn is null ? null : line.Name(context.yarn),
            LineBuilding.Span(context))
        {
            OfRepeats = context.repeats is not null,
        };

    public static MadeStatement Made(TurnrowParser.MadeLineContext context, LineBuilding line)
    {
        var parts = new List<MadePartSyntax>(context._parts.Count);
        foreach (var part in context._parts)
            parts.Add(new MadePartSyntax(NumberBuilder.Number(part.value, line), ExpressionBuilder.Unit(part.measure), part.way.Type == TurnrowLexer.WIDE, LineBuilding.Span(part)));
        return new MadeStatement(HeaderBuilder.SizeName(context.size, line), line.Name(context.piece), parts, LineBuilding.Span(context));
    }
}
