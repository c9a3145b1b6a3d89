using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>
/// A row that begins with a special stitch, the first stitch of which is the row's chain: then its name would promise one stitch too many, and
/// it is told by what it is made of.
/// </summary>
internal static class BegunSpecials
{
    /// <summary>The row's work with that stitch written out; the same if there is none.</summary>
    public static RowWork WrittenOut(RowWork work)
    {
        if (!work.Opening.Counts && work.Opening.Space == 0) return work;
        var words = Leading.Unrolled(work.Words);
        var at = words.FindIndex(static w => w is not Skip);
        if (at < 0 || words[at] is not Work { Stitch: { IsOne: false, Form: { } form } } first) return work;
        words.RemoveAt(at);
        if (first.Amount.Times > 1) words.Insert(at, first with { Amount = Amount.Of(first.Amount.Times - 1), Passed = 0, PassedBefore = 0, Corners = 0 });
        // A ring has room for all of them: only the first lacks the stitch that the chain stands for.
        if (first is { Target.Aim: Aim.Ring, Makes: > 1 })
        {
            words.Insert(at, first with { Makes = first.Makes - 1, Amount = Amount.Once, Passed = 0, PassedBefore = 0, Corners = 0 });
            first = first with { Makes = 1 };
        }

        if (form.Takes == 1) words.Insert(at, InOnePlace(first, form.Words()));
        else words.InsertRange(at, [.. form.Words(), new Completed(first.Stitch)]);
        return work with { Words = words };
    }

    private static Group InOnePlace(Work first, IReadOnlyList<Word> words)
    {
        var all = new List<Word>();
        for (var i = 0; i < first.Makes; i++) all.AddRange(words);
        return new Group(all, first.Target) { Passed = first.Passed, PassedBefore = first.PassedBefore, Corners = first.Corners > 0 ? 1 : 0, Origin = first.Origin, Special = first.Stitch };
    }
}
