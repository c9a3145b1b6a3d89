using Turnrow.Fabric.Stitches;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Phrases;

/// <summary>Which places of a stretch stitches are spread over.</summary>
internal enum EvenPart : byte
{
    /// <summary>All of them.</summary>
    Whole,

    /// <summary>Those up to the first corner, where the yarn is joined.</summary>
    First,

    /// <summary>Those behind a corner.</summary>
    Next,
}

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
    /// <summary>How far along the stretch they are.</summary>
    public EvenPart Part { get; init; }

    /// <summary>Where the rate is so many in each place: how many places have one more, or one fewer if below 0, in a size that does not come out; else 0.</summary>
    public Sized<int> Odd { get; init; } = Sized.Of(0);

    // A maker keeps so many places in view.
    private const int MostPer = 5;

    // Over fewer than these she sees it by herself, and "about" says less than the numbers do.
    private const int FewestAbout = 9;

    /// <summary>The phrase for one size.</summary>
    public static EvenOver Of(Stitch stitch, int stitches, int places, PlaceName place, bool behindChain)
    {
        var (rate, per) = Nearest(stitches, places);
        var off = per == 1 ? stitches - (rate * places) : 0;
        return new EvenOver(
            stitch, Sized.Of(stitches - (behindChain ? 1 : 0)), Sized.Of(places), place, Sized.Of(rate), Sized.Of(per), (long)rate * places == (long)per * stitches, behindChain)
        {
            Odd = Sized.Of(off),
        };
    }

    protected override Phrase? Join(Phrase other) =>
        other is EvenOver even && even.Stitch == Stitch && even.BehindChain == BehindChain && even.Part == Part && Place.And(even.Place) is { } place
            ? this with
            {
                Count = Count.And(even.Count),
                Places = Places.And(even.Places),
                Place = place,
                Rate = Rate.And(even.Rate),
                Per = Per.And(even.Per),
                IsExact = IsExact && even.IsExact,
                Odd = Odd.And(even.Odd),
            }
            : null;

    protected override string Text(Wording words)
    {
        var one = Places.All(static n => n == 1);
        var over = one ? $"in {(Part == EvenPart.First ? "same" : PartOf("this"))} {Place.One(words)}" : $"evenly over {PartOf("these")} {Place.Counted(Places, words)}";
        var guide = Places.All(n => n <= MostPer || (n < FewestAbout && !IsExact)) ? string.Empty : BehindChain ? $" ({Guide()}, the {words.Ch} being one of them)" : $" ({Guide()})";
        return $"{Count.Written()} {words.Stitch(Stitch)} {over}{guide}";
    }

    private string PartOf(string whole) => Part switch
    {
        EvenPart.First => "first",
        EvenPart.Next => "next",
        _ => whole,
    };

    private string Guide()
    {
        var rate = Per.All(static n => n == 1) ? $"{Rate.Written()} in each" : $"{OfSeveral().Written()} in every {PerSeveral.Written()}";
        if (IsExact) return rate;
        if (Odd.All(static n => n > 0)) return $"{rate}, and 1 more in {Odd.Written()} of them";
        if (Odd.All(static n => n < 0)) return $"{rate}, but {(Rate.All(static n => n == 1) ? "none" : "1 fewer")} in {Odd.Select(static n => -n).Written()} of them";
        return $"about {rate}";
    }

    // Beside sizes with so many in every 5, 1 in each is 5 in every 5.
    private Sized<int> PerSeveral => Per.Select(per => per > 1 ? per : Per.Values.Max());

    private Sized<int> OfSeveral() => Sized.Over(Rate.Values.Zip(Per.Values, (rate, per) => per > 1 ? rate : rate * Per.Values.Max()));

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
