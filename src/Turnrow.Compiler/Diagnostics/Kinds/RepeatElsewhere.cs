using Turnrow.Compiler.Pieces;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A repeat whose numbers are other rows in some sizes.</summary>
public static class RepeatElsewhere
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "repeat-elsewhere",
        "TR0595",
        Severity.Warning,
        """
        Rows are repeated by their numbers, and a line before them makes more rows in some sizes than in others. So the same numbers are rows of
        other lines there, and those would be repeated. Where the rows just worked are meant, say how many: `repeat last 2 rows, 3 more times`.
        Else write the numbers of each size.
        """,
        SmallPattern.With("Scarf",
            """
            sizes S, L

            piece scarf
              begin with 21 stitches
              row 1 RS: dc across
              straight 3 (5) rows
              row: dc, (ch 1, skip 1, dc) across
              row: dc in each st and sp
              repeat rows 5 to 6, 3 more times
            """),
        SmallPattern.With("Scarf",
            """
            sizes S, L

            piece scarf
              begin with 21 stitches
              row 1 RS: dc across
              straight 3 (5) rows
              row: dc, (ch 1, skip 1, dc) across
              row: dc in each st and sp
              repeat last 2 rows, 3 more times
            """));

    /// <param name="context">The file.</param>
    /// <param name="rows">The rows as they are said.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="lead">The size that the lines are taken from.</param>
    /// <param name="elsewhere">The sizes where the numbers are other lines'.</param>
    /// <param name="said">The numbers of the first and the last row in each size, as they are said.</param>
    /// <param name="meant">The numbers that the same lines have in each size; null where some size has none.</param>
    internal static Diagnostic At(Context context, RepeatedRowsSyntax rows, PieceState piece, int lead, int[] elsewhere, (int From, int To)?[] said, (int From, int To)[]? meant)
    {
        var (size, findings) = (elsewhere[0], context.Findings);
        var (here, there) = (said[lead]!.Value, said[size]!.Value);
        var last = here.To == piece.Builders[lead].RowCount ? Last(here, RowName.Next(piece, lead)) : null;
        var write = last ?? (meant is null ? null : ByNumbers(here, meant, RowName.Next(piece, lead)));
        return new(Kind, rows.Span, $"{RowName.OfSpan(piece, size, there.From, there.To)}{findings.InSize(size)} are not of the lines that {RowName.OfSpan(piece, lead, here.From, here.To)} are of{findings.InSize(lead)}")
        {
            Sizes = findings.Names(elsewhere),
            Ledger = meant is null ? [] : ["the same lines are", .. Enumerable.Range(0, meant.Length).Select(i => $"  {RowName.OfSpan(piece, i, meant[i].From, meant[i].To)}{findings.InSize(i)}")],
            Help = write is null ? "write the numbers of each size in brackets, or each size's repeat in a `for` line of its own"
                : last is null ? $"write the numbers of each size: `repeat {write}`" : $"write `repeat {write}`: in each size those are the ones just worked",
            Mends = write is null ? [] : [new Mend($"repeat {write}", rows.Span, write)],
            Related = [.. new[] { (lead, here.From), (size, there.From) }.Select(at => new Related(LineOf(piece, at.Item1, at.Item2), $"{RowName.Of(piece, at.Item1, at.Item2)}{findings.InSize(at.Item1)}"))],
        };
    }

    private static string Last((int From, int To) rows, string row) => rows.From == rows.To ? $"last {row}" : Invariant($"last {rows.To - rows.From + 1} {row}s");

    private static string ByNumbers((int From, int To) lead, (int From, int To)[] meant, string row) => lead.From == lead.To
        ? $"{row} {InSizes([.. meant.Select(static rows => rows.From)])}"
        : $"{row}s {InSizes([.. meant.Select(static rows => rows.From)])} to {InSizes([.. meant.Select(static rows => rows.To)])}";

    private static string InSizes(int[] numbers) => Array.TrueForAll(numbers, n => n == numbers[0])
        ? Invariant($"{numbers[0]}")
        : Invariant($"{numbers[0]} ({string.Join(", ", numbers.Skip(1))})");

    private static TextSpan LineOf(PieceState piece, int size, int number) => ((SyntaxNode)piece.Builders[size].Rows[number - 1].Origin.Value!).Span;
}
