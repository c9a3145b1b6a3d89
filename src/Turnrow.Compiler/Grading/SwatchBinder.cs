using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Grading;

/// <summary>Reads <c>swatch</c> lines: what a stitch of a yarn weighs, or a repeat of a stitch pattern.</summary>
internal sealed class SwatchBinder(Context context, IReadOnlyList<Yarn> yarns)
{
    private readonly Dictionary<(Stitch Stitch, string Yarn), TextSpan> _seen = [];

    public Swatch? Bind(SwatchStatement statement)
    {
        if (context.FabricOf(statement.Stitch) is not { } stitch) return null;
        if (statement.Yarn is { } named && !yarns.Any(y => y.Name == named.Text))
        {
            context.Findings.Add(SwatchYarn.At(named.Span, named.Text, [.. yarns.Select(y => y.Name)]));
            return null;
        }

        var yarn = statement.Yarn?.Text ?? (yarns.Count > 0 ? yarns[0].Name : string.Empty);
        if (!_seen.TryAdd((stitch, yarn), statement.Stitch.Span))
        {
            context.Findings.Add(DefinedTwice.Swatch(statement.Stitch.Span, statement.Stitch.Text, _seen[(stitch, yarn)]));
            return null;
        }

        return Weighed(statement, stitch, context.StitchPatterns.Find(statement.Stitch.Text));
    }

    private Swatch? Weighed(SwatchStatement statement, Stitch stitch, StitchPattern? pattern)
    {
        if (statement.OfRepeats && pattern is null)
        {
            context.Findings.Add(GaugeRepeats.Swatch(statement.Stitch.Span, statement.Stitch.Text));
            return null;
        }

        if (statement.Stitches.Numerator > 0 && statement.Rows.Numerator > 0 && statement.Weight.Numerator > 0
            && Of(statement.Stitches) is { } counted && counted * (statement.OfRepeats ? pattern!.Multiple : 1) is { } stitches && Of(statement.Rows) is { } rows && Grams(statement) is { } grams)
            return new Swatch(stitch, stitches, rows, grams, statement.Yarn?.Text);
        context.Findings.Add(SwatchZero.At(statement.Span));
        return null;
    }

    // An ounce is 28.349523125 g by definition.
    private static Rational? Grams(SwatchStatement statement) =>
        Of(statement.Weight) is { } weight ? statement.InOunces ? Rational.Of(45359237, 1600000) is { } ounce ? weight * ounce : null : weight : null;

    private static Rational? Of(NumberSyntax number) => Rational.Of(number.Numerator, number.Denominator);
}
