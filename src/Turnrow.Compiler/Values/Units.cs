using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Values;

/// <summary>Units as centimetres, exactly: an inch is 2.54 cm, a yard 91.44 cm by definition.</summary>
internal static class Units
{
    public static Rational Centimetres(LengthUnit unit) => unit switch
    {
        LengthUnit.Millimetre => Rational.Of(1, 10)!.Value,
        LengthUnit.Inch => Rational.Of(254, 100)!.Value,
        LengthUnit.Metre => 100,
        LengthUnit.Yard => Rational.Of(9144, 100)!.Value,
        _ => 1,
    };

    public static bool IsImperial(LengthUnit unit) => unit is LengthUnit.Inch or LengthUnit.Yard;
}
