using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Pieces;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Joins;

/// <summary>
/// Reads <c>picked up along …: 84 sc evenly</c>: so many stitches, shared out over the stretches of the walk by how long they are; where a
/// gauge is missing, by how many would be customary along each. What goes into corners is among them.
/// </summary>
internal sealed class EvenPickUp(Context context, PieceBook book)
{
    // A sixth more or less than the edge is long: common practice, no source gives a number.
    private const int PartOff = 6;

    /// <summary>The pick-up in all sizes; its edges are noted already.</summary>
    /// <param name="pickUp">The line.</param>
    /// <param name="walks">Its edges.</param>
    /// <param name="rate">How many in all.</param>
    /// <param name="corners">How many of them in each corner; null if that is not said.</param>
    public BoundPickUp Bind(PickUpOriginSyntax pickUp, List<BoundWalk> walks, BoundRate rate, BoundRate? corners)
    {
        var sizes = new SizedPickUp?[context.Sizes];
        var lengths = new Rational?[context.Sizes];
        var rightSide = pickUp.Side?.RightSide ?? true;
        for (var i = 0; i < sizes.Length; i++)
        {
            if (Sides(walks, i) is not { } sides || rate.Count[i] is not { } count) continue;
            lengths[i] = EdgeLength.Of(sides, context.Gauges);
            var legs = PickUpBinder.CustomaryLegs(sides, rightSide, i, rate.Stitch);
            if (corners?.Count[i] is { } inCorner) legs = PickUpCorners.CutOut(legs, inCorner, pickUp.Around);
            sizes[i] = InSize(walks, legs, rightSide, i, count, corners is not null) is { } one ? one with { Start = one.Start with { Around = pickUp.Around } } : null;
        }

        var nothing = Sized.Where(context.Sizes, i => sizes[i] is null && Sides(walks, i) is not null && rate.Count[i] is not null);
        if (walks.Exists(w => w.Piece.EdgesInDoubt)) return new BoundPickUp(rate.Stitch, sizes);
        if (nothing.Length > 0) context.Findings.Add(PickUpNothing.At(context, pickUp.Walks[0].Span, nothing));
        CheckFull(pickUp, rate, sizes);
        CheckFlat(pickUp, rate, lengths, sizes);
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

    private SizedPickUp? InSize(List<BoundWalk> walks, List<PickUpLeg> legs, bool rightSide, int size, int count, bool hasCorners)
    {
        if (legs.Sum(static l => (long)l.Stretch.Count) == 0) return null;
        var counted = walks.TrueForAll(w => PickUpBinder.IsCounted(w, w.Sides[size]!, size));
        var known = counted && LeftFor(legs, count) > 0;
        if (known) legs = Shares.Of(legs, count, context.Gauges);
        var start = PickUpYarn.Find(legs, rightSide, l => book.Find(l.Piece.Name) is { } source && source.YarnTaken[size]);
        return new SizedPickUp(start, (counted || !hasCorners) && count is > 0 and <= Evaluator.LargestCount ? count : null);
    }

    // What the corners leave for the edges between them.
    private static long LeftFor(IReadOnlyList<PickUpLeg> legs, int count) =>
        legs.All(static l => l.IsCorner) ? 0 : count - legs.Where(static l => l.IsCorner).Sum(static l => (long)l.Rate);

    private void CheckFull(PickUpOriginSyntax pickUp, BoundRate rate, SizedPickUp?[] sizes)
    {
        if (!pickUp.Rates.Any(static r => r.OfCorners)) return;
        var full = Sized.Where(context.Sizes, i => sizes[i] is { Stitches: { } count, Start.Walk: var walk } && !walk.Any(static l => l.IsEven) && LeftFor(walk, count) <= 0);
        if (full.Length == 0) return;
        var corners = sizes[full[0]]!.Start.Walk.Where(static l => l.IsCorner).ToList();
        context.Findings.Add(PickUpCorner.Full(context, pickUp.Rates.First(static r => r.Evenly).Span, full, corners.Count, corners[0].Rate, sizes[full[0]]!.Stitches!.Value, context.Word(rate.Stitch)));
    }

    // All stitches of a corner but one turn it, and add nothing to the length.
    private void CheckFlat(PickUpOriginSyntax pickUp, BoundRate rate, Rational?[] lengths, SizedPickUp?[] sizes) =>
        CheckFlat(context, pickUp.Rates.First(static r => r.Evenly), rate, lengths, Array.ConvertAll(sizes, static s => s?.Start.Walk.Sum(static l => l.IsCorner ? l.Rate - 1 : 0) ?? 0));

    /// <summary>Tells of a number that would not lie flat.</summary>
    /// <param name="context">Where it is told.</param>
    /// <param name="said">The number as it is written.</param>
    /// <param name="rate">The number in each size.</param>
    /// <param name="lengths">How long the edge is.</param>
    /// <param name="turning">How many of the stitches only turn a corner.</param>
    public static void CheckFlat(Context context, RateSyntax said, BoundRate rate, Rational?[] lengths, int[] turning)
    {
        if (context.Gauges.Of(rate.Stitch) is not { } gauge) return;
        var wide = new Rational?[context.Sizes];
        for (var i = 0; i < wide.Length; i++) wide[i] = rate.Count[i] is { } count && count > turning[i] ? gauge.WidthOf(count - turning[i]) : null;
        var off = Sized.Where(context.Sizes, i => wide[i] is { } width && lengths[i] is { } length && IsOff(width, length));
        if (off.Length > 0) context.Findings.Add(PickUpFlat.At(
            context, said, off, wide, lengths, i => (gauge.StitchesFor(lengths[i]!.Value) is { } n ? (int)Math.Round(n.ToDouble()) : 1) + turning[i]));
    }

    private static bool IsOff(Rational width, Rational length) =>
        width - length is { } apart && apart.Magnitude() * PartOff is { } times && times > length;
}
