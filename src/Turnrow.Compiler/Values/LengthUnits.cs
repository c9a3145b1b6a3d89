using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Values;

/// <summary>In which units the designer thinks: those of the file's first gauge or measurement.</summary>
internal static class LengthUnits
{
    public static bool InInches(SyntaxTree tree)
    {
        foreach (var line in tree.Lines)
        {
            switch (line.Statement)
            {
                case GaugeStatement gauge: return Units.IsImperial(gauge.Stitches.Unit.Unit);
                case MeasureStatement { Value: NumberExpression { Unit: { } unit } }: return Units.IsImperial(unit.Unit);
                case MeasureStatement { Value: SizesExpression { Unit: { } unit } }: return Units.IsImperial(unit.Unit);
            }
        }

        return false;
    }
}
