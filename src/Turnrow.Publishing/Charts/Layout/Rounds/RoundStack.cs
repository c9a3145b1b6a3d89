using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;

namespace Turnrow.Publishing.Charts.Layout.Rounds;

/// <summary>The rounds of a piece that begins in the middle, one round the other, as many as can be read so.</summary>
/// <param name="Rounds">The rounds, first one first; at least one.</param>
/// <param name="Left">Rounds that follow and lead outwards still, for which there is no room: they are not drawn.</param>
internal sealed record RoundStack(IReadOnlyList<RoundLayout> Rounds, int Left)
{
    /// <summary>Half of the widest and highest drawing, in pixels: what fits a page and stays readable on it.</summary>
    private const double Farthest = 440;

    /// <summary>How far out a wedge may reach.</summary>
    private const double Highest = 1000;

    private const int FewestParts = 3;
    private const int MostChainsOfRing = 16;
    private const int MostChainsOfOval = 36;
    private const double ReachPerChain = 2.2;
    private const double LeastReach = 10;
    private const double WidestPitch = 4 * ChartScale.Column;

    /// <summary>What the first of them stands on.</summary>
    public RoundGround Middle => Rounds[0].Ground;

    /// <summary>All rounds that are drawn or left out; what follows them is drawn in bands.</summary>
    public int Count => Rounds.Count + Left;

    /// <summary>The part of each round that is drawn, where there is no room for all of it; null for whole rounds.</summary>
    public Wedge? Wedge { get; init; }

    /// <summary>How far it reaches from the middle.</summary>
    public SheetBox Extent => Wedge is { } wedge ? ExtentOf(Rounds, wedge) : ExtentOf(Rounds);

    /// <summary>The columns of a round that are drawn.</summary>
    public Columns Open(RoundLayout round) => Wedge?.Of(round) ?? new Columns(0, round.Row.Strip!.Columns);

    /// <summary>Lays out what can be drawn round its middle; null if the piece does not begin there or would not grow out from it.</summary>
    public static RoundStack? Of(Piece piece)
    {
        if (MiddleOf(piece) is not { } middle) return null;
        var outwards = GrowingRounds(piece.Rows);
        var drawn = outwards;
        while (drawn > 0)
        {
            var rounds = Lay(piece.Rows, drawn, middle, Farthest);
            if (rounds.Count == drawn) return new RoundStack(rounds, outwards - drawn);
            if (drawn == outwards && WedgeOf(piece.Rows, outwards, middle) is { } wedge) return wedge;
            // What does not fit is no round of this drawing, and the last one decides on the shape of all.
            drawn = rounds.Count;
        }

        return null;
    }

    // All rounds, and of each so many of the parts that it is cut into as can be read on a sheet.
    private static RoundStack? WedgeOf(IReadOnlyList<Row> rows, int count, RoundGround middle)
    {
        var rounds = Lay(rows, count, middle, Highest);
        if (rounds.Count < count || LikeParts.Of(rounds) is not (>= FewestParts and var parts)) return null;
        for (var shown = parts / FewestParts; shown > 0; shown--)
        {
            // The middle of what is drawn lies straight up.
            var begins = -rounds[0].Direction * 0.5 * shown / parts;
            if (middle is RingGround ring && rounds[^1].Shape is CircleShape) rounds = Lay(rows, count, ring.Turned(begins), Highest, begins);
            var wedge = new Wedge(shown, parts, rounds[0].Direction);
            if (ExtentOf(rounds, wedge) is { Width: <= 2 * Farthest, Height: <= Highest }) return new RoundStack(rounds, 0) { Wedge = wedge };
        }

        return null;
    }

    private static SheetBox ExtentOf(IReadOnlyList<RoundLayout> rounds)
    {
        var (width, height) = (rounds.Max(static round => round.Shape.HalfWidth(round.Outer)), rounds.Max(static round => round.Shape.HalfHeight(round.Outer)));
        return new SheetBox(-width, -height, width, height);
    }

    private static SheetBox ExtentOf(IReadOnlyList<RoundLayout> rounds, Wedge wedge)
    {
        var least = rounds[0].Inner;
        var box = new SheetBox(-least, -least, least, least);
        foreach (var round in rounds)
        {
            var columns = wedge.Of(round);
            for (var column = columns.From; column <= columns.To; column++) box = box.With(round.Shape.At(round.TurnOf(column), round.Outer));
            box = box.With(round.Shape.At(round.TurnOf(columns.To), round.Outer));
        }

        return box;
    }

    private static RoundGround? MiddleOf(Piece piece)
    {
        if (piece.Rows.Count == 0 || piece.Rows[0] is not { IsRound: true, Work: { } work } first) return null;
        var places = work.Below.Count;
        return (piece.Start, first.Begins) switch
        {
            (BothSidesStart, _) => places <= 2 * (MostChainsOfOval - 1) ? new BothSidesGround((places / 2) + 1) : null,
            (RingStart { Chains: var chains }, _) => new RingGround(1, chains, ReachOf(chains)),
            (_, RowBegins.Ring) when places <= MostChainsOfRing => new RingGround(places, places, ReachOf(places)),
            _ => null,
        };
    }

    private static double ReachOf(int chains) => Math.Max(LeastReach, Math.Min(chains, MostChainsOfRing) * ReachPerChain);

    // Corners stay where they are on the sheet; what lies below the first of them is turned until they stand on what they are worked into.
    private static List<RoundLayout> Lay(IReadOnlyList<Row> rows, int count, RoundGround middle, double farthest)
    {
        var rounds = Lay(rows, count, middle, farthest, 0);
        var first = rounds.FindIndex(static round => round.Shape is PolygonShape);
        if (first < 1 || middle is not RingGround ring) return rounds;
        var turn = RoundFit.TurnUnder(rounds[first], rounds[first - 1]);
        return Lay(rows, count, ring.Turned(turn), farthest, turn);
    }

    private static List<RoundLayout> Lay(IReadOnlyList<Row> rows, int count, RoundGround middle, double farthest, double begins)
    {
        var corners = CornersOf.Round(rows[count - 1].Work!.Tops).Count;
        var rounds = new List<RoundLayout>(count);
        for (var i = 0; i < count; i++)
        {
            var round = RoundFit.Lay(rows[i], i == 0 ? null : rounds[i - 1], middle, corners, begins);
            if (Math.Max(round.Shape.HalfWidth(round.Outer), round.Shape.HalfHeight(round.Outer)) > farthest || round.Pitch > WidestPitch) break;
            rounds.Add(round);
        }

        return rounds;
    }

    /// <summary>
    /// Rounds from the middle on that are known and lead outwards: up to the one with the most stitches, and the edging round it. What follows
    /// is a tube, or closes again, and is drawn in bands.
    /// </summary>
    private static int GrowingRounds(IReadOnlyList<Row> rows)
    {
        var known = 0;
        while (known < rows.Count && rows[known] is { IsRound: true, Work: { Tops.Count: > 0 } } && Follows(rows[known])) known++;
        if (known == 0) return 0;
        var most = 0;
        for (var i = 1; i < known; i++)
        {
            if (RowLayout.LengthOf(rows[i]) > RowLayout.LengthOf(rows[most])) most = i;
        }

        foreach (var hidden in LikeRows.SameRows(rows))
        {
            if (hidden.First <= most) return hidden.First;
        }

        // A tube that is as wide as its ring does not grow from it.
        if (most == 0 && rows[0].Work!.Tops.Count <= rows[0].Work!.Below.Count) return 0;
        const int edging = 3;
        return known == rows.Count && (known - most <= edging + 1 || LieFlat(rows, most, known - edging)) ? known : most + 1;
    }

    // Lace does not stretch at every round, but a mat lies flat to its rim: openwork that is nearly as long as it takes goes on outwards.
    private static bool LieFlat(IReadOnlyList<Row> rows, int most, int count)
    {
        const double nearly = 0.6;
        if (LikeRows.SameRows(rows).Count > 0) return false;
        var reach = 0.0;
        for (var i = 0; i < count; i++)
        {
            // A stitch is a little more than half as high as its chains are long.
            reach += ((GaugeBook.TallestOf(rows[i])?.Height ?? 1) + 1) / 2.0;
            if (i <= most) continue;
            var isOpen = rows[i].Work!.Tops.Kinds().Any(static kind => kind.Place.Kind == PlaceKind.Space);
            if (!isOpen || RowLayout.LengthOf(rows[i]) < nearly * 2 * Math.PI * reach) return false;
        }

        return true;
    }

    private static bool Follows(Row row) => row.Number == 1 || row is { Start: null, End: null, Short.IsNone: true, Unworked: null } && row.Begins >= RowBegins.Ring;
}
