using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Sections;

/// <summary>How much yarn is needed. What is missing to say it is the designer's to know, not the maker's.</summary>
internal static class YarnNeedLine
{
    private const int GramsStep = 5;

    public static string Of(YarnNeed need, IReadOnlyList<Rational> grams, Pattern pattern, Wording words)
    {
        var named = words.NamesYarns ? $", {Names.Words(need.Yarn.Name)}" : string.Empty;
        var parts = new List<string> { $"{Sized.Over(grams).Select(ToStep).Written(Lengths.Decimal)} g" };
        if (need.Metres is { } metres) parts.Add(Length(Sized.Over(metres), pattern.InInches));
        if (need.Balls is { } balls) parts.Add($"{Sized.Over(balls).Written(static b => Numbers.Plain((int)b))} {(balls.All(static b => b == 1) ? "ball" : "balls")}");
        var line = $"- Yarn needed{named}: {string.Join(", ", parts)}";
        line += need.Yarn.Extra is { } extra ? $"; {Lengths.Decimal(extra)}% is included for seams, ends and differences in {words.Terms.Gauge.ToLowerInvariant()}" : "; nothing is added for seams and ends";
        return need.Unknown.Count > 0 ? $"{line}, and nothing for the chains of spaces" : line;
    }

    // A kitchen scale and a shop both think in steps of five; up, never down.
    private static Rational ToStep(Rational grams) => Up(grams, GramsStep);

    private static string Length(Sized<Rational> metres, bool inInches)
    {
        var yards = metres.Select(m => Up(m * Lengths.YardsInMetre ?? m, GramsStep)).Written(Lengths.Decimal);
        var own = metres.Select(ToStep).Written(Lengths.Decimal);
        return inInches ? $"{yards} yd / {own} m" : $"{own} m / {yards} yd";
    }

    private static Rational Up(Rational number, int step) =>
        Rational.Of(number.Numerator, (Int128)number.Denominator * step) is { } steps ? (steps.IsWhole ? steps.Floor() : steps.Floor() + 1) * step : number;
}
