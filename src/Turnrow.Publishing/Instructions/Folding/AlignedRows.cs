using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Instructions.Telling;

namespace Turnrow.Publishing.Instructions.Folding;

/// <summary>
/// One row over sizes that differ in a part that is worked more or less often, or not at all: <c>[2 sc in next row-end] 1 (0, 1) times</c>.
/// A maker who finds her own number reads one paragraph then, not one of several.
/// </summary>
internal static class AlignedRows
{
    /// <summary>The rows as one; null if they differ in more than a few such parts.</summary>
    public static RowDescription? Together(IReadOnlyList<RowDescription> rows)
    {
        if (rows.Any(static r => r.IsUnknown)) return null;
        if (Joined(rows.Select(static r => r.Before)) is not { } before || Joined(rows.Select(static r => r.Remarks)) is not { } remarks) return null;
        var parts = rows[0].Working.Phrases.Select(static p => AlignedPart.Of(p)).ToList();
        for (var size = 1; size < rows.Count; size++)
        {
            if (new Alignment(parts, size).With(rows[size].Working.Phrases) is not { } more) return null;
            parts = more;
        }

        var written = Optional(parts);
        if (written.Count(static p => p.IsOptional) > MostOptional(written.Count)) return null;
        var phrases = new List<Phrase>();
        foreach (var part in written)
        {
            if (part.Written() is not { } told) return null;
            phrases.AddRange(told);
        }

        return new RowDescription(before, new PhraseList(phrases), remarks);
    }

    // Where every third part comes in some sizes only, two sentences are easier to read.
    private static int MostOptional(int parts) => 1 + (parts / 3);

    // Parts side by side that come in the same sizes are one.
    private static List<AlignedPart> Optional(List<AlignedPart> parts)
    {
        var result = new List<AlignedPart>();
        foreach (var part in parts)
        {
            if (result.Count > 0 && result[^1].JoinsWith(part)) result[^1] = result[^1].Then(part);
            else result.Add(part);
        }

        return result;
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
