using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Pieces;

namespace Turnrow.Fabric.Patterns;

/// <summary>
/// What the finished sample tells: the gauge that it really was worked to, and what every size measures by that. Where several pieces tell
/// of one fabric their lengths are added up, so that the longer measurement weighs more.
/// </summary>
public sealed class SampleGauge
{
    private readonly Dictionary<string, Lengths> _mixed = new(StringComparer.OrdinalIgnoreCase);

    /// <param name="gauges">The pattern's gauges.</param>
    /// <param name="made">The sample's pieces.</param>
    public SampleGauge(GaugeBook gauges, IReadOnlyList<MadePiece> made)
    {
        var fabrics = new List<SampleFabric>();
        var book = gauges;
        foreach (var gauge in gauges.Gauges)
        {
            var (widths, heights) = (new Lengths(), new Lengths());
            foreach (var piece in made)
            {
                if (piece.Width?.Fabric == gauge.Stitch) widths.Add(piece.Width);
                if (piece.Height?.Fabric == gauge.Stitch) heights.Add(piece.Height);
            }

            var fabric = new SampleFabric(gauge, widths.Count(gauge.Stitches), heights.Count(gauge.Rows));
            if (fabric.Stitches is null && fabric.Rows is null) continue;
            fabrics.Add(fabric);
            book = book.With(gauge with { Stitches = fabric.Stitches ?? gauge.Stitches, Rows = fabric.Rows ?? gauge.Rows });
        }

        (Fabrics, Gauges) = (fabrics, book);
        foreach (var piece in made)
        {
            if (piece.Height is not { Fabric: null } height) continue;
            if (!_mixed.TryGetValue(piece.Piece, out var lengths)) _mixed[piece.Piece] = lengths = new Lengths();
            lengths.Add(height);
        }

        Said = gauges;
    }

    /// <summary>The fabrics of which the sample tells something, in the order of the pattern's gauges.</summary>
    public IReadOnlyList<SampleFabric> Fabrics { get; }

    /// <summary>The pattern's gauges, with what the sample tells in their place.</summary>
    public GaugeBook Gauges { get; }

    /// <summary>The pattern's gauges as they are.</summary>
    public GaugeBook Said { get; }

    /// <summary>Width of a piece at its widest, in centimetres, worked as the sample was; null if it is not known.</summary>
    /// <remarks>The row is the one that is meant to be the widest: which one that is does not hang on which fabrics were measured.</remarks>
    public Rational? WidthOf(Piece piece) => !piece.RowsInDoubt && Said.WidestOf(piece.Rows) is { } widest ? Gauges.WidthOf(widest.Row) : null;

    /// <summary>
    /// Height of a piece in centimetres, worked as the sample was; null if it is not known. A piece of several fabrics that was measured is
    /// reckoned as if all of them were off alike.
    /// </summary>
    public Rational? HeightOf(Piece piece)
    {
        if (piece.RowsInDoubt) return null;
        if (!IsReckonedWhole(piece)) return Gauges.HeightOf(piece.Rows);
        return Said.HeightOf(piece.Rows) is { } planned ? _mixed[piece.Name].Scaled(planned) : null;
    }

    /// <summary>True if a piece has several fabrics and its height was measured: then all of them are taken to be off alike.</summary>
    public bool IsReckonedWhole(Piece piece) => _mixed.ContainsKey(piece.Name) && GaugeBook.FabricsOf(piece.Rows).Count > 1;

    /// <summary>Lengths measured and planned, added up.</summary>
    private sealed class Lengths
    {
        private Rational? _measured = Rational.Zero;
        private Rational? _planned = Rational.Zero;

        public void Add(MadeLength length)
        {
            _measured = _measured is { } m ? m + length.Measured : null;
            _planned = _planned is { } p ? p + length.Planned : null;
        }

        /// <summary>The count that goes to the span really, where the gauge says another one; null if nothing was measured.</summary>
        public Rational? Count(Rational said) => _measured is { } m && _planned is { } p && p > Rational.Zero && said * p is { } x ? x / m : null;

        /// <summary>What a planned length really comes to.</summary>
        public Rational? Scaled(Rational planned) => _measured is { } m && _planned is { } p && planned * m is { } x ? x / p : null;
    }
}

/// <summary>What the sample tells of one fabric.</summary>
/// <param name="Said">The pattern's gauge.</param>
/// <param name="Stitches">How many stitches really go to the gauge's span; null if no width was measured.</param>
/// <param name="Rows">How many rows really go to the gauge's span; null if no height was measured.</param>
public sealed record SampleFabric(Gauge Said, Rational? Stitches, Rational? Rows);
