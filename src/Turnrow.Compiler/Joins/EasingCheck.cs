using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Joins;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Joins;

/// <summary>Measures both edges of a seam that says by how much the first is the longer, and checks that it is.</summary>
internal sealed class EasingCheck(Context context)
{
    /// <summary>Adds the lengths to the seams.</summary>
    public void Measure(SeamStatement statement, EasingSyntax easing, Seam?[] seams)
    {
        var least = context.Evaluate.Lengths(easing.Least);
        var most = context.Evaluate.Lengths(easing.Most);
        if (HasGauges(statement, seams)) AddLengths(seams);
        var wrong = Sized.Where(seams.Length, i => seams[i]?.Lengths is { } lengths && lengths.First - lengths.Second is { } ease
            && ((least[i] is { } l && ease < l) || (most[i] is { } m && ease > m)));
        if (wrong.Length > 0) context.Findings.Add(SeamEasing.At(context, statement, easing, wrong, i => seams[i]!.Lengths!, least, most));
    }

    private bool HasGauges(SeamStatement statement, Seam?[] seams)
    {
        foreach (var seam in seams)
        {
            if (seam is null) continue;
            if (EdgeLength.WithoutGauge([.. seam.WholeFirst, .. seam.WholeSecond], context.Gauges) is not { } stitch) continue;
            if (!context.GaugesInDoubt) context.Findings.Add(GaugeMissing.At(statement.Easing!.Span, context.Word(stitch)));
            return false;
        }

        return true;
    }

    private void AddLengths(Seam?[] seams)
    {
        for (var i = 0; i < seams.Length; i++)
        {
            if (seams[i] is not { } seam) continue;
            if (EdgeLength.Of(seam.WholeFirst, context.Gauges) is { } first && EdgeLength.Of(seam.WholeSecond, context.Gauges) is { } second)
                seams[i] = seam with { Lengths = new SeamLengths(first, second) };
        }
    }
}
