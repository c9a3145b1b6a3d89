using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;

namespace Turnrow.Compiler.Tests.Annotated;

/// <summary>What a piece begins from, in all sizes, and what its edges are in the end.</summary>
internal static class BeginningNote
{
    public static string Of(PieceInSizes piece) =>
        $"{piece.Name} begins: {InSizes.Text(piece.InSizes.Select(Beginning))}; right edge {InSizes.Text(piece.InSizes.Select(p => Edge(p.Right)))}; left edge {InSizes.Text(piece.InSizes.Select(p => Edge(p.Left)))}";

    private static string Beginning(Piece piece) => piece.Start switch
    {
        FoundationStart start => $"{start.Chains} chains",
        PartStart part => $"{part.Count} of {part.Base.Name}, {part.FromRight} from right, {part.FromLeft} from left, {Yarn(part.Joined)}",
        PickUpStart pickUp => $"{(pickUp.RightSide ? "RS" : "WS")} facing, {Yarn(pickUp.Joined)}, along {string.Join(" and ", pickUp.Walk.Select(Leg))}",
        _ => "not known",
    };

    private static string Yarn(bool joined) => joined ? "yarn joined" : "yarn goes on";

    private static string Leg(PickUpLeg leg)
    {
        var rows = leg.Stretch.Kind == StretchKind.RowEnds
            ? leg.Upwards ? $" rows {leg.Stretch.FirstRow} to {leg.Stretch.LastRow}" : $" rows {leg.Stretch.LastRow} to {leg.Stretch.FirstRow}"
            : $" {leg.Stretch.Count} {leg.Stretch.Kind}";
        return $"{leg.Piece.Name}{rows}, {leg.Rate} in {leg.Per}";
    }

    private static string Edge(EdgeWalk edge) => string.Join(" + ", edge.Stretches.Select(s => $"{s.Count} {s.Name ?? "-"}{s.Kind switch
    {
        StretchKind.LeftStitches => " left",
        StretchKind.AddedChain => " added",
        _ => string.Empty,
    }}"));
}

/// <summary>What a seam joins, in all sizes.</summary>
internal static class SeamNote
{
    public static string Of(SeamInSizes seam) => InSizes.Text(seam.InSizes.Select(s => s is null
        ? "not known"
        : $"{Edge(s.WholeFirst)} to {Edge(s.WholeSecond)}, {Order(s)}{Lengths(s)}"));

    private static string Edge(IReadOnlyList<Turnrow.Fabric.Joins.JoinSide> edge) => string.Join(" + ", edge.Select(s => $"{s.Piece.Name} {Side(s)}"));

    private static string Lengths(Turnrow.Fabric.Joins.Seam seam) =>
        seam.Lengths is { } lengths ? $", {InSizes.Cm(lengths.First)} cm to {InSizes.Cm(lengths.Second)} cm" : string.Empty;

    private static string Order(Turnrow.Fabric.Joins.Seam seam) => (seam.First.Hand, seam.Second.Hand) switch
    {
        _ when seam.GoesOn => "end to end",
        (null, _) or (_, null) => "stitch to stitch",
        _ => seam.OppositeOrder ? "first row to last" : "first row to first",
    };

    private static string Side(Turnrow.Fabric.Joins.JoinSide side) => $"{side.RowEnds} rows {side.Stitches} sts";
}
