using Turnrow.Fabric.Numbers;

namespace Turnrow.Fabric.Bodies;

/// <summary>
/// Measures of bodies by size, as a table prints them: in one unit, each a number or a range. A garment is made for the upper end of
/// a range, since what fits the larger body fits the smaller.
/// </summary>
/// <param name="Source">Where the numbers are from, in the words that are printed.</param>
/// <param name="Sizes">The sizes' names; where a size has several, all of them.</param>
/// <param name="Rows">The measures in the table's order.</param>
public sealed record BodyTable(string Source, IReadOnlyList<IReadOnlyList<string>> Sizes, IReadOnlyList<BodyRow> Rows)
{
    /// <summary>How the numbers came here, which is the designer's to know and not the maker's; null where the table says nothing.</summary>
    public string? Remark { get; init; }

    /// <summary>Place of a size in the table; -1 if it does not have it.</summary>
    public int IndexOf(string size)
    {
        for (var i = 0; i < Sizes.Count; i++)
        {
            if (Sizes[i].Contains(size, StringComparer.OrdinalIgnoreCase)) return i;
        }

        return -1;
    }
}

/// <summary>A measure in all sizes of a table, in centimetres.</summary>
/// <param name="Name">The measure's name: <c>bust</c>, <c>upper-arm</c>.</param>
/// <param name="InInches">True if the table prints it in inches.</param>
/// <param name="Upper">The upper end a size; null where the table has none.</param>
public sealed record BodyRow(string Name, bool InInches, IReadOnlyList<Rational?> Upper)
{
    /// <summary>Where this measure is from, where that is not what the table begins with; null for the table's own source.</summary>
    public string? Source { get; init; }
}
