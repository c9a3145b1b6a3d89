using Turnrow.Fabric.Numbers;

namespace Turnrow.Fabric.Bodies;

/// <summary>
/// Reads a table of body measures from comma-separated values: a line <c>source,…</c>, behind it how the numbers came here, a line <c>measure,unit,XS,S,…</c>, then a line a
/// measure: <c>bust,cm,71-76,81-86,…</c>. A size may have several names, <c>XL/1X</c>. Another line <c>source,…</c> says where the measures
/// below it are from.
/// </summary>
public static class BodyTableReader
{
    private const int FirstSize = 2;

    /// <summary>The table, or what keeps it from being read.</summary>
    /// <param name="lines">The cells, line by line.</param>
    /// <param name="inInches">Which of a measure's two lines is wanted where the table has it in both units; null for all lines.</param>
    public static (BodyTable? Table, BodyTableFault? Fault) Read(IReadOnlyList<IReadOnlyList<string>> lines, bool? inInches = null)
    {
        var source = string.Empty;
        string? remark = null;
        string? further = null;
        IReadOnlyList<IReadOnlyList<string>>? sizes = null;
        var rows = new List<BodyRow>();
        for (var i = 0; i < lines.Count; i++)
        {
            var cells = lines[i];
            if (cells.All(static c => c.Length == 0)) continue;
            if (sizes is null && cells[0] == "source")
            {
                source = cells.Count > 1 ? cells[1] : string.Empty;
                remark = cells.Count > 2 && cells[2].Length > 0 ? cells[2] : null;
            }
            else if (cells[0] == "source")
            {
                further = cells.Count > 1 ? cells[1] : string.Empty;
            }
            else if (sizes is null)
            {
                if (cells.Count <= FirstSize || cells[0] != "measure" || cells[1] != "unit") return (null, new BodyTableFault(i + 1, cells[0], BodyTableFaultKind.NoHeading));
                sizes = [.. cells.Select(static c => (IReadOnlyList<string>)c.Split('/', StringSplitOptions.TrimEntries)).Skip(FirstSize)];
            }
            else if (Row(cells, sizes.Count, i + 1, out var fault) is { } row)
            {
                if (inInches is { } wanted && wanted != row.InInches) continue;
                if (rows.Exists(r => r.Name == row.Name)) return (null, new BodyTableFault(i + 1, row.Name, BodyTableFaultKind.MeasureTwice));
                rows.Add(row with { Source = further });
            }
            else
            {
                return (null, fault);
            }
        }

        return sizes is null ? (null, new BodyTableFault(1, string.Empty, BodyTableFaultKind.NoHeading)) : (new BodyTable(source, sizes, rows) { Remark = remark }, null);
    }

    private static BodyRow? Row(IReadOnlyList<string> cells, int sizes, int line, out BodyTableFault? fault)
    {
        fault = null;
        if (cells.Count != sizes + FirstSize) fault = new BodyTableFault(line, cells[0], BodyTableFaultKind.CellsMissing);
        else if (cells[1] is not ("cm" or "in")) fault = new BodyTableFault(line, cells[1], BodyTableFaultKind.UnknownUnit);
        if (fault is not null) return null;
        var upper = new List<Rational?>();
        var inInches = cells[1] == "in";
        foreach (var cell in cells.Skip(FirstSize))
        {
            if (cell.Length > 0 && Upper(cell, inInches) is null)
            {
                fault = new BodyTableFault(line, cell, BodyTableFaultKind.NoNumber);
                return null;
            }

            upper.Add(cell.Length == 0 ? null : Upper(cell, inInches));
        }

        return new BodyRow(cells[0], inInches, upper);
    }

    private static Rational? Upper(string cell, bool inInches)
    {
        var dash = cell.IndexOfAny(['-', '\u2013']);
        if (dash >= 0 && Number(cell.AsSpan(0, dash)) is null) return null;
        if (Number(cell.AsSpan(dash + 1)) is not { } number) return null;
        return inInches ? number * Rational.Of(254, 100)!.Value : number;
    }

    private static Rational? Number(ReadOnlySpan<char> text)
    {
        text = text.Trim();
        long value = 0;
        long over = 1;
        var point = false;
        if (text.Length is 0 or > 9) return null;
        foreach (var c in text)
        {
            if (c == '.' && !point)
            {
                point = true;
                continue;
            }

            if (!char.IsAsciiDigit(c)) return null;
            value = (value * 10) + (c - '0');
            if (point) over *= 10;
        }

        return char.IsAsciiDigit(text[^1]) ? Rational.Of(value, over) : null;
    }
}

/// <summary>What keeps a table from being read.</summary>
/// <param name="Line">Line of the table, from 1.</param>
/// <param name="Text">The cell that is wrong.</param>
/// <param name="Kind">How it is wrong.</param>
public sealed record BodyTableFault(int Line, string Text, BodyTableFaultKind Kind);

/// <summary>How a table can be wrong.</summary>
public enum BodyTableFaultKind
{
    /// <summary>The line <c>measure,unit,…sizes</c> is missing.</summary>
    NoHeading,

    /// <summary>A line has another number of cells than there are sizes.</summary>
    CellsMissing,

    /// <summary>The unit is neither cm nor in.</summary>
    UnknownUnit,

    /// <summary>A measure has a second line.</summary>
    MeasureTwice,

    /// <summary>A cell is no number and no range.</summary>
    NoNumber,
}
