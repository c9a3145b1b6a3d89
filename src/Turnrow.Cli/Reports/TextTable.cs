namespace Turnrow.Cli.Reports;

/// <summary>Writes rows of cells as aligned columns.</summary>
internal static class TextTable
{
    /// <summary>Writes them, the first row being the headings. A column that is empty but for its heading is left out.</summary>
    public static void Write(TextWriter writer, IReadOnlyList<string[]> rows)
    {
        var widths = new int[rows[0].Length];
        for (var r = 1; r < rows.Count; r++)
        {
            for (var c = 0; c < widths.Length; c++) widths[c] = Math.Max(widths[c], rows[r][c].Length);
        }

        for (var c = 0; c < widths.Length; c++)
        {
            if (widths[c] > 0) widths[c] = Math.Max(widths[c], rows[0][c].Length);
        }

        foreach (var row in rows) writer.WriteLine(LineOf(row, widths));
    }

    private static string LineOf(string[] row, int[] widths)
    {
        var line = new System.Text.StringBuilder();
        for (var c = 0; c < row.Length; c++)
        {
            if (widths[c] > 0) line.Append("  ").Append(row[c].PadRight(widths[c]));
        }

        return line.ToString().TrimEnd();
    }
}
