using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Cli.Reports;

/// <summary>What the finished sample tells the designer: how far off it is, the gauge it was really worked to, and what each size will measure.</summary>
internal static class SampleReport
{
    /// <summary>Writes it; nothing for a pattern without a sample.</summary>
    public static void Write(TextWriter writer, Pattern pattern)
    {
        if (pattern.Made.Count == 0) return;
        var text = new LengthText(pattern.InInches);
        writer.WriteLine("  the finished sample, beside what its stitches and rows are by the gauge:");
        foreach (var piece in pattern.Made) writer.WriteLine($"    {piece.Piece}{InSize(pattern, piece.Size)}: {string.Join(", ", Lengths(piece, text))}");
        var sample = new SampleGauge(pattern.Gauges, pattern.Made);
        writer.WriteLine("  so its true gauge is:");
        foreach (var fabric in sample.Fabrics) writer.WriteLine($"    {Fabric(pattern, fabric, text)}");
        foreach (var piece in pattern.Made)
        {
            if (piece.Height is { Fabric: null } height) writer.WriteLine($"    {Mixed(pattern, piece.Piece, height)}");
        }

        writer.WriteLine($"  and worked like that {(pattern.Sizes.Count > 1 ? "each size" : "it")} will measure:");
        foreach (var piece in pattern.Pieces)
            writer.WriteLine($"    {piece.Name}: {text.InSizes(piece.InSizes.Select(sample.WidthOf))} wide, {text.InSizes(piece.InSizes.Select(sample.HeightOf))} high");
        if (Untold(pattern, sample) is { Length: > 0 } untold) writer.WriteLine($"    ({untold}: by the gauge line, since the sample does not tell)");
    }

    private static string InSize(Pattern pattern, int size) => pattern.Sizes.Count > 1 ? $" in {pattern.Sizes[size]}" : string.Empty;

    private static IEnumerable<string> Lengths(MadePiece piece, LengthText text)
    {
        if (piece.Width is { } width) yield return Length(width, "wide", text);
        if (piece.Height is { } height) yield return Length(height, "high", text);
    }

    private static string Length(MadeLength length, string way, LengthText text)
    {
        var off = length.Difference is { } difference ? text.Number(difference.Magnitude()) : "?";
        var than = off == "0" ? "as planned" : $"{off} {text.Unit} {(length.Measured > length.Planned ? "more" : "less")} than {text.Number(length.Planned)}";
        return $"{text.Of(length.Measured)} {way} ({than})";
    }

    private static string Fabric(Pattern pattern, SampleFabric fabric, LengthText text)
    {
        var (said, parts) = (fabric.Said, new List<string>());
        if (fabric.Stitches is { } stitches) parts.Add($"{stitches.ToTenths()} stitches to {text.Of(said.StitchesOver)} (the gauge line says {said.Stitches.ToTenths()})");
        if (fabric.Rows is { } rows) parts.Add($"{rows.ToTenths()} rows to {text.Of(said.RowsOver)} (the gauge line says {said.Rows.ToTenths()})");
        return $"{Word(pattern, said.Stitch)}: {string.Join(", ", parts)}";
    }

    private static string Mixed(Pattern pattern, string piece, MadeLength height)
    {
        var fabrics = string.Join(" and ", height.Fabrics.Select(fabric => $"{Summary.Many(fabric.Rows, "row")} of {Word(pattern, fabric.Stitch)}"));
        var share = height.Measured * 100 is { } x && x / height.Planned is { } percent ? percent.ToTenths() : "?";
        return $"{piece} has {fabrics}, so its height gives no gauge of rows for {(height.Fabrics.Count == 2 ? "either" : "any of them")}: it is {share} % of what the gauges make it, and is reckoned so below";
    }

    // What is still by the gauge lines.
    private static string Untold(Pattern pattern, SampleGauge sample)
    {
        var (widths, heights) = (new HashSet<Stitch>(), new HashSet<Stitch>());
        foreach (var piece in pattern.Pieces.SelectMany(piece => piece.InSizes))
        {
            if (sample.Said.WidestOf(piece.Rows) is { } widest && GaugeBook.WidthFabricOf(widest.Row) is { } stitch) widths.Add(stitch);
            if (!sample.IsReckonedWhole(piece)) heights.UnionWith(GaugeBook.FabricsOf(piece.Rows).Select(fabric => fabric.Stitch));
        }

        var untold = new List<string>();
        foreach (var gauge in pattern.Gauges.Gauges)
        {
            var fabric = sample.Fabrics.FirstOrDefault(each => each.Said == gauge);
            if (fabric?.Stitches is null && widths.Contains(gauge.Stitch)) untold.Add($"widths of {Word(pattern, gauge.Stitch)}");
            if (fabric?.Rows is null && heights.Contains(gauge.Stitch)) untold.Add($"heights of {Word(pattern, gauge.Stitch)}");
        }

        return string.Join(", ", untold);
    }

    private static string Word(Pattern pattern, Stitch stitch) => stitch.In(pattern.Terms).Abbreviation;
}
