using Turnrow.Fabric.Colours;
using Turnrow.Fabric.Motifs;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Patterns;

/// <summary>
/// How much of a yarn the pieces of a pattern take, a size: stitches of each kind by what one weighs in the swatch. Rows in a stitch pattern that has a
/// swatch of its own weigh what their width weighs there, whatever stitches they are of.
/// </summary>
/// <param name="Yarn">The yarn.</param>
/// <param name="Grams">Grams a size, the extra included; null if a swatch is missing of anything but the chains of spaces.</param>
/// <param name="Unknown">The stitches that no swatch was weighed of, in the order in which they come up.</param>
public sealed record YarnNeed(Yarn Yarn, IReadOnlyList<Rational>? Grams, IReadOnlyList<Stitch> Unknown)
{
    /// <summary>Whole balls a size; null if the ball's weight or the need is not known.</summary>
    public IReadOnlyList<long>? Balls => Each(grams => Yarn.Grams is { } ball && ball > Rational.Zero ? Up(grams / ball) : null);

    /// <summary>Metres a size, exactly; null if the ball's length and weight or the need is not known.</summary>
    public IReadOnlyList<Rational>? Metres => Each(grams => Yarn is { Grams: { } ball, Metres: { } length } && ball > Rational.Zero && grams * length is { } x ? x / ball : null);

    /// <summary>What the pattern's pieces take of each yarn that they are worked with, in the pattern's order.</summary>
    public static IReadOnlyList<YarnNeed> All(Pattern pattern)
    {
        if (pattern.Yarns.Count == 0 || !pattern.Pieces.Any()) return [];
        var worked = YarnsWorked.In(pattern);
        var only = worked.Count < 2;
        return [.. worked.DefaultIfEmpty(pattern.Yarns[0]).Select(yarn => Of(pattern, yarn, only))];
    }

    /// <summary>The same of the first of them; null if the pattern names no yarn.</summary>
    public static YarnNeed? Of(Pattern pattern) => All(pattern) is [var first, ..] ? first : null;

    private static YarnNeed Of(Pattern pattern, Yarn yarn, bool only)
    {
        var rates = Rates(pattern, yarn);
        var unknown = new List<Stitch>();
        var grams = new List<Rational>();
        for (var size = 0; size < Math.Max(1, pattern.Sizes.Count); size++)
        {
            if (InSize(pattern, size, yarn, only, rates, unknown) is { } sum && WithExtra(sum, yarn) is { } all) grams.Add(all);
        }

        return new YarnNeed(yarn, unknown.TrueForAll(static s => s == StitchBook.Chain) && rates.Count > 0 && grams.Count == Math.Max(1, pattern.Sizes.Count) ? grams : null, unknown);
    }

    private static Dictionary<Stitch, Rational> Rates(Pattern pattern, Yarn yarn)
    {
        var rates = new Dictionary<Stitch, Rational>();
        foreach (var swatch in pattern.Swatches)
        {
            if ((swatch.Yarn is null || swatch.Yarn == yarn.Name) && swatch.GramsPerStitch is { } rate) rates.TryAdd(swatch.Stitch, rate);
        }

        return rates;
    }

    private static Rational? InSize(Pattern pattern, int size, Yarn yarn, bool only, Dictionary<Stitch, Rational> rates, List<Stitch> unknown)
    {
        Rational? sum = Rational.Zero;
        foreach (var (kind, count) in Stitches(pattern, size, yarn.Name, only, rates))
        {
            var stitch = WeighedAs(kind);
            if (rates.TryGetValue(stitch, out var rate)) sum = sum is { } s && rate * count is { } more ? s + more : null;
            else if (!unknown.Contains(stitch)) unknown.Add(stitch);
        }

        return sum;
    }

    // Worked back from left to right it is the same stitch.
    private static Stitch WeighedAs(Stitch stitch) => stitch is { Making: StitchMaking.Reversed, Base: { } of } ? of : stitch;

    // Every row counts; rows worked alike share their work, which remembers its kinds.
    private static Dictionary<Stitch, long> Stitches(Pattern pattern, int size, string yarn, bool only, Dictionary<Stitch, Rational> rates)
    {
        var counts = new Dictionary<Stitch, long>();
        var numbers = MotifNumbers.Of(pattern, size);
        foreach (var piece in pattern.Pieces)
        {
            if (!IsOnlyJoined(pattern, piece.Name)) AddRows(counts, piece.InSizes[size], numbers.TryGetValue(piece.Name, out var number) ? number : piece.Copies, yarn, only, rates);
        }

        // The first motif is a piece of the pattern and counted as such.
        foreach (var joined in pattern.Blankets.SelectMany(b => b.InSizes[size]?.Joined ?? [])) AddRows(counts, joined.Piece, joined.Count, yarn, only, rates);
        return counts;
    }

    // Of the kinds of motif that take turns one is the first, and the others are all joined.
    private static bool IsOnlyJoined(Pattern pattern, string piece) =>
        pattern.Blankets.Any(b => b.Motifs.Skip(1).Contains(piece)) && !pattern.Blankets.Any(b => b.Motifs[0] == piece);

    private static void AddRows(Dictionary<Stitch, long> counts, Piece piece, long copies, string yarn, bool only, Dictionary<Stitch, Rational> rates)
    {
        foreach (var row in piece.Rows)
        {
            if (row.Work is null) continue;
            if (row.Plan is WordsPlan { Of: { } of } && rates.ContainsKey(of.Pattern.Fabric) && (only || !YarnWords.Has(row.Work.Words)))
            {
                if (only || row.Yarn == yarn) AddInPattern(counts, of, copies);
                continue;
            }

            if (only || (row.Yarn == yarn && !YarnWords.Has(row.Work.Words))) AddAll(counts, row.Work, copies);
            else if (row.Yarn is { } begun) YarnTally.Add(row.Work, begun, yarn, copies, counts);
            YarnTally.AddOnTop(row.Work, only ? yarn : row.Yarn ?? string.Empty, yarn, copies, counts);
        }
    }

    private static void AddAll(Dictionary<Stitch, long> counts, RowWork work, long copies)
    {
        foreach (var kind in work.Tops.Kinds()) YarnTally.Add(counts, kind.Place, kind.Count * copies);
    }

    // As wide as its repeats and the few places beside them; the plain edges are of a stitch of their own.
    private static void AddInPattern(Dictionary<Stitch, long> counts, InPattern of, long copies)
    {
        var (state, pattern) = (of.State, of.Pattern);
        Add(pattern.Fabric, of.Edge is null ? of.Places : (state.Repeats * pattern.Multiple) + pattern.Plus);
        if (of.Edge is { } edge) Add(edge, state.Right + state.Left);

        void Add(Stitch stitch, long places) => counts[stitch] = counts.GetValueOrDefault(stitch) + (places * copies);
    }

    private static Rational? WithExtra(Rational grams, Yarn yarn) =>
        yarn.Extra is { } extra && Rational.Of(1, 100) is { } part && extra * part is { } share ? Rational.One + share is { } all ? grams * all : null : grams;

    private static long? Up(Rational? number) => number is not { } n ? null : n.IsWhole ? n.Numerator : n.Floor() + 1;

    private List<T>? Each<T>(Func<Rational, T?> change)
        where T : struct
    {
        if (Grams is null) return null;
        var all = new List<T>();
        foreach (var grams in Grams)
        {
            if (change(grams) is not { } one) return null;
            all.Add(one);
        }

        return all;
    }
}
