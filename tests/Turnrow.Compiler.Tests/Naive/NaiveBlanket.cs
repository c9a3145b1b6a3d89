using CsCheck;
using Turnrow.Tests.Motifs;

namespace Turnrow.Compiler.Tests.Naive;

/// <summary>
/// A random blanket of squares or hexagons, as a designer would write it and as one has it who lays out every stitch of every motif. What joins goes into the
/// corners and into what is named: a space of one chain gives way to it, all else stays.
/// </summary>
/// <param name="Sides">Four or six.</param>
/// <param name="Across">Motifs in the lowest row.</param>
/// <param name="Between">Motifs in the row above it.</param>
/// <param name="Down">Rows.</param>
/// <param name="Corner">Stitches before each corner's chains and behind them.</param>
/// <param name="Chains">A corner's chains.</param>
/// <param name="Along">Of each side up to the one opposite to the first, the chains of its spaces between two corners; all sides have as many spaces.</param>
/// <param name="Stitches">Stitches between two spaces of a side.</param>
/// <param name="Join">Where they are joined between the corners.</param>
/// <param name="Kinds">How many kinds of motif take turns; their last rounds are alike, and each begins with a ring of its own.</param>
internal sealed record NaiveBlanket(int Sides, int Across, int Between, int Down, int Corner, int Chains, IReadOnlyList<int[]> Along, int Stitches, string Join, int Kinds)
{
    private static readonly string[] Ways = ["in each sp", "in each ch-1 sp", "in each st", "in each st and sp", "in each corner", "with sc in each sp"];

    /// <summary>Random ones.</summary>
    public static Gen<NaiveBlanket> Any { get; } =
        from sides in Gen.OneOf(Gen.Const(4), Gen.Const(6))
        from across in Gen.Int[1, 5]
        from more in Gen.Int[-1, 1]
        from down in Gen.Int[1, 6]
        from corner in Gen.Int[1, 3]
        from chains in Gen.Int[1, 3]
        from isAlike in Gen.Bool
        from many in Gen.Int[1, 3]
        from spaces in Gen.Int[1, 3].Array[many].Array[3]
        from stitches in Gen.Int[1, 3]
        from how in Gen.Int[0, Ways.Length - 1].Select(static i => Ways[i])
        from kinds in Gen.Int[1, 3]
        let half = sides / 2
        let between = sides == 4 ? across : Math.Max(1, across + more)
        let along = Enumerable.Range(0, half).Select(i => isAlike ? spaces[0] : spaces[i]).ToList()
        where across + down > 2 && (how != "in each ch-1 sp" || along.TrueForAll(static side => side.Contains(1)))
        select new NaiveBlanket(sides, across, between, down, corner, chains, along, stitches, how, Math.Min(kinds, Math.Max(across, down)));

    /// <summary>The motifs as they lie.</summary>
    public LaidOutMotifs Laid => LaidOutMotifs.Of(Sides, Across, Between, Down);

    /// <summary>The blanket in the notation; a stitch of the round below stands for each stitch between two spaces.</summary>
    public string Write()
    {
        var half = string.Concat(Along.Select(side => $"({Corner} dc, ch {Chains}, {Corner} dc) in next corner, ch {side[0]}{string.Concat(side.Skip(1).Select(chains => $", {Filled()}, ch {chains}"))}, "))[..^2];
        // Between two corners of the first round lie as many stitches as a side needs.
        var below = Math.Max(1, (Along[0].Length - 1) * Stitches);
        var across = Across == Between ? $"{Across}" : $"{Across} and {Between}";
        return $"""
            {string.Concat(Enumerable.Range(0, Kinds).Select(kind => $"piece {Name(kind)}\n  begin with ring of {kind + 3} chains\n  round 1: ({below} dc, ch 2, mark corner) {Sides} times in ring\n  round 2: ({half}) around\n  fasten off\n"))}
            blanket throw of {string.Join(" and ", Enumerable.Range(0, Kinds).Select(Name))}: {across} across, {Down} down, join {Join}
            piece edging picked up around throw last row: 1 sc in each st and sp, 3 sc in each corner
              fasten off

            """;
    }

    /// <summary>Joined motifs by what their last round is made of, as text, and how many of each there are.</summary>
    public IReadOnlyList<(string Round, int Count)> Joined() =>
    [
        .. Laid.Joined.Skip(1)
            .Select(sides => string.Join(" | ", Round(sides)))
            .GroupBy(static round => round)
            .Select(static some => (some.Key, some.Count())),
    ];

    /// <summary>All stitches of the last rounds of all motifs.</summary>
    public long StitchesOfAll() => Laid.Joined.Sum(sides => (long)Round(sides).Count(static place => place == "dc"));

    /// <summary>The places of the last round, from its first corner, where it is joined along some sides.</summary>
    public IReadOnlyList<string> Round(IReadOnlyList<int> joined)
    {
        var round = new List<string>();
        for (var side = 0; side < Sides; side++)
        {
            round.Add($"corner {Chains}");
            round.AddRange(Inner(side, joined.Contains(side)));
        }

        return round;
    }

    /// <summary>The rim from its first corner.</summary>
    public IReadOnlyList<string> Rim()
    {
        var rim = new List<string>();
        foreach (var (side, isOther) in Laid.Rim())
        {
            if (isOther) rim.Add($"ch {Chains}");
            rim.Add(isOther ? $"ch {Chains}" : $"corner {Chains}");
            rim.AddRange(Inner(side, false));
        }

        return rim;
    }

    private static string Name(int kind) => kind == 0 ? "tile" : $"tile-{kind + 1}";

    private string Filled() => Stitches == 1 ? "dc" : $"dc {Stitches}";

    private IEnumerable<string> Inner(int side, bool isJoined)
    {
        for (var i = 0; i < Corner; i++) yield return "dc";
        var spaces = Along[side % (Sides / 2)];
        for (var i = 0; i < spaces.Length; i++)
        {
            for (var n = 0; i > 0 && n < Stitches; n++) yield return "dc";
            if (!isJoined || spaces[i] > 1 || !Join.Contains("sp", StringComparison.Ordinal)) yield return $"ch {spaces[i]}";
        }

        for (var i = 0; i < Corner; i++) yield return "dc";
    }
}
