using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Motifs;

/// <summary>
/// Makes a blanket of a motif. Nothing is done motif by motif: those that are joined alike are one, worked once, and the rim is a repeat of the
/// motif's sides. The motif's first side lies at the left, as its chart has it, and the others follow
/// it against the clock.
/// </summary>
/// <param name="motif">The motif as it is by itself.</param>
/// <param name="stitch">The stitch that joins.</param>
/// <param name="between">What is joined between the corners; null for nothing.</param>
/// <param name="origin">The line that says so.</param>
public sealed class BlanketMaker(Piece motif, Stitch stitch, PlaceFilter? between, Origin origin)
{
    private const int Sides = 4;

    private readonly List<PlaceSequence> _sides = [];

    /// <summary>The blanket, or why it can't be made.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="across">Motifs in a row.</param>
    /// <param name="down">Motifs in a column.</param>
    public (Blanket? Made, BlanketFault? Fault) Make(string name, int across, int down)
    {
        if (MotifSides.Count(motif) != Sides || !motif.EndsOnRightSide) return (null, new BlanketFault(BlanketFaultKind.NotFourSides));
        for (var i = 0; i < Sides; i++) _sides.Add(MotifSides.PlacesOf(motif, MotifSides.Of(motif, i)!.Stretches[0]));
        for (var i = 0; i < Sides / 2; i++)
        {
            if (!AreAlike(i, i + 2)) return (null, new BlanketFault(BlanketFaultKind.SidesUnlike, i));
        }

        var (joined, fault) = Others(across, down);
        return fault is not null ? (null, fault) : (new Blanket(name, motif, across, down, joined, Rim(across, down)), null);
    }

    private bool AreAlike(int one, int other) =>
        _sides[one].Count == _sides[other].Count && _sides[one].CountWhere(IsJoined) == _sides[other].CountWhere(IsJoined);

    private bool IsJoined(Place place) => between is { } filter && filter.Has(place);

    // From the bottom up: the first row is joined to what lies before, the first column to what lies below, all others to both.
    private (IReadOnlyList<JoinedMotif> Joined, BlanketFault? Fault) Others(int across, int down)
    {
        var (inRow, inColumn) = (across - 1L, down - 1L);
        (Neighbour?[] To, long Count)[] kinds = AreAlike(0, 1)
            ? [([Neighbour.Beside, null, null, null], inRow + inColumn), ([Neighbour.Before, Neighbour.Below, null, null], inRow * inColumn)]
            : [([Neighbour.Before, null, null, null], inRow), ([null, Neighbour.Below, null, null], inColumn), ([Neighbour.Before, Neighbour.Below, null, null], inRow * inColumn)];
        var joined = new List<JoinedMotif>();
        foreach (var (to, count) in kinds)
        {
            if (count == 0) continue;
            var (piece, fault) = Joined(to);
            if (piece is null) return ([], fault);
            joined.Add(new JoinedMotif(piece, [.. to.OfType<Neighbour>()], count));
        }

        return (joined, null);
    }

    private (Piece? Piece, BlanketFault? Fault) Joined(Neighbour?[] to)
    {
        var edges = new JoinedEdge?[Sides];
        for (var i = 0; i < Sides; i++)
        {
            if (to[i] is { } neighbour) edges[i] = new JoinedEdge(MotifSides.Of(motif, (i + 2) % Sides)!) { Beside = neighbour };
        }

        var last = motif.Rows[^1];
        var round = new JoinedRound(edges, stitch, between, origin);
        var words = round.Of(last.Work!.Words);
        if (round.Fault is { } fault) return (null, new BlanketFault(fault));
        if (between is not null && !round.JoinsBetween) return (null, new BlanketFault(BlanketFaultKind.NothingToJoin));
        var worked = RowWorker.Work(words, last.Work.Below, isRound: true);
        var along = new List<JoinedAlong>();
        foreach (var edge in edges.OfType<JoinedEdge>())
        {
            var places = edge.Places(false);
            var (after, wrong) = new JoinedAlong(edge, false, places, places).After(worked.Words);
            if (wrong is not null || after.Rest is not { Count: 0 }) return (null, new BlanketFault(BlanketFaultKind.NotWorked));
            along.Add(after);
        }

        if (worked.Fault is not null || worked.Stitches != last.Work.Stitches) return (null, new BlanketFault(BlanketFaultKind.NotWorked));
        var tops = Openings.MarkFirst(worked.Tops, last.Work.Opening, PlaceKind.TurningChain);
        var work = new RowWork(worked.Words, last.Work.Below, tops, last.Work.Opening) { BegunAt = last.Work.BegunAt };
        var row = last with { Work = work, Plan = new WordsPlan(words), Origin = origin, Ordinal = 0 };
        return (motif with { Rows = [.. motif.Rows.Take(motif.Rows.Count - 1), row], Top = tops, JoinedTo = along }, null);
    }

    // From corner to corner: of each motif what lies between its own two, and where two motifs meet the corner of either.
    private PlaceSequence Rim(int across, int down)
    {
        var rim = new PlaceSequenceBuilder(long.MaxValue);
        for (var i = 0; i < Sides; i++)
        {
            var side = _sides[i];
            var (first, last) = (side.First with { IsCorner = false }, side.Last with { IsCorner = false });
            var inner = Plain(side.Slice(1, side.Count - 2));
            rim.Add(side.First, 1);
            rim.Add(inner);
            var more = PlaceSequence.Of(last, 1).Then(PlaceSequence.Of(first, 1)).Then(inner);
            rim.AddTimes(more, (i % 2 == 0 ? down : across) - 1);
        }

        return rim.Build();
    }

    // The chain that a round began with is a stitch like the others here: no one row begins with it.
    private static PlaceSequence Plain(PlaceSequence places)
    {
        var plain = new PlaceSequenceBuilder(long.MaxValue);
        foreach (var segment in places.Segments)
        {
            var unit = new List<PlaceRun>();
            foreach (var run in segment.Unit) unit.Add(run.Place.Kind == PlaceKind.TurningChain ? run with { Place = run.Place with { Kind = PlaceKind.Stitch } } : run);
            plain.Add(new PlaceSegment(unit, segment.Times));
        }

        return plain.Build();
    }
}
