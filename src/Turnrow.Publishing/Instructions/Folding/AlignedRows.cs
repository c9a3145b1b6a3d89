using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Instructions.Telling;

namespace Turnrow.Publishing.Instructions.Folding;

/// <summary>
/// One row over sizes that differ in how often a part is worked: <c>[2 sc in next row-end] 1 (2, 3) times</c>. A maker who finds her own number reads one paragraph then, not one of several.
/// </summary>
internal static class AlignedRows
{
    /// <summary>The rows as one; null if they differ in more than that.</summary>
    public static RowDescription? Together(IReadOnlyList<RowDescription> rows)
    {
        if (rows.Any(static r => r.IsUnknown)) return null;
        if (Joined(rows.Select(static r => r.Before)) is not { } before || Joined(rows.Select(static r => r.Remarks)) is not { } remarks) return null;
        var parts = rows[0].Working.Phrases.Select(static p => AlignedPart.Of(p)).ToList();
        for (var size = 1; size < rows.Count; size++)
        {
            if (new Alignment(parts).With(rows[size].Working.Phrases) is not { } more) return null;
            parts = more;
        }

        var phrases = new List<Phrase>();
        foreach (var part in parts)
        {
            if (part.Written() is not { } told) return null;
            phrases.AddRange(told);
        }

        return new RowDescription(before, new PhraseList(phrases), remarks);
    }

    private static PhraseList? Joined(IEnumerable<PhraseList> lists)
    {
        PhraseList? all = null;
        foreach (var list in lists)
        {
            all = all is null ? list : all.And(list);
            if (all is null) return null;
        }

        return all;
    }
}
