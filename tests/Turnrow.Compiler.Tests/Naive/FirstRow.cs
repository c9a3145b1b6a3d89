namespace Turnrow.Compiler.Tests.Naive;

/// <summary>What a first row says about its foundation: the stitch that turns, and a space that opens the row.</summary>
public sealed record FirstRow(string Stitch, int OpeningChains, bool IsPlainlyBegun)
{
    /// <summary>The words as they are worked: a mirrored row begins with what was last.</summary>
    public static FirstRow Of(IReadOnlyList<Word> words, bool isMirrored)
    {
        var first = isMirrored ? words[^1] : words[0];
        var second = words.Count == 1 ? null : isMirrored ? words[^2] : words[1];
        while (first is Repeat repeat)
        {
            second = repeat.Words.Count > 1 ? repeat.Words[isMirrored ? ^2 : 1] : null;
            first = repeat.Words[isMirrored ? ^1 : 0];
        }
        var isOne = first is Each each && each.Count.IsSame && each.Count[0] == 1;
        var chains = isOne && second is Space space ? space.Chains : 0;
        return new FirstRow(StitchOf(first), chains, first is Each or Across or Until);
    }

    /// <summary>The one plain stitch of a row that works one into each of its places, or nothing.</summary>
    public static string? PlainStitch(IReadOnlyList<Word> words)
    {
        var stitches = words.Where(word => word is not (SlipOver or LeaveUnworked)).Select(PlainStitch).Distinct().ToList();
        return stitches.Count == 1 ? stitches[0] : null;
    }

    private static string? PlainStitch(Word word) => word switch
    {
        Each each => each.Stitch,
        Across across => across.Stitch,
        Until until => until.Stitch,
        _ => null,
    };

    private static string StitchOf(Word word) => word switch
    {
        Each each => each.Stitch,
        Across across => across.Stitch,
        Until until => until.Stitch,
        Into into => into.Stitch,
        Inc inc => inc.Stitch,
        Dec dec => dec.Stitch,
        Together together => together.Stitch,
        Evenly evenly => evenly.Stitch,
        InEach inEach => inEach.Stitch,
        Group group => StitchOf(group.Words[0]),
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
    public int StitchesFrom(int chains, FirstRow first) => chains - ChainsFor(0, first);

    public int ChainsFor(int stitches, FirstRow first)
    {
        var rule = Rule(first.Stitch);
        var skipped = rule.FirstChain - 1;
        return stitches + skipped + (rule.CountsInFoundation ? first.OpeningChains - 1 : 0);
    }
}
