using Turnrow.Compiler.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A repeat that does not come out.</summary>
public static class RepeatRemainder
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "repeat-remainder",
        "TR0303",
        Severity.Error,
        """
        PAGE
        """,
        """
        BAD
        """,
        """
        GOOD
        """);

    internal static Diagnostic At(Context context, TextSpan span, int[] sizes, Func<int, RowFailure> failureOf, string word, IReadOnlyList<string> ledger)
    {
        var findings = context.Findings;
        var first = failureOf(sizes[0]);
        var per = Math.Max(1, first.Fault.Needed);
        var places = first.Places - first.Fault.Before;
        var less = places - first.Fault.There;
        return new(Kind, span, $"the repeat does not come out{findings.InSizes(sizes)}")
        {
            Sizes = findings.Names(sizes),
            Ledger =
            [
                .. ledger,
                Invariant($"{places} stitches to work over{findings.InSize(sizes[0])}, {word} takes {per} each time: {less / per} times is {less}, left over {first.Fault.There}"),
                .. sizes.Length > 1 ? (string[])["left over: " + findings.Each(sizes, i => Invariant($"{failureOf(i).Fault.There}"))] : [],
            ],
            Help = Invariant($"{Math.Max(0, less)} or {less + per} would fit{findings.InSize(sizes[0])}; or work the rest plainly: repeat until {first.Fault.There} remain, then say what these are"),
        };
    }
}
