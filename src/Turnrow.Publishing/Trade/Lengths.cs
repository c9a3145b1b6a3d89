using System.Globalization;
using Turnrow.Fabric.Numbers;

namespace Turnrow.Publishing.Trade;

/// <summary>Lengths as print gives them: centimetres to the half, inches to the quarter; only here are they rounded.</summary>
internal static class Lengths
{
    /// <summary>A yard is 0.9144 m by definition.</summary>
    public static readonly Rational YardsInMetre = Rational.Of(10_000, 9_144) ?? Rational.One;

    /// <summary><c>20 cm (7 3/4 in)</c>, <c>36 (38, 40) cm / 14 1/4 (15, 15 3/4) in</c>; a designer's own unit comes first.</summary>
    public static string Both(Sized<Rational> centimetres, bool inchesFirst)
    {
        var first = Own(centimetres, inchesFirst);
        var second = Own(centimetres, !inchesFirst);
        return first.Contains('(', StringComparison.Ordinal) || second.Contains('(', StringComparison.Ordinal)
            ? $"{first} / {second}"
            : $"{first} ({second})";
    }

    /// <summary>In one unit: <c>36 (38, 40) cm</c>.</summary>
    public static string Own(Sized<Rational> centimetres, bool inInches) => inInches
        ? $"{centimetres.Select(QuarterInches).Written(static r => r.ToString())} in"
        : $"{centimetres.Select(HalfCentimetres).Written(Decimal)} cm";

    /// <summary>To the nearest half centimetre, on a tie the larger.</summary>
    public static Rational HalfCentimetres(Rational centimetres) => Nearest(centimetres, 2);

    /// <summary>In inches to the nearest quarter, on a tie the larger.</summary>
    public static Rational QuarterInches(Rational centimetres) =>
        centimetres * 50 is { } x && x / 127 is { } inches ? Nearest(inches, 4) : centimetres;

    /// <summary>A number with at most two decimals, as metric measures are written: <c>3.5</c>.</summary>
    public static string Decimal(Rational number)
    {
        var hundredths = Nearest(number, 100) * 100 ?? number;
        return (hundredths.Floor() / 100m).ToString("0.##", CultureInfo.InvariantCulture);
    }

    private static Rational Nearest(Rational value, int parts) =>
        value * parts is { } scaled && Rational.Of(Allowed.Any.Nearest(scaled), parts) is { } rounded ? rounded : value;
}
