using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Stitches;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Joins;

/// <summary>So many stitches in so many rows, or in so many stitches, in each size.</summary>
internal sealed record BoundRate(Stitch Stitch, int?[] Count, int?[] Per, bool OfStitches)
{
    /// <summary>True of what goes into each corner.</summary>
    public bool OfCorners { get; init; }
}

/// <summary>Reads <c>2 dc in each row</c>, as seams and pick-ups say it.</summary>
internal sealed class RateBinder(Context context)
{
    private static readonly string[] Places = ["st", "sts", "stitch", "stitches", "ch", "chs", "chain", "chains"];

    /// <summary>The rate; null, and reported, if it can't be understood.</summary>
    public BoundRate? Bind(RateSyntax rate)
    {
        if (context.StitchOf(rate.Stitch) is not { } stitch || !IsOfPlaces(rate)) return null;
        return new BoundRate(
            stitch,
            context.Evaluate.Counts(rate.Count, 1),
            rate.Per is { } per ? context.Evaluate.Counts(per, 1) : Sized.Same<int?>(context.Sizes, 1),
            rate.OfStitches)
        { OfCorners = rate.OfCorners };
    }

    /// <summary>Several rates, all in one stitch; null, and reported, if one can't be understood.</summary>
    public IReadOnlyList<BoundRate>? Bind(IReadOnlyList<RateSyntax> rates)
    {
        var bound = rates.Select(Bind).ToList();
        if (bound.Contains(null)) return null;
        for (var i = 1; i < bound.Count; i++)
        {
            if (bound[i]!.Stitch == bound[0]!.Stitch) continue;
            context.Findings.Add(RateStitches.At(rates[i].Stitch, rates[0].Stitch));
            return null;
        }

        return bound!;
    }

    private bool IsOfPlaces(RateSyntax rate)
    {
        if (rate.Kind.Count == 0 || rate.OfCorners) return true;
        var word = rate.Kind[0].Text;
        var known = rate.Kind.Count == 1
            && (Array.Exists(Places, p => string.Equals(p, word, StringComparison.OrdinalIgnoreCase)) || context.TryStitch(word) is not null);
        if (!known) context.Findings.Add(PlaceUnknown.OfRate(rate.Kind));
        return known;
    }
}
