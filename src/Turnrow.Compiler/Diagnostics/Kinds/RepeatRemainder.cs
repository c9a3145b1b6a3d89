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
        A repeat that goes across has to come out with nothing left over, and here it does not, at least in one size. The maker would end
        in the middle of a repeat, and the edges would not match. The message shows how many stitches are there, how many one time takes
        and what is left. Either change the number of stitches (for a count made of a length add `, multiple of 5`), or say what is worked
        with the rest: `(dc 4, inc) until 2 remain, dc 2`.
        """,
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 22 stitches
              row 1 RS: dc across
              row 2: (dc 4, inc) across
            """),
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 22 stitches
              row 1 RS: dc across
              row 2: (dc 4, inc) until 2 remain, dc 2
            """));

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
