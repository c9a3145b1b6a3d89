using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Colours;

/// <summary>Counts the stitches of a row that are worked with one yarn, by kind: they are what its words make.</summary>
public static class YarnTally
{
    /// <summary>Adds what a row works with a yarn.</summary>
    /// <param name="work">The row.</param>
    /// <param name="begun">The yarn that it begins with.</param>
    /// <param name="yarn">The yarn asked for.</param>
    /// <param name="times">How often the row is worked.</param>
    /// <param name="counts">Takes the counts.</param>
    public static void Add(RowWork work, string begun, string yarn, long times, Dictionary<Stitch, long> counts) =>
        YarnWords.Visit(work.Words, begun, (with, word, often) =>
        {
            if (with == yarn) Add(counts, word, often * times);
        });

    /// <summary>Adds so many of a place.</summary>
    internal static void Add(Dictionary<Stitch, long> counts, Place place, long count)
    {
        if (place.IsStitch && place.Stitch is { } stitch) counts[stitch] = counts.GetValueOrDefault(stitch) + count;
        else if (place.Chains > 0) counts[StitchBook.Chain] = counts.GetValueOrDefault(StitchBook.Chain) + (place.Chains * count);
    }

    /// <summary>Adds what stands on the stitches of a row, which none of its places tells of.</summary>
    internal static void AddOnTop(Dictionary<Stitch, long> counts, IReadOnlyList<Word> words, long times)
    {
        for (var i = 0; i < words.Count; i++)
        {
            if (words[i] is Work { Takes: 0, Stitch: { IsOne: true, Form: { } form } } work) AddSpur(counts, form, times * work.Makes * work.Amount.Times);
            else if (words[i] is Group group) AddOnTop(counts, group.Words, times * group.Times);
            else if (words[i] is Repeat repeat) AddOnTop(counts, repeat.Words, times * repeat.Amount.Times);
        }
    }

    // Its chains lie under the stitches, as a foundation does.
    private static void AddSpur(Dictionary<Stitch, long> counts, StitchForm form, long times)
    {
        foreach (var part in form.Parts)
        {
            if (part.Stitch is { } stitch) counts[stitch] = counts.GetValueOrDefault(stitch) + (part.Count * times);
        }
    }

    private static void Add(Dictionary<Stitch, long> counts, Word word, long times)
    {
        switch (word)
        {
            // What joins to another piece is in no count.
            case Work { To: not null }:
                break;
            case Work { Stitch: { IsOne: true, Form: { } form }, Takes: 0 } onTop:
                AddSpur(counts, form, times * onTop.Makes * onTop.Amount.Times);
                break;
            case Work work:
                foreach (var kind in work.Stitch.Tops.Kinds()) Add(counts, kind.Place, kind.Count * work.Makes * times * work.Amount.Times);
                break;
            case Chains chains:
                Add(counts, Place.SpaceOf(chains.Count), times);
                break;
            case Group group:
                foreach (var inside in group.Words)
                    Add(counts, inside is Work one ? one with { Amount = one.Amount with { Times = one.Amount.Count } } : inside, times * group.Times);
                break;
        }
    }
}
