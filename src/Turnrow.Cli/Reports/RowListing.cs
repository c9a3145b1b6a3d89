using System.Globalization;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;

namespace Turnrow.Cli.Reports;

/// <summary>The rows of a piece as a table for people: every row, counts in all sizes.</summary>
internal static class RowListing
{
    private static readonly string[] Headings = ["row", "side", "stitches", "spaces", "starts at", "ends at", "line"];

    /// <summary>Writes one piece.</summary>
    /// <param name="writer">Where to.</param>
    /// <param name="lineOf">The line of the source that made a row.</param>
    /// <param name="inSizes">The piece in the sizes to be shown.</param>
    /// <param name="sizes">The names of these sizes.</param>
    public static void Write(TextWriter writer, Func<Row, int> lineOf, IReadOnlyList<Piece> inSizes, IReadOnlyList<string> sizes)
    {
        writer.WriteLine(HeadingOf(inSizes[0].Name, sizes));
        var names = new EdgeNames[inSizes.Count];
        for (var i = 0; i < names.Length; i++) names[i] = new EdgeNames(inSizes[i]);
        List<string[]> rows = [Headings];
        foreach (var line in RowLines.Of(inSizes, lineOf)) rows.Add(CellsOf(line, names));
        if (rows.Count > 1) TextTable.Write(writer, rows);
        else writer.WriteLine("  no rows");
    }

    private static string HeadingOf(string piece, IReadOnlyList<string> sizes)
    {
        if (sizes.Count == 1) return sizes[0].Length == 0 ? piece : $"{piece}, size {sizes[0]}";
        return $"{piece}, sizes {SizedText.Of(sizes)}";
    }

    private static string[] CellsOf(RowLine line, EdgeNames[] names) =>
    [
        Shared(line, (row, _) => Text(row.Number)),
        Shared(line, (row, _) => row.RightSide ? "RS" : "WS"),
        InSizes(line, (row, _) => row.Work is { } work ? Text(work.Stitches) : "?"),
        SpacesOf(line),
        Shared(line, (row, size) => names[size].StartOf(row)),
        Shared(line, (row, size) => names[size].EndOf(row)),
        Text(line.Line),
    ];

    // Which sizes have the row is seen at its stitches; what all of those share is said once.
    private static string Shared(RowLine line, Func<Row, int, string> cell)
    {
        string? shared = null;
        for (var i = 0; i < line.InSizes.Count; i++)
        {
            if (line.InSizes[i] is not { } row) continue;
            var text = cell(row, i);
            if (shared is not null && text != shared) return InSizes(line, cell);
            shared = text;
        }

        return shared ?? string.Empty;
    }

    private static string SpacesOf(RowLine line)
    {
        foreach (var row in line.InSizes)
        {
            if (row?.Work is { Spaces: > 0 }) return InSizes(line, (each, _) => each.Work is { } work ? Text(work.Spaces) : "?");
        }

        return string.Empty;
    }

    private static string InSizes(RowLine line, Func<Row, int, string> cell)
    {
        var cells = new string[line.InSizes.Count];
        for (var i = 0; i < cells.Length; i++) cells[i] = line.InSizes[i] is { } row ? cell(row, i) : "-";
        return SizedText.Of(cells);
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
