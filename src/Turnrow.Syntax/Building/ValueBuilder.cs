using Antlr4.Runtime;
using Turnrow.Syntax.Diagnostics.Kinds;
using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Building;

/// <summary>The lines that define values and that check them: measure, count, expect; and the claim at a line's end.</summary>
internal static class ValueBuilder
{
    public static MeasureStatement Measure(TurnrowParser.MeasureLineContext context, LineBuilding line) =>
        new(line.Name(context.called), ExpressionBuilder.Sum(context.value, line), LineBuilding.Span(context));

    public static CountStatement Count(TurnrowParser.CountLineContext context, LineBuilding line)
    {
        var of = context.of?.Type switch
        {
            TurnrowLexer.STITCHES => CountOf.Stitches,
            TurnrowLexer.ROWS => CountOf.Rows,
            _ => CountOf.Number,
        };

        // `sc stitches for 10 cm`: the stitch was read as a value, and has to be a plain word.
        NameSyntax? stitch = null;
        var value = ExpressionBuilder.Sum(context.length ?? context.value, line);
        if (context.length is not null && context.value is not null)
        {
            var before = ExpressionBuilder.Sum(context.value, line);
            if (before is NameExpression { Name: var name })
                stitch = name;
            else
                line.Report(UnexpectedWord.NoStitch(before.Span, line.Text(before.Span)));
        }

        var fixes = new List<CountFixSyntax>(context._fixes.Count);
        ExpressionSyntax? within = null;
        foreach (var fix in context._fixes)
        {
            if (fix.within is null) fixes.Add(Fix(fix, line));
            else within = ExpressionBuilder.Sum(fix.within, line);
        }

        return new CountStatement(line.Name(context.called), of, context.of is null ? null : line.Name(context.of), stitch, value, fixes, LineBuilding.Span(context)) { Within = within };
    }

    public static StatementSyntax Expect(TurnrowParser.ExpectLineContext context, LineBuilding line)
    {
        var span = LineBuilding.Span(context);
        var left = context.left;
        if (context.lying is not null) return Lying(context, line);
        if (context.length is null)
            return new ExpectEqualStatement(ExpectedValue(left, line), BoundOf(context), ExpectedValue(context.right, line), span);
        var within = context.within is null ? null : ExpressionBuilder.Sum(context.within, line);
        return new ExpectMeasureStatement(
            Counted(left, line),
            left.of?.Type == TurnrowLexer.ROWS,
            left.of is null ? null : line.Name(left.of),
            left.by is null ? null : line.Name(left.by),
            BoundOf(context),
            ExpressionBuilder.Sum(context.length, line),
            within,
            span);
    }

    // `lie` alone does not say how.
    private static StatementSyntax Lying(TurnrowParser.ExpectLineContext context, LineBuilding line)
    {
        var span = LineBuilding.Span(context);
        var lie = context.lying.Type switch { TurnrowLexer.CUP => Lie.Cup, TurnrowLexer.RUFFLE => Lie.Ruffle, _ => Lie.Flat };
        if (lie == Lie.Flat != (context.flat is not null)) line.Report(UnexpectedWord.Lying(LineBuilding.Span(context.flat ?? context.lying), line.Text(LineBuilding.Span(context.flat ?? context.lying))));
        if (context.left.of is { } of) line.Report(UnexpectedWord.ManyNames(LineBuilding.Span(of), line.Text(LineBuilding.Span(of))));
        var piece = ExpressionBuilder.Sum(context.left.value, line) is NameExpression { Name: var name } ? name : null;
        if (piece is null) line.Report(UnexpectedWord.Lying(LineBuilding.Span(context.left), line.Text(LineBuilding.Span(context.left))));
        return new ExpectLieStatement(
            piece ?? new NameSyntax(string.Empty, LineBuilding.Span(context.left)),
            lie,
            context.from is null ? null : ExpressionBuilder.Count(context.from, line),
            context.to is null ? null : ExpressionBuilder.Count(context.to, line),
            span);
    }

    private static Bound BoundOf(TurnrowParser.ExpectLineContext context) => context.bound?.Type switch
    {
        TurnrowLexer.LEAST => Bound.AtLeast,
        TurnrowLexer.MOST => Bound.AtMost,
        _ => Bound.Same,
    };

    public static ClaimSyntax? Claim(TurnrowParser.ClaimContext? context, LineBuilding line)
    {
        if (context is null) return null;
        var parts = new List<ClaimPartSyntax>(context._parts.Count);
        foreach (var part in context._parts)
        {
            var kind = part._words.Count > 0 ? line.Joined(part._words)
                : part.stitches is not null ? line.Name(part.stitches)
                : null;
            parts.Add(new ClaimPartSyntax(ExpressionBuilder.Count(part.amount, line), kind, LineBuilding.Span(part)));
        }

        var scope = context.without is not null ? ClaimScope.WithoutTurningChain
            : context.with is not null ? ClaimScope.WithChains
            : ClaimScope.Usual;
        return new ClaimSyntax(parts, scope, LineBuilding.Span(context));
    }

    /// <summary>The count, or length, of <c>2 x hem stitches</c> or <c>bust + 4 cm</c>.</summary>
    public static ExpressionSyntax Counted(TurnrowParser.ExpectedContext context, LineBuilding line) =>
        ExpressionBuilder.Calculation(ExpressionBuilder.Sum(context.value, line), MoreOf(context, line));

    // `back rows` asks a piece, and `back rows + 6` goes on from what it answers; `hem` and `77 stitches` are values.
    private static ExpressionSyntax ExpectedValue(TurnrowParser.ExpectedContext context, LineBuilding line)
    {
        var value = Asked(ExpressionBuilder.Sum(context.value, line), context.of);
        if (SideOf(context, line) is { } side && value is PieceExpression piece) value = piece with { Side = side };
        else if (context.of is not null && (context.nth ?? context.by) is { } second) line.Report(UnexpectedWord.ManyNames(LineBuilding.Span(second), line.Text(second)));
        return ExpressionBuilder.Calculation(value, MoreOf(context, line));
    }

    // Two words, the last of them `side`.
    private static NameSyntax? SideOf(TurnrowParser.ExpectedContext context, LineBuilding line)
    {
        var (which, side) = context.nth is null ? (context.by, context.word) : (context.nth, context.by);
        var isSide = side is not null && (context.nth is null || context.word is null) && string.Equals(line.Text(side), "side", StringComparison.OrdinalIgnoreCase);
        return isSide ? line.Name(which) : null;
    }

    private static List<OperationSyntax> MoreOf(TurnrowParser.ExpectedContext context, LineBuilding line)
    {
        var more = new List<OperationSyntax>(context._more.Count);
        foreach (var operation in context._more)
            more.Add(ExpressionBuilder.Operation(operation.by, Asked(ExpressionBuilder.Single(operation.value, line), operation.of)));
        return more;
    }

    private static ExpressionSyntax Asked(ExpressionSyntax value, IToken? of) =>
        of is not null && value is NameExpression { Name: var piece }
            ? new PieceExpression(piece, of.Type == TurnrowLexer.ROWS ? PieceQuantity.Rows : PieceQuantity.Stitches, value.Span.To(LineBuilding.Span(of)))
            : value;

    private static CountFixSyntax Fix(TurnrowParser.CountFixContext context, LineBuilding line)
    {
        var span = LineBuilding.Span(context);
        var fix = context.Start.Type switch
        {
            TurnrowLexer.ODD => CountFix.Odd,
            TurnrowLexer.EVEN => CountFix.Even,
            TurnrowLexer.MULTIPLE => CountFix.Multiple,
            _ => context.way.Type == TurnrowLexer.UP ? CountFix.RoundedUp : CountFix.RoundedDown,
        };
        var multiple = context.multiple is null ? null : ExpressionBuilder.Single(context.multiple, line);
        var plus = context.plus is null ? null : ExpressionBuilder.Single(context.plus, line);
        return new CountFixSyntax(fix, multiple, plus, span);
    }

    /// <summary>How all claims of the file count.</summary>
    public static ClaimsStatement Claims(TurnrowParser.ClaimsLineContext context) =>
        new(context.without is not null ? ClaimScope.WithoutTurningChain : ClaimScope.WithChains, LineBuilding.Span(context));
}
