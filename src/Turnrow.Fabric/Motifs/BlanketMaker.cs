using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Motifs;

/// <summary>
/// Makes a blanket of a motif. Nothing is done motif by motif: those that are joined alike are one, worked once, and the rim is a repeat of the
/// motif's sides.
/// </summary>
/// <param name="motifs">The kinds of motif, each as it is by itself; several take turns.</param>
/// <param name="stitch">The stitch that joins.</param>
/// <param name="between">What is joined between the corners; null for nothing.</param>
/// <param name="origin">The line that says so.</param>
public sealed class BlanketMaker(IReadOnlyList<Piece> motifs, Stitch stitch, PlaceFilter? between, Origin origin)
{
    // As they lie: the left one first, and the others against the clock.
    private readonly List<PlaceSequence> _sides = [];
    private bool _upright = true;

    /// <summary>The blanket, or why it can't be made.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="across">Motifs in a row.</param>
    /// <param name="between">Motifs in every second row; null where nothing is said of them.</param>
    /// <param name="down">Rows.</param>
    public (Blanket? Made, BlanketFault? Fault) Make(string name, int across, int? between, int down)
    {
        _upright = motifs.All(static m => MotifStand.LeftSide(m, 1) is not null);
        var made = MakeSo(name, across, between, down);
        if (!_upright || made.Fault is not { Kind: BlanketFaultKind.NotWorked }) return made;
        // Where the round begins in the middle of a side that has to be joined, the motif lies by its sides in their own order.
        (_upright, var upright) = (false, made);
        _sides.Clear();
        made = MakeSo(name, across, between, down);
        return made.Fault is null ? made : upright;
    }

    private (Blanket? Made, BlanketFault? Fault) MakeSo(string name, int across, int? between, int down)
    {
        var motif = motifs[0];
        var layout = new MotifLayout(MotifSides.Count(motif), across, between ?? across, down) { Turns = motifs.Count };
        if (layout.Sides is not (4 or 6) || !motif.EndsOnRightSide) return (null, new BlanketFault(BlanketFaultKind.NoSuchSides));
        if (Math.Abs(layout.Across - layout.Between) > (layout.IsSetOff ? 1 : 0)) return (null, new BlanketFault(BlanketFaultKind.RowsUnlike));
        for (var i = 0; i < layout.Sides; i++) _sides.Add(MotifSides.PlacesOf(motif, SideOf(motif, i, layout.Sides).Stretches[0]));
        for (var i = 0; i < layout.Sides / 2; i++)
        {
            if (!AreAlike(i, i + (layout.Sides / 2))) return (null, new BlanketFault(BlanketFaultKind.SidesUnlike, i));
        }

        if (KindsFault(layout) is { } unlike) return (null, unlike);
        var (joined, fault) = Others(layout);
        return fault is not null ? (null, fault) : (new Blanket(name, motifs, layout, joined, RimOf(layout)) { IsUpright = _upright }, null);
    }

    // Each kind can lie where another does only if their sides are the same, place for place; then neither the rim nor what is joined depends on which lies where.
    private BlanketFault? KindsFault(MotifLayout layout)
    {
        for (var kind = 1; kind < motifs.Count; kind++)
        {
            var other = motifs[kind];
            if (MotifSides.Count(other) != layout.Sides || !other.EndsOnRightSide) return new BlanketFault(BlanketFaultKind.NoSuchSides) { Motif = kind };
            for (var i = 0; i < layout.Sides; i++)
            {
                if (!LookAlike(_sides[i], MotifSides.PlacesOf(other, SideOf(other, i, layout.Sides).Stretches[0]))) return new BlanketFault(BlanketFaultKind.KindsUnlike, i) { Motif = kind };
            }
        }

        var missing = Enumerable.Range(0, motifs.Count).Where(kind => layout.Of(kind) == 0).ToList();
        return missing.Count > 0 ? new BlanketFault(BlanketFaultKind.KindsMissing) { Motif = missing[0] } : null;
    }

    // A motif's side by where it lies, from its left one.
    private JoinSide SideOf(Piece motif, int lies, int sides) => MotifSides.Of(motif, NumberOf(motif, lies, sides))!;

    private int NumberOf(Piece motif, int lies, int sides) => (lies + (_upright ? MotifStand.LeftSide(motif, sides) ?? 0 : 0)) % sides;

    private bool AreAlike(int one, int other) =>
        _sides[one].Count == _sides[other].Count && _sides[one].CountWhere(IsJoined) == _sides[other].CountWhere(IsJoined);

    // A motif may only be turned if all its sides are the same, place for place: else the rim would not be what is said of it.
    private static bool LookAlike(PlaceSequence one, PlaceSequence other)
    {
        if (one.Count != other.Count) return false;
        var (left, right) = (new PlaceCursor(one), new PlaceCursor(other));
        while (left.Remaining > 0)
        {
            var (run, beside) = (left.CurrentRun(left.Remaining), right.CurrentRun(right.Remaining));
            if ((run.Place.Kind == PlaceKind.Space, run.Place.Stitch) != (beside.Place.Kind == PlaceKind.Space, beside.Place.Stitch)) return false;
            if (run.Place.Kind == PlaceKind.Space && run.Place.Chains != beside.Place.Chains) return false;
            var count = Math.Min(run.Count, beside.Count);
            left.Pass(count);
            right.Pass(count);
        }

        return true;
    }

    private bool IsJoined(Place place) => between is { } filter && filter.Has(place);

    private (IReadOnlyList<JoinedMotif> Joined, BlanketFault? Fault) Others(MotifLayout layout)
    {
        // A motif that stands upright is not turned, however alike its sides are.
        var alike = !_upright && Enumerable.Range(1, layout.Sides - 1).All(i => LookAlike(_sides[0], _sides[i]));
        var joined = new List<JoinedMotif>();
        foreach (var (to, kind, count) in alike ? Turned(layout) : layout.Kinds())
        {
            var (piece, fault) = Joined(motifs[kind], to);
            if (piece is null) return ([], fault);
            joined.Add(new JoinedMotif(piece, [.. to.OfType<Neighbour>()], count) { Kind = kind });
        }

        return (joined, null);
    }

    // What looks alike from all sides is turned until what is joined comes first: then only the number of sides tells one kind from another.
    private static List<(IReadOnlyList<Neighbour?> To, int Kind, long Count)> Turned(MotifLayout layout)
    {
        var kinds = new List<(IReadOnlyList<Neighbour?> To, int Kind, long Count)>();
        foreach (var some in layout.Kinds().GroupBy(static kind => (On: kind.To.Count(static to => to is not null), kind.Kind)).OrderBy(static some => some.Key))
        {
            var to = new Neighbour?[layout.Sides];
            if (some.Key.On == 1) to[0] = Neighbour.Beside;
            else if (some.Key.On == 2 && layout.IsSetOff) (to[0], to[1]) = (Neighbour.Beside, Neighbour.NextBeside);
            else to = [.. some.First().To];
            kinds.Add((to, some.Key.Kind, some.Sum(static kind => kind.Count)));
        }

        return kinds;
    }

    private (Piece? Piece, BlanketFault? Fault) Joined(Piece motif, IReadOnlyList<Neighbour?> to)
    {
        var edges = new JoinedEdge?[to.Count];
        for (var i = 0; i < to.Count; i++)
        {
            if (to[i] is { } neighbour) edges[NumberOf(motif, i, to.Count)] = new JoinedEdge(SideOf(motif, i + (to.Count / 2), to.Count)) { Beside = neighbour };
        }

        var last = motif.Rows[^1];
        var round = new JoinedRound(edges, stitch, between, origin);
        var words = round.Of(last.Work!.Words);
        if (round.Fault is { } fault) return (null, new BlanketFault(fault));
        if (between is not null && !round.JoinsBetween) return (null, new BlanketFault(BlanketFaultKind.NothingToJoin));
        var worked = RowWorker.Work(words, last.Work.Below, isRound: true, begunAt: last.Work.BegunAt);
        var along = new List<JoinedAlong>();
        foreach (var edge in edges.OfType<JoinedEdge>())
        {
            var places = edge.Places(false);
            var (after, wrong) = new JoinedAlong(edge, false, places, places).After(worked.Words);
            if (wrong is not null || after.Rest is not { Count: 0 }) return (null, new BlanketFault(BlanketFaultKind.NotWorked));
            along.Add(after);
        }

        if (worked.Fault is not null || worked.Stitches != last.Work.Stitches) return (null, new BlanketFault(BlanketFaultKind.NotWorked));
        var opening = Joined(last.Work.Opening, worked.Words);
        var tops = Openings.MarkFirst(worked.Tops, opening, PlaceKind.TurningChain);
        var work = new RowWork(worked.Words, last.Work.Below, tops, opening) { BegunAt = last.Work.BegunAt };
        var row = last with { Work = work, Plan = new WordsPlan(words), Origin = origin, Ordinal = 0 };
        return (motif with { Rows = [.. motif.Rows.Take(motif.Rows.Count - 1), row], Top = tops, JoinedTo = along }, null);
    }

    // Of a space that is made with the chain in the first stitch's place, what joins may leave a part or nothing before it.
    private static Opening Joined(Opening opening, IReadOnlyList<Word> words)
    {
        if (opening.Space == 0) return opening;
        var space = Openings.SpaceAfterFirst(words);
        return opening with { Chains = opening.Chains - opening.Space + space, Space = space };
    }

    // Of each motif the sides that lie outside. A corner that is one motif's alone stands out and is marked; where two motifs meet, both have theirs.
    private PlaceSequence RimOf(MotifLayout layout)
    {
        var rim = new PlaceSequenceBuilder(long.MaxValue);
        Place? before = null;
        foreach (var part in layout.Rim())
        {
            if (part.Times == 0) continue;
            var once = new PlaceSequenceBuilder(long.MaxValue);
            foreach (var (side, isOtherMotif) in part.Sides)
            {
                var places = _sides[side];
                if (isOtherMotif) once.Add(before!.Value with { IsCorner = false }, 1);
                once.Add(places.First with { IsCorner = !isOtherMotif }, 1);
                once.Add(Plain(places.Slice(1, places.Count - 2)));
                before = places.Last;
            }

            rim.AddTimes(once.Build(), part.Times);
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
