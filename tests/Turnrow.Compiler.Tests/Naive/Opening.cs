namespace Turnrow.Compiler.Tests.Naive;

/// <summary>What a first row says about its foundation: the stitch that turns, and a space that opens the row.</summary>
public sealed record Opening(string Stitch, int OpeningChains, bool IsPlainlyBegun)
{
    /// <summary>Places that the first word leaves to the others: over no more than these it is not worked at all.</summary>
    public int Leaves { get; init; }

    /// <summary>The words as they are worked: a mirrored row begins with what was last.</summary>
    public static Opening Of(IReadOnlyList<Word> words, bool isMirrored, int size)
    {
        var flat = Flat(words).ToList();
        if (isMirrored)
            flat.Reverse();
        flat.RemoveRange(0, flat.FindIndex(word => word is not WithYarn));
        // In a mirrored row a space is met after the stitches that were skipped for it.
        var second = flat.Skip(1).FirstOrDefault(word => word is not Skip);
        var isOne = flat[0] is Each each && each.Count[size] == 1;
        var chains = isOne && second is Space space ? space.Chains : 0;
        // What goes on to the end may come to nothing: read from the other end, only the row itself tells.
        return new Opening(StitchOf(flat[0]), chains, flat[0] is Each || (!isMirrored && flat[0] is Across or Until)) { Leaves = flat[0] is Until until ? until.Remain[size] : 0 };
    }

    /// <summary>The words with each repeat written once.</summary>
    private static IEnumerable<Word> Flat(IEnumerable<Word> words) =>
        words.SelectMany(word => word is Repeat repeat ? Flat(repeat.Words) : word is MarkCorner or MoveMarker or RemoveCorners ? [] : [word]);

    /// <summary>The one plain stitch of a row that is of nothing else, without holes, or nothing.</summary>
    public static string? PlainStitch(IReadOnlyList<Word> words)
    {
        var stitches = words.Where(word => word is not (SlipOver or LeaveUnworked or MarkCorner or MoveMarker or RemoveCorners or Hold or Bridge or WithYarn)).Select(PlainStitch).Distinct().ToList();
        return stitches.Count == 1 ? stitches[0] : null;
    }

    private static string? PlainStitch(Word word) => word switch
    {
        Each each => each.Stitch,
        Across across => across.Stitch,
        Until until => until.Stitch,
        ToCorner to => to.Stitch,
        ToTurn to => to.Stitch,
        Into into => into.Stitch,
        Inc inc => inc.Stitch,
        Dec dec => dec.Stitch,
        Together together => together.Stitch,
        Evenly evenly => evenly.Stitch,
        InEach each => each.Stitch,
        InEachToCorner each => each.Stitch,
        SpreadOver spread => PlainStitch([.. spread.Words, new Across(spread.Stitch)]),
        Group group => PlainStitch(group.Words),
        Repeat repeat => PlainStitch(repeat.Words),
        _ => null,
    };

    private static string StitchOf(Word word) => word switch
    {
        Each each => each.Stitch,
        Across across => across.Stitch,
        Until until => until.Stitch,
        ToCorner to => to.Stitch,
        ToTurn to => to.Stitch,
        Into into => into.Stitch,
        Inc inc => inc.Stitch,
        Dec dec => dec.Stitch,
        Together together => together.Stitch,
        Evenly evenly => evenly.Stitch,
        InEach inEach => inEach.Stitch,
        InEachToCorner inEach => inEach.Stitch,
        SpreadOver spread => spread.Stitch,
        EachByKind each => each.Stitch,
        Group group => StitchOf(group.Words[0]),
        IntoRing ring => StitchOf(ring.Words[0]),
        _ => throw new UnworkableException("a first row begins with a stitch"),
    };
}

/// <summary>The turning rules in force: the pattern's own before the custom of the trade.</summary>
public sealed class TurnTable(IReadOnlyList<TurnRule> rules)
{
    private static readonly TurnRule[] s_custom =
    [
        new("sc", 1, false), new("dc", 3, true), new("tr", 4, true), new("dtr", 5, true),
    ];

    public TurnRule Rule(string stitch) =>
        rules.Concat(s_custom).FirstOrDefault(rule => rule.Stitch == stitch)
        ?? throw new UnworkableException($"nothing says how {stitch} turns");

    /// <summary>chains - (k - 1) + s, less the chains of a space that opens the row on a counted chain.</summary>
    public int StitchesFrom(int chains, Opening first) => chains - ChainsFor(0, first);

    public int ChainsFor(int stitches, Opening first)
    {
        var rule = Rule(first.Stitch);
        var skipped = rule.FirstChain - 1;
        return stitches + skipped + (rule.CountsInFoundation ? first.OpeningChains - 1 : 0);
    }
}
