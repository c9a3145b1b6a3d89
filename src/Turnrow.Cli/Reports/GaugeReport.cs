using System.Globalization;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;

namespace Turnrow.Cli.Reports;

/// <summary>The same pattern for two gauges: the counts of both, and what the pattern's counts measure at the maker's.</summary>
/// <param name="pattern">The pattern as it is.</param>
/// <param name="hers">The pattern made anew for the maker's gauge.</param>
/// <param name="sizes">Indexes of the sizes to be shown.</param>
internal sealed class GaugeReport(Pattern pattern, Pattern hers, IReadOnlyList<int> sizes)
{
    private readonly LengthText _text = new(pattern.InInches);

    /// <summary>Her counts beside the pattern's.</summary>
    public void WriteCounts(TextWriter writer)
    {
        List<string[]> rows = [["", "the pattern", "at your gauge"]];
        foreach (var count in pattern.Counts)
        {
            var own = hers.Counts.FirstOrDefault(each => string.Equals(each.Name, count.Name, StringComparison.OrdinalIgnoreCase));
            rows.Add([count.Name, InSizes(i => Text(count.Counts[i])), InSizes(i => own is null ? "?" : Text(own.Counts[i]))]);
        }

        foreach (var piece in pattern.Pieces)
        {
            var own = Hers(piece.Name);
            Add(rows, $"{piece.Name}: first row", piece, own, static p => p.Rows is [{ Work: { } work }, ..] ? Text(work.Stitches) : "?");
            Add(rows, $"{piece.Name}: widest row", piece, own, Widest);
            Add(rows, $"{piece.Name}: rows", piece, own, static p => p.RowsInDoubt ? "?" : Text(p.Rows.Count));
        }

        TextTable.Write(writer, rows);
        var others = pattern.Pieces.SelectMany(OtherLengths).ToList();
        if (others.Count == 0) return;
        writer.WriteLine("  Made by your counts some pieces measure something else than is meant, since plain numbers do not follow the gauge and counts are rounded:");
        foreach (var other in others) writer.WriteLine("    " + other);
    }

    /// <summary>What the pattern's own counts measure at her gauge.</summary>
    public void WriteMeasures(TextWriter writer)
    {
        List<string[]> rows = [["", "by the pattern's gauge", "at your gauge"]];
        foreach (var piece in pattern.Pieces)
        {
            rows.Add([$"{piece.Name}: wide", Lengths(piece, pattern.Gauges, WidthOf), Lengths(piece, hers.Gauges, WidthOf)]);
            rows.Add([$"{piece.Name}: high", Lengths(piece, pattern.Gauges, HeightOf), Lengths(piece, hers.Gauges, HeightOf)]);
        }

        TextTable.Write(writer, rows);
    }

    /// <summary>Width of a piece at its widest, by a gauge.</summary>
    public static Rational? WidthOf(Piece piece, GaugeBook gauges) => piece.RowsInDoubt ? null : gauges.WidestOf(piece.Rows)?.Width;

    /// <summary>Height of a piece, by a gauge.</summary>
    public static Rational? HeightOf(Piece piece, GaugeBook gauges) => piece.RowsInDoubt || piece.Rows.Count == 0 ? null : gauges.HeightOf(piece.Rows);

    private IEnumerable<string> OtherLengths(PieceInSizes piece)
    {
        if (Hers(piece.Name) is not { } own) yield break;
        if (IsOther(piece, own, WidthOf)) yield return Other("wide", piece, own, WidthOf);
        if (IsOther(piece, own, HeightOf)) yield return Other("high", piece, own, HeightOf);
    }

    private bool IsOther(PieceInSizes piece, PieceInSizes own, Func<Piece, GaugeBook, Rational?> measure) => sizes.Any(i =>
        measure(own.InSizes[i], hers.Gauges) is { } will && measure(piece.InSizes[i], pattern.Gauges) is { } meant && Tolerance.IsPassed(will, meant));

    private string Other(string way, PieceInSizes piece, PieceInSizes own, Func<Piece, GaugeBook, Rational?> measure) =>
        $"{piece.Name}: {Lengths(own, hers.Gauges, measure)} {way}, not {Lengths(piece, pattern.Gauges, measure)}";

    private PieceInSizes? Hers(string name) => hers.Pieces.FirstOrDefault(piece => string.Equals(piece.Name, name, StringComparison.OrdinalIgnoreCase));

    private void Add(List<string[]> rows, string what, PieceInSizes piece, PieceInSizes? own, Func<Piece, string> cell) =>
        rows.Add([what, InSizes(i => cell(piece.InSizes[i])), InSizes(i => own is null ? "?" : cell(own.InSizes[i]))]);

    private string Lengths(PieceInSizes piece, GaugeBook gauges, Func<Piece, GaugeBook, Rational?> measure) =>
        _text.InSizes(sizes.Select(i => measure(piece.InSizes[i], gauges)));

    private string InSizes(Func<int, string> cell) => SizedText.Of([.. sizes.Select(cell)]);

    private static string Widest(Piece piece)
    {
        var most = 0;
        foreach (var row in piece.Rows)
        {
            if (row.Work is not { } work) return "?";
            most = Math.Max(most, work.Stitches);
        }

        return piece.RowsInDoubt ? "?" : Text(most);
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
