using Turnrow.Syntax.Generated;
using Turnrow.Syntax.Tree;

namespace Turnrow.Syntax.Building;

/// <summary>From what the parser read to the tree: one case a statement.</summary>
internal static class StatementBuilder
{
    public static StatementSyntax Statement(TurnrowParser.StatementContext context, LineBuilding line) => context.GetChild(0) switch
    {
        TurnrowParser.NotationLineContext notation => HeaderBuilder.Notation(notation, line),
        TurnrowParser.PatternLineContext pattern => HeaderBuilder.Pattern(pattern, line),
        TurnrowParser.VersionLineContext version => HeaderBuilder.Version(version, line),
        TurnrowParser.TermsLineContext terms => HeaderBuilder.Terms(terms, line),
        TurnrowParser.SizesLineContext sizes => HeaderBuilder.Sizes(sizes, line),
        TurnrowParser.SkillLineContext skill => HeaderBuilder.Skill(skill, line),
        TurnrowParser.NotionLineContext notion => HeaderBuilder.Notion(notion, line),
        TurnrowParser.WearerLineContext wearer => HeaderBuilder.Wearer(wearer, line),
        TurnrowParser.ProseLineContext prose => HeaderBuilder.Prose(prose, line),
        TurnrowParser.YarnLineContext yarn => MaterialBuilder.Yarn(yarn, line),
        TurnrowParser.HookLineContext hook => MaterialBuilder.Hook(hook, line),
        TurnrowParser.GaugeLineContext gauge => MaterialBuilder.Gauge(gauge, line),
        TurnrowParser.TurnLineContext turn => MaterialBuilder.Turn(turn, line),
        TurnrowParser.MeasureLineContext measure => ValueBuilder.Measure(measure, line),
        TurnrowParser.CountLineContext count => ValueBuilder.Count(count, line),
        TurnrowParser.PieceLineContext piece => PieceBuilder.Piece(piece, line),
        TurnrowParser.BeginLineContext begin => PieceBuilder.Begin(begin, line),
        TurnrowParser.ChainLineContext chain => PieceBuilder.Chain(chain, line),
        TurnrowParser.EdgeLineContext edge => PieceBuilder.Edge(edge, line),
        TurnrowParser.MarkLineContext mark => PieceBuilder.Mark(mark, line),
        TurnrowParser.DivideLineContext divide => PieceBuilder.Divide(divide, line),
        TurnrowParser.FastenLineContext fasten => new FastenOffStatement(LineBuilding.Span(fasten)),
        TurnrowParser.WeaveLineContext weave => new WeaveInStatement(LineBuilding.Span(weave)),
        TurnrowParser.RowLineContext row => RowBuilder.Row(row, line),
        TurnrowParser.RowsLineContext rows => RowBuilder.Rows(rows, line),
        TurnrowParser.RepeatLineContext repeat => RowBuilder.Repeat(repeat, line),
        TurnrowParser.StraightLineContext straight => ShapeBuilder.Straight(straight, line),
        TurnrowParser.LeaveLineContext leave => ShapeBuilder.Leave(leave, line),
        TurnrowParser.AddLineContext add => ShapeBuilder.Add(add, line),
        TurnrowParser.ShapeLineContext shape => ShapeBuilder.Shape(shape, line),
        TurnrowParser.SeamLineContext seam => WalkBuilder.Seam(seam, line),
        TurnrowParser.ExpectLineContext expect => ValueBuilder.Expect(expect, line),
        var other => throw new InvalidOperationException($"no builder for {other?.GetType().Name}"),
    };
}
