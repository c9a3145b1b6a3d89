using Turnrow.Compiler.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
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

    internal static Diagnostic At(Context context, TextSpan span, PieceState piece, int[] sizes, int?[] first, int?[] last)
    {
        var (from, to) = (first[sizes[0]], last[sizes[0]]);
        var inSize = context.Findings.InSize(sizes[0]);
        var rows = RowName.OfSpan(piece, sizes[0], from!.Value, to!.Value);
        return new(Kind, span, from > to
            ? Invariant($"{rows} run backwards{inSize}")
            : Invariant($"{rows} can't be repeated{inSize}: {piece.Name} has only {RowName.Counted(piece, sizes[0])} so far"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = from > to ? "write the lower number first" : $"repeat {RowName.Next(piece, sizes[0])}s that come before this line",
        };
    }
}
