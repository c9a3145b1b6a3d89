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
        var first = Bind(binder, statement.First);
        var second = statement.Itself is null ? Bind(binder, statement.Second) : first;
        var rate = statement.Rate is { } r ? RateOf(r) : null;
        var yarn = statement.Yarn is { } name ? context.Yarns.Use(name) : null;
        if (yarn is not null) context.Yarns.OfSeams.Add(yarn);
        if (first is null || second is null)
        {
            book.JoinsInDoubt = true;
            return null;
        }

        if (!SaysWhich(first, second) || LiesOnItself(statement, first, second)) return null;
        foreach (var walk in statement.Itself is null ? first.Concat(second) : first)
        {
            walk.Piece.Joined = true;
            book.Uses.Add(walk, context);
        }

        var seams = new Seam?[context.Sizes];
        for (var i = 0; i < seams.Length; i++)
        {
            if (InSize(first, i) is { } a && InSize(second, i) is { } b)
                seams[i] = new Seam(a[0], b[0], statement.Eased, rate?[i]) { FirstGoesOn = a[1..], SecondGoesOn = b[1..], Yarn = yarn, RightSidesTogether = statement.Inside?.RightSide };
        }

        foreach (var seam in ForEach(first, second)) book.Seams.Add(seam);
        if (statement.Itself is not null) return new FoldBinder(context).Bind(statement, first, seams);
        if (first.Concat(second).Where(IsNothing).ToList().Count > 0) return new SeamInSizes(seams);
        if (first.Count + second.Count == 2) CheckStitches(first[0], second[0], seams);
        CheckMeeting(statement.First, first, true);
        CheckMeeting(statement.Second, second, false);
        CheckLengths(statement, first, second, seams);
        CheckOrder(statement, seams);
        if (statement.Easing is { } easing && !first.Concat(second).Any(w => w.Piece.EdgesInDoubt)) new EasingCheck(context).Measure(statement, easing, seams);
        return new SeamInSizes(seams);
    }

    // Of a piece that is made several times a seam says which, unless it closes each of them by itself.
    private bool SaysWhich(List<BoundWalk> first, List<BoundWalk> second)
    {
        var walks = first.Concat(second).ToList();
        if (walks.Find(static w => w.Piece.Copies.Count > 0) is not { } unsaid || walks.TrueForAll(w => w.Piece == unsaid.Piece)) return true;
        book.JoinsInDoubt = true;
        context.Findings.Add(MadeSeveral.Which(unsaid.Span, unsaid.Piece.Name, unsaid.Piece.Copies.Count));
        return false;
    }

    // The stitches of one row, named twice: only folded can they be joined to each other.
    private bool LiesOnItself(SeamStatement statement, List<BoundWalk> first, List<BoundWalk> second)
    {
        if (statement.Itself is not null) return false;
        if (statement.FoldedAt is { } at) context.Findings.Add(SeamItself.Alone(at.Span));
        if (first is not [var one] || second is not [var other] || one.Piece != other.Piece || one.Piece.EdgesInDoubt) return false;
        if (!Array.Exists(one.Sides, static s => s is { Hand: null }) || !one.Sides.Zip(other.Sides).All(static s => IsSame(s.First, s.Second))) return false;
        var last = statement.Second[0];
        context.Findings.Add(SeamItself.Same(last.Words[0].Span.To(last.Words[^1].Span), $"`{last.Written()}`", one.Piece.Copies.Count > 0));
        book.JoinsInDoubt = true;
        return true;
    }

    private static bool IsSame(JoinSide? one, JoinSide? other) =>
        one is null || other is null || (one.Hand == other.Hand && one.Stretches.SequenceEqual(other.Stretches));

    private static IEnumerable<(IReadOnlyList<BoundWalk> First, IReadOnlyList<BoundWalk> Second)> ForEach(List<BoundWalk> first, List<BoundWalk> second) =>
        first[0].Piece.Copies is { Count: > 0 } copies
            ? copies.Select(copy => ((IReadOnlyList<BoundWalk>)[.. first.Select(w => w with { Piece = copy })], (IReadOnlyList<BoundWalk>)[.. second.Select(w => w with { Piece = copy })]))
            : [(first, second)];

    private static List<BoundWalk>? Bind(WalkBinder binder, IReadOnlyList<WalkSyntax> edge)
    {
        var parts = new List<BoundWalk>(edge.Count);
        var known = true;
        foreach (var walk in edge)
        {
            if (binder.Bind(walk) is { } part) parts.Add(part);
            else known = false;
        }

        return known && parts.Count > 0 ? parts : null;
    }

    private static JoinSide[]? InSize(List<BoundWalk> edge, int size)
    {
        var sides = new JoinSide[edge.Count];
        for (var i = 0; i < sides.Length; i++)
        {
            if (edge[i].Sides[size] is not { } side) return null;
            sides[i] = side;
        }

        return sides;
    }

    private SeamRate?[]? RateOf(RateSyntax rate) =>
        new RateBinder(context).Bind(rate) is not { } bound
            ? null
            : Sized.Each(context.Sizes, i => bound.Count[i] is { } n && bound.Per[i] is { } over ? new SeamRate(n, bound.Stitch, over, bound.OfStitches) : null);

    // The first edge goes against the clock round the pieces, their right sides facing; the second, which lies along it, with it.
    private void CheckMeeting(IReadOnlyList<WalkSyntax> edge, List<BoundWalk> walks, bool againstTheClock)
    {
        if (walks.Count < 2 || book.InDoubt || book.JoinsInDoubt || walks.Exists(w => w.Piece.EdgesInDoubt)) return;
        for (var at = 1; at < walks.Count; at++)
        {
            var (before, walk) = (walks[at - 1], walks[at]);
            var apart = Sized.Where(context.Sizes, i => !book.MeetingPoints[i].Meet(before, walk, againstTheClock));
            if (apart.Length > 0) context.Findings.Add(SeamApart.At(context, walk.Span, apart, edge[at - 1].Written(), edge[at].Written()));
        }
    }

    private void CheckLengths(SeamStatement statement, List<BoundWalk> first, List<BoundWalk> second, Seam?[] seams)
    {
        if (statement.Eased || first.Concat(second).Any(w => w.Piece.EdgesInDoubt)) return;
        var uneven = Sized.Where(context.Sizes, i => seams[i] is { IsEven: false } && first.Concat(second).All(w => w.Sides[i] is { } side && IsKnown(w, side, i)));
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
        if (statement.Order is not { } said || Array.Find(seams, s => s is not null) is not { GoesOn: false, First.Hand: not null, Second.Hand: not null } seam) return;
        if (said.Order == SeamOrder.Opposite != seam.OppositeOrder) context.Findings.Add(SeamOrderWrong.At(said.Span, seam.OppositeOrder, seam.First.Hand!.Value, seam.Second.Hand!.Value));
    }
}
