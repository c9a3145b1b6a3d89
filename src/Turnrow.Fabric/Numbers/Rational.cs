using System.Globalization;

namespace Turnrow.Fabric.Numbers;

/// <summary>
/// An exact fraction in lowest terms. Lengths, gauges and everything in between are fractions, since rounding twice gives
/// another count than rounding once. Arithmetic whose result no longer fits gives null, never a wrong number.
/// </summary>
public readonly record struct Rational : IComparable<Rational>
{
    private readonly long _denominatorLessOne;

    private Rational(long numerator, long denominator)
    {
        Numerator = numerator;
        _denominatorLessOne = denominator - 1;
    }

    /// <summary>Numerator; carries the sign.</summary>
    public long Numerator { get; }

    /// <summary>Denominator, at least 1.</summary>
    public long Denominator => _denominatorLessOne + 1;

    /// <summary>0.</summary>
    public static Rational Zero => default;

    /// <summary>1.</summary>
    public static Rational One => new(1, 1);

    /// <summary>True if it is a whole number.</summary>
    public bool IsWhole => _denominatorLessOne == 0;

    /// <summary>A whole number as a fraction.</summary>
    public static implicit operator Rational(long value) => new(value, 1);

    /// <summary>The fraction <paramref name="numerator"/> / <paramref name="denominator"/>; null if it does not fit or the denominator is 0.</summary>
    public static Rational? Of(Int128 numerator, Int128 denominator)
    {
        if (denominator == 0) return null;
        if (denominator < 0) (numerator, denominator) = (-numerator, -denominator);
        var divisor = GreatestDivisor(numerator < 0 ? -numerator : numerator, denominator);
        numerator /= divisor;
        denominator /= divisor;
        return numerator > long.MaxValue || numerator < -long.MaxValue || denominator > long.MaxValue
            ? null
            : new Rational((long)numerator, (long)denominator);
    }

    /// <summary>The sum; null if it does not fit.</summary>
    public static Rational? operator +(Rational a, Rational b) =>
        Of(((Int128)a.Numerator * b.Denominator) + ((Int128)b.Numerator * a.Denominator), (Int128)a.Denominator * b.Denominator);

    /// <summary>The difference; null if it does not fit.</summary>
    public static Rational? operator -(Rational a, Rational b) => a + new Rational(-b.Numerator, b.Denominator);

    /// <summary>The product; null if it does not fit.</summary>
    public static Rational? operator *(Rational a, Rational b) =>
        Of((Int128)a.Numerator * b.Numerator, (Int128)a.Denominator * b.Denominator);

    /// <summary>The quotient; null if it does not fit or <paramref name="b"/> is 0.</summary>
    public static Rational? operator /(Rational a, Rational b) =>
        Of((Int128)a.Numerator * b.Denominator, (Int128)a.Denominator * b.Numerator);

    public static bool operator <(Rational a, Rational b) => a.CompareTo(b) < 0;

    public static bool operator >(Rational a, Rational b) => a.CompareTo(b) > 0;

    public static bool operator <=(Rational a, Rational b) => a.CompareTo(b) <= 0;

    public static bool operator >=(Rational a, Rational b) => a.CompareTo(b) >= 0;

    /// <inheritdoc/>
    public int CompareTo(Rational other) =>
        ((Int128)Numerator * other.Denominator).CompareTo((Int128)other.Numerator * Denominator);

    /// <summary>The largest whole number not above it.</summary>
    public long Floor() => Numerator >= 0 || IsWhole ? Numerator / Denominator : (Numerator / Denominator) - 1;

    /// <summary>The smallest whole number not below it.</summary>
    public long Ceiling() => IsWhole ? Numerator : Floor() + 1;

    /// <summary>Its distance from 0.</summary>
    public Rational Magnitude() => new(Math.Abs(Numerator), Denominator);

    /// <summary>For drawing only.</summary>
    public double ToDouble() => (double)Numerator / Denominator;

    /// <summary>As print writes it: <c>12</c>, <c>7 1/2</c>, <c>1/3</c>.</summary>
    public override string ToString()
    {
        var culture = CultureInfo.InvariantCulture;
        if (IsWhole) return Numerator.ToString(culture);
        var whole = Math.Abs(Numerator) / Denominator;
        var rest = $"{(Math.Abs(Numerator) % Denominator).ToString(culture)}/{Denominator.ToString(culture)}";
        var sign = Numerator < 0 ? "-" : string.Empty;
        return whole == 0 ? sign + rest : $"{sign}{whole.ToString(culture)} {rest}";
    }

    /// <summary>To the nearest tenth, on a tie the larger, as a tape is read: <c>45.5</c>, <c>46</c>.</summary>
    public string ToTenths()
    {
        if (this * 20 is not { } twenty || twenty + One is not { } more || more / 2 is not { } half) return ToString();
        return (half.Floor() / 10m).ToString("0.#", CultureInfo.InvariantCulture);
    }

    // b is above 0, so what comes out is.
    private static Int128 GreatestDivisor(Int128 a, Int128 b)
    {
        while (b != 0) (a, b) = (b, a % b);
        return a;
    }
}
