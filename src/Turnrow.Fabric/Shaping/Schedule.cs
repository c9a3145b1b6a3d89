namespace Turnrow.Fabric.Shaping;

/// <summary>Changes every so many rows, so often.</summary>
/// <param name="Interval">Rows of one interval; the change is in the last of them.</param>
/// <param name="SecondInterval">With "by turns", the rows of every second interval; else 0.</param>
/// <param name="Times">How often; below 0 for as long as there are rows.</param>
public readonly record struct Frequency(int Interval, int SecondInterval, int Times);

/// <summary>At which rows something changes: plain rows first, then one frequency after the other.</summary>
/// <param name="After">Rows kept plain first.</param>
/// <param name="Frequencies">The frequencies in order.</param>
public sealed record Schedule(int After, IReadOnlyList<Frequency> Frequencies)
{
    /// <summary>
    /// The rows (from 1) in which a change falls, within so many rows. One that has run out leaves its edge even.
    /// </summary>
    public IReadOnlyList<int> RowsWithin(int rows) => [.. ChangesWithin(rows).Select(static c => c.Row)];

    /// <summary>The same rows, each with the index of the frequency that it belongs to.</summary>
    public IReadOnlyList<(int Row, int Frequency)> ChangesWithin(int rows)
    {
        var changes = new List<(int, int)>();
        long row = After;
        for (var index = 0; index < Frequencies.Count; index++)
        {
            var frequency = Frequencies[index];
            for (var i = 0; frequency.Times < 0 || i < frequency.Times; i++)
            {
                row += frequency.SecondInterval > 0 && i % 2 == 1 ? frequency.SecondInterval : frequency.Interval;
                if (row > rows) return changes;
                changes.Add(((int)row, index));
            }
        }

        return changes;
    }

    /// <summary>Rows that all of its changes need; null if it goes on as long as there are rows.</summary>
    public long? RowsNeeded()
    {
        long row = After;
        foreach (var frequency in Frequencies)
        {
            if (frequency.Times < 0) return null;
            var seconds = frequency.SecondInterval > 0 ? frequency.Times / 2 : 0;
            row += ((long)(frequency.Times - seconds) * frequency.Interval) + ((long)seconds * frequency.SecondInterval);
        }

        return row;
    }
}
