using Turnrow.Compiler.Pieces;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A row that uses more places than there are, or fewer.</summary>
public static class RowLength
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "row-length",
        "TR0302",
        Severity.Error,
        """
        A row has to use up exactly the stitches of the row below: this one wants more than there are, or leaves some over. On the hook
        you would notice at its end, and rip back. If stitches are left over, work them (`dc across` always comes out), or say that they
        stay unworked: `leave 2`, `leave the rest`. If there are too few, work fewer, or look further up: a row above may have lost some.

        Tip: `until 4 remain` keeps a border of 4 in every size, whatever the row's length.
        """,
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dc 18
            """),
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dc 20
            """));

    internal static Diagnostic At(Context context, TextSpan span, PieceState piece, int[] sizes, Func<int, RowFailure> failureOf, string word, IReadOnlyList<string> ledger)
    {
        var findings = context.Findings;
        var first = failureOf(sizes[0]);
        var left = first.Fault.Kind == RowFaultKind.LeftOver;
        var message = left
            ? Invariant($"{Places(first.Fault.There)} left at the end of row {first.Row} of {piece.Name}{findings.InSize(sizes[0])}")
            : Invariant($"`{word}` needs {Places(first.Fault.Needed)}, and {first.Fault.There} {(first.Fault.There == 1 ? "is" : "are")} there{findings.InSize(sizes[0])} in row {first.Row} of {piece.Name}");
        return new(Kind, span, message)
        {
            Sizes = findings.Names(sizes),
            Ledger = sizes.Length > 1
                ? [.. ledger, (left ? "left over: " : "there: ") + findings.Each(sizes, i => Invariant($"{failureOf(i).Fault.There}"))]
                : ledger,
            Help = left ? "work them (`dc across`), skip them, or say `leave the rest`" : "work fewer, or look at the rows above: one of them may make too few",
        };
    }

    private static string Places(int count)
    {
        return count == 1 ? "1 stitch" : Invariant($"{count} stitches");
    }
}
