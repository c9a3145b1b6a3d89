using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;

namespace Turnrow.Cli.Reports;

/// <summary>
/// Which of the printed sizes, worked at a maker's gauge, comes nearest to each size as it is meant: the one whose pieces' widths differ
/// least, their differences added up; of two that differ alike the larger.
/// </summary>
internal sealed class NearestSizes
{
    private readonly Pattern _pattern;
    private readonly LengthText _text;
    private readonly List<Measured> _widths;
    private readonly List<Measured> _heights;

    public NearestSizes(Pattern pattern, GaugeBook hers)
    {
        _pattern = pattern;
        _text = new LengthText(pattern.InInches);
        _widths = Known(pattern, hers, GaugeReport.WidthOf);
        _heights = Known(pattern, hers, GaugeReport.HeightOf);
    }

    /// <summary>Index of the size to work for a size; null if no width is known.</summary>
    public int? For(int size)
    {
        (int Size, Rational Off)? best = null;
        for (var other = 0; _widths.Count > 0 && other < _pattern.Sizes.Count; other++)
        {
            if (Sum(size, other) is { } off && (best is null || off <= best.Value.Off)) best = (other, off);
        }

        return best?.Size;
    }

    /// <summary>Writes a line a size.</summary>
    public void Write(TextWriter writer, IReadOnlyList<int> sizes)
    {
        List<string[]> rows = [["for", "work", "its widths are then", "its heights are then"]];
        foreach (var size in sizes)
        {
            rows.Add(For(size) is { } other
                ? [_pattern.Sizes[size], _pattern.Sizes[other], Far(_widths, size, other, "wider", "narrower"), Far(_heights, size, other, "taller", "shorter")]
                : [_pattern.Sizes[size], "?", "?", "?"]);
        }

        TextTable.Write(writer, rows);
    }

    private Rational? Sum(int size, int other)
    {
        Rational? sum = Rational.Zero;
        foreach (var piece in _widths) sum = sum is { } so && piece.Off(size, other) is { } off ? so + off.Magnitude() : null;
        return sum;
    }

    // The piece that is furthest off.
    private string Far(List<Measured> pieces, int size, int other, string more, string less)
    {
        (string Piece, Rational Off)? furthest = null;
        foreach (var piece in pieces)
        {
            if (piece.Off(size, other) is { } off && (furthest is null || off.Magnitude() > furthest.Value.Off.Magnitude())) furthest = (piece.Name, off);
        }

        if (furthest is not var (name, most)) return "?";
        var length = _text.Number(most.Magnitude());
        return length == "0" ? "as meant" : $"{(pieces.Count > 1 ? "up to " : string.Empty)}{length} {_text.Unit} {(most > Rational.Zero ? more : less)} ({name})";
    }

    private static List<Measured> Known(Pattern pattern, GaugeBook hers, Func<Fabric.Pieces.Piece, GaugeBook, Rational?> measure)
    {
        var known = new List<Measured>();
        foreach (var piece in pattern.Pieces)
        {
            var meant = piece.InSizes.Select(inSize => measure(inSize, pattern.Gauges)).ToList();
            var worked = piece.InSizes.Select(inSize => measure(inSize, hers)).ToList();
            if (meant.TrueForAll(m => m is not null) && worked.TrueForAll(w => w is not null)) known.Add(new Measured(piece.Name, meant, worked));
        }

        return known;
    }

    /// <summary>A length of a piece, a size: as it is meant, and as it comes out at the maker's gauge.</summary>
    private sealed record Measured(string Name, IReadOnlyList<Rational?> Meant, IReadOnlyList<Rational?> Worked)
    {
        public Rational? Off(int size, int other) => Worked[other]!.Value - Meant[size]!.Value;
    }
}
