using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Shaping;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>
/// Rows of a stitch pattern between edges of plain stitches: <c>shape 20 rows, in lattice, edges in dc: inc 1 at both edges every 2 rows</c>,
/// <c>straight 8 rows, in lattice, edges in dc</c>, and <c>straight 8 rows</c> behind either.
/// </summary>
internal sealed class EdgedBinding(Context context, PieceState piece, StatementSyntax statement, NameSyntax? named, NameSyntax? edges)
{
    private readonly EdgedPattern?[] _patterns = new EdgedPattern?[context.Sizes];
    private readonly EdgedState?[] _states = new EdgedState?[context.Sizes];
    private readonly MirroredRows?[] _mirrored = new MirroredRows?[context.Sizes];
    private readonly InPattern?[] _behind = new InPattern?[context.Sizes];

    /// <summary>
    /// True if a line is for rows of this kind in any size: it names the edges' stitch, or goes on where the last row had such edges. A line for some
    /// sizes may have begun them, and then only these have them.
    /// </summary>
    public static bool IsFor(PieceState piece, NameSyntax? named, NameSyntax? edges) =>
        Array.Exists(piece.Builders, builder => IsFor(builder, named, edges));

    /// <summary>True if this line is for rows of this kind in a size.</summary>
    public bool IsFor(int size) => IsFor(piece.Builders[size], named, edges);

    private static bool IsFor(PieceBuilder builder, NameSyntax? named, NameSyntax? edges) =>
        edges is not null || (named is null && builder.LastInPattern is { Edge: not null });

    /// <summary>What each size goes on with that has such edges, as far as its gauge is asked for; reported is what can't be worked here.</summary>
    /// <param name="others">What the others go on with.</param>
    public Onward[] Find(Onward[]? others = null)
    {
        var onward = others is null ? Sized.Same(context.Sizes, Onward.Unknown) : [.. others];
        var stitch = edges is null ? null : context.StitchOf(edges);
        var said = named is null ? null : context.StitchPatternOf(named);
        if ((edges is not null && stitch is null) || (named is not null && said is null)) return onward;
        for (var i = 0; i < onward.Length; i++)
        {
            if (!context.Here.Has(i) || (others is not null && !IsFor(i))) continue;
            onward[i] = Onward.Unknown;
            Find(i, said, stitch, onward);
        }

        return onward;
    }

    /// <summary>The plans of so many rows in a size; null, and reported, where they can't be worked.</summary>
    public IReadOnlyList<WordsPlan>? Plan(int size, int rows, EdgeChanges? changes)
    {
        var builder = piece.Builders[size];
        if (changes is null || _patterns[size] is not { } pattern || _states[size] is not { } state) return null;
        if (changes.HasSteps(rows))
        {
            context.Findings.Add(PatternShape.Steps(statement.Span, pattern.Pattern.Name));
            return null;
        }

        if (changes.IsSpread)
        {
            context.Findings.Add(PatternShape.Evenly(statement.Span, pattern.Pattern.Name));
            return null;
        }

        if (builder.AheadFor(pattern.Pattern.Rows[state.Next].Words) is not { } ahead) return null;
        var planned = new EdgedRows(pattern, _mirrored[size] is null ? changes : changes.Mirrored(), rows, row => Gains(size, row));
        // A piece that mirrors another is planned as that one would go on, since its state is told with that one's edges: from the same hand, over the
        // same places met from the other end.
        if (planned.Plan(state, _behind[size]?.Index ?? -1, _mirrored[size] is null ? ahead : ahead.Reversed(), builder.HookAt) is { } plans) return plans;
        context.Findings.Add(PatternShape.Stuck(context, statement.Span, piece, size, pattern, planned.Stuck));
        return null;
    }

    /// <summary>A planned row, asked for when it is to be worked: in a piece that mirrors another it is turned round there.</summary>
    public WordsPlan? Here(int size, WordsPlan planned) => _mirrored[size] is { } mirrored ? mirrored.Of(planned) : planned;

    // What steps said before this line add at the right and the left edge; what the first row of a pattern is worked over has them already.
    private (int Right, int Left) Gains(int size, int row)
    {
        if (row == 1 && _behind[size] is null) return default;
        var (right, left) = _mirrored[size] is null ? (Hand.Right, Hand.Left) : (Hand.Left, Hand.Right);
        return (piece.Builders[size].GainAt(right, row), piece.Builders[size].GainAt(left, row));
    }

    private void Find(int size, StitchPattern? said, Stitch? stitch, Onward[] onward)
    {
        var builder = piece.Builders[size];
        var last = builder.RowsInDoubt ? null : builder.LastInPattern;
        var pattern = said ?? last?.Pattern;
        var edge = stitch ?? last?.Edge;
        if (pattern is null || edge is null)
        {
            if (!builder.RowsInDoubt && builder.Ahead is not null) context.Findings.Add(last is null ? PatternShape.NoPattern(statement.Span) : PatternShape.NoRule(statement.Span, last.Pattern));
            return;
        }

        if (pattern.IsRound || builder.InRounds)
        {
            context.Findings.Add(PatternShape.Rounds(statement.Span, pattern.Name));
            return;
        }

        var goesOn = last is not null && ReferenceEquals(last.Pattern, pattern);
        if (!goesOn && pattern.Rows[0].RightSide is { } side)
        {
            builder.BeginOnSide(side);
            if (side != builder.NextIsRightSide && !builder.RowsInDoubt) context.Findings.Add(PatternHere.OtherSide(context, statement.Span, piece, pattern, [size]));
        }

        _mirrored[size] = goesOn && last!.IsMirrored ? new MirroredRows(builder) : null;
        _behind[size] = goesOn ? last : null;
        _patterns[size] = new EdgedPattern(pattern, edge, context.Rules, builder.IsInStripes ? null : builder.GroundYarn);
        _states[size] = goesOn ? StateAfter(last!) : builder.AheadFor(pattern.Rows[0].Words) is { } ahead ? _patterns[size]!.Begin(ahead.Count) : null;
        if (_states[size] is null && builder.AheadFor(pattern.Rows[0].Words) is { } few) context.Findings.Add(PatternCount.At(context, statement.Span, piece, pattern, [size], _ => few.Count));
        if (_states[size] is { } state) onward[size] = new Onward(null, pattern, state.Next, 0);
    }

    // A pattern that went from edge to edge has edges of no stitches.
    private static EdgedState StateAfter(InPattern last) => last.Edge is not null
        ? last.State
        : new EdgedState(last.Next, (last.Places - last.Pattern.Plus) / last.Pattern.Multiple, 0, 0);
}
