using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Sections;

/// <summary>The sizes, the measurements they are made for, and what the finished pieces measure.</summary>
internal static class SizesSection
{
    public static IEnumerable<string> Write(Pattern pattern, SizeNames names)
    {
        var made = pattern.Measures.Select(m => Line(m.Name, m.Centimetres, pattern.InInches)).ToList();
        var finished = pattern.FittedCounts.Select(c => Fitted(c, pattern.InInches)).Concat(Pieces(pattern)).ToList();
        if (!names.AreSeveral && made.Count + finished.Count == 0) yield break;
        yield return names.AreSeveral ? "## Sizes" : "## Measurements";
        if (names.AreSeveral) yield return names.All;
        if (made.Count > 0)
        {
            yield return "Made for:";
            yield return string.Join('\n', made);
        }

        if (finished.Count > 0)
        {
            yield return "Finished measurements:";
            yield return string.Join('\n', finished);
        }
    }

    private static string Line(string name, IReadOnlyList<Rational> centimetres, bool inInches) =>
        $"- {Names.Title(name)}: {Lengths.Both(Sized.Over(centimetres), inInches)}";

    // What was asked for is told where the whole stitches come out at another length in print.
    private static string Fitted(FittedCount count, bool inInches)
    {
        var line = Line(count.Name, count.Measured, inInches);
        var asked = Sized.Over(count.Asked);
        return Lengths.Own(asked, inInches) == Lengths.Own(Sized.Over(count.Measured), inInches)
            ? line
            : $"{line}; planned: {Lengths.Own(asked, inInches)}";
    }

    private static IEnumerable<string> Pieces(Pattern pattern)
    {
        foreach (var piece in pattern.Pieces)
        {
            var parts = new List<string>();
            if (InSizes(piece, p => pattern.Gauges.WidestOf(p.Rows)?.Width) is { } widths)
                parts.Add($"{Lengths.Both(widths, pattern.InInches)} wide{(IsStraight(piece) ? string.Empty : " at its widest")}");
            if (InSizes(piece, p => pattern.Gauges.HeightOf(p.Rows)) is { } heights)
                parts.Add($"{Lengths.Both(heights, pattern.InInches)} long");
            if (parts.Count > 0) yield return $"- {Names.Title(piece.Name)}: {string.Join(", ", parts)}";
        }
    }

    private static Sized<Rational>? InSizes(PieceInSizes piece, Func<Piece, Rational?> measure)
    {
        var all = new List<Rational>();
        foreach (var inSize in piece.InSizes)
        {
            if (inSize.RowsInDoubt || inSize.Rows.Count == 0 || measure(inSize) is not { } one) return null;
            all.Add(one);
        }

        return all.Count > 0 ? Sized.Over(all) : null;
    }

    private static bool IsStraight(PieceInSizes piece) =>
        piece.InSizes.All(static p => p.Rows.All(r => r.Work?.Stitches == p.Rows[0].Work?.Stitches));
}
