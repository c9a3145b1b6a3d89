using Turnrow.Fabric.Motifs;
using Turnrow.Fabric.Places;
using Turnrow.Tests.Motifs;
using Xunit;

namespace Turnrow.Compiler.Tests.Joins;

/// <summary>Blankets of motifs: how many are joined on which sides, and what their rim is.</summary>
public sealed class BlanketTests
{
    private const string Tile = """
        piece tile
        begin with ring
        round 1: (3 dc, ch 2, mark corner) 4 times in ring
        round 2: ((3 dc, ch 2, 3 dc) in next corner, ch 1) around
        fasten off

        """;

    private const string Hexagon = """
        piece tile
        begin with ring
        round 1: (2 dc, ch 2, mark corner) 6 times in ring
        round 2: ((2 dc, ch 2, 2 dc) in next corner, ch 1) around
        fasten off

        """;

    private static Blanket Throw(string blanket, string tile = Tile) => Compiled.Of(tile + blanket + "\n").Clean().Pattern.Blankets.Single().InSizes[0]!;

    [Theory]
    [InlineData(2, 1, "1")]
    [InlineData(1, 2, "1")]
    [InlineData(2, 2, "2 1")]
    [InlineData(5, 7, "10 24")]
    [InlineData(20, 20, "38 361")]
    [InlineData(1000, 1000, "1998 998001")]
    public void It_is_counted_how_many_are_joined_on_which_sides(int across, int down, string counts)
    {
        var blanket = Throw(FormattableString.Invariant($"blanket throw of tile: {across} across, {down} down, join in each sp"));
        Assert.Equal(counts, string.Join(' ', blanket.Joined.Select(j => j.Count)));
        Assert.Equal((long)across * down, 1 + blanket.Joined.Sum(j => j.Count));
    }

    /// <summary>Laid out motif by motif: the outer sides of each, round the whole from the top left corner.</summary>
    [Theory]
    [InlineData(2, 1)]
    [InlineData(3, 4)]
    [InlineData(7, 2)]
    public void The_rim_is_what_lies_outside(int across, int down)
    {
        var blanket = Throw(FormattableString.Invariant($"blanket throw of tile: {across} across, {down} down, join in each sp"));
        // From one corner space to the next: three dc of either corner, and a space between them.
        string[] side = ["ch-2", "dc", "dc", "dc", "ch-1", "dc", "dc", "dc", "ch-2"];
        var rim = new List<string>();
        foreach (var many in new[] { down, across, down, across })
        {
            for (var n = 0; n < many; n++) rim.AddRange(n == 0 ? ["corner", .. side[1..]] : side);
            rim.RemoveAt(rim.Count - 1);
        }

        Assert.Equal(rim, Flat(blanket.Rim).Select(p => p.IsCorner ? "corner" : p.Kind == PlaceKind.Space ? $"ch-{p.Chains}" : p.Stitch!.Id));
    }

    /// <summary>Of six sides, against motifs that are laid out one by one.</summary>
    [Theory]
    [InlineData(1, 1, 2)]
    [InlineData(1, 2, 5)]
    [InlineData(2, 1, 4)]
    [InlineData(2, 2, 3)]
    [InlineData(4, 3, 1)]
    [InlineData(5, 4, 6)]
    [InlineData(4, 5, 7)]
    [InlineData(20, 20, 20)]
    public void Hexagons_lie_in_rows_that_are_set_off(int across, int between, int down)
    {
        var laid = LaidOutMotifs.Of(6, across, between, down);
        var layout = new MotifLayout(6, across, between, down);
        Assert.Equal(laid.Kinds, layout.Kinds().Select(k => (string.Join(' ', Enumerable.Range(0, 6).Where(i => k.To[i] is not null)), (int)k.Count)));
        Assert.Equal(laid.Rim(), layout.Rim().SelectMany(part => Enumerable.Repeat(part.Sides, part.Times)).SelectMany(s => s).Select(s => (s.Side, s.IsOtherMotif)));
        var blanket = Throw(FormattableString.Invariant($"blanket throw of tile: {across} and {between} across, {down} down, join in each sp"), Hexagon);
        Assert.Equal(laid.Joined.Count, blanket.Layout.Motifs);
        Assert.Equal(laid.Joined.Skip(1).GroupBy(j => j.Count).OrderBy(g => g.Key).Select(g => (long)g.Count()), blanket.Joined.Select(j => j.Count));
        // Between two corners lie two dc of either and a space.
        Assert.Equal((laid.Rim().Count * 6) + laid.Rim().Count(s => s.IsOther), blanket.Rim.Count);
        Assert.Equal(laid.Rim().Count(s => !s.IsOther), Flat(blanket.Rim).Count(p => p.IsCorner));
    }

    [Theory]
    [InlineData("5 and 3 across")]
    [InlineData("3 and 5 across")]
    public void Rows_of_hexagons_differ_by_one(string rows) =>
        Assert.Contains("blanket-rows", Compiled.Of($"{Hexagon}blanket throw of tile: {rows}, 4 down, join in each sp\n").Found);

    [Fact]
    public void Hexagons_whose_sides_are_not_all_alike_are_told_apart_by_their_sides()
    {
        var blanket = Throw(
            "blanket throw of tile: 4 across, 4 down, join in each sp",
            "piece tile\nbegin with ring\nround 1: (2 dc, ch 2, mark corner) 6 times in ring\nround 2: ((2 dc, ch 2, 2 dc) in next corner, ch 1, (2 dc, ch 2, 2 dc) in next corner, dc, (2 dc, ch 2, 2 dc) in next corner, ch 1) 2 times\nfasten off\n");
        Assert.Equal(LaidOutMotifs.Of(6, 4, 4, 4).Kinds.Select(k => (long)k.Count), blanket.Joined.Select(j => j.Count));
    }

    [Fact]
    public void A_border_goes_round_hexagons_too() => Compiled.Of(Hexagon + """
        blanket throw of tile: 3 and 2 across, 3 down, join in each sp
        piece edging picked up around throw last row: 1 sc in each st and sp, 3 sc in each corner
        round 2: (sc to corner, 3 sc in corner) around, sc around
        fasten off

        """).Clean();

    [Fact]
    public void A_border_goes_round_it_all() => Compiled.Of(Tile + """
        blanket throw of tile: 5 (6) across, 7 (8) down, join in each sp = 144 (168)
        piece edging picked up around throw last row: 1 sc in each st and sp, 3 sc in each corner = 220 (256)
        round 2: (sc to corner, 3 sc in corner) around, sc around = 228 (264)
        fasten off

        """).Clean();

    [Fact]
    public void What_goes_on_from_it_may_be_a_part_too() => Compiled.Of(Tile + """
        blanket throw of tile: 5 across, 7 down, join in each sp
        piece edging from throw: 212 stitches at right edge
        round 1: sc in each st and sp, remove corners = 212

        """).Clean();

    [Fact]
    public void Yarn_is_that_of_all_motifs()
    {
        const string Header = "pattern \"Throw\"\nterms US\nyarn main \"wool\", 50 g, 100 m\ngauge dc: 20 stitches and 10 rows to 10 cm\nswatch dc: 20 stitches and 10 rows weigh 10 g\n";
        var one = Compiled.Whole(Header + Tile).Pattern;
        var all = Compiled.Whole(Header + Tile + "blanket throw of tile: 20 across, 20 down, join in each sp\n").Pattern;
        var (single, whole) = (Fabric.Patterns.YarnNeed.Of(one)!.Grams![0], Fabric.Patterns.YarnNeed.Of(all)!.Grams![0]);
        Assert.Equal((single * 400)!.Value, whole);
    }

    [Theory]
    [InlineData("round 2: ((3 dc, ch 2, 3 dc) in next corner, ch 1) around", "in each sp", "2 2 2 1 2 1")]
    [InlineData("round 2: ((3 dc, ch 3, 3 dc) in next corner, ch 2) around", "in each sp", "3 2 3 2 3 2 3 2")]
    [InlineData("round 2: ((3 dc, ch 3, 3 dc) in next corner, ch 2) around", "in each corner", "3 2 3 2 3 2 3 2")]
    public void Chains_give_way_to_what_joins(string round, string join, string spaces)
    {
        var blanket = Throw($"blanket throw of tile: 2 across, 2 down, join {join}", $"piece tile\nbegin with ring\nround 1: (3 dc, ch 2, mark corner) 4 times in ring\n{round}\nfasten off\n");
        var two = Flat(blanket.Joined[^1].Piece.Top!).Where(p => p.Kind == PlaceKind.Space).Select(p => p.Chains);
        Assert.Equal(spaces, string.Join(' ', two));
    }

    [Theory]
    [InlineData("blanket throw of tile: 1 across, 1 down, join in each sp", "blanket-number")]
    [InlineData("blanket throw of tile: 0 across, 3 down, join in each sp", "blanket-number")]
    [InlineData("blanket throw of tile: 2 (1) across, 1 down, join in each sp", "blanket-number")]
    [InlineData("blanket throw of tile: 2000 across, 3 down, join in each sp", "blanket-number")]
    [InlineData("blanket throw of tile: 3 and 3 across, 0 down, join in each sp", "blanket-number")]
    [InlineData("blanket throw of tile: 3 and 2 across, 3 down, join in each sp", "blanket-rows")]
    [InlineData("blanket throw of tile: 3 across, 3 down, join in each ch-5 sp", "blanket-join")]
    [InlineData("blanket throw of tile: 3 across, 3 down, join in next sp", "blanket-join")]
    [InlineData("blanket throw of tail: 3 across, 3 down, join in each sp", "unknown-piece")]
    [InlineData("blanket tile of tile: 3 across, 3 down, join in each sp", "defined-twice")]
    [InlineData("blanket throw of tile: 3 across, 3 down, join in each sp = 71", "row-count")]
    public void What_makes_no_blanket_is_told(string blanket, params string[] found) => Assert.Equal(found, Compiled.Of(Tile + blanket + "\n").Found.Where(n => n != "piece-unjoined"));

    [Theory]
    [InlineData("round 1: (3 dc, ch 2, mark corner) 5 times in ring", "blanket-motif")]
    [InlineData("round 1: 12 dc in ring", "blanket-motif")]
    [InlineData("round 1: (3 dc, ch 2, mark corner) 4 times in ring\nround 2: dc in each st and sp", "blanket-join")]
    [InlineData("round 1: (3 dc, ch 2, mark corner) 4 times in ring\nround 2: ((3 dc, ch 2, 3 dc) in next corner, ch 1) 3 times, (3 dc, ch 2, 3 dc) in next corner", "blanket-motif")]
    public void A_motif_has_sides_that_meet(string rounds, string found) =>
        Assert.Contains(found, Compiled.Of($"piece tile\nbegin with ring\n{rounds}\nfasten off\nblanket throw of tile: 3 across, 3 down, join in each sp\n").Found);

    private static IEnumerable<Place> Flat(PlaceSequence places)
    {
        foreach (var segment in places.Segments)
        {
            for (var i = 0; i < segment.Times; i++)
            {
                foreach (var run in segment.Unit)
                {
                    for (var n = 0; n < run.Count; n++) yield return run.Place;
                }
            }
        }
    }

    private const string Patch = """
        piece square
        begin with 9 stitches
        row 1 RS: sc across
        straight 6 rows
        fasten off
        piece patch picked up around square right edge and square last row and square left edge and square foundation: 1 sc in each row, 1 sc in each st, 3 sc in each corner
        """;

    // Up the right edge is the last side: 7 row-ends, and the corners; along the top 9 stitches less two corners.
    [Theory]
    [InlineData("round 2: (sc to corner, (sc, ch 2, sc) in corner) around, sc around", 1)]
    [InlineData("round 2: slip over 10, (sc to corner, (sc, ch 2, sc) in corner) around, sc around", 0)]
    public void A_patch_around_a_square_of_rows_stands_upright(string round, int before)
    {
        var blanket = Throw("blanket throw of patch: 3 across, 4 down, join in each st", $"{Patch}\n{round}\nfasten off\n");
        Assert.True(blanket.IsUpright);
        Assert.Equal([2, 3, 6], blanket.Joined.Select(j => (int)j.Count));
        var first = blanket.Joined[0].Piece.JoinedTo.Single().Edge.Side.Stretches[0].Name;
        Assert.Equal($"{Turnrow.Fabric.Joins.MotifSides.Names[(before + 2) % 4]} side", first);
    }

    [Fact]
    public void A_patch_of_like_sides_is_not_turned_either()
    {
        var blanket = Throw("blanket throw of patch: 3 across, 4 down, join in each st", Patch.Replace("straight 6 rows", "straight 8 rows", StringComparison.Ordinal) + "\nround 2: (sc to corner, (sc, ch 2, sc) in corner) around, sc around\nfasten off\n");
        Assert.Equal(["Before", "Below", "Before Below"], blanket.Joined.Select(j => string.Join(' ', j.To)));
    }

    [Fact]
    public void What_motifs_are_picked_up_around_is_made_as_often_and_weighed_so()
    {
        const string Lines = "yarn navy \"dk\", 50 g, 120 m\nswatch sc: 10 stitches and 10 rows weigh 10 g\n";
        var whole = Compiled.Of($"{Lines}{Patch}\nround 2: (sc to corner, (sc, ch 2, sc) in corner) around, sc around\nfasten off\nblanket throw of patch: 3 (4) across, 4 (5) down, join in each st\npiece border picked up around throw last row: 1 sc in each st, 1 sc in each sp\nfasten off\nweave in ends\n").Clean().Pattern;
        Assert.Equal([12L, 20L], Enumerable.Range(0, 2).Select(size => MotifNumbers.Of(whole, size)["square"]));
        var need = Turnrow.Fabric.Patterns.YarnNeed.Of(whole)!.Grams!;
        // 63 stitches of each square, 40 and 44 round it, and the border's.
        var border = Enumerable.Range(0, 2).Select(size => whole.Pieces.Single(p => p.Name == "border").InSizes[size].Rows[0].Work!.Stitches).ToList();
        Assert.Equal([(12 * (63 + 40 + 44)) + border[0], (20 * (63 + 40 + 44)) + border[1]], need.Select(static grams => (int)(grams.ToDouble() * 10)));
    }
}
