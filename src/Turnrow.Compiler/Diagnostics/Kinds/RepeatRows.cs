using Turnrow.Compiler.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Tree;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A repeat of rows that are not there.</summary>
public static class RepeatRows
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "repeat-rows",
        "TR0318",
        Severity.Error,
        """
        Only rows that are there already can be repeated, and they are named by their numbers in this piece, the lower one first. Here
        rows are named that come later or that no line makes. Look at the numbers; if a `straight` line comes before, its rows are counted
        too.
        """,
        SmallPattern.With("Scarf",
            """
            piece scarf
              begin with 24 stitches
              row 1 RS: dc across
              row 2: sc across
              repeat rows 2 to 3, 5 more times
            """),
        SmallPattern.With("Scarf",
            """
            piece scarf
              begin with 24 stitches
              row 1 RS: dc across
              row 2: sc across
              repeat rows 1 to 2, 5 more times
            """));

    internal static Diagnostic At(Context context, RepeatedRowsSyntax rows, PieceState piece, int[] sizes, int?[] first, int?[] last)
    {
        var size = sizes[0];
        var (from, to) = (first[size]!.Value, last[size]!.Value);
        var inSize = context.Findings.InSize(size);
        var so = $"{piece.Name} has only {RowName.Counted(piece, size)} so far";
        var message = rows.AreLast ? Invariant($"the last {to - from + 1} can't be repeated{inSize}: {so}")
            : from > to ? Invariant($"{RowName.OfSpan(piece, size, from, to)} run backwards{inSize}")
            : Invariant($"{RowName.OfSpan(piece, size, from, to)} can't be repeated{inSize}: {so}");
        return new(Kind, rows.Span, message)
        {
            Sizes = context.Findings.Names(sizes),
            Help = from > to ? "write the lower number first" : $"repeat {RowName.Next(piece, size)}s that come before this line",
        };
    }
}
