using Turnrow.Compiler.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A row number that is not the row's own.</summary>
public static class RowNumber
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "row-number",
        "TR0310",
        Severity.Error,
        """
        Rows are counted from the beginning of the piece, and this is not the number that comes next. A row may be missing or be there
        twice, or a `straight` line before makes more or fewer rows than you think. Since right and wrong sides change with every row, a
        row too few also puts what follows on the wrong side. Correct the number, or leave it out: `row: dc across` is always the next
        one.

        Tip: rows picked up along an edge and the first row of a part are row 1 of their piece.
        """,
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 3: dc across
            """),
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dc across
            """));

    internal static Diagnostic At(Context context, TextSpan span, PieceState piece, int[] sizes, int?[] said)
    {
        var next = piece.Builders[sizes[0]].RowCount + 1;
        var all = Array.ConvertAll(piece.Builders, b => b.RowCount + 1);
        return new(Kind, span, Invariant($"the next {RowName.Next(piece, sizes[0])} of {piece.Name} is {RowName.Of(piece, sizes[0], next)}{context.Findings.InSizes(sizes, i => (all[i], said[i]))}, not {RowName.Next(piece, sizes[0])} {said[sizes[0]]}"))
        {
            Sizes = context.Findings.Names(sizes),
            Help = Array.TrueForAll(all, n => n == next) ? Invariant($"write {RowName.Of(piece, sizes[0], next)}, or `{RowName.Next(piece, sizes[0])}` without a number for the next one") : $"the sizes are at different {RowName.Next(piece, sizes[0])}s here: write `{RowName.Next(piece, sizes[0])}` without a number for the next one",
            Mends = Array.TrueForAll(all, n => n == next) ? [new Mend(Invariant($"write {next}"), span, Invariant($"{next}"))] : [],
        };
    }
}
