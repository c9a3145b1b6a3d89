using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Grading;

/// <summary>
/// Looks at the designer's own numbers from size to size: one that falls while the sizes grow, or a step far out of line with the steps
/// beside it, is mostly a slip of a digit.
/// </summary>
internal static class GradeCheck
{
    // A step counts as out of line from three times the larger of its neighbours on; common practice, no source.
    private const int OutOfStep = 3;
    private const int SmallestStep = 4;

    public static void Add(Context context, SyntaxTree tree)
    {
        if (context.Sizes < 2) return;
        foreach (var line in tree.Lines)
        {
            if (line.Broken) continue;
            if (line.Statement is MeasureStatement measure) Look(context, measure.Name);
            else if (line.Statement is CountStatement count) Look(context, count.Name);
        }
    }

    private static void Look(Context context, NameSyntax name)
    {
        if (context.Scope.Find(name.Text) is not { } definition || definition.Span != name.Span) return;
        if (Array.Exists(definition.Values, v => v is null)) return;
        var values = definition.Values.Select(v => v!.Value);
        if (FirstFall(values) is > 0 and var fall) context.Findings.Add(GradeFalls.At(context, name, values, fall));
        else if (FirstJump(values) is > 0 and var jump) context.Findings.Add(GradeJumps.At(context, name, values, jump));
    }

    private static int FirstFall(Value[] values)
    {
        for (var i = 1; i < values.Length; i++)
        {
            if (values[i].Number < values[i - 1].Number) return i;
        }

        return 0;
    }

    private static int FirstJump(Value[] values)
    {
        for (var i = 1; i < values.Length && values.Length > 3; i++)
        {
            if (Step(values, i) is not { } step || step < SmallestStep) continue;
            var beside = Larger(i > 1 ? Step(values, i - 1) : null, i + 1 < values.Length ? Step(values, i + 1) : null);
            if (beside is { } b && Larger(b, Rational.One) * OutOfStep is { } most && step > most) return i;
        }

        return 0;
    }

    private static Rational? Step(Value[] values, int at) => values[at].Number - values[at - 1].Number;

    private static Rational? Larger(Rational? a, Rational? b) => a is null || (b is not null && b > a) ? b : a;

    private static Rational Larger(Rational a, Rational b) => a > b ? a : b;
}
