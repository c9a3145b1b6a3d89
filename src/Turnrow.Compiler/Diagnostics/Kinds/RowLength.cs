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
        PAGE
        """,
        """
        BAD
        """,
        """
        GOOD
        """);

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
