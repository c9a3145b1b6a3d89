using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Header;

/// <summary>Turns lengths into counts: the allowed count nearest to the exact length, in one step.</summary>
internal sealed class CountBinder(Context context)
{
    private const int LargestMultiple = 10_000;

    /// <summary>The counts, a size, and what they stand for if it is a length.</summary>
    public (int?[] Counts, FittedCount? Fitted) Bind(CountStatement statement)
    {
        var allowed = AllowedBy(statement);
        if (Array.TrueForAll(allowed, static a => a is null)) return (Sized.Same<int?>(context.Sizes, null), null);
        return statement.Of == CountOf.Number ? (PlainNumbers(statement, allowed), null) : OfLength(statement, allowed);
    }

    private int?[] PlainNumbers(CountStatement statement, Allowed?[] allowed)
    {
        var rounding = Rounding(statement);
        if (statement.Fixes.Count == 0) return context.Evaluate.Counts(statement.Value);
        var values = context.Evaluate.Of(statement.Value);
        if (Array.Exists(values, v => v is { IsLength: true })) return context.Evaluate.Counts(statement.Value);
        return Check(statement, Sized.Each(context.Sizes, i => values[i] is { } x && allowed[i] is { } a ? Fit(x.Number, a, rounding) : null));
    }

    private (int?[] Counts, FittedCount? Fitted) OfLength(CountStatement statement, Allowed?[] allowed)
    {
        var unknown = (Sized.Same<int?>(context.Sizes, null), (FittedCount?)null);
        var lengths = context.Evaluate.Lengths(statement.Value);
        if (GaugeOf(statement) is not { } gauge) return unknown;
        var rows = statement.Of == CountOf.Rows;
        var rounding = Rounding(statement);
        var counts = Check(statement, Sized.Each(context.Sizes, i =>
            lengths[i] is not { } cm || allowed[i] is not { } a ? null : (rows ? gauge.RowsFor(cm) : gauge.StitchesFor(cm)) is { } exact ? Fit(exact, a, rounding) : long.MaxValue));
        if (!Array.TrueForAll(counts, c => c is not null)) return (counts, null);
        var measured = counts.Select(c => rows ? gauge.HeightOf(c!.Value) : gauge.WidthOf(c!.Value));
        if (!Array.TrueForAll(measured, m => m is not null)) return (counts, null);
        if (statement.Within is { } within) CheckDistance(statement, gauge, allowed, within, lengths, counts, measured);
        return (counts, new FittedCount(
            statement.Name.Text, rows, gauge.Stitch, [.. lengths.Select(l => l!.Value)], [.. counts.Select(c => c!.Value)], [.. measured.Select(m => m!.Value)]));
    }

    // A count that has to be a multiple, or odd, can lie far from its length: then the counts beside it are named.
    private void CheckDistance(CountStatement statement, Gauge gauge, Allowed?[] allowed, ExpressionSyntax within, Rational?[] asked, int?[] counts, Rational?[] measured)
    {
        var most = context.Evaluate.Lengths(within);
        var far = Sized.Where(counts.Length, i => most[i] is { } m && measured[i]!.Value - asked[i]!.Value is { } off && off.Magnitude() > m);
        if (far.Length == 0) return;
        var rows = statement.Of == CountOf.Rows;
        Rational? Measure(long count) => rows ? gauge.HeightOf(count) : gauge.WidthOf(count);
        long? Free(int i) => (rows ? gauge.RowsFor(asked[i]!.Value) : gauge.StitchesFor(asked[i]!.Value)) is { } exact ? Allowed.Any.Nearest(exact) : null;
        context.Findings.Add(CountFar.At(context, statement, far, new CountDistance(asked, counts, measured, most, i => allowed[i]!.Value, Measure, Free)));
    }

    // Of a multiple of a stitch pattern that has a gauge, the stitches are those of the pattern.
    private Gauge? GaugeOf(CountStatement statement) =>
        statement.Stitch is null && PatternOf(statement) is { } pattern && context.Gauges.Of(pattern.Fabric) is { } gauge ? gauge : GaugeChoice.For(context, statement.Stitch, statement.Value.Span, (statement.OfWord ?? (SyntaxNode)statement.Value).Span, statement.Of == CountOf.Rows);

    private StitchPattern? PatternOf(CountStatement statement)
    {
        foreach (var fix in statement.Fixes)
        {
            if (fix is { Multiple: NameExpression { Name: var name } } && context.StitchPatterns.Find(name.Text) is { } pattern) return pattern;
        }

        return null;
    }

    private static CountFix? Rounding(CountStatement statement)
    {
        foreach (var fix in statement.Fixes)
        {
            if (fix.Fix is CountFix.RoundedUp or CountFix.RoundedDown) return fix.Fix;
        }

        return null;
    }

    private static long? Fit(Rational exact, Allowed allowed, CountFix? rounding)
    {
        return rounding switch
        {
            CountFix.RoundedDown => allowed.AtMost(exact),
            CountFix.RoundedUp => allowed.AtMost(exact) is var below && exact == below ? below : below + allowed.Every,
            _ => allowed.Nearest(exact),
        };
    }

    private int?[] Check(CountStatement statement, long?[] counts)
    {
        var small = Sized.Where(counts.Length, i => counts[i] is < 0);
        if (small.Length > 0) context.Findings.Add(TooSmall.At(statement.Value.Span, context.Findings, small, 0, i => counts[i]!.Value));
        var large = Sized.Where(counts.Length, i => counts[i] is > Evaluator.LargestCount);
        if (large.Length > 0) context.Findings.Add(TooLarge.At(statement.Value.Span, context.Findings, large, Evaluator.LargestCount));
        return counts.Select(c => c is >= 0 and <= Evaluator.LargestCount ? (int?)c.Value : null);
    }

    private Allowed?[] AllowedBy(CountStatement statement)
    {
        var allowed = Sized.Same<Allowed?>(context.Sizes, Allowed.Any);
        foreach (var fix in statement.Fixes)
        {
            var more = fix.Fix switch
            {
                CountFix.Odd => Sized.Same<Allowed?>(context.Sizes, Allowed.Odd),
                CountFix.Even => Sized.Same<Allowed?>(context.Sizes, Allowed.Even),
                CountFix.Multiple => MultipleOf(fix),
                _ => Sized.Same<Allowed?>(context.Sizes, Allowed.Any),
            };
            if (!Narrow(allowed, more, fix)) return Sized.Same<Allowed?>(context.Sizes, null);
        }

        return allowed;
    }

    // False, and reported for the first size that has it, where what is asked leaves no count.
    private bool Narrow(Allowed?[] allowed, Allowed?[] more, CountFixSyntax fix)
    {
        for (var i = 0; i < allowed.Length; i++)
        {
            if (allowed[i] is not { } before || more[i] is not { } asked)
            {
                allowed[i] = null;
            }
            else if (before.And(asked) is { } both)
            {
                allowed[i] = both;
            }
            else
            {
                context.Findings.Add(FixesConflict.At(fix.Span, before, fix.Fix));
                return false;
            }
        }

        return true;
    }

    // A stitch pattern says both what is repeated and what is beside it.
    private Allowed?[] MultipleOfPattern(CountFixSyntax fix, NameSyntax name)
    {
        if (fix.Plus is { } plus) context.Findings.Add(PatternPlus.At(plus.Span, name.Text));
        var pattern = context.StitchPatternOf(name);
        return Sized.Same<Allowed?>(context.Sizes, pattern is null ? null : Allowed.Multiple(pattern.Multiple, pattern.Plus));
    }

    private Allowed?[] MultipleOf(CountFixSyntax fix)
    {
        if (fix is { Multiple: NameExpression { Name: var name } } && (context.StitchPatterns.SpanOf(name.Text) is not null || (context.StitchPatterns.InDoubt && context.Scope.Find(name.Text) is null))) return MultipleOfPattern(fix, name);
        var multiples = fix.Multiple is null ? Sized.Same<int?>(context.Sizes, null) : context.Evaluate.Counts(fix.Multiple, 1);
        var more = fix.Plus is null ? Sized.Same<int?>(context.Sizes, 0) : context.Evaluate.Counts(fix.Plus);
        var large = Sized.Where(context.Sizes, i => multiples[i] is > LargestMultiple);
        if (large.Length > 0) context.Findings.Add(TooLarge.At(fix.Span, context.Findings, large, LargestMultiple));
        return Sized.Each<Allowed?>(context.Sizes, i => multiples[i] is { } multiple and <= LargestMultiple && more[i] is { } plus ? Allowed.Multiple(multiple, plus) : null);
    }
}
