using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Rows;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Pieces;

/// <summary>
/// Rows are repeated by their numbers. Where a line before them makes more rows in one size than in another, the same numbers are other rows there:
/// it is the lines that were meant.
/// </summary>
internal static class RepeatedLines
{
    public static void Check(Context context, PieceState piece, RepeatedRowsSyntax rows, int?[] first, int?[] last)
    {
        var sizes = Sized.Where(context.Sizes, i => first[i] is not null && last[i] is not null && !piece.Builders[i].RowsInDoubt && piece.NumbersOff[i] == 0);
        if (sizes.Length < 2) return;
        var lead = sizes[0];
        var elsewhere = sizes.Where(i => last[i] - first[i] == last[lead] - first[lead] && AreOthers(piece, lead, i, first, last)).ToArray();
        if (elsewhere.Length == 0) return;
        var said = first.Zip(last, static (a, b) => a is { } from && b is { } to ? (from, to) : ((int From, int To)?)null).ToArray();
        var meant = sizes.Length == context.Sizes ? Array.ConvertAll(sizes, i => Meant(piece, lead, i, said[lead]!.Value)) : null;
        if (meant is not null && Array.Exists(meant, static rows => rows.From == 0 || rows.To == 0)) meant = null;
        context.Findings.Add(RepeatElsewhere.At(context, rows, piece, lead, elsewhere, said, meant));
    }

    // Two sizes may have lines of their own; it is other rows only where the line of the one makes rows in the other too.
    private static bool AreOthers(PieceState piece, int lead, int size, int?[] first, int?[] last)
    {
        for (var number = 0; number <= last[lead] - first[lead]; number++)
        {
            var (here, there) = (RowOf(piece, lead, first[lead]!.Value + number), RowOf(piece, size, first[size]!.Value + number));
            if (!AreOfOneLine(here, there) && (Find(piece, size, here) > 0 || Find(piece, lead, there) > 0)) return true;
        }

        return false;
    }

    private static bool AreOfOneLine(Row here, Row there) =>
        ReferenceEquals(here.Origin.Value, there.Origin.Value) && (here.Ordinal == there.Ordinal || here.Plan.Equals(there.Plan));

    // The numbers that the lines of one size's rows have in another.
    private static (int From, int To) Meant(PieceState piece, int lead, int size, (int From, int To) rows) =>
        (Find(piece, size, RowOf(piece, lead, rows.From)), Find(piece, size, RowOf(piece, lead, rows.To)));

    private static int Find(PieceState piece, int size, Row row)
    {
        foreach (var other in piece.Builders[size].Rows)
        {
            if (ReferenceEquals(other.Origin.Value, row.Origin.Value) && other.Ordinal == row.Ordinal) return other.Number;
        }

        return 0;
    }

    private static Row RowOf(PieceState piece, int size, int number) => piece.Builders[size].Rows[number - 1];
}
