namespace Turnrow.Fabric.Numbers;

/// <summary>The counts that are allowed: every <see cref="Every"/>th, beginning with <see cref="From"/> above a multiple.</summary>
/// <param name="Every">Distance between two allowed counts, at least 1.</param>
/// <param name="From">What an allowed count leaves when divided by <paramref name="Every"/>, 0 to <paramref name="Every"/> - 1.</param>
public readonly record struct Allowed(int Every, int From)
{
    /// <summary>Any whole number.</summary>
    public static Allowed Any => new(1, 0);

    /// <summary>1, 3, 5 …</summary>
    public static Allowed Odd => new(2, 1);

    /// <summary>2, 4, 6 …</summary>
    public static Allowed Even => new(2, 0);

    /// <summary>A multiple of <paramref name="multiple"/>, plus <paramref name="plus"/>: 6 + 1 allows 7, 13, 19 …</summary>
    public static Allowed Multiple(int multiple, int plus) => new(multiple, ((plus % multiple) + multiple) % multiple);

    /// <summary>True if the count is one of them.</summary>
    public bool Has(long count) => ((count % Every) + Every) % Every == From;

    /// <summary>The largest allowed count not above <paramref name="exact"/>.</summary>
    public long AtMost(Rational exact)
    {
        var floor = exact.Floor();
        return floor - ((((floor - From) % Every) + Every) % Every);
    }

    /// <summary>
    /// The allowed count nearest to <paramref name="exact"/>, in one step; on a tie the larger. (Common practice, no source:
    /// more stitches block to size, fewer do not.)
    /// </summary>
    public long Nearest(Rational exact)
    {
        var below = AtMost(exact);
        if (exact == below) return below;
        var above = below + Every;
        // exact - below < above - exact, without a difference that might not fit.
        return exact < (Rational.Of((Int128)below + above, 2) ?? exact) ? below : above;
    }

    /// <summary>Both hold at once; null if no count does, or none below two thousand million.</summary>
    public Allowed? And(Allowed other)
    {
        var every = LeastMultiple(Every, other.Every);
        if (every > int.MaxValue) return null;
        for (long count = From; count < every; count += Every)
        {
            if (other.Has(count)) return new Allowed((int)every, (int)count);
        }

        return null;
    }

    private static long LeastMultiple(int a, int b)
    {
        var (x, y) = (a, b);
        while (y != 0) (x, y) = (y, x % y);
        return (long)a / x * b;
    }
}
