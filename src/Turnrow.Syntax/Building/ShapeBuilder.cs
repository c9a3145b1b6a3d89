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
        var (pattern, edges) = Fixes(context._fixes, fixes, line);
        return new StraightStatement(
            extent,
            amount,
            context.mark is null ? null : line.Name(context.mark),
            fixes,
            ValueBuilder.Claim(context.claimed, line),
            LineBuilding.Span(context))
        {
            At = context.at is null ? null : line.Edge(context.at),
            RowsWord = context.counted is null ? null : line.Name(context.counted),
            Pattern = pattern,
            EdgeStitch = edges,
        };
    }

    public static LeaveStatement Leave(TurnrowParser.LeaveLineContext context, LineBuilding line) =>
        new(
            ExpressionBuilder.Count(context.amount, line),
            line.Edge(context.at),
            ValueBuilder.Claim(context.claimed, line),
            LineBuilding.Span(context))
        {
            ForLater = context.later is not null,
        };

    public static AddStatement Add(TurnrowParser.AddLineContext context, LineBuilding line) =>
        new(
            ExpressionBuilder.Count(context.amount, line),
            line.Edge(context.at),
            context.apart is not null,
            ValueBuilder.Claim(context.claimed, line),
            LineBuilding.Span(context));

    /// <summary>A line that shapes, or that says how edges are shaped from here on.</summary>
    public static StatementSyntax Shape(TurnrowParser.ShapeLineContext context, LineBuilding line)
    {
        if (context.does is { } done) return Shape(context, done, line);
        var inside = context.rows is null ? null : ExpressionBuilder.Count(context.rows, line);
        return new ShapeMannerStatement(inside, context.by is null ? null : Decreasing(context.by), LineBuilding.Span(context));
    }

    /// <summary>A body of revolution.</summary>
    public static SolidStatement Solid(TurnrowParser.SolidLineContext context, LineBuilding line)
    {
        var parts = new List<NameSyntax>();
        ExpressionSyntax? multiple = null;
        StackingSyntax? stacking = null;
        foreach (var part in context._parts)
        {
            if (part.said is { } said) parts.Add(line.Name(said));
            else if (part.way is { } way) stacking = new StackingSyntax(way.Type == TurnrowLexer.STAGGERED, LineBuilding.Span(way));
            else multiple = ExpressionBuilder.Single(part.multiple, line);
        }

        return new SolidStatement(
            line.Name(context.shape),
            ExpressionBuilder.Sum(context.across, line),
            context.other is null ? null : ExpressionBuilder.Sum(context.other, line),
            context.way?.Type == TurnrowLexer.THICK,
            multiple,
            parts,
            ValueBuilder.Claim(context.claimed, line),
            LineBuilding.Span(context))
        { Stacking = stacking };
    }

    private static ShapeStatement Shape(TurnrowParser.ShapeLineContext context, TurnrowParser.ShapeDoneContext done, LineBuilding line)
    {
        var shapings = new List<ShapingSyntax>(done._shapings.Count);
        foreach (var shaping in done._shapings) shapings.Add(new ShapingBuilder(line).Shaping(shaping));
        return new ShapeStatement(
            context.from is null ? Extent(context, line) : null,
            context.from is null ? null : ExpressionBuilder.Count(context.from, line),
            context.to is null ? null : ExpressionBuilder.Count(context.to, line),
            shapings,
            done.solved is null ? null : Solve(done.solved, line),
            ValueBuilder.Claim(done.claimed, line),
            LineBuilding.Span(context))
        { RowsWord = context.counted is not null ? line.Name(context.counted) : context.many is not null ? line.Name(context.many) : null };
    }

    private static RowExtentSyntax Extent(TurnrowParser.ShapeLineContext context, LineBuilding line)
    {
        var extent = context.length is null ? StraightExtent.Rows : context.further is null ? StraightExtent.To : StraightExtent.For;
        var amount = context.length is null ? ExpressionBuilder.Count(context.rows, line) : ExpressionBuilder.Sum(context.length, line);
        var fixes = new List<RowFixSyntax>(context._fixes.Count);
        var (pattern, edges) = Fixes(context._fixes, fixes, line);
        var mark = context.mark is null ? null : line.Name(context.mark);
        var at = context.at is null ? null : line.Edge(context.at);
        var end = amount.Span;
        foreach (var part in (SyntaxNode?[])[at, mark, .. fixes, pattern, edges])
        {
            if (part is not null && part.Span.End > end.End) end = part.Span;
        }

        return new RowExtentSyntax(extent, amount, mark, fixes, amount.Span.To(end)) { At = at, Pattern = pattern, EdgeStitch = edges };
    }

    /// <summary>How decreases are worked.</summary>
    public static DecreasingSyntax Decreasing(TurnrowParser.DecreasingContext context) => new(
        context.Start.Type switch
        {
            TurnrowLexer.SKIPPING => Tree.Decreasing.Skipping,
            TurnrowLexer.SLIPPING => Tree.Decreasing.SlippingOver,
            _ => Tree.Decreasing.Together,
        },
        LineBuilding.Span(context));

    // Which numbers of rows are allowed, and apart from them the stitch pattern and the stitch of its edges.
    private static (NameSyntax? Pattern, NameSyntax? EdgeStitch) Fixes(IList<TurnrowParser.RowFixContext> contexts, List<RowFixSyntax> fixes, LineBuilding line)
    {
        NameSyntax? pattern = null, edges = null;
        foreach (var context in contexts)
        {
            if (context.pattern is not null) pattern = line.Name(context.pattern);
            else if (context.by is not null) edges = line.Joined(context.by._words);
            else fixes.Add(Fix(context));
        }

        return (pattern, edges);
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

    /// <summary>How far in from the edge.</summary>
    public static ExpressionSyntax StitchesIn(TurnrowParser.StitchesInContext context, LineBuilding line) =>
        context.amount is not null
            ? ExpressionBuilder.List(context.amount, null, line)
            : ExpressionBuilder.Name(line.Name(context.called));

    private static SolveSyntax Solve(TurnrowParser.SolveContext context, LineBuilding line)
    {
        var options = new List<SolveOptionSyntax>(context._options.Count);
        foreach (var option in context._options) options.Add(Option(option, line));
        return new SolveSyntax(
            ExpressionBuilder.Count(context.target, line),
            context.around is { } around ? new EdgeSyntax(EdgeWord.Evenly, null, LineBuilding.Span(around)) : line.Edge(context.at),
            options,
            LineBuilding.Span(context));
    }

    private static SolveOptionSyntax Option(TurnrowParser.SolveOptionContext context, LineBuilding line)
    {
        var span = LineBuilding.Span(context);
        if (context.inset is not null)
            return new SolveOptionSyntax(SolveOption.StitchesIn, StitchesIn(context.inset, line), null, span);
        if (context.by is not null) return new SolveOptionSyntax(SolveOption.Decreasing, null, Decreasing(context.by), span);
        var option = context.Start.Type switch
        {
            TurnrowLexer.FIRST => SolveOption.FirstRowsPlain,
            TurnrowLexer.LAST => SolveOption.LastRowsPlain,
            TurnrowLexer.ON => SolveOption.RightSideRows,
            TurnrowLexer.LONGER => SolveOption.LongerFirst,
            _ => SolveOption.ByTurns,
        };
        return new SolveOptionSyntax(option, context.rows is null ? null : ExpressionBuilder.Count(context.rows, line), null, span);
    }
}
