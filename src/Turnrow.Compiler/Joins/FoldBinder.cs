using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Joins;

/// <summary>Reads a seam of an edge <c>with itself</c>: the stitches of a row or a round, folded flat, each half on the other.</summary>
internal sealed class FoldBinder(Context context)
{
    /// <summary>The seam, each size's own fold in it; sizes in which nothing can be folded have none.</summary>
    public SeamInSizes Bind(SeamStatement statement, IReadOnlyList<BoundWalk> edge, Seam?[] seams)
    {
        if (!CanFold(statement, edge)) return new SeamInSizes(new Seam?[seams.Length]);
        var walk = edge[0];
        var from = statement.FoldedAt is { } said ? context.Evaluate.Counts(said) : Sized.Same<int?>(seams.Length, 1);
        var known = Sized.Where(seams.Length, i => seams[i] is { } seam && IsCounted(walk, seam.First, i));
        Check(statement, walk, from, known, seams);
        return new SeamInSizes(Sized.Each(seams.Length, i =>
            seams[i] is { } seam && from[i] is { } at && Array.IndexOf(known, i) >= 0 && Fits(at, seam.First) ? seam with { Fold = new SeamFold(at, seam.First.Stitches) } : null));
    }

    private static bool Fits(int from, JoinSide side) => side.Stitches > 1 && from <= side.Stitches;

    // Words that only two edges can have, and edges that are no single row of stitches.
    private bool CanFold(SeamStatement statement, IReadOnlyList<BoundWalk> edge)
    {
        if (edge.Count > 1) return Told(SeamItself.Several(edge[0].Span.To(edge[^1].Span)));
        if (statement.Order is { } order) return Told(SeamItself.NothingToSay(order.Span, "which end meets which"));
        if (statement.Eased) return Told(SeamItself.NothingToSay(statement.Easing?.Span ?? statement.Itself!.Span, "how they are eased"));
        var side = edge[0].Sides.FirstOrDefault(static s => s is not null);
        if (side is null) return false;
        return side is { Hand: null, Stretches.Count: 1 } || Told(SeamItself.Rows(edge[0].Span, edge[0].Piece.Name, side.Hand, side.RowEnds));
    }

    private void Check(SeamStatement statement, BoundWalk walk, int?[] from, int[] known, Seam?[] seams)
    {
        var few = Array.FindAll(known, i => seams[i]!.First.Stitches < 2);
        if (few.Length > 0) context.Findings.Add(SeamItself.TooFew(context, walk.Span, few, i => seams[i]!.First.Stitches));
        if (statement.FoldedAt is not { } said) return;
        var flat = Array.FindAll(known, i => !IsRound(seams[i]!.First) && from[i] > 1);
        if (flat.Length > 0) context.Findings.Add(SeamItself.InRow(context, said.Span, flat));
        var past = Array.FindAll(known, i => IsRound(seams[i]!.First) && seams[i]!.First.Stitches > 1 && from[i] > seams[i]!.First.Stitches);
        if (past.Length > 0) context.Findings.Add(SeamItself.Past(context, said.Span, past, i => seams[i]!.First.Stitches));
    }

    // Only what goes round can be folded anywhere; the ends of a row lie on each other.
    private static bool IsRound(JoinSide side) => side.Stretches[0].Kind switch
    {
        StretchKind.LastRow => side.Piece.EndsInRounds,
        StretchKind.Foundation => side.Piece.Rows is [{ IsRound: true }, ..],
        _ => false,
    };

    private static bool IsCounted(BoundWalk walk, JoinSide side, int size) => !walk.Piece.EdgesInDoubt && PickUpBinder.IsCounted(walk, side, size);

    private bool Told(Diagnostic finding)
    {
        context.Findings.Add(finding);
        return false;
    }
}
