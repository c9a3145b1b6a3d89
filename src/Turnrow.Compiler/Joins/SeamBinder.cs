using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Patterns;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Joins;

/// <summary>Reads a seam and checks that its edges meet.</summary>
internal sealed class SeamBinder(Context context, PieceBook book)
{
    /// <summary>The seam; null, and reported, if its edges are not known.</summary>
    public SeamInSizes? Bind(SeamStatement statement)
    {
        var binder = new WalkBinder(context, book);
        var (first, second) = (binder.Bind(statement.First), binder.Bind(statement.Second));
        var rate = statement.Rate is { } r ? RateOf(r) : null;
        if (first is null || second is null)
        {
            book.JoinsInDoubt = true;
            return null;
        }

        first.Piece.Joined = second.Piece.Joined = true;
        book.Uses.Add(first, context);
        book.Uses.Add(second, context);
        var seams = new Seam?[context.Sizes];
        for (var i = 0; i < seams.Length; i++)
        {
            if (first.Sides[i] is { } a && second.Sides[i] is { } b) seams[i] = new Seam(a, b, statement.Eased, rate?[i]);
        }

        book.Seams.Add((first, second));
        if (IsNothing(first) || IsNothing(second)) return new SeamInSizes(seams);
        CheckStitches(first, second, seams);
        CheckLengths(statement, first, second, seams);
        CheckOrder(statement, seams);
        return new SeamInSizes(seams);
    }

    private SeamRate?[]? RateOf(RateSyntax rate)
    {
        if (context.StitchOf(rate.Stitch) is not { } stitch) return null;
        var counts = context.Evaluate.Counts(rate.Count, 1);
        var per = rate.Per is { } p ? context.Evaluate.Counts(p, 1) : Sized.Same<int?>(context.Sizes, 1);
        var rates = new SeamRate?[context.Sizes];
        for (var i = 0; i < rates.Length; i++)
        {
            if (counts[i] is { } n && per[i] is { } over) rates[i] = new SeamRate(n, stitch, over, rate.OfStitches);
        }

        return rates;
    }

    private void CheckLengths(SeamStatement statement, BoundWalk first, BoundWalk second, Seam?[] seams)
    {
        if (statement.Eased || first.Piece.EdgesInDoubt || second.Piece.EdgesInDoubt) return;
        var uneven = Sized.Where(context.Sizes, i => seams[i] is { IsEven: false } seam && IsKnown(first, seam.First, i) && IsKnown(second, seam.Second, i));
        if (uneven.Length > 0) context.Findings.Add(SeamLength.At(context, first, second, uneven, i => seams[i]!));
    }

    private bool IsNothing(BoundWalk walk)
    {
        if (walk.Piece.EdgesInDoubt) return false;
        var nothing = Sized.Where(context.Sizes, i => walk.Sides[i] is { RowEnds: 0, Stitches: 0 } side && IsKnown(walk, side, i));
        if (nothing.Length > 0) context.Findings.Add(SeamNothing.At(context, walk.Span, nothing));
        return nothing.Length > 0;
    }

    private void CheckStitches(BoundWalk first, BoundWalk second, Seam?[] seams)
    {
        if (first.Piece.EdgesInDoubt || second.Piece.EdgesInDoubt) return;
        var met = seams.Select(s => s is null ? null : RowsThatMeet.Find(s));
        var unlike = Sized.Where(context.Sizes, i => met[i] is not null);
        if (unlike.Length > 0) context.Findings.Add(SeamStitch.At(context, first, second, unlike, met[unlike[0]]!));
    }

    // Row-ends are there whatever the rows are; how long a foundation or a last row is, only its count tells.
    private static bool IsKnown(BoundWalk walk, JoinSide side, int size) =>
        side.Hand is not null || (walk.Piece.Builders[size].LastWork is not null && walk.Piece.Builders[size].Rows[0].Work is not null);

    private void CheckOrder(SeamStatement statement, Seam?[] seams)
    {
        if (statement.Order is not { } said || Array.Find(seams, s => s is not null) is not { First.Hand: not null, Second.Hand: not null } seam) return;
        if (said.Order == SeamOrder.Opposite != seam.OppositeOrder) context.Findings.Add(SeamOrderWrong.At(said.Span, seam.OppositeOrder, seam.First.Hand!.Value, seam.Second.Hand!.Value));
    }
}
