using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Joins;

/// <summary>
/// Reads <c>picked up along …: 84 sc evenly</c>: so many stitches, shared out over the stretches of the walk by how long they are; where a
/// gauge is missing, by how many would be customary along each.
/// </summary>
internal sealed class EvenPickUp(Context context, PieceBook book)
{
    // A sixth more or less than the edge is long: common practice, no source gives a number.
    private const int PartOff = 6;

    /// <summary>The pick-up in all sizes; its edges are noted already.</summary>
    public BoundPickUp Bind(PickUpOriginSyntax pickUp, List<BoundWalk> walks, BoundRate rate)
    {
        var sizes = new SizedPickUp?[context.Sizes];
        var lengths = new Rational?[context.Sizes];
        var rightSide = pickUp.Side?.RightSide ?? true;
        for (var i = 0; i < sizes.Length; i++)
        {
            if (Sides(walks, i) is not { } sides || rate.Count[i] is not { } count) continue;
            lengths[i] = EdgeLength.Of(sides, context.Gauges);
            sizes[i] = InSize(walks, sides, rightSide, i, rate, count) is { } one ? one with { Start = one.Start with { Around = pickUp.Around } } : null;
        }

        var nothing = Sized.Where(context.Sizes, i => sizes[i] is null && Sides(walks, i) is not null && rate.Count[i] is not null);
        if (walks.Exists(w => w.Piece.EdgesInDoubt)) return new BoundPickUp(rate.Stitch, sizes);
        if (nothing.Length > 0) context.Findings.Add(PickUpNothing.At(context, pickUp.Walks[0].Span, nothing));
        CheckFlat(pickUp, rate, lengths);
        return new BoundPickUp(rate.Stitch, sizes);
    }

    private static List<JoinSide>? Sides(List<BoundWalk> walks, int size)
    {
        var sides = new List<JoinSide>();
        foreach (var walk in walks)
        {
            if (walk.Sides[size] is not { } side) return null;
            sides.Add(side);
        }

        return sides;
    }

    private SizedPickUp? InSize(List<BoundWalk> walks, List<JoinSide> sides, bool rightSide, int size, BoundRate rate, int count)
    {
        var legs = PickUpBinder.CustomaryLegs(sides, rightSide, size, rate.Stitch);
        if (legs.Sum(static l => (long)l.Stretch.Count) == 0) return null;
        var known = walks.TrueForAll(w => PickUpBinder.IsCounted(w, w.Sides[size]!, size));
        if (known) legs = Shares.Of(legs, count, context.Gauges);
        var start = PickUpYarn.Find(legs, rightSide, l => book.Find(l.Piece.Name) is { } source && source.YarnTaken[size]);
        return new SizedPickUp(start with { IsEven = known }, count is > 0 and <= Evaluator.LargestCount ? count : null);
    }

    private void CheckFlat(PickUpOriginSyntax pickUp, BoundRate rate, Rational?[] lengths)
    {
        if (context.Gauges.Of(rate.Stitch) is not { } gauge) return;
        var wide = new Rational?[context.Sizes];
        for (var i = 0; i < wide.Length; i++) wide[i] = rate.Count[i] is { } count ? gauge.WidthOf(count) : null;
        var off = Sized.Where(context.Sizes, i => wide[i] is { } width && lengths[i] is { } length && IsOff(width, length));
        if (off.Length > 0) context.Findings.Add(PickUpFlat.At(context, pickUp.Rates[0], off, wide, lengths, i => gauge.StitchesFor(lengths[i]!.Value) is { } n ? (int)Math.Round(n.ToDouble()) : 1));
    }

    private static bool IsOff(Rational width, Rational length) =>
        width - length is { } apart && apart.Magnitude() * PartOff is { } times && times > length;
}
