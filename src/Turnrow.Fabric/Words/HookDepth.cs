namespace Turnrow.Fabric.Words;

/// <summary>How far down the stitches of a row go.</summary>
internal static class HookDepth
{
    /// <summary>The stitches that go furthest down; null if all go into the row below.</summary>
    public static Work? Deepest(IReadOnlyList<Word> words)
    {
        Work? deepest = null;
        for (var i = 0; i < words.Count; i++)
        {
            if (WorkedWords.IsIdleUnworked(words[i])) continue;
            var found = words[i] is Work work ? OfWork(work) : Deepest(words[i].Held);
            if (found is not null && found.Hook.RowsDown() > (deepest?.Hook.RowsDown() ?? 0)) deepest = found;
        }

        return deepest;
    }

    private static Work? OfWork(Work work)
    {
        if (work.Hook.RowsDown() > 0) return work;
        return work.Stitch.Form is null or { Parts.Count: 0 } ? null : OfParts(work);
    }

    private static Work? OfParts(Work work)
    {
        var deepest = work;
        foreach (var part in work.Stitch.Form!.Parts)
        {
            if (part.Hook.RowsDown() > deepest.Hook.RowsDown()) deepest = work with { Hook = part.Hook };
        }

        return ReferenceEquals(deepest, work) ? null : deepest;
    }
}
