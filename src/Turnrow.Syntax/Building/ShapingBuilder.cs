using Antlr4.Runtime;
using Turnrow.Syntax.Diagnostics.Kinds;
using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Building;

/// <summary>One shaping: its stages, and what is said of all of them, in whatever order it stands.</summary>
internal sealed class ShapingBuilder(LineBuilding line)
{
    private readonly List<StageSyntax> _stages = [];
    private EdgeSyntax? _edge;
    private ExpressionSyntax? _stitchesIn;
    private DecreasingSyntax? _decreasing;
    private StackingSyntax? _stacking;

    public ShapingSyntax Shaping(TurnrowParser.ShapingContext context)
    {
        Begin(context.first);
        foreach (var part in context._parts) Part(part);
        foreach (var stage in _stages)
        {
            var isStep = stage.Kind is StageKind.Leave or StageKind.LeaveForLater or StageKind.Add;
            if (stage.Frequencies.Count == 0 && !isStep) line.Report(LineUnfinished.AfterShaping(stage.Span));
        }

        var span = LineBuilding.Span(context);
        if (_edge is null) line.Report(LineUnfinished.WithoutEdge(span));
        return new ShapingSyntax(
            context.after is null ? null : ExpressionBuilder.Count(context.after, line),
            _stages,
            _edge ?? new EdgeSyntax(EdgeWord.Both, null, span),
            _stitchesIn,
            _decreasing,
            span)
        { Stacking = _stacking };
    }

    private void Part(TurnrowParser.ShapingPartContext part)
    {
        if (part.next is not null) Begin(part.next);
        else if (part.when is not null) Add(Frequency(part.when));
        else if (part.often is not null) Add(Every(part.often, LineBuilding.Span(part)));
        else if (part.turns is not null) Add(Turns(part.turns, LineBuilding.Span(part)));
        else if (part.inset is not null) Once(ref _stitchesIn, ShapeBuilder.StitchesIn(part.inset, line), part);
        else if (part.by is not null) Once(ref _decreasing, ShapeBuilder.Decreasing(part.by), part);
        else if (part.way is { } way) Once(ref _stacking, new StackingSyntax(way.Type == TurnrowLexer.STAGGERED, LineBuilding.Span(part)), part);
        else if (part.evenly is not null) Once(ref _edge, Evenly(part.evenly), part);
        else Once(ref _edge, line.Edge(part.at), part);
    }

    private static EdgeSyntax Evenly(IToken token) => new(EdgeWord.Evenly, null, LineBuilding.Span(token));

    private void Begin(TurnrowParser.StageContext context)
    {
        if (context.at is not null) Once(ref _edge, line.Edge(context.at), context);
        if (context.evenly is not null) Once(ref _edge, Evenly(context.evenly), context);
        var kind = context.changed is { } changed ? changed.Start.Type == TurnrowLexer.INC ? StageKind.Increase : StageKind.Decrease
            : context.later is not null ? StageKind.LeaveForLater
            : context.Start.Type == TurnrowLexer.LEAVE ? StageKind.Leave
            : StageKind.Add;
        _stages.Add(new StageSyntax(
            kind,
            ExpressionBuilder.Count(context.amount, line),
            context.when is null ? [] : [Frequency(context.when)],
            LineBuilding.Span(context)));
    }

    // What says only how often goes on with the change before it.
    private void Add(FrequencySyntax frequency)
    {
        var stage = _stages[^1];
        _stages[^1] = stage with { Frequencies = [.. stage.Frequencies, frequency], Span = stage.Span.To(frequency.Span) };
    }

    private void Once<T>(ref T? said, T now, ParserRuleContext where)
        where T : SyntaxNode
    {
        if (said is not null) line.Report(UnexpectedWord.Twice(LineBuilding.Span(where), line.Text(LineBuilding.Span(where))));
        said = now;
    }

    private FrequencySyntax Frequency(TurnrowParser.FrequencyContext context) => context.often is not null
        ? Every(context.often, LineBuilding.Span(context))
        : Turns(context.turns, LineBuilding.Span(context));

    private FrequencySyntax Every(TurnrowParser.EveryRowsContext context, TextSpan span) =>
        new(Count(context.interval), null, Count(context.times), span);

    private FrequencySyntax Turns(TurnrowParser.TurnRowsContext context, TextSpan span) =>
        new(Count(context.interval), Count(context.byTurns), Count(context.times), span);

    private ExpressionSyntax? Count(TurnrowParser.CountContext? context) => context is null ? null : ExpressionBuilder.Count(context, line);
}
