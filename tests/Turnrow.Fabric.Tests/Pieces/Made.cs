using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Pieces;

/// <summary>Short ways to make pieces in tests; all of dc unless something else is said.</summary>
internal static class Made
{
    public static ShapedPlan PlainDc { get; } = ShapedPlan.Plain(StitchBook.Double);

    public static PieceBuilder Begun(int stitches, int rows = 0)
    {
        var builder = New();
        builder.BeginWithStitches(stitches);
        return builder.Plain(rows);
    }

    public static PieceBuilder New(string name = "back") => new(name, new Dictionary<Stitch, TurnRule>());

    public static PieceBuilder Plain(this PieceBuilder builder, int rows) => builder.Rows(rows, PlainDc);

    public static PieceBuilder Rows(this PieceBuilder builder, int rows, RowPlan plan)
    {
        for (var i = 0; i < rows; i++) Assert.Null(builder.WorkRow(plan, default, i));
        return builder;
    }

    public static PieceBuilder Row(this PieceBuilder builder, params Word[] words) => builder.Rows(1, new WordsPlan(words));

    public static PieceBuilder Leave(this PieceBuilder builder, Hand hand, int count)
    {
        builder.AddStep(hand, false, count, default);
        return builder;
    }

    public static PieceBuilder Add(this PieceBuilder builder, Hand hand, int count)
    {
        builder.AddStep(hand, true, count, default);
        return builder;
    }

    public static PieceBuilder Part(Piece from, int fromRight, int count, bool joined)
    {
        var builder = New("front");
        builder.BeginPart(new PartStart(from, fromRight, count, joined));
        return builder;
    }

    public static int Last(this PieceBuilder builder) => builder.Rows[^1].Work!.Stitches;
}
