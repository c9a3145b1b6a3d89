using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Building;

/// <summary>From what the parser read to the tree: one case a statement.</summary>
internal static class StatementBuilder
{
    public static StatementSyntax Statement(TurnrowParser.StatementContext context, LineBuilding line) => context.Start.Type switch
    {
        TurnrowLexer.NOTATION => HeaderBuilder.Notation(context.asNotation, line),
        TurnrowLexer.PATTERN => HeaderBuilder.Pattern(context.asPattern, line),
        TurnrowLexer.VERSION => HeaderBuilder.Version(context.asVersion, line),
        TurnrowLexer.TERMS => HeaderBuilder.Terms(context.asTerms, line),
        TurnrowLexer.SIZES => HeaderBuilder.Sizes(context.asSizes, line),
        TurnrowLexer.SKILL => HeaderBuilder.Skill(context.asSkill, line),
        TurnrowLexer.NOTION => HeaderBuilder.Notion(context.asNotion, line),
        TurnrowLexer.WEARER => HeaderBuilder.Wearer(context.asWearer, line),
        TurnrowLexer.PROSE => HeaderBuilder.Prose(LineBuilding.Span(context), line),
        TurnrowLexer.USE => StitchPatternBuilder.Use(context.asUse, line),
        TurnrowLexer.STITCH when context.asStitch.asPattern is not null => StitchPatternBuilder.StitchPattern(context.asStitch, line),
        TurnrowLexer.KEY => StitchPatternBuilder.Key(context.asKey, line),
        TurnrowLexer.PICTURE_ROW => StitchPatternBuilder.PictureRow(context.asPicture, line),
        TurnrowLexer.YARN => MaterialBuilder.Yarn(context.asYarn, line),
        TurnrowLexer.HOOK => MaterialBuilder.Hook(context.asHook, line),
        TurnrowLexer.GAUGE => MaterialBuilder.Gauge(context.asGauge, line),
        TurnrowLexer.TURN => MaterialBuilder.Turn(context.asTurn, line),
        TurnrowLexer.STITCH => RowBuilder.StitchDefinition(context.asStitch, line),
        TurnrowLexer.MEASURE => ValueBuilder.Measure(context.asMeasure, line),
        TurnrowLexer.COUNT => ValueBuilder.Count(context.asCount, line),
        TurnrowLexer.PIECE => PieceLineBuilder.Piece(context.asPiece, line),
        TurnrowLexer.BEGIN => PieceLineBuilder.Begin(context.asBegin, line),
        TurnrowLexer.CHAIN => PieceLineBuilder.Chain(context.asChain, line),
        TurnrowLexer.BOTH or TurnrowLexer.RIGHT or TurnrowLexer.LEFT or TurnrowLexer.FROM => PieceLineBuilder.Edge(context.asEdge, line),
        TurnrowLexer.MARK => PieceLineBuilder.Mark(context.asMark, line),
        TurnrowLexer.DIVIDE => PieceLineBuilder.Divide(context.asDivide, line),
        TurnrowLexer.FASTEN => new FastenOffStatement(LineBuilding.Span(context)),
        TurnrowLexer.WEAVE => new WeaveInStatement(LineBuilding.Span(context)),
        TurnrowLexer.ROW => RowBuilder.Row(context.asRow, line),
        TurnrowLexer.ROWS => RowBuilder.Rows(context.asRows, line),
        TurnrowLexer.REPEAT => RowBuilder.Repeat(context.asRepeat, line),
        TurnrowLexer.STRAIGHT => ShapeBuilder.Straight(context.asStraight, line),
        TurnrowLexer.LEAVE => ShapeBuilder.Leave(context.asLeave, line),
        TurnrowLexer.ADD => ShapeBuilder.Add(context.asAdd, line),
        TurnrowLexer.SHAPE => ShapeBuilder.Shape(context.asShape, line),
        TurnrowLexer.SOLID => ShapeBuilder.Solid(context.asSolid, line),
        TurnrowLexer.WITH => YarnBuilder.With(context.asWith, line),
        TurnrowLexer.STRIPES => YarnBuilder.Stripes(context.asStripes, line),
        TurnrowLexer.FLOATS => YarnBuilder.Floats(context.asFloats, line),
        TurnrowLexer.FOR => ForSizes(context.asFor, line),
        TurnrowLexer.SEAM => WalkBuilder.Seam(context.asSeam, line),
        TurnrowLexer.BLANKET => WalkBuilder.Blanket(context.asBlanket, line),
        TurnrowLexer.CLAIMS => ValueBuilder.Claims(context.asClaims),
        TurnrowLexer.EXPECT => ValueBuilder.Expect(context.asExpect, line),
        TurnrowLexer.BODY => GradingBuilder.Body(context.asBody, line),
        TurnrowLexer.EASE => GradingBuilder.Ease(context.asEase, line),
        TurnrowLexer.FINISHED => GradingBuilder.Finished(context.asFinished, line),
        TurnrowLexer.ACCEPT => GradingBuilder.Accept(context.asAccept, line),
        TurnrowLexer.SWATCH => GradingBuilder.Swatch(context.asSwatch, line),
        TurnrowLexer.MADE => GradingBuilder.Made(context.asMade, line),
        var other => throw new InvalidOperationException($"no builder for token type {other}"),
    };

    private static ForSizesStatement ForSizes(TurnrowParser.ForLineContext context, LineBuilding line)
    {
        var sizes = new List<SizeRangeSyntax>(context._sizes.Count);
        foreach (var range in context._sizes)
        {
            var first = HeaderBuilder.SizeName(range.first, line);
            sizes.Add(new SizeRangeSyntax(first, range.last is null ? first : HeaderBuilder.SizeName(range.last, line), LineBuilding.Span(range)));
        }

        return new ForSizesStatement(sizes, Sized(context.done, line), LineBuilding.Span(context));
    }

    private static StatementSyntax Sized(TurnrowParser.SizedLineContext context, LineBuilding line) => context.Start.Type switch
    {
        TurnrowLexer.TURN => MaterialBuilder.Turn(context.asTurn, line),
        TurnrowLexer.MARK => PieceLineBuilder.Mark(context.asMark, line),
        TurnrowLexer.ROW => RowBuilder.Row(context.asRow, line),
        TurnrowLexer.ROWS => RowBuilder.Rows(context.asRows, line),
        TurnrowLexer.REPEAT => RowBuilder.Repeat(context.asRepeat, line),
        TurnrowLexer.STRAIGHT => ShapeBuilder.Straight(context.asStraight, line),
        TurnrowLexer.LEAVE => ShapeBuilder.Leave(context.asLeave, line),
        TurnrowLexer.ADD => ShapeBuilder.Add(context.asAdd, line),
        TurnrowLexer.SHAPE => ShapeBuilder.Shape(context.asShape, line),
        TurnrowLexer.SOLID => ShapeBuilder.Solid(context.asSolid, line),
        TurnrowLexer.WITH => YarnBuilder.With(context.asWith, line),
        TurnrowLexer.STRIPES => YarnBuilder.Stripes(context.asStripes, line),
        _ => PieceLineBuilder.Edge(context.asEdge, line),
    };
}
