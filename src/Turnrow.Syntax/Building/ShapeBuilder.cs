using Turnrow.Syntax.Diagnostics.Kinds;
using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Building;

/// <summary>The shaping statements: straight, leave, add, shape.</summary>
internal static class ShapeBuilder
{
    public static StraightStatement Straight(TurnrowParser.StraightLineContext context, LineBuilding line)
    {
        var extent = context.length is null ? StraightExtent.Rows
            : context.further is null ? StraightExtent.To
            : StraightExtent.For;
        var amount = context.length is null
            ? ExpressionBuilder.Count(context.amount, line)
            : ExpressionBuilder.Sum(context.length, line);
        var fixes = new List<RowFixSyntax>(context._fixes.Count);
        foreach (var fix in context._fixes) fixes.Add(Fix(fix));
        return new StraightStatement(
            extent,
            amount,
            context.mark is null ? null : line.Name(context.mark),
            fixes,
            ValueBuilder.Claim(context.claimed, line),
            LineBuilding.Span(context));
    }

    public static LeaveStatement Leave(TurnrowParser.LeaveLineContext context, LineBuilding line) =>
        new(
            ExpressionBuilder.Count(context.amount, line),
            line.Edge(context.at),
            ValueBuilder.Claim(context.claimed, line),
            LineBuilding.Span(context));

    public static AddStatement Add(TurnrowParser.AddLineContext context, LineBuilding line) =>
        new(
            ExpressionBuilder.Count(context.amount, line),
            line.Edge(context.at),
            context.apart is not null,
            ValueBuilder.Claim(context.claimed, line),
            LineBuilding.Span(context));

    public static ShapeStatement Shape(TurnrowParser.ShapeLineContext context, LineBuilding line)
    {
        var shapings = new List<ShapingSyntax>(context._shapings.Count);
        foreach (var shaping in context._shapings) shapings.Add(Shaping(shaping, line));
        return new ShapeStatement(
            context.rows is null ? null : ExpressionBuilder.Count(context.rows, line),
            context.from is null ? null : ExpressionBuilder.Count(context.from, line),
            context.to is null ? null : ExpressionBuilder.Count(context.to, line),
            shapings,
            context.solved is null ? null : Solve(context.solved, line),
            ValueBuilder.Claim(context.claimed, line),
            LineBuilding.Span(context));
    }

    private static RowFixSyntax Fix(TurnrowParser.RowFixContext context)
    {
        var fix = context.Start.Type switch
        {
            TurnrowLexer.EVEN => RowFix.EvenRows,
            TurnrowLexer.ODD => RowFix.OddRows,
            _ => context.facing.Start.Type == TurnrowLexer.RS ? RowFix.EndRightSide : RowFix.EndWrongSide,
        };
        return new RowFixSyntax(fix, LineBuilding.Span(context));
    }

    private static ShapingSyntax Shaping(TurnrowParser.ShapingContext context, LineBuilding line)
    {
        ExpressionSyntax? stitchesIn = null;
        var frequencies = new List<FrequencySyntax>(context._parts.Count + 1);
        if (context.first is not null) frequencies.Add(Frequency(context.first, line));
        foreach (var part in context._parts)
        {
            if (part.when is not null)
            {
                frequencies.Add(Frequency(part.when, line));
                continue;
            }

            if (stitchesIn is not null)
                line.Report(UnexpectedWord.Twice(LineBuilding.Span(part), line.Text(LineBuilding.Span(part))));
            stitchesIn = StitchesIn(part.inset, line);
        }

        var span = LineBuilding.Span(context);
        if (frequencies.Count == 0) line.Report(LineUnfinished.AfterShaping(span));
        return new ShapingSyntax(
            context.after is null ? null : ExpressionBuilder.Count(context.after, line),
            RowBuilder.Change(context.changed),
            ExpressionBuilder.Count(context.amount, line),
            line.Edge(context.at),
            stitchesIn,
            frequencies,
            span);
    }

    private static FrequencySyntax Frequency(TurnrowParser.FrequencyContext context, LineBuilding line) =>
        new(
            context.interval is null ? null : ExpressionBuilder.Count(context.interval, line),
            context.byTurns is null ? null : ExpressionBuilder.Count(context.byTurns, line),
            context.times is null ? null : ExpressionBuilder.Count(context.times, line),
            LineBuilding.Span(context));

    private static ExpressionSyntax StitchesIn(TurnrowParser.StitchesInContext context, LineBuilding line) =>
        context.amount is not null
            ? ExpressionBuilder.List(context.amount, null, line)
            : ExpressionBuilder.Name(line.Name(context.called));

    private static SolveSyntax Solve(TurnrowParser.SolveContext context, LineBuilding line)
    {
        var options = new List<SolveOptionSyntax>(context._options.Count);
        foreach (var option in context._options) options.Add(Option(option, line));
        return new SolveSyntax(
            ExpressionBuilder.Count(context.target, line), line.Edge(context.at), options, LineBuilding.Span(context));
    }

    private static SolveOptionSyntax Option(TurnrowParser.SolveOptionContext context, LineBuilding line)
    {
        var span = LineBuilding.Span(context);
        if (context.inset is not null)
            return new SolveOptionSyntax(SolveOption.StitchesIn, StitchesIn(context.inset, line), span);
        var option = context.Start.Type switch
        {
            TurnrowLexer.FIRST => SolveOption.FirstRowsPlain,
            TurnrowLexer.LAST => SolveOption.LastRowsPlain,
            TurnrowLexer.ON => SolveOption.RightSideRows,
            TurnrowLexer.LONGER => SolveOption.LongerFirst,
            _ => SolveOption.ByTurns,
        };
        return new SolveOptionSyntax(option, context.rows is null ? null : ExpressionBuilder.Count(context.rows, line), span);
    }
}
