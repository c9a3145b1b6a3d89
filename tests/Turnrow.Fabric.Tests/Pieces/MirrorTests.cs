using CsCheck;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Tests.Words;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Pieces;

public sealed class MirrorTests
{
    private static readonly Gen<Action<PieceBuilder>> _step = Gen.Frequency(
        (3, Gen.Int[1, 3].Select(static n => (Action<PieceBuilder>)(b => b.Plain(n)))),
        (2, Gen.Select(Gen.Int[-1, 2], Gen.Int[0, 1], static (n, s) => (Action<PieceBuilder>)(b =>
            b.Rows(1, new ShapedPlan(StitchBook.Double, new EdgeChange(n, s), new EdgeChange(-n, 0)))))),
        (1, Gen.Select(Gen.Bool, Gen.Int[0, 2], static (right, n) => (Action<PieceBuilder>)(b => b.Leave(right ? Hand.Right : Hand.Left, n).Plain(1)))),
        (1, Gen.Select(Gen.Bool, Gen.Int[0, 4], static (right, n) => (Action<PieceBuilder>)(b => b.Add(right ? Hand.Right : Hand.Left, n).Plain(1)))),
        (1, Gen.Int[1, 3].Select(static n => (Action<PieceBuilder>)(b => b.Row(Say.Stitches(n), Say.In(Aim.Same), Say.Stitches(Amount.Across))))),
        (1, Gen.Bool.Select(static right => (Action<PieceBuilder>)(b => b.NameEdge(right ? Hand.Right : Hand.Left, right ? "neck" : "armhole")))));

    private static readonly Gen<Piece> _piece = _step.Array[1, 8].Select(static steps =>
    {
        var builder = Made.Begun(24, 1);
        foreach (var step in steps) step(builder);
        return builder.Finish();
    });

    private static Piece Mirrored(Piece piece, bool turnedOver)
    {
        var builder = Made.New();
        builder.BeginWithStitches(24);
        if (turnedOver) builder.BeginOnSide(piece.Rows.Count > 0 && !piece.Rows[0].RightSide);
        new Mirror(turnedOver).Work(piece, builder);
        return builder.Finish();
    }

    private static List<(bool, int, int?, int?)> Facts(Piece piece) =>
        [.. piece.Rows.Select(r => (r.RightSide, r.Work!.Stitches, r.StepAt(Hand.Right)?.Count, r.StepAt(Hand.Left)?.Count))];

    [Fact]
    public void A_mirror_keeps_the_counts_and_exchanges_the_edges() => _piece.Sample(piece =>
    {
        var mirror = Mirrored(piece, false);
        Assert.Equal(piece.Rows.Select(r => r.Work!.Stitches), mirror.Rows.Select(r => r.Work!.Stitches));
        Assert.Equal(piece.Right.Stretches, mirror.Left.Stretches);
        Assert.Equal(piece.Left.Stretches, mirror.Right.Stretches);
    });

    [Fact]
    public void A_mirror_keeps_right_side_rows_right_side_rows() => _piece.Sample(piece =>
        Mirrored(piece, false).Rows.Select(r => r.RightSide).SequenceEqual(piece.Rows.Select(r => r.RightSide)));

    [Fact]
    public void Turned_over_its_rows_are_worked_as_the_original_s_with_the_other_side_facing() => _piece.Sample(piece =>
    {
        var over = Mirrored(piece, true);
        Assert.Equal(piece.Rows.Select(r => !r.RightSide), over.Rows.Select(r => r.RightSide));
        Assert.Equal(piece.Right.Stretches, over.Left.Stretches);
        foreach (var (row, other) in piece.Rows.Zip(over.Rows))
        {
            Assert.True(WordLists.Same(row.Work!.Words, other.Work!.Words));
            Assert.Equal(row.Start, other.Start);
        }
    });

    [Fact]
    public void Twice_mirrored_it_is_the_original() => _piece.Sample(piece =>
    {
        foreach (var turnedOver in new[] { false, true })
        {
            var twice = Mirrored(Mirrored(piece, turnedOver), turnedOver);
            Assert.Equal(Facts(piece), Facts(twice));
            Assert.Equal(piece.Top, twice.Top);
        }
    });

    [Fact]
    public void Beginnings_become_ends()
    {
        var piece = Made.Begun(24, 1).Row(Work.Increase(StitchBook.Double, 1), Say.Stitches(Amount.Across)).Finish();
        var words = Mirrored(piece, false).Rows[1].Work!.Words;
        Assert.Equal(2, Assert.IsType<Work>(words[^1]).Makes);
    }

    [Fact]
    public void Where_chains_are_added_is_worked_out_afresh()
    {
        var piece = Made.Begun(24, 2).Add(Hand.Right, 5).Plain(1).Finish();
        Assert.NotNull(piece.Rows[^1].Start);
        var mirror = Mirrored(piece, false);
        Assert.Null(mirror.Rows[^1].Start);
        Assert.Equal(5, mirror.Rows[^1].End!.Count);
    }
}
