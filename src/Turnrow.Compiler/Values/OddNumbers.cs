using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Values;

/// <summary>Looks at the numbers of the whole file for one that is out of line: a unit, a swatch, a size.</summary>
internal static class OddNumbers
{
    private const int EnoughOthers = 3;
    private const int EnoughSteps = 2;

    public static void Add(Context context, SyntaxTree tree)
    {
        var lengths = new List<(UnitSyntax Unit, TextSpan Span)>();
        foreach (var line in tree.Lines)
        {
            if (line.Broken || line.Statement is null) continue;
            if (line.Statement is GaugeStatement gauge) Swatch(context, tree.Source, gauge);
            foreach (var expression in Values(line.Statement))
            {
                foreach (var part in ExpressionParts.Of(expression))
                {
                    if (part is SizesExpression list && line.Statement is not (MeasureStatement or CountStatement or ForSizesStatement)) Dip(context, list);
                    if (part is NumberExpression { Unit: { } one }) lengths.Add((one, part.Span));
                    if (part is SizesExpression { Unit: { } unit }) lengths.Add((unit, part.Span));
                }
            }
        }

        // A length that can't be read may be the other one of its kind.
        if (!tree.Lines.Any(l => l.Broken)) Alone(context, lengths);
    }

    // What has a name is looked at whole, as it comes out (GradeCheck); here are the lists that stand in other lines.
    // Where a designer writes numbers of the body and of the piece. Claims and schedules follow from others and may go up and down.
    private static ExpressionSyntax[] Values(StatementSyntax statement) => statement switch
    {
        MeasureStatement measure => [measure.Value],
        CountStatement count => [count.Value],
        BeginStatement begin => [begin.Stitches],
        ChainStatement chain => [chain.Chains],
        StraightStatement straight => [straight.Amount],
        LeaveStatement leave => [leave.Count],
        AddStatement add => [add.Count],
        ShapeStatement { Rows: { } rows } => [rows.Amount],
        ForSizesStatement some => Values(some.Done),
        PieceStatement { Origin: PartOriginSyntax part } => [part.Stitches],
        ExpectMeasureStatement expect => [expect.Length],
        _ => [],
    };

    private static void Alone(Context context, List<(UnitSyntax Unit, TextSpan Span)> lengths)
    {
        var inches = lengths.FindAll(l => Units.IsImperial(l.Unit.Unit));
        var others = lengths.FindAll(l => !Units.IsImperial(l.Unit.Unit));
        if (inches.Count == 1 && others.Count >= EnoughOthers) context.Findings.Add(UnitAlone.At(inches[0].Span, "inches", "centimetres"));
        if (others.Count == 1 && inches.Count >= EnoughOthers) context.Findings.Add(UnitAlone.At(others[0].Span, "centimetres", "inches"));
    }

    private static void Swatch(Context context, SourceText source, GaugeStatement gauge)
    {
        foreach (var span in new[] { gauge.Stitches, gauge.Rows })
        {
            var whole = span.Length.Denominator == 1 ? span.Length.Numerator : 0;
            var odd = (span.Unit.Unit, whole) is (LengthUnit.Inch, 10) or (LengthUnit.Centimetre, 4)
                || (Rational.Of(span.Length.Numerator, span.Length.Denominator) is { } length && length * Units.Centimetres(span.Unit.Unit) < Units.Centimetres(LengthUnit.Inch));
            if (odd && span.Length.Numerator > 0) context.Findings.Add(GaugeSpan.At(span.Length.Span.To(span.Unit.Span), source.ToString(span.Length.Span.To(span.Unit.Span))));
        }
    }

    private static void Dip(Context context, SizesExpression list)
    {
        if (list.Values.Count != context.Sizes) return;
        var (ups, downs) = (new List<int>(), new List<int>());
        for (var i = 1; i < list.Values.Count; i++)
        {
            var (a, b) = (list.Values[i - 1], list.Values[i]);
            var step = ((Int128)b.Numerator * a.Denominator) - ((Int128)a.Numerator * b.Denominator);
            if (step > 0) ups.Add(i);
            if (step < 0) downs.Add(i);
        }

        if (ups.Count >= EnoughSteps && downs.Count == 1) context.Findings.Add(SizesDip.At(context.Findings, list.Values[downs[0]].Span, downs[0], true));
        if (downs.Count >= EnoughSteps && ups.Count == 1) context.Findings.Add(SizesDip.At(context.Findings, list.Values[ups[0]].Span, ups[0], false));
    }
}
