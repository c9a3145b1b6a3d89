using System.Globalization;
using Turnrow.Syntax.Diagnostics.Kinds;
using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Building;

/// <summary>The lines that open a piece, begin it, name its edges, divide it and end it.</summary>
internal static class PieceLineBuilder
{
    public static PieceStatement Piece(TurnrowParser.PieceLineContext context, LineBuilding line) =>
        new(
            line.Name(context.called),
            context.begun is null ? null : Origin(context.begun, line),
            ValueBuilder.Claim(context.claimed, line),
            LineBuilding.Span(context))
        {
            Copies = context.copies is not { } copies ? null
                : new CopiesSyntax(int.TryParse(line.Text(copies), NumberStyles.None, CultureInfo.InvariantCulture, out var count) ? count : int.MaxValue, LineBuilding.Span(copies)),
        };

    public static StatementSyntax Begin(TurnrowParser.BeginLineContext context, LineBuilding line)
    {
        var claim = ValueBuilder.Claim(context.claimed, line);
        var span = LineBuilding.Span(context);
        var stitches = ExpressionBuilder.Count(context.amount, line);
        if (context.atOnce is not null) return new FoundationRowStatement(stitches, line.Joined(context.atOnce._words), claim, span);
        if (context.bothSides is null && context.of is null)
        {
            if (stitches is not NameExpression { Name.Text: "ring" }) line.Report(LineUnfinished.AfterBegin(stitches.Span, line.Text(stitches.Span)));
            return new RingStatement(context.chains is null ? null : ExpressionBuilder.Count(context.chains, line), claim, span);
        }

        return context.bothSides is null ? new BeginStatement(stitches, claim, span) : new BothSidesStatement(stitches, claim, span);
    }

    public static ChainStatement Chain(TurnrowParser.ChainLineContext context, LineBuilding line) =>
        new(ExpressionBuilder.Count(context.amount, line), ValueBuilder.Claim(context.claimed, line), LineBuilding.Span(context));

    public static EdgeNameStatement Edge(TurnrowParser.EdgeLineContext context, LineBuilding line)
    {
        var name = line.Name(context.called);
        var span = LineBuilding.Span(context);
        if (context.at is not null) return new EdgeNameStatement(true, line.Edge(context.at), name, span);
        var word = context.hand?.Type switch
        {
            TurnrowLexer.RIGHT => EdgeWord.Right,
            TurnrowLexer.LEFT => EdgeWord.Left,
            _ => EdgeWord.Both,
        };
        return new EdgeNameStatement(
            false, new EdgeSyntax(word, null, LineBuilding.Span(context.Start).To(LineBuilding.Span(context.end))), name, span);
    }

    public static MarkStatement Mark(TurnrowParser.MarkLineContext context, LineBuilding line) =>
        new(line.Name(context.called), LineBuilding.Span(context));

    public static DivideStatement Divide(TurnrowParser.DivideLineContext context, LineBuilding line)
    {
        var parts = new List<DividePartSyntax>(context._parts.Count);
        foreach (var part in context._parts)
        {
            var name = part.called is null ? null : line.Name(part.called);
            parts.Add(new DividePartSyntax(ExpressionBuilder.Count(part.amount, line), name, LineBuilding.Span(part)));
        }

        return new DivideStatement(parts, LineBuilding.Span(context));
    }

    private static AcrossOriginSyntax Across(TurnrowParser.OriginContext context, TextSpan span, LineBuilding line)
    {
        var parts = new List<AcrossPartSyntax>(context._over.Count);
        foreach (var part in context._over) parts.Add(new AcrossPartSyntax([.. part._words.Select(word => line.Name(word))], LineBuilding.Span(part)));
        return new AcrossOriginSyntax(parts, span);
    }

    private static PieceOriginSyntax Origin(TurnrowParser.OriginContext context, LineBuilding line)
    {
        var span = LineBuilding.Span(context);
        if (context.Start.Type == TurnrowLexer.ACROSS) return Across(context, span, line);
        if (context.Start.Type == TurnrowLexer.PICKED) return WalkBuilder.PickUp(context, line);
        var piece = line.Name(context.piece);
        if (context.Start.Type == TurnrowLexer.IS) return new MirrorOriginSyntax(piece, context.turned is not null, span);
        var part = ExpressionBuilder.Count(context.part, line);
        if (context.at is not null) return new PartOriginSyntax(piece, part, line.Edge(context.at), span);
        if (part is NameExpression { Name: var name }) return new NamedPartOriginSyntax(piece, name, span);
        line.Report(LineUnfinished.AfterPart(part.Span, line.Text(part.Span)));
        return new NamedPartOriginSyntax(piece, new NameSyntax(line.Text(part.Span), part.Span), span);
    }
}
