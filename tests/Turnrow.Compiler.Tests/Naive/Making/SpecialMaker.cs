namespace Turnrow.Compiler.Tests.Naive.Making;

/// <summary>Makes up stitches, and rows that use them.</summary>
public sealed class SpecialMaker(ChoiceTape tape, IReadOnlyList<string> stitches)
{
    private IReadOnlyList<NaiveStitch>? _made;

    /// <summary>The stitches of a pattern, each of another kind; none as long as no row uses any.</summary>
    public IReadOnlyList<NaiveStitch> Stitches => _made ?? [];

    // Made up when a row first asks for one: most patterns have none.
    private IReadOnlyList<NaiveStitch> Made => _made ??= [Clam(tape, stitches), Knot(tape, stitches), Swap(tape, stitches), Lean(stitches), Tail(tape, stitches), Vee(tape, stitches), Spur(tape, stitches), .. Nested(tape, stitches)];

    /// <summary>Words that use one of them between plain stitches, and sometimes the row that goes into it.</summary>
    public bool Row(Sketch sketch, string plain, Func<Sketch, Sized, Word[], bool> put)
    {
        var stitch = tape.Of<NaiveStitch>([.. Made.Where(one => one.Takes >= 0)]);
        var (before, after) = (tape.Between(0, 2), tape.Between(0, 2));
        // What takes no place stands on the stitch before it.
        if (stitch.Takes == 0)
            before++;
        var each = before + stitch.Takes + after;
        // At each end a plain stitch: which of them begins the row, its mirror decides.
        if (sketch.Rows.Min() == 0 || sketch.Narrowest < each + 2 || sketch.Widest > 40)
            return false;
        var times = tape.Sizes(sketch.Sizes, 1, size => Math.Min(4, (sketch.Widths[size] - 2) / each));
        var lead = sketch.For(size => sketch.Widths[size] - 1 - times[size] * each);
        List<Word> unit = [.. Plain(plain, before), new Special(stitch, 1), .. Plain(plain, after)];
        var makes = before + stitch.Stitches + after;
        var centre = stitch.Centre >= 0 && stitch.Makes.Count > 1;
        var spaces = stitch.Makes.Count > stitch.Stitches;
        // Where there are several spaces, the way to the centre leads over them, and the rest is passed over in words.
        var goesIn = centre && (spaces || tape.OneIn(2));
        if ((spaces && !goesIn) || (goesIn && sketch.TurnsRounds))
            return false;
        if (!put(sketch, sketch.For(size => lead[size] + 1 + times[size] * makes), [new Each(plain, lead), Repeat.Times(new Sized(times), [.. unit]), new Each(plain, 1)]))
            return false;
        return !goesIn || Into(sketch, plain, stitch, lead, times, (before, after), put);
    }

    // Coming back, or going round again: what stood behind is met first, unless the work goes round.
    private bool Into(Sketch sketch, string plain, NaiveStitch stitch, Sized lead, int[] times, (int Before, int After) beside, Func<Sketch, Sized, Word[], bool> put)
    {
        var goesRound = sketch.InRounds && sketch.Statements.OfType<RoundsAre>().LastOrDefault() is not { Way: RoundsWay.Turned };
        var (first, last) = goesRound ? (lead, new Sized(Enumerable.Repeat(1, times.Length).ToArray())) : (new Sized(Enumerable.Repeat(1, times.Length).ToArray()), lead);
        var (before, after) = goesRound ? (beside.Before, beside.After) : (beside.After, beside.Before);
        var rest = goesRound ? stitch.Makes.Count - 1 - stitch.Centre : stitch.Centre;
        var many = tape.Between(1, 3);
        List<Word> unit = [.. Plain(plain, before), new Into(many, plain, Target.CentreOf(stitch.Name)), new Skip(rest), .. Plain(plain, after)];
        return put(sketch, sketch.For(size => lead[size] + 1 + times[size] * (before + many + after)), [new Each(plain, first), Repeat.Times(new Sized(times), [.. unit]), new Each(plain, last)]);
    }

    private static Word[] Plain(string stitch, int count) => count == 0 ? [] : [new Each(stitch, count)];

    private static NaiveStitch Clam(ChoiceTape tape, IReadOnlyList<string> stitches)
    {
        var (stitch, count) = (tape.Of<string>(stitches), tape.Between(2, 6));
        return new NaiveStitch("clam", $"({Text(count)} {stitch}) in one place", 1, [.. Enumerable.Repeat(stitch, count)]);
    }

    private static NaiveStitch Knot(ChoiceTape tape, IReadOnlyList<string> stitches) =>
        new("knot", $"{Text(tape.Between(2, 6))} {tape.Of<string>(stitches)} together in one place", 1, ["knot"]);

    private static readonly string[] Crossings = ["", " in front", " behind"];

    private static NaiveStitch Swap(ChoiceTape tape, IReadOnlyList<string> stitches)
    {
        var (over, back) = (tape.Between(1, 3), tape.Between(1, 3));
        var (one, other) = (stitches[0], stitches[^1]);
        return new NaiveStitch(
            "swap",
            $"skip {Text(back)}, {one} {Text(over)}, {other} {Text(back)} in skipped{Crossings[tape.Between(0, 2)]}",
            over + back,
            [.. Enumerable.Repeat(one, over), .. Enumerable.Repeat(other, back)]);
    }

    private static NaiveStitch Lean(IReadOnlyList<string> stitches) =>
        new("lean", $"({stitches[0]}, {stitches[^1]}) together", 2, ["lean"]);

    private static NaiveStitch Tail(ChoiceTape tape, IReadOnlyList<string> stitches)
    {
        var count = tape.Between(1, 3);
        return new NaiveStitch("tail", $"({Text(count)} {stitches[0]}, {stitches[^1]}) in one place", 1, [.. Enumerable.Repeat(stitches[0], count), stitches[^1]]);
    }

    private static NaiveStitch Spur(ChoiceTape tape, IReadOnlyList<string> stitches)
    {
        var (first, last) = (tape.Of<string>(stitches), tape.Of<string>(stitches));
        var (many, more) = (tape.Between(1, 3), tape.Between(0, 3));
        var chains = many + more + first switch { "sc" => 1, "hdc" => 2, "dc" => 3, _ => 4 };
        return new NaiveStitch("spur", $"ch {Text(chains)}, turn back, {first} {Text(many)}{(more > 0 ? $", {last} {Text(more)}" : "")}", 0, []);
    }

    private static NaiveStitch Vee(ChoiceTape tape, IReadOnlyList<string> stitches)
    {
        var (first, last) = (tape.Between(1, 2), tape.Between(1, 2));
        var stitch = tape.Of<string>(stitches);
        return new NaiveStitch(
            "vee",
            $"({Text(first)} {stitch}, ch {Text(tape.Between(1, 3))}, {Text(last)} {stitch}) in one place",
            1,
            [.. Enumerable.Repeat(stitch, first), Place.Space, .. Enumerable.Repeat(stitch, last)]);
    }

    /// <summary>A repeat in one place with a knot in it, and stitches that are made of it and of others: over one place, and over several.</summary>
    private static NaiveStitch[] Nested(ChoiceTape tape, IReadOnlyList<string> stitches)
    {
        var (stitch, times) = (tape.Of<string>(stitches), tape.Between(2, 4));
        var knot = tape.OneIn(2) ? ", picot" : "";
        var comb = new NaiveStitch(
            "comb",
            $"(({stitch}{knot}, ch {Text(tape.Between(1, 2))}) {Text(times)} times, {stitch}) in one place",
            1,
            [.. Enumerable.Repeat<string[]>([stitch, Place.Space], times).SelectMany(once => once), stitch]);
        var (many, halves) = (tape.Between(2, 4), tape.Between(1, 2));
        string[] half = [.. Enumerable.Repeat(stitch, many)];
        var wings = new NaiveStitch(
            "wings",
            $"({Text(halves)} petal of {Text(many)}, comb, petal of {Text(many)}) in one place",
            1,
            [.. Enumerable.Repeat(half, halves).SelectMany(once => once), .. comb.Makes, .. half]);
        var fence = new NaiveStitch(
            "fence",
            $"(petal of {Text(many)} in next, skip 1) {Text(times)} times, comb in next",
            (2 * times) + 1,
            [.. Enumerable.Repeat(half, times).SelectMany(once => once), .. comb.Makes]);
        return [new NaiveStitch("petal of n", $"(n {stitch}) in one place", -1, []), comb, wings, fence];
    }

    private static string Text(int number) => FormattableString.Invariant($"{number}");
}
