using Turnrow.Syntax.Diagnostics.Kinds;
using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Building;

/// <summary>The shaping statements: straight, leave, add, shape.</summary>
internal static class ShapeBuilder
{
    public static StraightStatement Straight(TurnrowParser.StraightLineContext context, LineBuilding line)
    {
        var extent = context.TO() is not null ? StraightExtent.To
            : context.FOR() is not null ? StraightExtent.For
            : StraightExtent.Rows;
        var amount = context.length is null
            ? ExpressionBuilder.Count(context.count(), line)
            : ExpressionBuilder.Sum(context.length, line);
        var fixes = new List<RowFixSyntax>(context._fixes.Count);
        foreach (var fix in context._fixes) fixes.Add(Fix(fix));
        return new StraightStatement(
            extent,
            amount,
            context.name() is { } from ? line.Name(from) : null,
            fixes,
            ValueBuilder.Claim(context.claim(), line),
            LineBuilding.Span(context));
    }

    public static LeaveStatement Leave(TurnrowParser.LeaveLineContext context, LineBuilding line) =>
        new(
            ExpressionBuilder.Count(context.count(), line),
            line.Edge(context.edge()),
            ValueBuilder.Claim(context.claim(), line),
            LineBuilding.Span(context));

    public static AddStatement Add(TurnrowParser.AddLineContext context, LineBuilding line) =>
        new(
            ExpressionBuilder.Count(context.count(), line),
            line.Edge(context.edge()),
            context.apart is not null,
            ValueBuilder.Claim(context.claim(), line),
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
            context.solve() is { } solve ? Solve(solve, line) : null,
            ValueBuilder.Claim(context.claim(), line),
            LineBuilding.Span(context));
    }

    private static RowFixSyntax Fix(TurnrowParser.RowFixContext context)
    {
        var fix = context.EVEN() is not null ? RowFix.EvenRows
            : context.ODD() is not null ? RowFix.OddRows
            : context.side().RS() is not null ? RowFix.EndRightSide
            : RowFix.EndWrongSide;
        return new RowFixSyntax(fix, LineBuilding.Span(context));
    }

    private static ShapingSyntax Shaping(TurnrowParser.ShapingContext context, LineBuilding line)
    {
        ExpressionSyntax? stitchesIn = null;
        var frequencies = new List<FrequencySyntax>(context._parts.Count + 1);
        if (context.frequency() is { } first) frequencies.Add(Frequency(first, line));
        foreach (var part in context._parts)
        {
            if (part.frequency() is { } frequency)
            {
                frequencies.Add(Frequency(frequency, line));
                continue;
            }

            if (stitchesIn is not null)
                line.Report(UnexpectedWord.Twice(LineBuilding.Span(part), line.Text(LineBuilding.Span(part))));
            stitchesIn = StitchesIn(part.stitchesIn(), line);
        }

        var span = LineBuilding.Span(context);
        if (frequencies.Count == 0) line.Report(LineUnfinished.AfterShaping(span));
        return new ShapingSyntax(
            context.after is null ? null : ExpressionBuilder.Count(context.after, line),
            RowBuilder.Change(context.change()),
            ExpressionBuilder.Count(context.amount, line),
            line.Edge(context.edge()),
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
        context.list() is { } list
            ? ExpressionBuilder.List(list, null, line)
            : ExpressionBuilder.Name(line.Name(context.WORD().Symbol));

    private static SolveSyntax Solve(TurnrowParser.SolveContext context, LineBuilding line)
    {
        var options = new List<SolveOptionSyntax>(context._options.Count);
        foreach (var option in context._options) options.Add(Option(option, line));
        return new SolveSyntax(
            ExpressionBuilder.Count(context.count(), line), line.Edge(context.edge()), options, LineBuilding.Span(context));
    }

    private static SolveOptionSyntax Option(TurnrowParser.SolveOptionContext context, LineBuilding line)
    {
        var span = LineBuilding.Span(context);
        if (context.stitchesIn() is { } inset)
            return new SolveOptionSyntax(SolveOption.StitchesIn, StitchesIn(inset, line), span);
        if (context.count() is { } rows)
        {
            var which = context.LAST() is null ? SolveOption.FirstRowsPlain : SolveOption.LastRowsPlain;
            return new SolveOptionSyntax(which, ExpressionBuilder.Count(rows, line), span);
        }

        var option = context.RS() is not null ? SolveOption.RightSideRows
            : context.LONGER() is not null ? SolveOption.LongerFirst
            : SolveOption.ByTurns;
        return new SolveOptionSyntax(option, null, span);
    }
}
