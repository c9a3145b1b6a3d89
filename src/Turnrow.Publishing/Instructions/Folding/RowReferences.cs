using Turnrow.Publishing.Instructions.Telling;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Folding;

/// <summary>Rows of a piece that have been written out, so that later ones can be worked "as" them.</summary>
internal sealed class RowReferences
{
    private readonly Dictionary<(int Size, int Row), RowDescription> _told = [];
    private readonly Dictionary<(int Size, RowDescription), int> _written = [];
    private readonly Dictionary<(int Size, RowDescription), (int Row, RowDescription As)> _nearly = [];
    private readonly Dictionary<(int Size, RowDescription), (int Row, RowDescription As)> _inAnyYarn = [];

    /// <summary>Keeps in mind how rows went, however they were said.</summary>
    public void AddTold(IReadOnlyList<SizeRows> sizes)
    {
        foreach (var size in sizes)
        {
            foreach (var row in size.Rows) _told[(size.Size, row.Row.Number)] = row.Description;
        }
    }

    /// <summary>True if in every size the first so many rows are worked as the rows just before them.</summary>
    public bool AreTheLast(IReadOnlyList<SizeRows> sizes, Sized<int> rows)
    {
        for (var s = 0; s < sizes.Count; s++)
        {
            var count = rows.Values[s];
            for (var i = 0; i < count; i++)
            {
                var row = sizes[s].Rows[i];
                if (!_told.TryGetValue((sizes[s].Size, row.Row.Number - count), out var told) || !told.Equals(row.Description)) return false;
            }
        }

        return true;
    }

    /// <summary>Keeps a row in mind that is written out in full.</summary>
    public void Add(IReadOnlyList<SizeRows> sizes, int index)
    {
        foreach (var size in sizes)
        {
            var row = size.Rows[index];
            if (row.Description.Before.Count > 0) continue;
            _written.TryAdd((size.Size, row.Description), row.Row.Number);
            if (row.Description.InAnyYarn() is { } inAny) _inAnyYarn.TryAdd((size.Size, inAny), (row.Row.Number, row.Description));
            if (row.Description.Remarks.Count == 0)
                _nearly.TryAdd((size.Size, row.Description.Plainly()), (row.Row.Number, row.Description));
        }
    }

    /// <summary>The number of an earlier row that is worked exactly alike, in every size; null if there is none.</summary>
    public Sized<int>? Exactly(IReadOnlyList<SizeRows> sizes, int index)
    {
        var numbers = new List<int>();
        foreach (var size in sizes)
        {
            if (!_written.TryGetValue((size.Size, size.Rows[index].Description), out var number)) return null;
            numbers.Add(number);
        }

        return Sized.Over(numbers);
    }

    /// <summary>
    /// The number of an earlier row that is worked alike but for its one yarn, what becomes of that, and the chain that it ends in; and whether that chain
    /// differs. Null if there is none in every size, or if the sizes are not of one mind.
    /// </summary>
    public (Sized<int> Row, bool EndsOtherwise)? InOtherYarn(IReadOnlyList<SizeRows> sizes, int index)
    {
        var numbers = new List<int>();
        bool? otherwise = null;
        foreach (var size in sizes)
        {
            var description = size.Rows[index].Description;
            if (description.Before.Count > 0 || description.InAnyYarn() is not { } inAny || !_inAnyYarn.TryGetValue((size.Size, inAny), out var near)) return null;
            var differs = near.As.EndsIn != description.EndsIn;
            if (otherwise is { } known && known != differs) return null;
            otherwise = differs;
            numbers.Add(near.Row);
        }

        return otherwise is { } ends ? (Sized.Over(numbers), ends) : null;
    }

    /// <summary>
    /// The number of an earlier row that is worked alike but for the chain that it ends in and for remarks; and whether that chain differs. Null
    /// if there is none in every size, or if the sizes are not of one mind.
    /// </summary>
    public (Sized<int> Row, bool EndsOtherwise)? Nearly(IReadOnlyList<SizeRows> sizes, int index)
    {
        var numbers = new List<int>();
        bool? otherwise = null;
        foreach (var size in sizes)
        {
            var description = size.Rows[index].Description;
            if (description.Before.Count > 0) return null;
            var without = description with { Remarks = Phrases.PhraseList.None };
            if (!_nearly.TryGetValue((size.Size, description.Plainly()), out var near)) return null;
            if (_written.TryGetValue((size.Size, without), out var exact)) near = (exact, without);
            var differs = near.As.EndsIn != description.EndsIn;
            if (otherwise is { } known && known != differs) return null;
            otherwise = differs;
            numbers.Add(near.Row);
        }

        return otherwise is { } ends ? (Sized.Over(numbers), ends) : null;
    }
}
