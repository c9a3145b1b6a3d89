using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Solids;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Joins;

/// <summary>Checks <c>expect</c> lines: measurements and relations.</summary>
internal sealed class ExpectBinder(Context context, PieceBook book)
{
    /// <summary>Values of <c>back rows</c> and <c>back stitches</c>; a count may be followed by its word too (<c>hem stitches</c>).</summary>
    public Value?[] ValuesOf(PieceExpression expression)
    {
        if (book.Find(expression.Piece.Text) is null && context.Scope.Find(expression.Piece.Text) is { } count) return count.Values;
        var values = new Value?[context.Sizes];
        if (book.Bind(expression.Piece) is not { } piece) return values;
        for (var i = 0; i < values.Length; i++)
        {
            var builder = piece.Builders[i];
            if (expression.Side is { } side)
            {
                values[i] = Side(side, expression, piece, i);
                continue;
            }

            if (expression.Quantity == PieceQuantity.Rows && !builder.RowsInDoubt) values[i] = new Value(builder.RowCount, false);
            else if (expression.Quantity == PieceQuantity.Stitches && builder.LastWork is { } work) values[i] = new Value(work.Stitches, false);
        }

        return values;
    }

    // The stitches of a motif's side, those of its corners included; rows it has none.
    private Value? Side(NameSyntax word, PieceExpression expression, PieceState piece, int size)
    {
        var made = piece.Finished[size];
        if (piece.EdgesInDoubt || made.Top is null || made.CornersInDoubt || expression.Quantity == PieceQuantity.Rows) return null;
        if (MotifSides.IndexOf(word.Text) is >= 0 and var nth && MotifSides.Of(made, nth) is { } side)
            return new Value(MotifSides.PlacesOf(made, side.Stretches[0]).CountWhere(static p => p.IsStitch), false);
        context.Findings.Add(SideUnknown.At(context, word.Span, [size], made, piece.Name));
        return null;
    }

    /// <summary><c>expect hem stitches measure bust / 2 + 2 cm, within 1 cm</c></summary>
    public void Check(ExpectMeasureStatement statement)
    {
        var counts = context.Evaluate.Of(statement.Count);
        var asked = context.Evaluate.Lengths(statement.Length);
        var within = statement.Within is { } w ? context.Evaluate.Lengths(w) : Sized.Same<Rational?>(context.Sizes, Rational.Zero);
        if (GaugeOf(statement) is not { } gauge) return;
        var measured = counts.Select(c => c is { IsLength: false } n ? statement.OfRows ? gauge.HeightOf(n.Number) : gauge.WidthOf(n.Number) : null);
        var large = Sized.Where(context.Sizes, i => counts[i] is { IsLength: false } && measured[i] is null);
        if (large.Length > 0) context.Findings.Add(TooLarge.At(statement.Count.Span, context.Findings, large, Evaluator.LargestCount));
        var off = new Rational?[context.Sizes];
        for (var i = 0; i < off.Length; i++) off[i] = measured[i] is { } m && asked[i] is { } a ? m - a : null;
        var wrong = Sized.Where(context.Sizes, i => off[i] is { } d && within[i] is { } most && !Holds(statement.Bound, d, most));
        if (wrong.Length > 0) context.Findings.Add(ExpectMeasure.At(context, statement, wrong, i => counts[i]!.Value.Number, measured, asked, within));
    }

    /// <summary><c>expect back rows are right-front rows</c></summary>
    public void Check(ExpectEqualStatement statement)
    {
        var left = context.Evaluate.Of(statement.Left);
        var right = context.Evaluate.Of(statement.Right);
        var wrong = Sized.Where(context.Sizes, i => left[i] is { } a && right[i] is { } b && !Holds(statement.Bound, a, b));
        if (wrong.Length > 0) context.Findings.Add(ExpectEqual.At(context, statement, wrong, left, right));
    }

    /// <summary><c>expect crown lies flat in rounds 1 to 6</c></summary>
    public void Check(ExpectLieStatement statement)
    {
        if (book.Bind(statement.Piece) is not { } piece) return;
        var from = statement.From is { } first ? context.Evaluate.Counts(first, 1) : Sized.Same<int?>(context.Sizes, 1);
        var to = statement.To is { } last ? context.Evaluate.Counts(last, 1) : piece.Builders.Select(static b => (int?)b.RowCount);
        var grows = new RoundGrowth?[context.Sizes];
        var known = Sized.Where(context.Sizes, i => from[i] is not null && to[i] is not null && !piece.Builders[i].RowsInDoubt && piece.Builders[i].RowCount > 0);
        var outside = Array.FindAll(known, i => from[i] > to[i] || to[i] > piece.Builders[i].RowCount);
        if (outside.Length > 0) context.Findings.Add(ExpectRounds.At(context, statement, outside, i => (from[i]!.Value, to[i]!.Value), i => piece.Builders[i].RowCount));
        foreach (var i in known)
        {
            if (!Array.Exists(outside, each => each == i) && !piece.Finished[i].CornersInDoubt) grows[i] = Growth(statement, piece.Builders[i].Rows, from[i]!.Value, to[i]!.Value);
        }

        var wrong = Sized.Where(context.Sizes, i => grows[i] is { } g && Lies(g) != statement.Lie);
        if (wrong.Length > 0) context.Findings.Add(ExpectLie.At(context, statement, wrong, i => grows[i]!));
    }

    private RoundGrowth? Growth(ExpectLieStatement statement, IReadOnlyList<Row> rows, int from, int to)
    {
        if (RoundGrowth.WithoutGauge(rows, from, to, context.Gauges) is not { } stitch) return RoundGrowth.Of(rows, from, to, context.Gauges);
        if (!context.GaugesInDoubt) context.Findings.Add(GaugeMissing.At(statement.Piece.Span, context.Word(stitch)));
        return null;
    }

    private static Lie Lies(RoundGrowth grows) => grows.IsFlat ? Lie.Flat : grows.Stitches < grows.Needed ? Lie.Cup : Lie.Ruffle;

    private static bool Holds(Bound bound, Rational off, Rational within) => bound switch
    {
        Bound.AtLeast => off >= Rational.Zero,
        Bound.AtMost => off <= Rational.Zero,
        _ => off.Magnitude() <= within,
    };

    // A number and a length are never the one at least or at most the other.
    private static bool Holds(Bound bound, Value a, Value b) => a.IsLength == b.IsLength && bound switch
    {
        Bound.AtLeast => a.Number >= b.Number,
        Bound.AtMost => a.Number <= b.Number,
        _ => a.Number == b.Number,
    };

    private Gauge? GaugeOf(ExpectMeasureStatement statement) =>
        GaugeChoice.For(context, statement.Stitch, statement.Length.Span, (statement.OfWord ?? (SyntaxNode)statement.Count).Span, statement.OfRows);
}
