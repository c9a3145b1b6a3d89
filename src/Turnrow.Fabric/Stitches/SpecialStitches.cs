using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Stitches;

/// <summary>
/// The special stitches that the trade has names for. What a pattern means by such a name is written out in it, so a designer's own stitch
/// of the same name goes before ours. Sources are named in the tests of this class.
/// </summary>
public static class SpecialStitches
{
    private const int MostInOnePlace = 20;

    /// <summary>A cluster: 3 dc (US) in one place that end in one loop.</summary>
    public static StitchFamily Cluster { get; } = InOneLoop("cluster", "CL", 3, StitchBook.Double, StitchMaking.Together, SymbolShape.Cluster);

    /// <summary>A bobble: 5 of them.</summary>
    public static StitchFamily Bobble { get; } = InOneLoop("bobble", "BO", 5, StitchBook.Double, StitchMaking.Together, SymbolShape.Cluster);

    /// <summary>A puff: long loops, as many as three hdc (US) have.</summary>
    public static StitchFamily Puff { get; } = InOneLoop("puff", "PS", 3, StitchBook.HalfDouble, StitchMaking.Puff, SymbolShape.Puff, "puff stitch");

    /// <summary>A popcorn: 5 whole dc (US), drawn together at their tops.</summary>
    public static StitchFamily Popcorn { get; } = InOneLoop("popcorn", "PC", 5, StitchBook.Double, StitchMaking.Popcorn, SymbolShape.Popcorn);

    /// <summary>A shell: 5 dc (US) in one place.</summary>
    public static StitchFamily Shell { get; } = InOnePlace("shell", "SH", 5, StitchBook.Double);

    /// <summary>A fan: 7 tr (US) in one place.</summary>
    public static StitchFamily Fan { get; } = InOnePlace("fan", "fan", 7, StitchBook.Treble);

    /// <summary>A picot of 3 chains.</summary>
    public static StitchFamily Picot { get; } = new("picot", "picot", 3, 2, MostInOnePlace, static (n, id, us, uk) => new Stitch(
        id, us, uk, 1, false, new(1, 1), new(SymbolShape.Picot, 0) { Legs = n })
    {
        Base = StitchBook.Single,
        Making = StitchMaking.Picot,
        Form = new StitchForm([new(null, HookInto.BothLoops, n, 0)], 0, true),
    })
    { Counted = StitchBook.Chain };

    /// <summary>A cable of 2 over 2: front-post tr (US), the last of which pass in front of the first, so that it crosses to the left.</summary>
    public static StitchFamily Cable { get; } = Cabled("cable", Crossing.InFront);

    /// <summary>The same crossed to the right: the last pass behind.</summary>
    public static StitchFamily CableBehind { get; } = Cabled("cable-behind", Crossing.Behind);

    /// <summary>A V-stitch: dc, ch 1, dc (US) in one place.</summary>
    public static Stitch Vee { get; } = Laid(
        "V-st",
        new("V-st", "V-stitch"),
        new("V-st", "V-stitch"),
        new StitchForm([Of(StitchBook.Double, 1, 0), new(null, HookInto.BothLoops, 1, 0), Of(StitchBook.Double, 1, 0)], 1, false),
        StitchBook.Double);

    /// <summary>Two dc (US), the second worked across the first into the place before it.</summary>
    public static Stitch Crossed { get; } = Laid(
        "crossed",
        new("crossed dc", "crossed double crochet"),
        new("crossed tr", "crossed treble"),
        new StitchForm([Of(StitchBook.Double, 1, 1), Of(StitchBook.Double, 1, 0)], 2, false),
        StitchBook.Double);

    /// <summary>Those with a number.</summary>
    public static IReadOnlyList<StitchFamily> Families { get; } = [Cluster, Bobble, Puff, Popcorn, Shell, Fan, Picot, Cable, CableBehind];

    /// <summary>The single ones with the word for each.</summary>
    public static IReadOnlyList<(string Word, Stitch Stitch)> Single { get; } = [("V-st", Vee), ("V-stitch", Vee), ("crossed", Crossed)];

    /// <summary>The family that has a word; null if none has.</summary>
    public static StitchFamily? FamilyOf(string word)
    {
        foreach (var family in Families)
        {
            if (Is(family.Word, word) || Is(family.Abbreviation, word)) return family;
        }

        return null;
    }

    /// <summary>The stitch that a word means by itself; null if it means none.</summary>
    public static Stitch? Find(string word)
    {
        foreach (var (known, stitch) in Single)
        {
            if (Is(known, word)) return stitch;
        }

        return FamilyOf(word) is { Usual: { } usual } family ? family.Of(usual) : null;
    }

    /// <summary>A stitch made of words over places.</summary>
    public static Stitch Laid(string id, StitchName us, StitchName uk, StitchForm form, Stitch basis) =>
        new(id, us, uk, basis.Height, basis.TurningChainCounts, basis.PickUp, new(SymbolShape.Parts, 0)) { Base = basis.Rule, Form = form, Making = StitchMaking.Laid };

    /// <summary>A chain with stitches back along it: it stands on the stitch before it and makes no place, as a picot does.</summary>
    public static Stitch Spur(string id, StitchName us, StitchName uk, StitchForm form) =>
        new(id, us, uk, StitchBook.Single.Height, false, new(1, 1), new(SymbolShape.Spur, 0)) { Base = StitchBook.Single, Form = form, Making = StitchMaking.Spur };

    /// <summary>Several stitches that end in one loop.</summary>
    public static Stitch Together(string id, StitchName us, StitchName uk, StitchForm form, Stitch basis)
    {
        var shape = form.Takes > 1 ? SymbolShape.Parts : basis.Symbol is { Shape: SymbolShape.Stem, Bars: 0 } ? SymbolShape.Puff : SymbolShape.Cluster;
        return new(id, us, uk, basis.Height, basis.TurningChainCounts, basis.PickUp, basis.Symbol with { Shape = shape, Legs = form.Parts.Sum(static p => p.Count) })
        {
            Base = basis.Rule,
            Form = form,
            Making = StitchMaking.Together,
        };
    }

    private static StitchFamily Cabled(string word, Crossing crossing) => new(word, word, 2, 1, MostInOnePlace / 2, (n, id, us, uk) =>
    {
        var parts = new List<StitchPart>();
        for (var i = 0; i < 2 * n; i++) parts.Add(new(StitchBook.Treble, HookInto.FrontPost, 1, (i + n) % (2 * n)));
        return Laid(id, us, uk, new StitchForm(parts, 2 * n, false) { Crossing = crossing }, StitchBook.Treble);
    })
    {
        Counted = StitchBook.Treble,
        Mirrored = () => crossing == Crossing.InFront ? CableBehind : Cable,
    };

    private static StitchPart Of(Stitch stitch, int count, int place) => new(stitch, HookInto.BothLoops, count, place);

    private static StitchFamily InOneLoop(string word, string abbreviation, int usual, Stitch of, StitchMaking making, SymbolShape shape, string? name = null) =>
        new(word, abbreviation, usual, 2, MostInOnePlace, (n, id, us, uk) => new Stitch(
            id, us, uk, of.Height, of.TurningChainCounts, of.PickUp, of.Symbol with { Shape = shape, Legs = n })
        {
            Base = of,
            Making = making,
            Form = new StitchForm([Of(of, n, 0)], 1, true),
        })
        { Counted = of, Name = name ?? word };

    private static StitchFamily InOnePlace(string word, string abbreviation, int usual, Stitch of) =>
        new(word, abbreviation, usual, 2, MostInOnePlace, (n, id, us, uk) => Laid(id, us, uk, new StitchForm([Of(of, n, 0)], 1, false), of)) { Counted = of };

    private static bool Is(string known, string word) => string.Equals(known, word, StringComparison.OrdinalIgnoreCase);
}
