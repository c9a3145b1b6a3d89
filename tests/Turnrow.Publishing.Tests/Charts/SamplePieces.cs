using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Publishing.Tests.Charts;

/// <summary>Pieces made by hand, for whatever is published of them.</summary>
internal static class SamplePieces
{
    private static readonly Stitch Dc = StitchBook.Double;

    /// <summary>A body of plain dc with armholes, as a waistcoat's back begins.</summary>
    public static Piece Back(int hem = 77, int drop = 4, int body = 20, int armhole = 16)
    {
        var piece = Begun("back", hem);
        piece.NameEdge(Hand.Right, "side-seam");
        piece.NameEdge(Hand.Left, "side-seam");
        Plain(piece, Dc, body);
        piece.NameEdge(Hand.Right, "armhole");
        piece.NameEdge(Hand.Left, "armhole");
        piece.AddStep(Hand.Right, false, drop, default);
        piece.AddStep(Hand.Left, false, drop, default);
        Plain(piece, Dc, armhole);
        return piece.Finish();
    }

    /// <summary>A front worked on from the back's right shoulder: increases at the neck, then chains added at the armhole.</summary>
    public static Piece RightFront(Piece back, int shoulder = 19, int armhole = 16, int drop = 4)
    {
        var piece = new PieceBuilder("right-front", new Dictionary<Stitch, TurnRule>());
        piece.BeginPart(new PartStart(back, 0, shoulder, false));
        piece.NameEdge(Hand.Right, "armhole");
        piece.NameEdge(Hand.Left, "neck");
        Plain(piece, Dc, 1);
        var increase = new ShapedPlan(Dc, default, new EdgeChange(1, 0));
        for (var i = 0; i < armhole - 1; i++) Row(piece, increase);
        piece.AddStep(Hand.Right, true, drop, default);
        piece.NameEdge(Hand.Right, "side-seam");
        for (var i = 0; i < 20; i++) Row(piece, i % 2 == 1 ? increase : ShapedPlan.Plain(Dc));
        piece.FastenOff();
        return piece.Finish();
    }

    /// <summary>The same, mirrored: the yarn is joined anew and the chains are a separate length.</summary>
    public static Piece LeftFront(Piece back, Piece rightFront, int shoulder = 19)
    {
        var piece = new PieceBuilder("left-front", new Dictionary<Stitch, TurnRule>());
        piece.BeginPart(new PartStart(back, back.LastStitches - shoulder, shoulder, true));
        new Mirror(turnedOver: false).Work(rightFront, piece);
        return piece.Finish();
    }

    /// <summary>A band picked up along the front's neck.</summary>
    public static Piece Tie(Piece front)
    {
        var piece = new PieceBuilder("right-tie", new Dictionary<Stitch, TurnRule>());
        var stretch = new Stretch(StretchKind.RowEnds, front.Rows.Count - 2, 3, Dc, "neck");
        piece.BeginPickUp(new PickUpStart([new PickUpLeg(front, Hand.Left, stretch, false, 2, 1)], true, true), Dc, 6, default);
        Plain(piece, Dc, 54);
        return piece.Finish();
    }

    /// <summary>Begins a piece with a foundation for so many stitches.</summary>
    public static PieceBuilder Begun(string name, int stitches, params (Stitch Stitch, TurnRule Rule)[] rules)
    {
        var piece = new PieceBuilder(name, rules.ToDictionary(r => r.Stitch, r => r.Rule));
        piece.BeginWithStitches(stitches);
        return piece;
    }

    /// <summary>Works plain rows.</summary>
    public static PieceBuilder Plain(PieceBuilder piece, Stitch stitch, int rows)
    {
        var plan = ShapedPlan.Plain(stitch);
        for (var i = 0; i < rows; i++) Row(piece, plan);
        return piece;
    }

    /// <summary>Works a row that must come out.</summary>
    public static PieceBuilder Row(PieceBuilder piece, RowPlan plan)
    {
        Assert.Null(piece.WorkRow(plan, default, 0));
        return piece;
    }

    /// <summary>Works a row of words that must come out.</summary>
    public static PieceBuilder Row(PieceBuilder piece, params Word[] words) => Row(piece, new WordsPlan(words));

    /// <summary>A stitch in the next space.</summary>
    public static Work InSpace(Stitch stitch, int makes = 1) =>
        new(stitch, 1, makes, Amount.Once, new Target(Aim.NextOfKind, new PlaceFilter(PlaceFilterKind.AnySpace, null, 0)), HookInto.BothLoops);

    /// <summary>Lace and raised stitches: every sign that a chart knows beside the plain ones.</summary>
    public static Piece Sampler()
    {
        Stitch sc = StitchBook.Single, hdc = StitchBook.HalfDouble, tr = StitchBook.Treble;
        var piece = Begun("sampler", 25);
        Plain(piece, sc, 1);
        Row(piece, new Work(sc, 1, 1, Amount.Of(12), Target.Next, HookInto.BackLoop), new Work(sc, 1, 1, Amount.Of(13), Target.Next, HookInto.FrontLoop));
        Row(piece, Work.Plain(Dc, Amount.Of(1)), new Repeat([new Chains(1), new Skip(1), Work.Plain(Dc, Amount.Of(1))], Amount.Across));
        Row(piece, Work.Plain(Dc, Amount.Of(1)), new Repeat([InSpace(Dc), Work.Plain(Dc, Amount.Of(1))], Amount.Across));
        Row(piece, new Work(Dc, 1, 1, Amount.Of(1), Target.Next, HookInto.BothLoops), new Repeat(
            [new Work(Dc, 1, 1, Amount.Of(2), Target.Next, HookInto.FrontPost), new Work(Dc, 1, 1, Amount.Of(2), Target.Next, HookInto.BackPost)], Amount.Across));
        Row(piece, Work.Plain(hdc, Amount.Of(3)), Work.Decrease(hdc, 2), Work.Plain(hdc, Amount.Until(5)), new Work(hdc, 1, 3, Amount.Once, Target.Next, HookInto.BothLoops), Work.Plain(hdc, Amount.Across));
        Row(piece, Work.Plain(sc, Amount.Of(1)), new Repeat([new Skip(2), new Group([new Work(Dc, 1, 5, Amount.Once, Target.Next, HookInto.BothLoops)], Target.Next), new Skip(2), Work.Plain(sc, Amount.Of(1))], Amount.Across));
        Row(piece, Work.Plain(tr, Amount.Across));
        Row(piece, Work.Plain(sc, Amount.Of(1)), new Repeat([new Chains(5), new Skip(3), Work.Plain(sc, Amount.Of(1))], Amount.Across));
        Row(piece, Work.Plain(Dc, Amount.Of(1)), new Repeat([new Group([new Work(Dc, 1, 2, Amount.Once, Target.Next, HookInto.BothLoops), new Chains(2), new Work(Dc, 1, 2, Amount.Once, Target.Next, HookInto.BothLoops)], new Target(Aim.NextOfKind, new PlaceFilter(PlaceFilterKind.AnySpace, null, 0))), Work.Plain(Dc, Amount.Of(1))], Amount.Across));
        piece.FastenOff();
        return piece.Finish();
    }
}
