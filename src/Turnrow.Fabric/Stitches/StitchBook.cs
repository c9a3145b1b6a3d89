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

    /// <summary>The basic ones, lowest first.</summary>
    public static IReadOnlyList<Stitch> All { get; } = [Chain, Slip, Single, HalfDouble, Double, Treble, DoubleTreble, TripleTreble];

    /// <summary>Variants of the basic ones: extended by a loop, linked to the stitch beside them, worked backwards.</summary>
    public static IReadOnlyList<Stitch> Variants { get; } =
    [
        Extended(Single, false, new(3, 2)), Extended(HalfDouble, null, new(2, 1)), Extended(Double, true, new(3, 1)), Extended(Treble, true, new(4, 1)),
        Linked(HalfDouble), Linked(Double), Linked(Treble),
        Variant(Single, "r", "reverse", StitchMaking.Reversed, SymbolShape.Reversed),
    ];

    /// <summary>The basic ones that can make their own foundation chain, so that a row and its foundation are worked at once.</summary>
    public static IReadOnlyList<Stitch> Foundations { get; } =
        [Foundation(Single), Foundation(HalfDouble), Foundation(Double), Foundation(Treble), Foundation(DoubleTreble), Foundation(TripleTreble)];

    /// <summary>The stitch that makes its own foundation chain and is otherwise this one; null if there is none.</summary>
    public static Stitch? FoundationOf(Stitch stitch)
    {
        for (var i = 0; i < Foundations.Count; i++)
        {
            if (Foundations[i].Base == stitch) return Foundations[i];
        }

        return null;
    }

    /// <summary>The stitch that has this abbreviation in these terms; null if none has.</summary>
    public static Stitch? Find(string abbreviation, Terms terms) => In(All, abbreviation, terms) ?? In(Variants, abbreviation, terms);

    private static Stitch? In(IReadOnlyList<Stitch> stitches, string abbreviation, Terms terms)
    {
        for (var i = 0; i < stitches.Count; i++)
        {
            if (string.Equals(stitches[i].In(terms).Abbreviation, abbreviation, StringComparison.OrdinalIgnoreCase)) return stitches[i];
        }

        return null;
    }

    // One loop higher than what it is made of, and turned by a chain more; it is a fabric of its own.
    private static Stitch Extended(Stitch of, bool? counts, PickUpRate pickUp) => new(
        "e" + of.Id, Named(of.Us, "e", "extended"), Named(of.Uk, "e", "extended"), of.Height + 1, counts, pickUp, of.Symbol with { Shape = SymbolShape.Extended, Of = of.Symbol.Shape })
    { Making = StitchMaking.Extended };

    private static Stitch Linked(Stitch of) => Variant(of, "l", "linked", StitchMaking.Linked, SymbolShape.Linked);

    private static Stitch Foundation(Stitch of) => Variant(of, "f", "foundation", StitchMaking.Foundation, of.Symbol.Shape);

    private static Stitch Variant(Stitch of, string letter, string word, StitchMaking making, SymbolShape shape) => new(
        letter + of.Id, Named(of.Us, letter, word), Named(of.Uk, letter, word), of.Height, of.TurningChainCounts, of.PickUp, of.Symbol with { Shape = shape, Of = of.Symbol.Shape })
    { Base = of, Making = making };

    private static StitchName Named(StitchName of, string letter, string word) => new(letter + of.Abbreviation, $"{word} {of.Name}");
}
