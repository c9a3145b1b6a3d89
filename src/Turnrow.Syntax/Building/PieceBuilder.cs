using Turnrow.Syntax.Diagnostics.Kinds;
using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Building;

/// <summary>The lines that open a piece, begin it, name its edges, divide it and end it.</summary>
internal static class PieceBuilder
{
    public static PieceStatement Piece(TurnrowParser.PieceLineContext context, LineBuilding line) =>
        new(
            line.Name(context.name()),
            context.origin() is { } origin ? Origin(origin, line) : null,
            ValueBuilder.Claim(context.claim(), line),
            LineBuilding.Span(context));

    public static BeginStatement Begin(TurnrowParser.BeginLineContext context, LineBuilding line) =>
        new(ExpressionBuilder.Count(context.count(), line), ValueBuilder.Claim(context.claim(), line), LineBuilding.Span(context));

    public static ChainStatement Chain(TurnrowParser.ChainLineContext context, LineBuilding line) =>
        new(ExpressionBuilder.Count(context.count(), line), ValueBuilder.Claim(context.claim(), line), LineBuilding.Span(context));

    public static EdgeNameStatement Edge(TurnrowParser.EdgeLineContext context, LineBuilding line)
    {
        var name = line.Name(context.name());
        var span = LineBuilding.Span(context);
        if (context.edge() is { } edge) return new EdgeNameStatement(true, line.Edge(edge), name, span);
        var word = context.hand?.Type switch
        {
            TurnrowLexer.RIGHT => EdgeWord.Right,
            TurnrowLexer.LEFT => EdgeWord.Left,
            _ => EdgeWord.Both,
        };
        var end = (context.EDGE() ?? context.EDGES()).Symbol;
        return new EdgeNameStatement(
            false, new EdgeSyntax(word, null, LineBuilding.Span(context.Start).To(LineBuilding.Span(end))), name, span);
    }

    public static MarkStatement Mark(TurnrowParser.MarkLineContext context, LineBuilding line) =>
        new(line.Name(context.name()), LineBuilding.Span(context));

    public static DivideStatement Divide(TurnrowParser.DivideLineContext context, LineBuilding line)
    {
        var parts = new List<DividePartSyntax>(context._parts.Count);
        foreach (var part in context._parts)
        {
            var name = part.name() is { } given ? line.Name(given) : null;
            parts.Add(new DividePartSyntax(ExpressionBuilder.Count(part.count(), line), name, LineBuilding.Span(part)));
        }

        return new DivideStatement(parts, LineBuilding.Span(context));
    }

    private static PieceOriginSyntax Origin(TurnrowParser.OriginContext context, LineBuilding line)
    {
        var span = LineBuilding.Span(context);
        if (context.PICKED() is not null) return WalkBuilder.PickUp(context, line);
        var piece = line.Name(context.name());
        if (context.IS() is not null) return new MirrorOriginSyntax(piece, context.turned is not null, span);
        var part = ExpressionBuilder.Count(context.count(), line);
        if (context.edge() is { } edge) return new PartOriginSyntax(piece, part, line.Edge(edge), span);
        if (part is NameExpression { Name: var name }) return new NamedPartOriginSyntax(piece, name, span);
        line.Report(LineUnfinished.AfterPart(part.Span, line.Text(part.Span)));
        return new NamedPartOriginSyntax(piece, new NameSyntax(line.Text(part.Span), part.Span), span);
    }
}
