using Turnrow.Compiler.Diagnostics;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Grading;

/// <summary>
/// Holds what the designer says the finished garment measures against bodies, by the rules of fit. What she does not state is not
/// looked at, and where she states the ease of a measure, that goes before the custom.
/// </summary>
internal static class FitCheck
{
    private const string Oversized = "oversized";

    // Whole stitches and rows do not come out to the millimetre: half a centimetre is let pass.
    private static readonly Rational Slack = Rational.Of(1, 2) ?? Rational.Zero;

    public static void Add(Context context, SyntaxTree tree, IReadOnlyList<(FinishedStatement Line, FinishedMeasure Measure)> measured)
    {
        // A line that can't be read may say another body, another ease or another gauge.
        if (measured.Count == 0 || tree.Lines.Any(static l => l.Broken)) return;
        foreach (var (line, measure) in measured)
        {
            foreach (var rule in FitRules.All)
            {
                if (string.Equals(rule.Measure, measure.Name, StringComparison.OrdinalIgnoreCase)) Look(context, line, measure, rule);
            }
        }
    }

    private static void Look(Context context, FinishedStatement line, FinishedMeasure measure, FitRule rule)
    {
        if (rule.Passes ? measure.Opens : context.Eases.ContainsKey(measure.Name)) return;
        if (context.Scope.Use(rule.Body) is not { } body || !Array.TrueForAll(body.Values, static v => v is { IsLength: true })) return;
        if (Numbers(measure, body) is not { } numbers) return;
        var most = rule.Most is { } bound && !IsOversized(context) ? bound + Slack : null;
        var least = rule.Least - Slack;
        var small = Sized.Where(context.Sizes, i => numbers.Stretched[i] < least);
        var large = Sized.Where(context.Sizes, i => most is { } m && numbers.Differences[i] > m);
        if (small.Length > 0) context.Findings.Add(FitMessage.At(context, line, rule, numbers, small, true));
        if (large.Length > 0) context.Findings.Add(FitMessage.At(context, line, rule, numbers, large, false));
    }

    private static FitNumbers? Numbers(FinishedMeasure measure, Definition body)
    {
        var sizes = body.Values.Length;
        var (bodies, differences, stretched) = (new Rational[sizes], new Rational[sizes], new Rational[sizes]);
        for (var i = 0; i < sizes; i++)
        {
            bodies[i] = body.Values[i]!.Value.Number;
            if (measure.Centimetres[i] - bodies[i] is not { } difference || Give(measure, i) is not { } give || difference + give is not { } all) return null;
            (differences[i], stretched[i]) = (difference, all);
        }

        return new FitNumbers(measure, body, bodies, differences, stretched);
    }

    private static Rational? Give(FinishedMeasure measure, int size) =>
        measure.Stretch is not { } stretch ? Rational.Zero : measure.Centimetres[size] * stretch is { } hundredfold ? hundredfold / 100 : null;

    private static bool IsOversized(Context context)
    {
        foreach (var ease in context.Eases.Values)
        {
            if (ease.Fit == Oversized) return true;
        }

        return false;
    }
}

/// <summary>A finished measure beside the body, a size.</summary>
/// <param name="Measure">What is finished.</param>
/// <param name="Body">The body's measure.</param>
/// <param name="Bodies">The body, in centimetres.</param>
/// <param name="Differences">The garment less the body.</param>
/// <param name="Stretched">The same when the garment is stretched as far as it gives.</param>
internal sealed record FitNumbers(FinishedMeasure Measure, Definition Body, Rational[] Bodies, Rational[] Differences, Rational[] Stretched);
