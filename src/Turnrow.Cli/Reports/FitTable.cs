using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;

namespace Turnrow.Cli.Reports;

/// <summary>Finished measures beside the body, a row each and a column a size.</summary>
internal static class FitTable
{
    public static void Write(TextWriter text, Pattern pattern)
    {
        var length = new LengthText(pattern.InInches);
        var sizes = pattern.Sizes.Select(static size => size.Length > 0 ? size : "all");
        Row(text, ["measure", .. sizes.Select(static size => size.Replace("|", "\\|", StringComparison.Ordinal))]);
        Row(text, ["---", .. pattern.Sizes.Select(static _ => "--:")]);
        foreach (var measure in pattern.Finished)
        {
            Row(text, [$"{measure.Name}, finished{Gives(measure)}, {length.Unit}", .. measure.Centimetres.Select(cm => length.Number(cm))]);
            if (measure.Body is { } body) Row(text, [$"{measure.Over ?? measure.Name}, body, {length.Unit}", .. body.Select(cm => length.Number(cm))]);
            if (measure.Ease is { } ease) Row(text, [$"{measure.Name}, {(measure.Along || measure.Over is not null ? "difference" : "ease")}, {length.Unit}", .. ease.Select(cm => Signed(length, cm))]);
        }
    }

    private static string Gives(FinishedMeasure measure) =>
        (measure.Opens ? " (opens)" : string.Empty) + (measure.Stretch is { } stretch ? $" (stretches by {stretch.ToTenths()} %)" : string.Empty);

    private static string Signed(LengthText length, Rational ease) => (ease > Rational.Zero ? "+" : string.Empty) + length.Number(ease);

    private static void Row(TextWriter text, IEnumerable<string> cells) => text.WriteLine($"| {string.Join(" | ", cells)} |");
}
