using Turnrow.Compiler.Grading;
using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics;

/// <summary>Makes the warnings of fit, which differ in their rule and not in their form.</summary>
internal static class FitMessage
{
    internal static Diagnostic At(Context context, FinishedStatement line, FitRule rule, FitNumbers numbers, int[] sizes, bool small)
    {
        var (first, findings, finished) = (sizes[0], context.Findings, numbers.Measure.Centimetres);
        var fault = small ? rule.Less : rule.More;
        var off = small ? numbers.Stretched : numbers.Differences;
        var stretched = small && numbers.Measure.Stretch is { } stretch ? $" and stretches by {stretch.ToTenths()} %" : string.Empty;
        var all = Enumerable.Range(0, finished.Count).ToArray();
        return new Diagnostic(rule.Kind, line.Name.Span, $"the finished {rule.Measure} is {context.Length(finished[first])}{findings.InSize(first)}{stretched}, {context.Length(off[first].Magnitude())} {fault.Word} than the {rule.Body} of {context.Length(numbers.Bodies[first])}: {fault.Trouble}")
        {
            Sizes = findings.Names(sizes),
            Ledger =
            [
                $"finished:   {findings.Each(all, i => context.Length(finished[i]))}",
                $"{rule.Body}: {findings.Each(all, i => context.Length(numbers.Bodies[i]))}; by {(numbers.Body.Source is { Length: > 0 } source ? source : "your own measure")}",
                $"difference: {findings.Each(all, i => Signed(context, numbers.Differences[i]))}",
                .. stretched.Length > 0 ? [$"stretched:  {findings.Each(all, i => Signed(context, numbers.Stretched[i]))}"] : Array.Empty<string>(),
                $"the rule:   {rule.Says} ({rule.Source})",
            ],
            Help = $"{rule.Mend}; or accept it with the reason, accept {rule.Kind.Name}: \"…\"",
        };
    }

    private static string Signed(Context context, Rational length) => length > Rational.Zero ? $"+{context.Length(length)}" : context.Length(length);
}
