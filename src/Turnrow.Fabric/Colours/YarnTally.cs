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

    /// <summary>The stitches of a row that are worked with a yarn, as its count counts them: without what joins it to other pieces or stands on a stitch.</summary>
    public static long Stitches(RowWork work, string begun, string yarn)
    {
        var stitches = 0L;
        YarnWords.Visit(work.Words, begun, (with, word, often) =>
        {
            if (with == yarn) stitches += StitchesOf(word) * often;
        });
        return stitches;
    }

    private static long StitchesOf(Word word)
    {
        switch (word)
        {
            case Work { To: not null } or Work { Stitch: { IsOne: true, Form: not null }, Takes: 0 }:
                return 0;
            case Work work:
                return (long)work.Stitch.Tops.CountWhere(static place => place.IsStitch) * work.Makes * work.Amount.Times;
            case Group group:
                var inside = 0L;
                foreach (var one in group.Words) inside += StitchesOf(one);
                return inside * group.Times;
            default:
                return 0;
        }
    }

    /// <summary>Adds so many of a place.</summary>
    internal static void Add(Dictionary<Stitch, long> counts, Place place, long count)
    {
        if (place.IsStitch && place.Stitch is { } stitch) counts[stitch] = counts.GetValueOrDefault(stitch) + count;
        else if (place.Chains > 0) counts[StitchBook.Chain] = counts.GetValueOrDefault(StitchBook.Chain) + (place.Chains * count);
    }

    /// <summary>Adds what a row works with a yarn on top of its stitches, which none of its places and no count tells of.</summary>
    public static void AddOnTop(RowWork work, string begun, string yarn, long times, Dictionary<Stitch, long> counts) =>
        YarnWords.Visit(work.Words, begun, (with, word, often) =>
        {
            if (with == yarn) AddOnTop(counts, word, often * times);
        });

    private static void AddOnTop(Dictionary<Stitch, long> counts, Word word, long times)
    {
        switch (word)
        {
            case Work { Takes: 0, Stitch: { IsOne: true, Form: { } form } } spur:
                AddSpur(counts, form, times * spur.Makes * spur.Amount.Times);
                break;
            case Work { Stitch: { IsOne: false, Form: { } form } } special:
                foreach (var part in form.Parts)
                {
                    if (part is { IsKnot: true, Stitch.Form: { } knot }) AddSpur(counts, knot, times * part.Count * special.Makes * special.Amount.Times);
                }

                break;
            case Group group:
                foreach (var inside in group.Words) AddOnTop(counts, inside, times * group.Times);
                break;
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
            case Work { Stitch.IsOne: true, Takes: 0 }:
                break;
            case Work work:
                foreach (var kind in work.Stitch.Tops.Kinds()) Add(counts, kind.Place, kind.Count * work.Makes * times * work.Amount.Times);
                break;
            case Chains chains:
                Add(counts, Place.SpaceOf(chains.Count), times);
                break;
            case Group group:
                foreach (var inside in group.Words) Add(counts, inside, times * group.Times);
                break;
        }
    }
}
