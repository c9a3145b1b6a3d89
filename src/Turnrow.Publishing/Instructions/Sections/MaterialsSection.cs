using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Sections;

/// <summary>Yarn, hook and notions; then the gauge.</summary>
internal static class MaterialsSection
{
    public static IEnumerable<string> Write(Pattern pattern, Wording words)
    {
        var materials = pattern.Yarns.Select(y => YarnLine(y, pattern.InInches)).ToList();
        foreach (var need in YarnNeed.All(pattern))
        {
            if (need.Grams is { } grams) materials.Add(YarnNeedLine.Of(need, grams, pattern, words));
        }

        if (pattern.HookMillimetres is { } hook) materials.Add(HookLine(hook, pattern, words));
        materials.AddRange(pattern.Notions.Select(static n => $"- {Wording.Sentence(MarkdownText.Of(n))}"));
        if (materials.Count > 0)
        {
            materials.AddRange(Tools(pattern));
            yield return "## Materials";
            yield return string.Join('\n', materials);
        }

        if (pattern.Gauges.Gauges.Count == 0) yield break;
        yield return $"## {words.Terms.Gauge}";
        yield return string.Join('\n', pattern.Gauges.Gauges.Select(g => GaugeLine(g, words)));
    }

    // What every maker of it needs besides, unless the designer says it in her own words. Common practice, no source.
    private static IEnumerable<string> Tools(Pattern pattern)
    {
        bool Says(string what) => pattern.Notions.Any(notion => notion.Contains(what, StringComparison.OrdinalIgnoreCase));
        if (MarkersUsed.In(pattern).AtOnce is > 0 and var markers && !Says("marker")) yield return markers == 1 ? "- Stitch marker" : $"- Stitch markers: {Numbers.Plain(markers)}";
        if (pattern.Items.OfType<SeamInSizes>().Any(static seam => seam.InSizes.Any(static one => one is { GoesOn: true })) && !Says("pin")) yield return "- Pins";
        if (!Says("needle")) yield return "- Yarn needle";
    }

    private static string YarnLine(Yarn yarn, bool inInches)
    {
        var parts = new List<string>();
        if (yarn.Description is { } description) parts.Add(MarkdownText.Of(description));
        if (yarn.Weight is { } weight)
            parts.Add(YarnWeights.NameOf(weight) is { } name ? $"weight {Numbers.Plain(weight)} ({name})" : $"weight {Numbers.Plain(weight)}");
        if (yarn.Grams is { } grams) parts.Add($"{Lengths.Decimal(grams)} g a ball");
        if (yarn.Metres is { } metres) parts.Add($"{Length(metres, inInches)} a ball");
        var yarnName = $"- Yarn, {Names.Words(yarn.Name)}";
        return parts.Count > 0 ? $"{yarnName}: {string.Join(", ", parts)}" : yarnName;
    }

    /// <summary>A length of yarn in the designer's unit, and the other.</summary>
    public static string Length(Rational metres, bool inInches)
    {
        if (metres * Lengths.YardsInMetre is not { } yards) return $"{Lengths.Decimal(metres)} m";
        return inInches ? $"{Lengths.Decimal(yards)} yd ({Whole(metres)} m)" : $"{Lengths.Decimal(metres)} m ({Whole(yards)} yd)";
    }

    private static string Whole(Rational number) => Lengths.Decimal(Allowed.Any.Nearest(number));

    private static string HookLine(Rational millimetres, Pattern pattern, Wording words)
    {
        var us = HookSizes.UsName(millimetres) is { } name ? $" (US {name})" : string.Empty;
        return $"- Hook: {Lengths.Decimal(millimetres)} mm{us}{(pattern.Gauges.Gauges.Count == 0 ? string.Empty : $", or the size that gives the {words.Terms.Gauge.ToLowerInvariant()}")}";
    }

    private static string GaugeLine(Gauge gauge, Wording words)
    {
        var stitch = gauge.Pattern is { } pattern ? Names.Words(pattern.Name) : words.Stitch(gauge.Stitch);
        var stitches = gauge is { OfRepeats: true, Pattern: { } repeated } ? Repeats(gauge, repeated, words) : $"{gauge.Stitches} {words.Sts}";
        var rows = $"{gauge.Rows} rows";
        var over = Lengths.Both(Sized.Of(gauge.StitchesOver), gauge.InInches);
        return gauge.StitchesOver == gauge.RowsOver
            ? $"- {stitches} and {rows} of {stitch} measure {over}"
            : $"- {stitches} of {stitch} measure {over}, {rows} measure {Lengths.Both(Sized.Of(gauge.RowsOver), gauge.InInches)}";
    }

    private static string Repeats(Gauge gauge, StitchPattern pattern, Wording words)
    {
        var repeats = gauge.Stitches / pattern.Multiple;
        return $"{(repeats is { } number ? Lengths.Decimal(number) : "?")} {(repeats == Rational.One ? "repeat" : "repeats")} ({gauge.Stitches} {words.Sts})";
    }
}
