using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Grading;
using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Values;

/// <summary>Looks at the numbers of the whole file for one that is out of line: a unit, a swatch.</summary>
internal static class OddNumbers
{
    private const int EnoughOthers = 3;

    public static void Add(Context context, SyntaxTree tree)
    {
        var lengths = new List<(UnitSyntax Unit, TextSpan Span)>();
        foreach (var line in tree.Lines)
        {
            if (line.Broken || line.Statement is null) continue;
            if (line.Statement is GaugeStatement gauge) Swatch(context, tree.Source, gauge);
            foreach (var part in WrittenNumbers.In(line.Statement))
            {
                if (part is NumberExpression { Unit: { } one }) lengths.Add((one, part.Span));
                if (part is SizesExpression { Unit: { } unit }) lengths.Add((unit, part.Span));
            }
        }

        // A length that can't be read may be the other one of its kind.
        if (!tree.Lines.Any(l => l.Broken)) Alone(context, lengths);
    }

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
}
