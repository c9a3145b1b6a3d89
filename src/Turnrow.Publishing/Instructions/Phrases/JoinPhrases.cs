using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Motifs;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Phrases;

/// <summary>Tells how a piece is joined to others while it is worked.</summary>
internal static class JoinPhrases
{
    /// <summary>A stitch of a row that joins.</summary>
    public static IntoOther Of(Work work, JoinTo to) =>
        new(work.Stitch, EdgeName.Of(to.Edge), NameOf(to), to.Target is { Aim: Aim.Corner } or { Filter.Kind: PlaceFilterKind.Corner }, to.Target.Aim == Aim.NextOfKind, Sized.Of(to.Skipped));

    /// <summary>The edges that a piece is joined to, and in which direction they are met: a sentence each.</summary>
    public static IEnumerable<string> Sentences(IReadOnlyList<Piece> inSizes, Wording words)
    {
        foreach (var edge in inSizes.SelectMany(static p => p.JoinedTo).Select(static j => EdgeName.Of(j.Edge)).Distinct().ToList())
        {
            var along = inSizes.Select(p => p.JoinedTo.FirstOrDefault(j => EdgeName.Of(j.Edge) == edge)).OfType<JoinedAlong>().Where(static j => j.Places is not null).ToList();
            if (along.Count == 0) continue;
            var places = along.Skip(1).Aggregate(Sized.Of(along[0].Places!.Count), static (all, j) => all.And(Sized.Of(j.Places!.Count)));
            yield return words.Noting(Note.JoinedAsWorked, $"Joined as it is worked to {edge.Written(words)}, {words.Side(true)} of both up, {Way(along[0])}: {NameOf(along[0]).Counted(places, words)}.");
        }
    }

    private static string Way(JoinedAlong along) => along.Edge.Side switch
    {
        { Hand: not null } => along.Forwards ? "from its first row up" : "from its last row down",
        { Stretches: [{ Kind: StretchKind.Side }] } => along.Forwards ? "from its first corner to its last" : "from its last corner back to its first",
        { Piece.EndsInRounds: true } => along.Forwards ? "in the order in which it was worked" : "against the order in which it was worked",
        _ => along.Forwards ? "from its right end to its left" : "from its left end to its right",
    };

    private static PlaceName NameOf(JoinedAlong along) => along.Edge.Side.Hand is not null ? OfRows(along.Edge.Side)
        : along.Places!.CountWhere(static p => p.Kind == PlaceKind.Space) > 0 ? new(PlaceNameKind.StitchAndSpace)
        : along.Edge.Side.Stretches is [{ Kind: StretchKind.Foundation }] ? PlaceName.Chain
        : PlaceName.AnyStitch;

    // Where an edge has steps, what comes next may be one of their stitches.
    private static PlaceName OfRows(JoinSide side) => side.Stitches > 0 ? new(PlaceNameKind.RowEndOrStitch) : PlaceName.RowEnd;

    private static PlaceName NameOf(JoinTo to) => to.Target.Filter.Kind switch
    {
        PlaceFilterKind.AnySpace => new(PlaceNameKind.AnySpace),
        PlaceFilterKind.SpaceOf => new(PlaceNameKind.Space, null, to.Target.Filter.Chains),
        PlaceFilterKind.OneStitch => new(PlaceNameKind.Stitch, to.Target.Filter.Stitch),
        _ when to.Edge.Side.Hand is not null => OfRows(to.Edge.Side),
        PlaceFilterKind.StitchOrSpace when to.Edge.Places(true)?.CountWhere(static p => p.Kind == PlaceKind.Space) > 0 => new(PlaceNameKind.StitchAndSpace),
        _ => to.Edge.Side.Stretches is [{ Kind: StretchKind.Foundation }] ? PlaceName.Chain : PlaceName.AnyStitch,
    };
}

/// <summary>An edge of another piece by its name.</summary>
internal sealed record EdgeName(string Piece, Hand? Hand, string? Name, StretchKind Kind, bool IsRound, Neighbour? Beside)
{
    public static EdgeName Of(JoinedEdge edge) => edge.Beside is { } beside ? new(string.Empty, null, null, StretchKind.Side, true, beside) : Of(edge.Side);

    private static EdgeName Of(JoinSide side) => new(
        side.Piece.Name, side.Hand, side.Stretches.Select(static s => s.Name).FirstOrDefault(static n => n is not null), side.Hand is null ? side.Stretches[0].Kind : StretchKind.RowEnds, side.Piece.EndsInRounds, null);

    /// <summary><c>the right edge (neck) of Front</c>, <c>the third side of Tile</c>.</summary>
    public string Written(Wording words) => Beside is { } beside ? Named(beside) : Hand is { } hand ? $"the {words.Edge(hand, Name)} of {Names.Title(Piece)}" : Kind switch
    {
        StretchKind.Side => $"the {words.MotifSide(Name)} of {Names.Title(Piece)}",
        StretchKind.Foundation => $"the beginning edge of {Names.Title(Piece)}",
        _ => $"the last {(IsRound ? "round" : "row")} of {Names.Title(Piece)}",
    };

    /// <summary>A motif by where it lies: <c>the motif before</c>.</summary>
    public static string Named(Neighbour beside) => beside switch
    {
        Neighbour.Below => "the motif below",
        Neighbour.Before => "the motif before",
        Neighbour.BelowLeft => "the motif below left",
        Neighbour.BelowRight => "the motif below right",
        Neighbour.NextBeside => "the next motif beside",
        _ => "the motif beside",
    };
}

/// <summary>A stitch into another piece: <c>sl st in next row-end of the right edge of Front</c>.</summary>
/// <param name="Stitch">The stitch.</param>
/// <param name="Edge">The other piece's edge.</param>
/// <param name="Place">What it goes into there.</param>
/// <param name="IsCorner">True if that is a corner.</param>
/// <param name="IsNext">True if others may be passed over on the way.</param>
/// <param name="Skipped">How many are passed over before it.</param>
internal sealed record IntoOther(Stitch Stitch, EdgeName Edge, PlaceName Place, bool IsCorner, bool IsNext, Sized<int> Skipped) : Phrase
{
    /// <summary>How many of them follow each other, each in the place behind.</summary>
    public int Times { get; init; } = 1;

    /// <summary>Both as one, if the other goes on behind it alike; null if not.</summary>
    public IntoOther? Then(IntoOther next) => !IsCorner && Skipped.All(static n => n == 0) && next with { Times = Times } == this ? this with { Times = Times + next.Times } : null;

    protected override Phrase? Join(Phrase other) => other is IntoOther join && join with { Skipped = Skipped } == this ? this with { Skipped = Skipped.And(join.Skipped) } : null;

    protected override string Text(Wording words)
    {
        var skip = Skipped.All(static n => n == 0) ? string.Empty : $"{words.Terms.Skip} next {Place.Counted(Skipped, words)} and ";
        if (Times > 1) return $"{words.Stitch(Stitch)} in each of next {Place.Counted(Sized.Of(Times), words)} of {Edge.Written(words)}";
        var place = IsCorner ? IsNext ? "next corner" : "corner" : $"next {Place.One(words)}";
        return $"{skip}{words.Stitch(Stitch)} in {place} of {Edge.Written(words)}";
    }
}
