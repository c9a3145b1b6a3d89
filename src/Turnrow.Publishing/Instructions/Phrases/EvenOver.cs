using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Phrases;

/// <summary>Stitches spread over an edge: <c>28 (30) sc evenly over these 42 (44) row-ends (about 2 in every 3)</c>.</summary>
/// <param name="Stitch">The stitch.</param>
/// <param name="Count">How many, without the one that the chain stands for.</param>
/// <param name="Places">Over how many places.</param>
/// <param name="Place">What they are.</param>
/// <param name="Rate">So many …</param>
/// <param name="Per">… in every so many.</param>
/// <param name="IsExact">True if that comes out.</param>
/// <param name="BehindChain">True if the chain stands for one more, in the first place.</param>
internal sealed record EvenOver(
    Stitch Stitch, Sized<int> Count, Sized<int> Places, PlaceName Place, Sized<int> Rate, Sized<int> Per, bool IsExact, bool BehindChain) : Phrase
{
    // A maker keeps so many places in view.
    private const int MostPer = 5;

    /// <summary>The phrase for one size.</summary>
    public static EvenOver Of(Stitch stitch, int stitches, int places, PlaceName place, bool behindChain)
    {
        var (rate, per) = Nearest(stitches, places);
        return new EvenOver(
            stitch, Sized.Of(stitches - (behindChain ? 1 : 0)), Sized.Of(places), place, Sized.Of(rate), Sized.Of(per), (long)rate * places == (long)per * stitches, behindChain);
    }

    protected override Phrase? Join(Phrase other) =>
        other is EvenOver even && even.Stitch == Stitch && even.BehindChain == BehindChain && Place.And(even.Place) is { } place
            ? this with
            {
                Count = Count.And(even.Count),
                Places = Places.And(even.Places),
                Place = place,
                Rate = Rate.And(even.Rate),
                Per = Per.And(even.Per),
                IsExact = IsExact && even.IsExact,
            }
            : null;

    protected override string Text(Wording words)
    {
        var one = Places.All(static n => n == 1);
        var over = one ? $"in this {Place.One(words)}" : $"evenly over these {Place.Counted(Places, words)}";
        var about = IsExact ? string.Empty : "about ";
        var rate = Per.All(static n => n == 1) ? $"{Rate.Written()} in each" : $"{Rate.Written()} in every {Per.Written()}";
        var guide = Places.All(static n => n <= MostPer) ? string.Empty : BehindChain ? $" ({about}{rate}, the {words.Ch} being one of them)" : $" ({about}{rate})";
        return $"{Count.Written()} {words.Stitch(Stitch)} {over}{guide}";
    }

    private static (int Rate, int Per) Nearest(int stitches, int places)
    {
        if (stitches == 0) return (0, 1);
        if ((long)stitches * MostPer < places) return (1, (int)Math.Round((double)places / stitches));
        var best = (Rate: 1, Per: 1);
        var off = double.MaxValue;
        for (var per = 1; per <= Math.Min(MostPer, places); per++)
        {
            var rate = Math.Max(1, (int)Math.Round((double)stitches * per / places));
            var apart = Math.Abs(((double)rate / per) - ((double)stitches / places));
            if (apart < off - 1e-9) (best, off) = ((rate, per), apart);
        }

        return best;
    }
}
