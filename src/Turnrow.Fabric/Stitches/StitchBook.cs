namespace Turnrow.Fabric.Stitches;

/// <summary>
/// The stitches there are. Names in both terms, chains and heights: the trade's tables, sources named in the tests
/// of this class.
/// </summary>
public static class StitchBook
{
    /// <summary>Chain.</summary>
    public static Stitch Chain { get; } = new(
        "ch", new("ch", "chain"), new("ch", "chain"), 1, false, new(1, 1), new(SymbolShape.Oval, 0));

    /// <summary>Slip stitch.</summary>
    public static Stitch Slip { get; } = new(
        "sl st", new("sl st", "slip stitch"), new("sl st", "slip stitch"), 0, false, new(1, 1), new(SymbolShape.Dot, 0));

    /// <summary>Single crochet (UK: double crochet).</summary>
    public static Stitch Single { get; } = new(
        "sc", new("sc", "single crochet"), new("dc", "double crochet"), 1, false, new(1, 1), new(SymbolShape.Cross, 0));

    /// <summary>Half double crochet (UK: half treble).</summary>
    public static Stitch HalfDouble { get; } = new(
        "hdc", new("hdc", "half double crochet"), new("htr", "half treble"), 2, null, new(3, 2), new(SymbolShape.Stem, 0));

    /// <summary>Double crochet (UK: treble).</summary>
    public static Stitch Double { get; } = new(
        "dc", new("dc", "double crochet"), new("tr", "treble"), 3, true, new(2, 1), new(SymbolShape.Stem, 1));

    /// <summary>Treble (UK: double treble).</summary>
    public static Stitch Treble { get; } = new(
        "tr", new("tr", "treble crochet"), new("dtr", "double treble"), 4, true, new(3, 1), new(SymbolShape.Stem, 2));

    /// <summary>Double treble (UK: triple treble).</summary>
    public static Stitch DoubleTreble { get; } = new(
        "dtr", new("dtr", "double treble crochet"), new("trtr", "triple treble"), 5, true, new(4, 1), new(SymbolShape.Stem, 3));

    /// <summary>Triple treble (UK: quadruple treble).</summary>
    public static Stitch TripleTreble { get; } = new(
        "trtr", new("trtr", "triple treble crochet"), new("qtr", "quadruple treble"), 6, true, new(5, 1), new(SymbolShape.Stem, 4));

    /// <summary>All of them, lowest first.</summary>
    public static IReadOnlyList<Stitch> All { get; } = [Chain, Slip, Single, HalfDouble, Double, Treble, DoubleTreble, TripleTreble];

    /// <summary>The stitch that has this abbreviation in these terms; null if none has.</summary>
    public static Stitch? Find(string abbreviation, Terms terms)
    {
        foreach (var stitch in All)
        {
            if (string.Equals(stitch.In(terms).Abbreviation, abbreviation, StringComparison.OrdinalIgnoreCase)) return stitch;
        }

        return null;
    }
}
