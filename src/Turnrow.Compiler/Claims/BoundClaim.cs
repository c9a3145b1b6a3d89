using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Claims;

/// <summary>What a claim counts: all stitches, spaces, or one stitch.</summary>
internal readonly record struct ClaimKind(bool Spaces, Stitch? Stitch)
{
    /// <summary>Special stitches that the claim names, whose stitches and spaces are counted with them; null for none.</summary>
    public IReadOnlyList<Stitch>? Without { get; init; }

    /// <summary>All stitches.</summary>
    public static ClaimKind Stitches => default;

    /// <summary>So many of them, in words.</summary>
    public string Counted(Context context, int count) =>
        Spaces ? Diagnostics.Kinds.Counted.Spaces(count)
        : Stitch is null ? Diagnostics.Kinds.Counted.Stitches(count)
        : $"{Diagnostics.Kinds.Counted.Plain(count)} {context.Word(Stitch)}";
}

/// <summary>A claim with its numbers.</summary>
internal sealed record BoundClaim(ClaimSyntax Syntax, Counting Counting, IReadOnlyList<(ClaimKind Kind, int?[] Claimed, ClaimPartSyntax Syntax)> Parts)
{
    /// <summary>The places that it claims in all, if it tells them by one number; null if it counts some of them alone.</summary>
    /// <param name="size">The size.</param>
    /// <param name="words">Words of the row that it is of; null where they are not known.</param>
    public int? PlacesIn(int size, IReadOnlyList<Word>? words)
    {
        if (Parts is not [{ Kind: { Spaces: false } kind, Claimed: var claimed }] || Counting != Counting.Usual) return null;
        var all = kind.Stitch is { } stitch ? words is not null && MadeKinds.AreOnly(words, stitch) : words is null || !(MadeKinds.HaveSpaces(words) || MadeKinds.HaveBridges(words));
        return all ? claimed[size] : null;
    }
}

/// <summary>Counts what a claim counts.</summary>
internal static class ClaimCounting
{
    /// <summary>The calculated count of a row.</summary>
    public static int Of(RowWork work, ClaimKind kind, Counting counting) =>
        kind.Without is { } without ? Outside(work, kind, counting, without)
        : kind.Spaces ? work.Spaces
        : work.Count(counting, kind.Stitch);

    private static int Outside(RowWork work, ClaimKind kind, Counting counting, IReadOnlyList<Stitch> without)
    {
        var count = Of(work.Tops, kind);
        var chain = counting == Counting.WithoutTurningChain && work.Opening.Counts && work.Opening.Stitch == kind.Stitch && IsOutside(work.Tops.First, without);
        return chain ? count - 1 : count;
    }

    private static bool IsOutside(Place place, IReadOnlyList<Stitch> without)
    {
        if (place.Part is not { } part) return true;
        for (var i = 0; i < without.Count; i++)
        {
            if (part.Special.IsLike(without[i])) return false;
        }

        return true;
    }

    /// <summary>The calculated count of places that a row is to be worked over.</summary>
    public static int Ahead(PlaceSequence places, ClaimKind kind) =>
        kind is { Spaces: false, Stitch: null } ? places.CountWhere(static p => p.TakesStitches) : Of(places, kind);

    private static int Of(PlaceSequence places, ClaimKind kind)
    {
        if (kind.Without is { } without)
            return places.CountWhere(p => IsOutside(p, without) && (kind.Spaces ? p.Kind == PlaceKind.Space : p.IsStitch && p.Stitch?.IsLike(kind.Stitch!) == true));
        if (kind.Spaces) return places.CountWhere(static p => p.Kind == PlaceKind.Space);
        return kind.Stitch is { } stitch
            ? places.CountOf(stitch)
            : places.CountWhere(static p => p.IsStitch);
    }
}
