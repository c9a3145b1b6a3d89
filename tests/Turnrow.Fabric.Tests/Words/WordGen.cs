using CsCheck;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Tests.Places;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Tests.Words;

/// <summary>Random words and rows to work them over.</summary>
internal static class WordGen
{
    private static readonly PlaceFilter[] _filters =
        [PlaceFilter.AnyStitch, Say.AnySpace, Say.SpaceOf(2), Say.DcOnly, new(PlaceFilterKind.StitchOrSpace, null, 0)];

    private static readonly Gen<PlaceFilter> _filter = Gen.Int[0, _filters.Length - 1].Select(static i => _filters[i]);

    private static readonly Gen<Word> _plain = Gen.Select(Gen.Bool, Gen.Int[0, 3], static (tall, n) =>
        (Word)Work.Plain(tall ? StitchBook.Double : StitchBook.Single, Amount.Of(n)));

    private static readonly Gen<Word> _aimed = Gen.Select(_filter, Gen.Int[1, 3], static (f, n) => (Word)Say.In(Aim.NextOfKind, f, n));

    private static readonly Gen<Word> _same = Gen.Select(Gen.Bool, Gen.Int[1, 2], static (tall, n) =>
        (Word)new Work(tall ? StitchBook.Double : StitchBook.Treble, 1, n, Amount.Once, new Target(Aim.Same, PlaceFilter.AnyStitch), HookInto.BothLoops));

    private static readonly Gen<Word> _group = Gen.Select(_filter, Gen.Bool, static (f, same) =>
        (Word)new Group([Say.In(Aim.Next, 2), new Chains(2), Work.Plain(StitchBook.Single, Amount.Once)], new Target(same ? Aim.Same : Aim.NextOfKind, f)));

    private static readonly Gen<Word> _each = Gen.Select(_filter, Gen.Bool, static (f, shells) => shells
        ? (Word)new Group([Say.In(Aim.Next, 2), new Chains(1)], new Target(Aim.EachOfKind, f))
        : Say.In(Aim.EachOfKind, f));

    private static readonly Gen<Word> _simple = Gen.Frequency(
        (4, _plain), (3, _aimed), (2, _same), (1, _group), (1, _each),
        (1, Gen.Int[1, 2].Select(static n => (Word)Work.Increase(StitchBook.Double, n))),
        (1, Gen.Int[1, 3].Select(static n => (Word)new Chains(n))),
        (1, Gen.Int[0, 2].Select(static n => (Word)new Skip(n))));

    /// <summary>A few words to be repeated.</summary>
    public static Gen<Word[]> Unit { get; } = _simple.Array[1, 4];

    /// <summary>A row of words that takes what it takes; the rest is to be left.</summary>
    public static Gen<Word[]> Row { get; } = Gen.Frequency(
        (4, _simple),
        (2, Gen.Select(Unit, Gen.Int[0, 4], static (unit, n) => (Word)new Repeat(unit, Amount.Of(n))))).Array[1, 6];

    /// <summary>A row to work over.</summary>
    public static Gen<PlaceSequence> Below { get; } = PlaceGen.Sequence;

    public static List<Place> Flat(PlaceSequence places) => PlaceGen.Flat(places);

    /// <summary>Words in short, for a test that fails.</summary>
    public static string Text(IEnumerable<Word> words) => string.Join(", ", words.Select(Text));

    /// <summary>Places in short.</summary>
    public static string Text(PlaceSequence places) => string.Join(' ', Flat(places).Select(p => p.Stitch?.Id ?? (p.Kind == PlaceKind.Space ? $"sp{p.Chains}" : "ch")));

    private static string Text(Word word) => word switch
    {
        Work work => $"{work.Stitch} {work.Makes} over {work.Takes} x{work.Amount.Times}{Text(work.Target)}{Passed(work.Passed, work.PassedBefore)}",
        Group group => $"({Text(group.Words)}) x{group.Times}{Text(group.Target)}{Passed(group.Passed, group.PassedBefore)}",
        Repeat repeat => $"[{(repeat.Ways.Count > 0 ? string.Join(" | ", repeat.Ways.Select(Text)) : Text(repeat.Words))}] x{repeat.Amount.Times}",
        Chains chains => $"ch {chains.Count}",
        _ => $"{word.GetType().Name} {WordCounts.Takes(word)}",
    };

    private static string Text(Target target) => target.Aim switch
    {
        Aim.Next => "",
        Aim.NextOfKind or Aim.EachOfKind => $" in {target.Aim} {target.Filter.Kind} {target.Filter.Chains} {target.Filter.Stitch}{(target.Remain > 0 ? $" but {target.Remain}" : "")}",
        _ => $" in {target.Aim}",
    };

    private static string Passed(int all, int before) => all == 0 ? "" : $" passing {before} of {all}";
}
