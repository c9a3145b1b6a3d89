using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Grading;

/// <summary>Works out what the finished garment measures, and holds it against the body and the ease that was wanted.</summary>
internal sealed class FinishedBinder(Context context, PieceBook book)
{
    private readonly Dictionary<string, TextSpan> _said = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The measure in all sizes; null if it could not be worked out in one of them.</summary>
    public FinishedMeasure? Bind(FinishedStatement statement)
    {
        if (!_said.TryAdd(statement.Name.Text, statement.Name.Span))
        {
            context.Findings.Add(DefinedTwice.At(statement.Name.Span, statement.Name.Text, _said[statement.Name.Text]));
            return null;
        }

        var lengths = LengthsOf(statement);
        if (!Array.TrueForAll(lengths, l => l is not null)) return null;
        var (over, body) = BodyOf(statement);
        if (over is null && body is not null && context.Eases.TryGetValue(statement.Name.Text, out var ease)) Check(statement, ease, lengths, body);
        return new FinishedMeasure(statement.Name.Text, [.. lengths.Select(l => l!.Value)], body is null ? null : [.. body.Select(v => v!.Value.Number)])
        {
            Over = over,
            Along = FitRules.IsAlong(statement.Name.Text),
            InRows = statement.Of == CountOf.Rows,
            Opens = statement.Opens,
            Stretch = statement.Stretch is { } stretch ? Rational.Of(stretch.Numerator, stretch.Denominator) : null,
        };
    }

    // The body's measure of the same name; or what the garment passes over there.
    private (string? Over, Value?[]? Body) BodyOf(FinishedStatement statement)
    {
        if (Known(statement.Name.Text) is { } same) return (null, same);
        return FitRules.PassesOver(statement.Name.Text) is { } over && !statement.Opens && Known(over) is { } body ? (over, body) : (null, null);
    }

    private Value?[]? Known(string name) =>
        context.Scope.Use(name)?.Values is { } values && Array.TrueForAll(values, static v => v is { IsLength: true }) ? values : null;

    private void Check(FinishedStatement statement, Ease ease, Rational?[] lengths, Value?[] body)
    {
        var eases = new Rational?[context.Sizes];
        for (var i = 0; i < eases.Length; i++) eases[i] = lengths[i]!.Value - body[i]!.Value.Number;
        var least = Within(ease.Least, -1, ease.Fit);
        var most = Within(ease.Most, 1, ease.Fit);
        var wrong = Sized.Where(eases.Length, i => eases[i] is { } e && ((least[i] is { } l && e < l) || (most[i] is { } m && e > m)));
        if (wrong.Length > 0) context.Findings.Add(EaseOff.At(context, statement.Name.Span, wrong, ease, eases, body, lengths));
    }

    // A number is met when the fabric's counts come nearest to it: two stitches of the width either way.
    private Rational?[] Within(Rational?[] bounds, int sign, string? fit)
    {
        if (fit is not null || context.Gauges.Gauges.Count == 0) return bounds;
        var slack = context.Gauges.Gauges[0].WidthOf(2 * sign);
        return bounds.Select(b => b is { } bound && slack is { } s ? bound + s : b);
    }

    private Rational?[] LengthsOf(FinishedStatement statement)
    {
        if (statement.Of == CountOf.Number) return context.Evaluate.Lengths(statement.Value);
        var rows = statement.Of == CountOf.Rows;
        if (statement.Stitch is null && statement.Value is NameExpression { Name: var name } && IsNoCount(name))
            return OfPiece(name, rows);
        var counts = context.Evaluate.Of(WithPieces(statement.Value, rows ? PieceQuantity.Rows : PieceQuantity.Stitches));
        if (GaugeChoice.For(context, statement.Stitch, statement.Value.Span, statement.Value.Span, rows) is not { } gauge) return Sized.Same<Rational?>(context.Sizes, null);
        return counts.Select(c => c is { IsLength: false } n ? rows ? gauge.HeightOf(n.Number) : gauge.WidthOf(n.Number) : null);
    }

    // `2 x back stitches`: a name that is no count's may be a piece's.
    private ExpressionSyntax WithPieces(ExpressionSyntax value, PieceQuantity quantity) => value switch
    {
        NameExpression { Name: var name } when IsNoCount(name) && book.Find(name.Text) is not null => new PieceExpression(name, quantity, value.Span),
        CalculationExpression sum => sum with
        {
            First = WithPieces(sum.First, quantity),
            Rest = [.. sum.Rest.Select(operation => operation with { Operand = WithPieces(operation.Operand, quantity) })],
        },
        _ => value,
    };

    // A body's measure is a length: a piece may be called as it is, a `head`.
    private bool IsNoCount(NameSyntax name) => context.Scope.Find(name.Text) is null || (context.Scope.Find(name.Text) is { OfBody: true } && book.Find(name.Text) is not null);

    // A piece as it is: its rows by the gauge of each, its last row's width.
    private Rational?[] OfPiece(NameSyntax name, bool rows)
    {
        var lengths = new Rational?[context.Sizes];
        if (book.Bind(name) is not { } piece) return lengths;
        for (var i = 0; i < lengths.Length; i++)
        {
            var builder = piece.Builders[i];
            if (builder.RowsInDoubt || builder.RowCount == 0) continue;
            lengths[i] = rows ? context.Gauges.HeightOf(builder.Rows) : context.Gauges.WidthOf(builder.Rows[^1]);
            if (lengths[i] is not null || WithoutGauge(rows ? builder.Rows : [builder.Rows[^1]], rows) is not { } stitch) continue;
            // The same stitch in every size: it is told once.
            if (!context.GaugesInDoubt) context.Findings.Add(GaugeMissing.Finished(name.Span, piece.Name, context.Word(stitch)));
            break;
        }

        return lengths;
    }

    private Stitch? WithoutGauge(IReadOnlyList<Row> rows, bool high)
    {
        foreach (var (stitch, _) in high ? GaugeBook.FabricsOf(rows) : GaugeBook.WidthFabricsOf(rows))
        {
            if (context.Gauges.Of(stitch) is null) return stitch;
        }

        return null;
    }
}
