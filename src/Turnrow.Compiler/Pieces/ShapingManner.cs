using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>How increases and decreases at an edge are worked, in one size.</summary>
/// <param name="StitchesIn">How many stitches from the edge; null if unsaid.</param>
/// <param name="Way">How decreases are worked.</param>
internal readonly record struct ShapingManner(int? StitchesIn, Decreasing Way)
{
    /// <summary>What is done at an edge in one row for so many increases (above 0) or decreases (below).</summary>
    public EdgeWork Of(int change)
    {
        if (change > 0) return new EdgeWork(new EdgeChange(change, StitchesIn ?? 0), null);
        return Way switch
        {
            Decreasing.SlippingOver => new EdgeWork(default, new EdgeStep(false, -change)),
            Decreasing.Skipping => new EdgeWork(new EdgeChange(change, StitchesIn ?? 1) { Skips = true }, null),
            _ => new EdgeWork(new EdgeChange(change, StitchesIn ?? 0), null),
        };
    }
}

/// <summary>Chains added or stitches left at an edge before a row.</summary>
internal readonly record struct EdgeStep(bool Adds, int Count)
{
    /// <summary>True if the stitches left wait for a later row.</summary>
    public bool ForLater { get; init; }
}

/// <summary>What is done at an edge in one row: a change in it, or a step before it.</summary>
internal readonly record struct EdgeWork(EdgeChange Change, EdgeStep? Step);

/// <summary><c>shape 1 stitch in</c>, <c>shape by skipping</c>; and what a line of shaping says of its own, which goes before that.</summary>
internal static class MannerBinding
{
    /// <summary>Says how the edges of a piece are shaped from here on.</summary>
    public static void Bind(Context context, PieceState piece, ShapeMannerStatement statement)
    {
        Begun.Check(context, piece, statement.Span);
        var within = WithinOf(context, statement.StitchesIn);
        for (var i = 0; i < context.Sizes; i++)
        {
            if (context.Here.Has(i)) piece.Manners[i] = new ShapingManner(within?[i], statement.Decreasing?.Way ?? Decreasing.Together);
        }

        Check(context, statement.Decreasing, statement.StitchesIn?.Span, within, false);
    }

    /// <summary>How a line of shaping is worked, a size.</summary>
    public static ShapingManner[] Of(Context context, PieceState piece, ExpressionSyntax? stitchesIn, DecreasingSyntax? decreasing)
    {
        var within = WithinOf(context, stitchesIn);
        var manners = new ShapingManner[context.Sizes];
        for (var i = 0; i < manners.Length; i++)
        {
            var piecewise = piece.Manners[i];
            // Slip stitches lie at the very edge: a decrease further in is another way.
            var way = decreasing?.Way ?? (stitchesIn is not null && piecewise.Way == Decreasing.SlippingOver ? Decreasing.Together : piecewise.Way);
            if (way == Decreasing.Skipping && within?[i] == 0 && decreasing is null) way = Decreasing.Together;
            manners[i] = new ShapingManner(stitchesIn is null ? InFor(piecewise, way) : within![i] ?? piecewise.StitchesIn, way);
        }

        Check(context, decreasing, stitchesIn?.Span, within, true);
        return manners;
    }

    // One stitch stands before the one that is skipped, also where the piece else shapes in its first stitch.
    private static int? InFor(ShapingManner piecewise, Decreasing way) =>
        way == Decreasing.Skipping && piecewise.StitchesIn == 0 ? null : piecewise.StitchesIn;

    private static int?[]? WithinOf(Context context, ExpressionSyntax? stitchesIn) =>
        stitchesIn is null ? null : context.Evaluate.Counts(stitchesIn);

    private static void Check(Context context, DecreasingSyntax? decreasing, TextSpan? inside, int?[]? within, bool ofLine)
    {
        if (decreasing is null || within is null || inside is not { } span) return;
        if (decreasing.Way == Decreasing.Skipping && Array.IndexOf(within, 0) >= 0) context.Findings.Add(ShapeManner.Skipping(span));
        if (decreasing.Way == Decreasing.SlippingOver && ofLine && Array.Exists(within, n => n > 0)) context.Findings.Add(ShapeManner.SlippingOver(span));
    }
}
