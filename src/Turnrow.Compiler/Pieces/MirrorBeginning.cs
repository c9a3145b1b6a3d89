using Turnrow.Fabric;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;

namespace Turnrow.Compiler.Pieces;

/// <summary>
/// Begins a mirrored piece where its original began, turned over: from the other edge of the same piece, or from that piece's own mirror if
/// it has one.
/// </summary>
internal sealed class MirrorBeginning(PieceBook book, PieceState piece, PieceState original, bool turnedOver, Origin origin)
{
    /// <summary>The sizes in which the mirrored part takes stitches that another part has.</summary>
    public List<int> Overlaps { get; } = [];

    /// <summary>The sizes in which, mirrored, stitches are left where chains are added.</summary>
    public List<int> StepsMeet { get; } = [];

    /// <summary>The sizes in which, mirrored, short rows would turn where a row begins.</summary>
    public List<int> TurnsApart { get; } = [];

    /// <summary>The sizes in which, mirrored, rounds would begin elsewhere.</summary>
    public List<int> RoundsApart { get; } = [];

    /// <summary>The sizes in which a stitch goes into the place where a decrease ended, with the row of the original.</summary>
    public List<(int Size, Row Row)> SameApart { get; } = [];

    /// <summary>The sizes in which, turned over, it is picked up along another number of held stitches or bridged chains: before and after.</summary>
    public List<(int Size, int Held, int Turned)> HeldApart { get; } = [];

    /// <summary>Notes at the piece that it goes on from which stitches it has taken, once all sizes are worked.</summary>
    public void NoteTaken()
    {
        var parts = Array.ConvertAll(original.Finished, static p => Parts(p.Start));
        for (var at = 0; at < parts.Max(static p => p.Count); at++)
        {
            var known = parts.First(p => at < p.Count)[at];
            var state = Turned(known.Base);
            var (fromRight, counts) = (Sizes(parts, at, static p => p.FromLeft), Sizes(parts, at, static p => p.Count));
            state.Taken.Add((piece.Name, fromRight, counts));
            foreach (var named in state.Parts.Values)
            {
                // A divided yoke names the part that the mirror image goes on from, and nobody else does.
                named.Used |= named.FromRight.AsSpan().SequenceEqual(fromRight) && named.Count.AsSpan().SequenceEqual(counts);
            }
        }
    }

    private static IReadOnlyList<PartStart> Parts(PieceStart? start) => start switch
    {
        PartStart part => [part],
        AcrossStart across => across.Parts,
        _ => [],
    };

    // The mirror image of a piece, or the piece itself where it has none.
    private PieceState Turned(Piece made) => book.MirrorOf(made.Name) ?? book.Find(made.Name)!;

    /// <summary>Begins and works one size.</summary>
    public void Work(int size)
    {
        var builder = piece.Builders[size];
        var made = original.Finished[size];
        if (made.Rows.Count > 0) builder.Yarn = made.Rows[0].Yarn;
        switch (made.Start)
        {
            case FoundationStart { GivenAsChains: true } foundation:
                builder.BeginWithChains(foundation.Chains);
                builder.BeginOnSide(FirstSide(made));
                break;
            case FoundationStart { AtOnce: { } stitch } when made.Rows is [{ Work: { } first }, ..]:
                // The row itself comes with what was done to the original.
                builder.BeginWithFoundationStitches(stitch, first.Below.Count);
                builder.BeginOnSide(FirstSide(made));
                break;
            case FoundationStart when made.Rows is [{ Work: { } first }, ..]:
                builder.BeginWithStitches(first.Below.Count);
                builder.BeginOnSide(FirstSide(made));
                break;
            case RingStart ring:
                builder.BeginWithRing(ring.Chains);
                builder.BeginOnSide(FirstSide(made));
                break;
            case BothSidesStart both:
                builder.BeginWithBothSides(both.Stitches);
                break;
            case PartStart part:
                BeginPart(builder, part, size);
                break;
            case AcrossStart across:
                BeginAcross(builder, across, size);
                break;
            case PickUpStart pickUp when made.Rows is [{ Work: { Opening.Stitch: { } stitch } first }, ..]:
                builder.BeginPickUp(Turned(pickUp, size), stitch, first.Stitches, made.Rows[0].Origin);
                break;
            default:
                builder.BeginUnknown();
                builder.Doubt(made.RowsInDoubt);
                if (made.Start is PickUpStart) builder.WorkRow(new WordsPlan([]), origin, 0);
                break;
        }

        var mirror = new Mirror(turnedOver);
        mirror.Work(made, builder);
        builder.GoOnAs(original.Builders[size]);
        if (mirror.StepsMeet) StepsMeet.Add(size);
        if (mirror.TurnsApart) TurnsApart.Add(size);
        if (mirror.RoundsApart) RoundsApart.Add(size);
        if (mirror.SameApart is { } apart) SameApart.Add((size, apart));
    }

    private bool FirstSide(Piece made)
    {
        var rightSide = made.Rows.Count == 0 || made.Rows[0].RightSide;
        return turnedOver ? !rightSide : rightSide;
    }

    private void BeginPart(PieceBuilder builder, PartStart part, int size)
    {
        var state = Turned(part.Base);
        var from = state.Finished[size];
        if (from.Top is null || part.Base.Top is null || from.Rows.Count == 0)
        {
            InDoubt(builder, part.Count);
            return;
        }

        var turned = new PartStart(from, part.FromLeft, part.Count, true);
        CheckOverlap(state, turned, size);
        if (turned.FromRight + turned.Count > from.LastStitches)
        {
            InDoubt(builder, part.Count);
            return;
        }

        state.Joined = true;
        builder.BeginPart(turned, hand => state.TakeYarn(size, turned, hand));
    }

    private void CheckOverlap(PieceState state, PartStart turned, int size)
    {
        foreach (var (_, right, count) in state.Taken)
        {
            if (turned.FromRight < right[size] + count[size] && right[size] < turned.FromRight + turned.Count) Overlaps.Add(size);
        }
    }

    // The parts come in the other order, each from its own mirror if it has one.
    private void BeginAcross(PieceBuilder builder, AcrossStart across, int size)
    {
        var parts = new List<PartStart>();
        foreach (var part in across.Parts.Reverse())
        {
            var state = Turned(part.Base);
            if (state.Finished[size] is not { Top: not null, Rows.Count: > 0 } from || part.FromLeft + part.Count > from.LastStitches)
            {
                InDoubt(builder, across.Parts.Sum(p => p.Count));
                return;
            }

            state.Joined = true;
            parts.Add(new PartStart(from, part.FromLeft, part.Count, true));
            CheckOverlap(state, parts[^1], size);
        }

        var turned = new AcrossStart(parts, true);
        builder.BeginAcross(turned, hand => book.Find(turned.First(hand).Base.Name)!.TakeYarn(size, turned.First(hand), hand, parts.Count == 1));
    }

    private static void InDoubt(PieceBuilder builder, int count)
    {
        builder.BeginUnknown();
        builder.Doubt(true);
        builder.Trust(count);
    }

    // What is held or bridged first in a row lies where, mirrored, the last is.
    private static Stretch Opposite(Piece piece, Stretch inner)
    {
        var row = piece.Inner.Where(s => s.Kind == inner.Kind && s.FirstRow == inner.FirstRow).ToList();
        var at = row.FindIndex(s => s.Name == inner.Name);
        if (at < 0) return inner;
        // All of it is all of what lies there; a part of it is as many.
        var turned = row[row.Count - 1 - at];
        return inner.Count == row[at].Count ? turned : inner with { Name = turned.Name };
    }

    private static int[] Sizes(IReadOnlyList<PartStart>[] parts, int at, Func<PartStart, int> of) =>
        Array.ConvertAll(parts, p => at < p.Count ? of(p[at]) : 0);

    private static int Held(IReadOnlyList<PickUpLeg> walk) =>
        walk.Where(static leg => leg.Stretch.Kind is StretchKind.HeldStitches or StretchKind.BridgeChain).Sum(static leg => leg.Stretch.Count);

    private PickUpStart Turned(PickUpStart pickUp, int size)
    {
        var walk = new List<PickUpLeg>();
        for (var i = pickUp.Walk.Count - 1; i >= 0;)
        {
            var leg = pickUp.Walk[i];
            var state = Turned(leg.Piece);
            state.Joined = true;
            if (leg.Hand is not null)
            {
                var along = new List<PickUpLeg>();
                for (; i >= 0 && pickUp.Walk[i].Piece == leg.Piece && pickUp.Walk[i].Hand == leg.Hand; i--) along.Add(pickUp.Walk[i]);
                walk.AddRange(Joins.MirroredWalk.Of(along, state.Finished[size]));
                continue;
            }

            i--;
            walk.Add(leg with
            {
                Piece = state.Finished[size],
                // A mirror image holds under the same name what lies there turned over.
                Stretch = state.Name == leg.Piece.Name ? Opposite(state.Finished[size], leg.Stretch) : leg.Stretch,
            });
        }

        if (pickUp.Walk.Any(static l => l.IsEven)) Joins.Shares.BeginAtOtherEnd(walk);
        var (held, turned) = (Held(pickUp.Walk), Held(walk));
        if (held != turned) HeldApart.Add((size, held, turned));
        var source = book.Find(walk[0].Piece.Name)!;
        var start = Joins.PickUpYarn.Find(walk, pickUp.RightSide, _ => source.YarnTaken[size]) with { Around = pickUp.Around };
        source.YarnTaken[size] |= !start.Joined;
        return start;
    }
}
