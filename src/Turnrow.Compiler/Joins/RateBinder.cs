using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Rows;
using Turnrow.Compiler.Values;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Joins;

/// <summary>So many stitches in so many rows, or in so many stitches, in each size.</summary>
internal sealed record BoundRate(Stitch Stitch, int?[] Count, int?[] Per, bool OfStitches)
{
    /// <summary>True of what goes into each corner.</summary>
    public bool OfCorners { get; init; }

    /// <summary>True of a number that is shared out by length.</summary>
    public bool Evenly { get; init; }

    /// <summary>The kinds of place that it is said of; none where it is not said of a kind.</summary>
    public IReadOnlyList<PlaceFilter> Kinds { get; init; } = [];

    /// <summary>True if it says how many go into a place; the narrower of two kinds is asked first.</summary>
    public bool IsOf(Place place)
    {
        for (var i = 0; i < Kinds.Count; i++)
        {
            if (Kinds[i].Has(place)) return true;
        }

        return false;
    }

    /// <summary>True if it is said of one stitch, or of spaces of one number of chains.</summary>
    public bool IsNarrow => Kinds.Any(static k => k.Kind is not (PlaceFilterKind.AnyStitch or PlaceFilterKind.AnySpace));
}

/// <summary>Reads <c>2 dc in each row</c>, as seams and pick-ups say it.</summary>
internal sealed class RateBinder(Context context)
{
    private static readonly string[] ChainWords = ["ch", "chs", "chain", "chains", "stitches"];

    /// <summary>The rate; null, and reported, if it can't be understood.</summary>
    public BoundRate? Bind(RateSyntax rate)
    {
        if ((rate.Skipped ? context.TryStitch(rate.Stitch.Text) : context.StitchOf(rate.Stitch)) is not { } stitch || KindsOf(rate) is not { } kinds) return null;
        return new BoundRate(
            stitch,
            context.Evaluate.Counts(rate.Count, rate.Skipped ? 0 : 1),
            rate.Per is { } per ? context.Evaluate.Counts(per, 1) : Sized.Same<int?>(context.Sizes, 1),
            rate.OfStitches)
        { OfCorners = rate.OfCorners, Evenly = rate.Evenly, Kinds = kinds };
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

    private List<PlaceFilter>? KindsOf(RateSyntax rate)
    {
        var kinds = new List<PlaceFilter>();
        if (rate.OfCorners || rate.Evenly || !rate.OfStitches) return kinds;
        // `per 2 sts`
        if (rate.Kind.Count == 0) return [PlaceFilter.AnyStitch];
        IReadOnlyList<NameSyntax>[] said = rate.AlsoKind.Count > 0 ? [rate.Kind, rate.AlsoKind] : [rate.Kind];
        foreach (var words in said)
        {
            if (FilterOf(words) is not { } filter) return null;
            kinds.Add(filter);
        }

        return kinds;
    }

    private PlaceFilter? FilterOf(IReadOnlyList<NameSyntax> words)
    {
        if (words is [var one] && Array.Exists(ChainWords, w => string.Equals(one.Text, w, StringComparison.OrdinalIgnoreCase))) return PlaceFilter.AnyStitch;
        if (PlaceBinder.SpacesOf(words) is { } spaces) return spaces;
        if (words is [var word] && (PlaceBinder.IsStitch(word) || context.TryStitch(word.Text) is not null)) return PlaceBinder.IsStitch(word) ? PlaceFilter.AnyStitch : new PlaceFilter(PlaceFilterKind.OneStitch, context.TryStitch(word.Text), 0);
        context.Findings.Add(PlaceUnknown.OfRate(words));
        return null;
    }
}
