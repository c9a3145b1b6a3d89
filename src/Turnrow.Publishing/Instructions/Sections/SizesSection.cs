using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Sections;

/// <summary>The sizes, the measurements they are made for, and what the finished pieces measure.</summary>
internal static class SizesSection
{
    private static readonly string[] UnitsOfCounts = ["-rows", "-stitches", "-sts"];

    public static IEnumerable<string> Write(Pattern pattern, SizeNames names, Wording words)
    {
        var made = Made(pattern, true, words);
        var own = Made(pattern, false, words);
        var finished = Finished(pattern).Concat(Pieces(pattern)).ToList();
        if (!names.AreSeveral && made.Count + own.Count + finished.Count == 0) yield break;
        yield return names.AreSeveral ? "## Sizes" : "## Measurements";
        if (names.AreSeveral) yield return names.All;
        if (made.Count > 0)
        {
            yield return pattern.BodySource is { Length: > 0 } source ? $"Made for ({Bare(source)}):" : "Made for:";
            yield return string.Join('\n', made);
        }

        if (own.Count > 0)
        {
            yield return made.Count > 0 ? "By the designer's own measure:" : "Made for:";
            yield return string.Join('\n', own);
        }

        if (finished.Count > 0)
        {
            yield return "Finished measurements:";
            yield return string.Join('\n', finished);
        }

        if (names.AreSeveral && pattern.ChosenBy is { } chosenBy) yield return Choosing(chosenBy, pattern);
    }

    private static List<string> Made(Pattern pattern, bool ofTable, Wording words) =>
        [.. pattern.Measures.Where(m => m.OfTable == ofTable).Select(m => Line(ofTable ? Spelled(m.Name, words) : m.Name, m.Centimetres, pattern.InInches) + Source(m))];

    // The tables are read in both spellings.
    private static string Spelled(string name, Wording words) => name.Replace("centre", words.Terms.Centre, StringComparison.Ordinal);

    // It stands in parentheses, which do not stand within others.
    private static string Bare(string source) => MarkdownText.Of(source).Replace(" (", "; ", StringComparison.Ordinal).Replace(")", string.Empty, StringComparison.Ordinal);

    // A table that is put together of several says of each measure where it is from.
    private static string Source(Measure measure) => measure.Source is { Length: > 0 } source ? $" ({Bare(source)})" : string.Empty;

    // Where the pattern says what the garment measures, the counts on the way there are nothing to the maker.
    private static IEnumerable<string> Finished(Pattern pattern) => pattern.Finished.Count > 0
        ? pattern.Finished.Select(f => FinishedLine(f, pattern.InInches))
        : pattern.FittedCounts.Select(c => Line(MeasuredName(c.Name), c.Measured, pattern.InInches));

    private static string FinishedLine(FinishedMeasure finished, bool inInches)
    {
        var line = Line(finished.Name, finished.Centimetres, inInches);
        if (finished.Along || finished.Ease is not { } ease) return line;
        var body = Lengths.Own(Sized.Over(finished.Body!), inInches);
        return finished.Over is { } over ? $"{line}; to go over a {Names.Words(over)} of {body}{Stretching(finished)}" : $"{line}; to fit {body}, {EaseWords(ease, inInches)}";
    }

    private static string Stretching(FinishedMeasure finished) =>
        finished.Stretch is { } stretch && stretch > Rational.Zero ? $", it stretches by {Lengths.Decimal(stretch)}%" : string.Empty;

    private static string EaseWords(IReadOnlyList<Rational> ease, bool inInches) =>
        ease.All(static e => e >= Rational.Zero) ? $"with {Lengths.Own(Sized.Over(ease), inInches)} of ease"
        : ease.All(static e => e <= Rational.Zero) ? $"stretched by {Lengths.Own(Sized.Over(ease).Select(static e => e.Magnitude()), inInches)}"
        : $"from {Lengths.Own(Sized.Of(ease.Min().Magnitude()), inInches)} less to {Lengths.Own(Sized.Of(ease.Max()), inInches)} more than the body";

    private static string Choosing(FinishedMeasure by, Pattern pattern)
    {
        var inInches = pattern.InInches;
        var whose = pattern.Wearer switch { Wearer.Child => "the child's", Wearer.Baby => "the baby's", _ => null };
        var (least, most) = (by.Ease!.Min(), by.Ease!.Max());
        var name = Names.Words(by.Name);
        if (most <= Rational.Zero) return $"Choose the size made for the {name} nearest to {whose ?? "yours"}; it is worn stretched.";
        if (least < Rational.Zero)
            return $"Choose the size made for the {name} nearest to {whose ?? "yours"}: the garment then measures from {Lengths.Both(Sized.Of(least.Magnitude()), inInches)} less to {Lengths.Both(Sized.Of(most), inInches)} more there.";
        var range = Lengths.Own(Sized.Of(least), inInches) == Lengths.Own(Sized.Of(most), inInches) ? Lengths.Both(Sized.Of(most), inInches) : $"{Lengths.Both(Sized.Of(least), inInches)} to {Lengths.Both(Sized.Of(most), inInches)}";
        return $"Choose the size made for the {name} nearest to {whose ?? "yours"}: the garment then measures {range} more there.";
    }

    private static string Line(string name, IReadOnlyList<Rational> centimetres, bool inInches) =>
        $"- {Names.Title(name)}: {Lengths.Both(Sized.Over(centimetres), inInches)}";

    // A count of rows that is called so is a length in print: `armhole-rows` is how long the armhole is.
    private static string MeasuredName(string name) =>
        UnitsOfCounts.FirstOrDefault(unit => name.Length > unit.Length && name.EndsWith(unit, StringComparison.OrdinalIgnoreCase)) is { } unit
            ? name[..^unit.Length]
            : name;

    private static IEnumerable<string> Pieces(Pattern pattern)
    {
        foreach (var piece in pattern.Pieces)
        {
            var parts = new List<string>();
            var widths = InSizes(piece, p => pattern.Gauges.WidestOf(p.Rows)?.Width);
            var heights = InSizes(piece, p => pattern.Gauges.HeightOf(p.Rows));
            var shape = new PieceShape(piece, pattern, widths, heights);
            if (shape.IsAslant) continue;
            if (heights is not null && shape.AlikeSides is > 0 and var sides && Twice(heights) is { } across)
            {
                yield return $"- {Names.Title(piece.Name)}: {Lengths.Both(across, pattern.InInches)} {(sides == 4 ? "square" : "from side to side")}";
                continue;
            }

            if (widths is not null) parts.Add($"{Lengths.Both(widths, pattern.InInches)} {shape.AlongRows}");
            if (heights is not null) parts.Add($"{Lengths.Both(heights, pattern.InInches)} {shape.AcrossRows}");
            if (shape.IsSideways) parts.Reverse();
            if (parts.Count > 0) yield return $"- {Names.Title(piece.Name)}: {string.Join(", ", parts)}";
        }

        foreach (var blanket in pattern.Blankets)
        {
            if (Blanket(pattern, blanket, static l => l.HalvesAcross) is not { } wide || Blanket(pattern, blanket, HalvesDown) is not { } high) continue;
            yield return $"- {Names.Title(blanket.Name)}: {Lengths.Both(wide, pattern.InInches)} wide, {Lengths.Both(high, pattern.InInches)} long";
        }
    }

    // From a side to the middle, and on to the side across.
    private static Sized<Rational>? Twice(Sized<Rational> heights)
    {
        var twice = new List<Rational>();
        foreach (var height in heights.Values)
        {
            if (height + height is not { } whole) return null;
            twice.Add(whole);
        }

        return Sized.Over(twice);
    }

    // The rows of hexagons reach into each other: from one to the next is the square root of three times half a motif, and two tips more.
    private static Rational? HalvesDown(Fabric.Motifs.MotifLayout layout) =>
        !layout.IsSetOff ? (Rational)(2L * layout.Down) : Rational.Of(97, 56) is { } row && Rational.Of(97, 42) is { } tips && row * (layout.Down - 1L) is { } rows ? rows + tips : null;

    // So many halves of a motif, each as long as it is from a motif's middle to its edge.
    private static Sized<Rational>? Blanket(Pattern pattern, BlanketInSizes blanket, Func<Fabric.Motifs.MotifLayout, Rational?> halves)
    {
        var all = new List<Rational>();
        foreach (var size in blanket.InSizes)
        {
            if (size is not { Motif.Start: RingStart } made || pattern.Gauges.HeightOf(made.Motif.Rows) is not { } half || halves(made.Layout) is not { } many || half * many is not { } length) return null;
            all.Add(length);
        }

        return Sized.Over(all);
    }

    private static Sized<Rational>? InSizes(PieceInSizes piece, Func<Piece, Rational?> measure)
    {
        var all = new List<Rational>();
        foreach (var inSize in piece.InSizes)
        {
            if (inSize.RowsInDoubt || inSize.Rows.Count == 0 || measure(inSize) is not { } one) return null;
            all.Add(one);
        }

        return all.Count > 0 ? Sized.Over(all) : null;
    }
}
