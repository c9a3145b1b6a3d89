using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Pieces;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions;

/// <summary>A row or round of stitches that is folded flat, and which of them lie on which, alike over sizes.</summary>
/// <param name="Begins">The two at the fold where it begins.</param>
/// <param name="Ends">The last two that meet.</param>
/// <param name="Alone">The one that meets no other; null if all do.</param>
internal sealed record SeamFoldText((Sized<int> One, Sized<int> Other) Begins, (Sized<int> One, Sized<int> Other) Ends, Sized<int>? Alone)
{
    /// <summary>The fold of a seam of an edge with itself, or of two parts of one last row; null if it joins two edges.</summary>
    public static SeamFoldText? Of(Seam seam)
    {
        if (seam.Fold is { Pairs: > 0 } fold)
        {
            var before = seam.First.Stretches[0].FromRight;
            return new(Pair(fold.Pair(0), before), Pair(fold.Pair(fold.Pairs - 1), before), fold.Alone is { } alone ? Sized.Of(alone + before) : null);
        }

        if (seam.GoesOn || seam.Eased || PartOf(seam.First) is not { } first || PartOf(seam.Second) is not { } second || seam.First.Piece.Name != seam.Second.Piece.Name) return null;
        // The one is read as it was numbered, the other lies along it.
        return new(Pair((1, second.Count + second.FromRight), first.FromRight, 0), Pair((first.Count, second.FromRight + 1), first.FromRight, 0), null);
    }

    /// <summary>What is folded: <c>last round of Heel to itself</c>, <c>stitches 1-6 (front) to stitches 7-12 (back) of the last round of Ear</c>.</summary>
    public static string Title(SeamEdgeText first, SeamEdgeText second, Wording words)
    {
        var (one, other) = (first.Parts[0], second.Parts[0]);
        return one.Stitches is { } lower && other.Stitches is { } upper && one.Edge != other.Edge
            ? $"{lower.Numbers} ({Names.Words(one.Edge!)}) to {upper.Numbers} ({Names.Words(other.Edge!)}) of the last {lower.Row} of {one.PieceName}"
            : $"{one.EdgeTitle(words)} of {one.PieceName} to itself";
    }

    /// <summary>How it is laid.</summary>
    /// <param name="edge">The edge.</param>
    /// <param name="outside">The side that is out, in words.</param>
    public static string Laid(SeamEdgeText edge, string outside) => $"Fold {edge.Parts[0].PieceName} flat, {outside} out, so that the two halves of this edge lie together.";

    /// <summary>Which stitch meets which.</summary>
    public string Matched(Wording words)
    {
        var further = Begins.Equals(Ends) ? string.Empty : $", and so on to {Pair(Ends)}";
        return $"Match them {words.St} for {words.St}, {Pair(Begins)}{further}.{(Alone is null ? string.Empty : $" Stitch {Alone.Written()} lies in the fold and meets no other; take it in by itself.")}";
    }

    /// <summary>The same for several sizes; null if they differ in more than numbers.</summary>
    public SeamFoldText? And(SeamFoldText other) => Alone is null == other.Alone is null && Begins.Equals(Ends) == other.Begins.Equals(other.Ends)
        ? new((Begins.One.And(other.Begins.One), Begins.Other.And(other.Begins.Other)), (Ends.One.And(other.Ends.One), Ends.Other.And(other.Ends.Other)), Alone?.And(other.Alone!))
        : null;

    private static string Pair((Sized<int> One, Sized<int> Other) pair) => $"stitch {pair.One.Written()} with stitch {pair.Other.Written()}";

    private static (Sized<int> One, Sized<int> Other) Pair((int First, int Second) pair, int before) => Pair(pair, before, before);

    private static (Sized<int> One, Sized<int> Other) Pair((int First, int Second) pair, int beforeFirst, int beforeSecond) =>
        (Sized.Of(pair.First + beforeFirst), Sized.Of(pair.Second + beforeSecond));

    private static Stretch? PartOf(JoinSide side) => side.Stretches is [{ Kind: StretchKind.OpenStitches, Name: not null } part] ? part : null;
}
