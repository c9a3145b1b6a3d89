using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>
/// How high a piece is so far, along the edge that a line names. Short rows don't reach an edge: where the edges have different heights, one has
/// to be named.
/// </summary>
internal sealed class HeightsSoFar(Context context, PieceState piece, RowExtentSyntax extent)
{
    private readonly Hand[]? _hands = extent.At is { } at ? EdgeBinder.Bind(context, piece, at) : [Hand.Right, Hand.Left];
    private readonly Dictionary<int, (Rational Right, Rational Left)> _apart = [];

    /// <summary>The height in a size, without the first so many rows; null if it is not known, or not one.</summary>
    public Rational? Of(int size, int since)
    {
        if (_hands is null) return null;
        var rows = piece.Builders[size].Rows;
        if (!rows.Any(static row => !row.Short.IsNone)) return context.Gauges.HeightOf(rows, since);
        if (Along(_hands[0], rows, since) is not { } first) return null;
        if (_hands.Length == 1) return first;
        if (Along(_hands[1], rows, since) is not { } second) return null;
        if (first == second) return first;
        _apart[size] = (first, second);
        return null;
    }

    /// <summary>Reports the sizes in which the edges differ.</summary>
    public void Report()
    {
        if (_apart.Count > 0) context.Findings.Add(EdgeHeights.At(context, extent.Amount.Span, [.. _apart.Keys], i => _apart[i].Right, i => _apart[i].Left));
    }

    private Rational? Along(Hand hand, IReadOnlyList<Row> rows, int since) =>
        context.Gauges.HeightOf([.. rows.Skip(since).Where(row => row.Reaches(hand))]);
}
