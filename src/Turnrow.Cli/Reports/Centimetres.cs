using System.Globalization;
using Turnrow.Fabric.Numbers;

namespace Turnrow.Cli.Reports;

/// <summary>Lengths as numbers for other programs.</summary>
internal static class Centimetres
{
    /// <summary>To a tenth of a millimetre, halves away from zero, without useless zeros: <c>40.53</c>, <c>20</c>.</summary>
    public static string Of(Rational length) => Math
        .Round((decimal)length.Numerator / length.Denominator, 2, MidpointRounding.AwayFromZero)
        .ToString("0.##", CultureInfo.InvariantCulture);
}
