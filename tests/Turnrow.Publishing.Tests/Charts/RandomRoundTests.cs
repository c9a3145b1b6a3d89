using System.Xml.Linq;
using CsCheck;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Charts;
using Turnrow.Publishing.Charts.Layout.Rounds;
using Xunit;

namespace Turnrow.Publishing.Tests.Charts;

/// <summary>Whatever rounds can be worked from a middle can be drawn round it, each stitch over its place.</summary>
public sealed class RandomRoundTests
{
    private static readonly Gen<Stitch> Stitches = Gen.Int[2, 5].Select(static i => StitchBook.All[i]);

    private static readonly Gen<RowPlan> Plans = Gen.Select(Gen.Int[0, 9], Gen.Int[1, 12], Stitches, Gen.Bool).Select(PlanOf);

    private static readonly Gen<Func<PieceBuilder>> Middles = Gen.Select(Gen.Int[0, 3], Gen.Int[3, 14], Stitches, Gen.Bool, Gen.Enum<RoundWay>()).Select(
        (kind, count, stitch, counts, way) => new Func<PieceBuilder>(() => Begun(kind, count, stitch, counts, way)));

    [Fact]
    public void Every_stitch_stands_over_its_place_and_the_drawing_can_be_read()
    {
        var drawn = 0;
        Gen.Select(Middles, Plans.Array[1, 14]).Sample((begun, plans) =>
        {
            var builder = begun();
            foreach (var plan in plans)
            {
                if (builder.WorkRow(plan, default, 0) is not null) break;
            }

            var piece = builder.Finish();
            if (RoundStack.Of(piece) is { } stack)
            {
                RoundChecks.Check(stack, clear: false);
                Assert.True(stack.Extent is { Width: <= 880, Height: <= 1000 });
                RoundChecks.PartsAreTheWhole(stack);
                Interlocked.Add(ref drawn, stack.Rounds.Count);
            }

            Assert.NotNull(XDocument.Parse(Chart.Of(piece, "x", "S", Terms.US)!.Svg).Root);
        }, iter: 400);
        Assert.True(drawn > 400, drawn.ToString(System.Globalization.CultureInfo.InvariantCulture));
    }

    private static PieceBuilder Begun(int kind, int count, Stitch stitch, bool counts, RoundWay way)
    {
        var piece = new PieceBuilder("x", new Dictionary<Stitch, TurnRule> { [stitch] = TurnRule.Of(2, counts) }) { RoundsAre = way };
        switch (kind)
        {
            case 0:
                piece.BeginWithRing(count % 3 == 0 ? 0 : count);
                piece.WorkInRounds(true);
                piece.WorkRow(new WordsPlan([new Work(stitch, 1, count, Amount.Once, Target.Ring, HookInto.BothLoops)]), default, 0);
                break;
            case 1:
                piece.BeginWithRing(0);
                piece.WorkInRounds(true);
                var side = new Work(stitch, 1, (count / 4) + 1, Amount.Once, Target.Ring, HookInto.BothLoops);
                piece.WorkRow(new WordsPlan([new Repeat([side, new Chains(2), new MarkCorner()], Amount.Of((count % 5) + 2))]), default, 0);
                break;
            case 2:
                piece.BeginWithBothSides(count);
                piece.WorkInRounds(true);
                piece.WorkRow(new WordsPlan([new Repeat([new Work(stitch, 1, 3, Amount.Once, Target.Corner, HookInto.BothLoops), Work.Plain(stitch, Amount.ToCorner(0))], Amount.Across)]), default, 0);
                break;
            default:
                piece.BeginWithStitches(count);
                piece.WorkInRounds(true);
                piece.WorkRow(new WordsPlan([Work.Increase(stitch, count)]), default, 0);
                break;
        }

        return piece;
    }

    private static RowPlan PlanOf(int kind, int count, Stitch stitch, bool grows) => kind switch
    {
        0 or 1 => new WordsPlan([Spread.Of(stitch, grows ? count : -count)]),
        2 => new WordsPlan([new Repeat([Work.Increase(stitch, 1)], Amount.Across)]),
        3 => new WordsPlan([new Repeat([Work.Plain(stitch, Amount.Once), new Chains(count)], Amount.Across)]),
        4 => new WordsPlan([new Repeat([SamplePieces.InSpace(stitch, count)], Amount.Across)]),
        5 => new WordsPlan([new Repeat([Work.Plain(stitch, Amount.ToCorner(0)), Corner(stitch)], Amount.Across), Work.Plain(stitch, Amount.Across)]),
        6 => new WordsPlan([new Repeat([Corner(stitch), Work.Plain(stitch, Amount.ToCorner(0))], Amount.Across)]),
        7 => new WordsPlan([new SlipOver(count % 4), Work.Plain(stitch, Amount.Across)]),
        8 => new WordsPlan([new Work(stitch, 1, 1, Amount.Across, new Target(Aim.EachOfKind, new PlaceFilter(PlaceFilterKind.StitchOrSpace, null, 0)), grows ? HookInto.BackPost : HookInto.BothLoops)]),
        _ => ShapedPlan.Plain(stitch),
    };

    private static Group Corner(Stitch stitch)
    {
        var two = new Work(stitch, 1, 2, Amount.Once, Target.Next, HookInto.BothLoops);
        return new Group([two, new Chains(2), two], Target.Corner);
    }
}
