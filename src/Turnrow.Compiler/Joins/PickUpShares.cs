using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Joins;

/// <summary>
/// Reads a number for each side of a border: <c>37 sc evenly along front right edge</c>, or <c>37 sc evenly to each corner</c>. It is shared out
/// between the corners, whose own stitches come besides.
/// </summary>
internal sealed class PickUpShares(Context context, PieceBook book, PickUpOriginSyntax pickUp, IReadOnlyList<BoundRate> rates)
{
    private readonly BoundWalk?[] _along = [.. pickUp.Rates.Select(r => r.Along is { } edge ? new WalkBinder(context, book) { OfEach = true }.Bind(edge) : null)];

    /// <summary>True if a number is shared out along an edge or between corners.</summary>
    public static bool AreSaid(PickUpOriginSyntax pickUp) => pickUp.Rates.Any(static r => r.Evenly && !r.InAll);

    /// <summary>False, and reported, if an edge is not walked, or no corners are said between which a number would be shared out.</summary>
    public bool Check(IReadOnlyList<BoundWalk> walks)
    {
        var sound = true;
        for (var at = 0; at < rates.Count; at++)
        {
            var said = pickUp.Rates[at];
            if ((said.ToEachCorner || _along[at] is { } of && IsOfCorners(of)) && !rates.Any(static r => r.OfCorners))
            {
                context.Findings.Add(PickUpShare.NoCorners(said.Span, context.Word(rates[at].Stitch)));
                sound = false;
            }

            if (said.Along is not { } edge) continue;
            if (_along[at] is { } along && IsWalked(along, walks)) continue;
            if (_along[at] is not null) context.Findings.Add(PickUpShare.Elsewhere(edge.Span, PickUpBinder.Words(edge), [.. pickUp.Walks.Select(PickUpBinder.Words)]));
            sound = false;
        }

        return sound;
    }

    /// <summary>True if all numbers are known in a size.</summary>
    public bool IsKnown(int size) => rates.All(r => !r.Evenly || r.Count[size] is not null);

    /// <summary>The legs in one size, each that a number is said of with its share.</summary>
    public List<PickUpLeg> Of(List<PickUpLeg> legs, int size)
    {
        for (var at = 0; at < rates.Count; at++)
        {
            if (!rates[at].Evenly || rates[at].Count[size] is not { } count) continue;
            foreach (var part in pickUp.Rates[at].ToEachCorner ? BetweenCorners(legs) : Along(legs, _along[at]!.Sides[size]))
            {
                if (part.Count > 0) Shares.Spread(legs, part, count, context.Gauges);
            }
        }

        return legs;
    }

    /// <summary>Tells of numbers that would not lie flat along their edge.</summary>
    public void CheckFlat()
    {
        for (var at = 0; at < rates.Count; at++)
        {
            if (_along[at] is not { } along) continue;
            var lengths = Array.ConvertAll(along.Sides, side => side is null ? null : EdgeLength.Of([side], context.Gauges));
            EvenPickUp.CheckFlat(context, pickUp.Rates[at], rates[at], lengths, new int[context.Sizes]);
        }
    }

    // A side lies between two corners of its piece's last row.
    private static bool IsOfCorners(BoundWalk along) => Array.Exists(along.Sides, static s => s is { Stretches: [{ Kind: StretchKind.Side }] });

    // Sizes in which an edge is not known tell nothing.
    private bool IsWalked(BoundWalk along, IReadOnlyList<BoundWalk> walks) => Array.TrueForAll(
        [.. Enumerable.Range(0, context.Sizes)],
        i => along.Sides[i] is not { } side || walks.Any(w => w.Sides[i] is null || (w.Piece == along.Piece && (IsWalkedWhole(w, side, i) || w.Sides[i]!.Stretches.Any(s => IsPart(w.Sides[i]!, s, side))))));

    private List<List<int>> Along(List<PickUpLeg> legs, JoinSide? side)
    {
        if (side is null) return [];
        if (side.Stretches is [{ Kind: StretchKind.Side } between] && legs.Exists(l => l.Piece.Name == side.Piece.Name && l.Stretch.Kind == StretchKind.LastRow))
        {
            // Met from the other end, the last corner comes first.
            var (sides, at) = (BetweenCorners(legs), MotifSides.IndexOf(between.Name!.Split(' ')[0]));
            var inOrder = legs[0].Upwards == (side.Piece.Rows[^1].StartsAt == Hand.Right);
            return [sides[inOrder ? at : ((2 * sides.Count) - 2 - at) % sides.Count]];
        }

        return [[.. Enumerable.Range(0, legs.Count).Where(i => !legs[i].IsCorner && legs[i].Stretch.Count > 0 && IsPart(new JoinSide(legs[i].Piece, legs[i].Hand, []), legs[i].Stretch, side))]];
    }

    // A side is a part of the round that is walked whole.
    private bool IsWalkedWhole(BoundWalk walk, JoinSide side, int size) =>
        side.Stretches is [{ Kind: StretchKind.Side }] && pickUp is { Around: true, Walks.Count: 1 } && walk.Sides[size] is { Stretches: [{ Kind: StretchKind.LastRow }] };

    private static bool IsPart(JoinSide of, Stretch part, JoinSide side) =>
        of.Piece.Name == side.Piece.Name && of.Hand == side.Hand
        && side.Stretches.Any(s => s.Kind == part.Kind && s.Name == part.Name && s.FirstRow <= part.FirstRow && part.LastRow <= s.LastRow);

    // In a round, what lies before its first corner is one side with what lies behind its last.
    private List<List<int>> BetweenCorners(List<PickUpLeg> legs)
    {
        var sides = new List<List<int>> { new() };
        for (var i = 0; i < legs.Count; i++)
        {
            if (legs[i].IsCorner) sides.Add([]);
            else if (legs[i].Stretch.Count > 0) sides[^1].Add(i);
        }

        if (pickUp.Around && sides.Count > 1)
        {
            sides[^1].AddRange(sides[0]);
            sides.RemoveAt(0);
        }

        return sides;
    }
}
