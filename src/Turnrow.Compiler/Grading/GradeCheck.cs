using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Grading;

/// <summary>
/// Looks at the designer's own numbers from size to size: one that falls while the sizes grow, or a step far out of line with all
/// others, is mostly a slip of a digit.
/// </summary>
internal static class GradeCheck
{
    // A step counts as out of line when it is more than three times those beside it and more than twice all others, so that a list that
    // goes by whole pairs of rows has none; common practice, no source.
    private const int OutOfStep = 3;
    private const int OutOfAll = 2;
    private const int SmallestStep = 4;
    private const int EnoughSizes = 4;
    private const int EnoughSteps = 2;

    public static void Add(Context context, SyntaxTree tree)
    {
        if (context.Sizes < 2) return;
        foreach (var line in tree.Lines)
        {
            if (!line.Broken && line.Statement is { } statement) Look(context, statement);
        }
    }

    // What has a name is looked at whole for a fall, as it comes out: a list in it may be taken away from something. A jump is a slip
    // of the hand and so is looked for where numbers are written; rounding to whole multiples makes steps that are none.
    private static void Look(Context context, StatementSyntax statement)
    {
        if (NumbersOverSizes.Of(statement, context.Scope) is { } whole && FirstFall(whole) is > 0 and var fall)
        {
            context.Findings.Add(GradeFalls.At(context, whole, fall));
            return;
        }

        foreach (var list in NumbersOverSizes.WrittenIn(statement, context.Sizes))
        {
            if (list.Name is null && OnlyOtherWay(list) is { } dip) context.Findings.Add(SizesDip.At(context.Findings, list.SpanOf(dip.Size), dip.Size, dip.Grows));
            else if (FirstJump(list) is > 0 and var jump) context.Findings.Add(GradeJumps.At(context, list, jump));
        }
    }

    private static int FirstFall(NumbersOverSizes numbers)
    {
        for (var i = 1; i < numbers.Values.Length; i++)
        {
            if (numbers.Step(i) < Rational.Zero) return i;
        }

        return 0;
    }

    // A list that is written in passing may grow or fall; what goes the other way once is out of line.
    private static (int Size, bool Grows)? OnlyOtherWay(NumbersOverSizes numbers)
    {
        var (ups, downs) = (new List<int>(), new List<int>());
        for (var i = 1; i < numbers.Values.Length; i++)
        {
            if (numbers.Step(i) > Rational.Zero) ups.Add(i);
            if (numbers.Step(i) < Rational.Zero) downs.Add(i);
        }

        if (ups.Count >= EnoughSteps && downs.Count == 1) return (downs[0], true);
        return downs.Count >= EnoughSteps && ups.Count == 1 ? (ups[0], false) : null;
    }

    private static int FirstJump(NumbersOverSizes numbers)
    {
        if (numbers.Values.Length < EnoughSizes) return 0;
        var steps = new Rational[numbers.Values.Length + 1];
        for (var i = 1; i < numbers.Values.Length; i++)
        {
            if (numbers.Step(i)?.Magnitude() is not { } step) return 0;
            steps[i] = step;
        }

        for (var i = 1; i < numbers.Values.Length; i++)
        {
            if (steps[i] >= SmallestStep && IsPast(steps[i], OutOfStep, Larger(steps[i - 1], steps[i + 1])) && IsPastOthers(steps, i)) return i;
        }

        return 0;
    }

    private static bool IsPastOthers(Rational[] steps, int at)
    {
        for (var i = 0; i < steps.Length; i++)
        {
            if (i != at && !IsPast(steps[at], OutOfAll, steps[i])) return false;
        }

        return true;
    }

    private static bool IsPast(Rational step, int times, Rational other) => Larger(other, Rational.One) * times < step;

    private static Rational Larger(Rational a, Rational b) => a > b ? a : b;
}
