using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Publishing.Charts.Layout.Rounds;

/// <summary>Into how many parts that are worked alike rounds can be cut.</summary>
internal static class LikeParts
{
    /// <summary>Of wider rounds it is not asked.</summary>
    private const int MostColumns = 6000;

    /// <summary>The most parts into which each of the rounds can be cut; 1 for none.</summary>
    public static int Of(IReadOnlyList<RoundLayout> rounds)
    {
        var parts = 0;
        foreach (var round in rounds)
        {
            parts = Common(parts, Of(round));
            if (parts == 1) return 1;
        }

        return parts;
    }

    private static int Of(RoundLayout round)
    {
        if (round.Row.Strip!.Columns > MostColumns) return 1;
        var made = Made(round);
        for (var length = 1; length <= made.Count / 2; length++)
        {
            if (made.Count % length == 0 && ComesAgain(made, length)) return made.Count / length;
        }

        return 1;
    }

    private static bool ComesAgain(List<Step> made, int length)
    {
        for (var i = 0; i < made.Count; i++)
        {
            if (made[i] != made[(i + length) % made.Count]) return false;
        }

        return true;
    }

    // Each stitch with how many places it goes on from the one before, all round.
    private static List<Step> Made(RoundLayout round)
    {
        var made = new List<Step>();
        var isRing = round.Ground.TurnOf(0) is null;
        int? before = null;
        round.Row.Strip!.Visit(double.MinValue, double.MaxValue, placed =>
        {
            var cell = placed.Cell;
            var on = cell.Stitch is null || isRing ? 0 : placed.Foot - (before ?? placed.Foot);
            if (cell.Stitch is not null) before = placed.Foot;
            made.Add(new Step(cell.Stitch, cell.Special, cell.Hook, cell.Feet, cell.Tops, cell.Chains, on));
        });
        CloseRound(round, made, before);
        return made;
    }

    // The first stitch goes on from the last one, round the beginning.
    private static void CloseRound(RoundLayout round, List<Step> made, int? last)
    {
        if (round.Ground.TurnOf(0) is null || last is null || round.Row.Strip!.Root.FirstFoot is not { } first) return;
        var at = made.FindIndex(static step => step.Stitch is not null);
        made[at] = made[at] with { On = first + round.Ground.Scale.Count - last.Value };
    }

    private static int Common(int a, int b)
    {
        while (b != 0) (a, b) = (b, a % b);
        return a;
    }

    private readonly record struct Step(Stitch? Stitch, Stitch? Special, HookInto Hook, int Feet, int Tops, int Chains, int On);
}

/// <summary>So many of the parts that all rounds are cut into, drawn for all of them.</summary>
/// <param name="Shown">How many are drawn, the first ones of each round; of a round that goes the other way, the last ones.</param>
/// <param name="Parts">How many there are.</param>
/// <param name="Direction">Which way from its beginning the first round goes.</param>
internal readonly record struct Wedge(int Shown, int Parts, int Direction)
{
    /// <summary>Of a round, the columns that are drawn.</summary>
    public Columns Of(RoundLayout round)
    {
        var columns = round.Row.Strip!.Columns;
        var shown = columns / Parts * Shown;
        return round.Direction == Direction ? new Columns(0, shown) : new Columns(columns - shown, columns);
    }
}

/// <summary>A stretch of the sheet, counted from the middle.</summary>
internal readonly record struct SheetBox(double Left, double Top, double Right, double Bottom)
{
    public double Width => Right - Left;

    public double Height => Bottom - Top;

    public SheetBox With(Drawing.Point at) => new(Math.Min(Left, at.X), Math.Min(Top, at.Y), Math.Max(Right, at.X), Math.Max(Bottom, at.Y));
}
