using Turnrow.Fabric.Numbers;

namespace Turnrow.Cli.Reports;

/// <summary>Lengths for the designer: in the unit of the pattern, to a tenth.</summary>
internal sealed class LengthText(bool inInches)
{
    private static readonly Rational Inch = Rational.Of(254, 100)!.Value;

    /// <summary><c>cm</c> or <c>in</c>.</summary>
    public string Unit => inInches ? "in" : "cm";

    /// <summary><c>45.5</c>; <c>?</c> for one that is not known.</summary>
    public string Number(Rational? centimetres) => InUnit(centimetres) is { } length ? length.ToTenths() : "?";

    /// <summary><c>45.5 cm</c></summary>
    public string Of(Rational? centimetres) => $"{Number(centimetres)} {Unit}";

    /// <summary><c>45.5 (50.3, 55.1) cm</c></summary>
    public string InSizes(IEnumerable<Rational?> centimetres) => $"{SizedText.Of([.. centimetres.Select(Number)])} {Unit}";

    /// <summary>A length in the unit, exactly.</summary>
    public Rational? InUnit(Rational? centimetres) => centimetres is { } cm ? inInches ? cm / Inch : cm : null;
}
