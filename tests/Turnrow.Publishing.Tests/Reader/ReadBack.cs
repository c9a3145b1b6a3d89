using System.Globalization;
using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>Lays what was read beside the row model.</summary>
internal static class ReadBack
{
    /// <summary>All that does not read back, or not in one way only, in any size; nothing if all does.</summary>
    public static IReadOnlyList<string> Differences(Pattern pattern, string page)
    {
        var found = new List<string>();
        for (var size = 0; size < pattern.Sizes.Count; size++) found.AddRange(Differences(pattern, page, size));
        return [.. found.Distinct()];
    }

    /// <summary>True if all reads back in every size.</summary>
    public static bool Agrees(Pattern pattern, string page) =>
        Enumerable.Range(0, pattern.Sizes.Count).All(size => Differences(pattern, page, size).Count == 0);

    private static List<string> Differences(Pattern pattern, string page, int size)
    {
        var found = new List<string>();
        var prose = pattern.Items.OfType<ProseItem>().Select(p => p.Text)
            .Concat(pattern.Pieces.SelectMany(p => p.Passages).OfType<ProsePassage>().Select(p => p.Text)).ToHashSet();
        var read = PatternReader.Read(page, size, prose);
        found.AddRange(read.Stumbles.Select(stumble => $"{stumble}"));
        found.AddRange(read.Doubts.Select(doubt => $"two ways: {doubt}"));
        if (read.Stumbles.Count > 0) return found;
        var several = pattern.Pieces.SelectMany(p => p.InSizes).SelectMany(p => p.Rows).SelectMany(RowYarns.Names).Distinct().Skip(1).Any();
        foreach (var piece in pattern.Pieces) Piece(piece.InSizes[size], read, found, several);
        foreach (var blanket in pattern.Blankets) Blanket(blanket, blanket.InSizes[size]!, read, found);
        Sides(pattern, size, read, found);
        Seams([.. pattern.Items.OfType<SeamInSizes>().Select(s => s.InSizes[size]).OfType<Seam>().Where(s => Seam.RowEnds(s.WholeFirst) + Seam.Stitches(s.WholeFirst) > 0)], read.Seams, found);
        return found;
    }

    private static void Blanket(BlanketInSizes named, Fabric.Motifs.Blanket blanket, ReadPattern read, List<string> found)
    {
        var title = char.ToUpperInvariant(named.Name[0]) + named.Name[1..].Replace('-', ' ');
        if (!read.Blankets.TryGetValue(title, out var made))
        {
            found.Add($"{title}: there is no such blanket on the page");
            return;
        }

        var expected = $"{blanket.Layout.Across} and {blanket.Layout.Between} x {blanket.Layout.Down}: {Kinds(blanket.Joined.Select(j => $"{j.Count} on {j.To.Count}, {Places(j.Piece.Top!)}"))}";
        var actual = $"{made.Across} and {made.Between} x {made.Down}: {Kinds(made.Joined.Select(j => $"{j.Count} on {j.Sides}, {string.Join(", ", j.Piece.Rows[^1].Made.Where(p => p.Seen != Seen.SlipStitch).Select(p => Name(p) + (p.IsMarked ? " marked" : "")))}"))}";
        if (expected != actual) found.Add($"{title} is {expected} in the row model, {actual} as read");
        var rim = string.Join(", ", read.Pieces[title].Rows[0].Made.Select(p => Name(p) + (p.IsMarked ? " marked" : "")));
        if (Places(blanket.Rim) != rim) found.Add($"the rim of {title} is {Places(blanket.Rim)} in the row model, {rim} as read");
    }

    // The page tells the kinds of all sizes in one order, and a size has some of them.
    private static string Kinds(IEnumerable<string> kinds) => string.Join("; ", kinds.Order(StringComparer.Ordinal));

    // A side of a motif has as many places by the markers on the page as by the row model.
    private static void Sides(Pattern pattern, int size, ReadPattern read, List<string> found)
    {
        foreach (var side in pattern.Items.OfType<SeamInSizes>().Select(s => s.InSizes[size]).OfType<Seam>().SelectMany(s => s.WholeFirst.Concat(s.WholeSecond)))
        {
            if (side.Stretches is not [{ Kind: StretchKind.Side } stretch]) continue;
            var places = read.Pieces[Title(side.Piece)].SideOf(stretch.Name!).Count;
            if (places != stretch.Count) found.Add($"{Title(side.Piece)}: its {stretch.Name} has {stretch.Count} places in the row model, {places} as read");
        }
    }

    private static void Piece(Piece piece, ReadPattern read, List<string> found, bool several)
    {
        var title = Title(piece);
        if (read.Pieces.GetValueOrDefault(title) is not { } made)
        {
            found.Add($"{title}: there is no such piece on the page");
            return;
        }

        void Same<T>(string what, T expected, T actual)
        {
            if (!Equals(expected, actual)) found.Add($"{title}: {what} is {expected} in the row model, {actual} as read");
        }

        Same("number of rows", piece.Rows.Count, made.Rows.Count);
        Start(piece, made, Same);
        foreach (var (row, worked) in piece.Rows.Zip(made.Rows))
        {
            Same($"side of row {row.Number}", row.RightSide, worked.RightSide);
            Same($"hook after row {row.Number}", $"{row.EndsAt}", $"{worked.EndsAt}");
            Same($"round or row {row.Number}", row.IsRound, worked.IsRound);
            Same($"count of row {row.Number}", row.Work!.Stitches, worked.Stitches);
            if (several) Same($"yarns of row {row.Number}", RowYarns.Of(row), worked.Yarns);
            if (row.Plan is ShapedPlan plan && worked.Shaped is { } shaped) Same($"shaping of row {row.Number}", (plan.Right.Change, plan.Left.Change), shaped);
            Same($"places of row {row.Number}", Places(row.Work.Tops), string.Join(", ", worked.Made.Where(p => p.Seen != Seen.SlipStitch).Select(p => Name(p) + (p.IsMarked ? " marked" : ""))));
        }

        Same("edges inside", string.Join(", ", piece.Inner.Select(s => $"row {s.FirstRow} {(s.Kind == StretchKind.BridgeChain ? "bridge" : "held")} {s.Count} {s.Name?.Replace('-', ' ')}")), string.Join(", ", made.Inner.Select(s => $"row {s.Row} {(s.IsBridge ? "bridge" : "held")} {s.Count} {s.Name}")));
        foreach (var side in new[] { Side.Right, Side.Left })
            Same($"{side} edge", string.Join(", ", piece.At(side == Side.Right ? Hand.Right : Hand.Left).Stretches.SelectMany(Parts)), string.Join(", ", made.Edge(side).Select(Part)));
    }

    private static void Start(Piece piece, ReadPiece made, Action<string, object?, object?> same)
    {
        switch (piece.Start)
        {
            case FoundationStart foundation:
                same("foundation", foundation.Chains, made.Foundation);
                break;
            case RingStart ring:
                same("ring", ring.Chains, made.Ring);
                break;
            case BothSidesStart both:
                same("foundation", both.Chains, made.Foundation);
                break;
            case PartStart part:
                same("base", Title(part.Base), made.StandsOn?.Base.Title);
                same("joined anew", part.Joined, made.IsJoined);
                break;
            case AcrossStart across:
                var parts = piece.Rows[0].RightSide ? across.Parts : across.Parts.Reverse();
                same("bases", string.Join(", ", parts.Select(part => $"{Title(part.Base)} {part.FromRight} {part.Count}")), string.Join(", ", made.Over.Select(part => $"{part.Piece.Title} {part.From} {part.Count}")));
                same("joined anew", across.Joined, made.IsJoined);
                break;
            case PickUpStart pickUp:
                same("joined anew", pickUp.Joined, made.IsJoined);
                same("edges picked up along", string.Join("; ", pickUp.WholeStretches().SelectMany(Walked)), string.Join("; ", made.PickedUp));
                break;
        }
    }

    private static IEnumerable<string> Walked(PickUpLeg leg)
    {
        var (title, stretch) = (Title(leg.Piece), leg.Stretch);
        if (stretch.Kind == StretchKind.RowEnds)
        {
            var rows = Enumerable.Range(stretch.FirstRow, stretch.Count);
            return (leg.Upwards ? rows : rows.Reverse()).Select(row => $"{title}, {leg.Hand}, row {row}");
        }

        return [stretch.Kind switch
        {
            StretchKind.Foundation => $"{title}, foundation",
            StretchKind.OpenStitches => $"{title}, open {stretch.Count}",
            StretchKind.LastRow => $"{title}, last row",
            StretchKind.FreeLoops => $"{title}, loops of row {stretch.FirstRow}",
            StretchKind.Side => $"{title}, {stretch.Name}, {stretch.Count}",
            StretchKind.HeldStitches => $"{title}, held {stretch.Count} for {stretch.Name!.Replace('-', ' ')}",
            StretchKind.BridgeChain => $"{title}, bridge {stretch.Count} for {stretch.Name?.Replace('-', ' ')}",
            StretchKind.AddedChain => $"{title}, {leg.Hand}, added {stretch.Count}",
            _ => $"{title}, {leg.Hand}, left {stretch.Count}",
        }];
    }

    private static IEnumerable<string> Parts(Stretch stretch) => stretch.Kind == StretchKind.RowEnds
        ? Enumerable.Range(stretch.FirstRow, stretch.Count).Select(row => $"row {row}")
        : [$"{(stretch.Kind == StretchKind.AddedChain ? "added" : "left")} {stretch.Count}"];

    private static string Part(EdgePart part) => part.Lies switch
    {
        Lies.RowEnd => $"row {part.Row}",
        Lies.AddedChain => $"added {part.Count}",
        _ => $"left {part.Count}",
    };

    private static string Places(PlaceSequence places)
    {
        var names = new List<string>();
        foreach (var segment in places.Segments)
        {
            for (var i = 0; i < segment.Times; i++)
                names.AddRange(segment.Unit.SelectMany(run => Enumerable.Repeat(Name(run.Place) + (run.Place.IsCorner ? " marked" : ""), run.Count)));
        }

        return string.Join(", ", names);
    }

    private static string Name(Fabric.Places.Place place) => place.Kind == PlaceKind.Space ? $"ch-{place.Chains} sp" : place.Stitch is { } stitch ? (stitch.Making == StitchMaking.Basic ? stitch.Id : stitch.Us.Abbreviation) : "ch";

    private static string Name(Place place) => place.Seen == Seen.Space ? $"ch-{place.Chains} sp" : place.Seen == Seen.BridgeChain ? "ch" : place.Stitch;

    private static void Seams(List<Seam> seams, IReadOnlyList<ReadSeam> read, List<string> found)
    {
        if (seams.Count != read.Count) found.Add($"{seams.Count} seams in the row model, {read.Count} as read");
        foreach (var (seam, made) in seams.Zip(read))
        {
            if ((seam.Yarn ?? "") != made.Yarn) found.Add($"a seam of {Edge(seam.First)} is made with {seam.Yarn} in the row model, {made.Yarn} as read");
            var inside = seam.RightSidesTogether is { } right ? right ? "RS" : "WS" : seam.Rate is null ? "" : "RS";
            // A fold has a side inside, said or not.
            if (inside != made.Inside && !(seam.RightSidesTogether is null && (made.First == made.Second || made.Fold.Length > 0))) found.Add($"a seam of {Edge(seam.First)} has {inside} inside in the row model, {made.Inside} as read");
            if (Ease(seam) != made.Ease) found.Add($"a seam of {Edge(seam.First)} is eased {Ease(seam)} in the row model, {made.Ease} as read");
            if (seam.GoesOn)
            {
                Parts(seam, made, found);
                continue;
            }

            var expected = $"{Edge(seam.First)} to {Edge(seam.Second)}, rows {string.Join(" ", Pairs(seam))}";
            var actual = $"{made.First.Edge} of {made.First.Piece} to {made.Second.Edge} of {made.Second.Piece}, rows {string.Join(" ", made.RowPairs.Select(p => $"{p.First}+{p.Second}"))}";
            expected += $", {Rate(seam.Rate)}, open {string.Join(", ", Open(seam).Where(o => o.Length > 0))}";
            actual += $", {made.Rate}, open {string.Join(", ", made.Open)}";
            if (expected != actual) found.Add($"a seam is {expected} in the row model, {actual} as read");
            if (FoldOf(seam) != made.Fold) found.Add($"{actual}: folded {FoldOf(seam)} in the row model, {made.Fold} as read");
            if (!seam.Eased && seam.First.Stitches > 0 && !made.StitchForStitch) found.Add($"{actual}: what becomes of the stitches between the rows is not said");
        }
    }

    // Which stitches of one row lie on each other at both ends of the fold, and which one in it.
    private static string FoldOf(Seam seam)
    {
        List<int> stitches;
        if (seam.Fold is { } fold) stitches = [.. Enumerable.Range(fold.From, fold.Stitches).Select(i => i > fold.Stitches ? i - fold.Stitches : i)];
        else if (seam is { Eased: false, First.Stretches: [{ Kind: StretchKind.OpenStitches, Name: not null } one], Second.Stretches: [{ Kind: StretchKind.OpenStitches, Name: not null } other] } && seam.First.Piece.Name == seam.Second.Piece.Name)
            stitches = [.. Numbers(one), .. Numbers(other)];
        else return "";
        var (pairs, n) = (stitches.Count / 2, stitches.Count);
        return $"{stitches[0]}+{stitches[^1]}{(pairs > 1 ? $" to {stitches[pairs - 1]}+{stitches[n - pairs]}" : "")}{(n % 2 == 0 ? "" : $" alone {stitches[pairs]}")}";

        static IEnumerable<int> Numbers(Stretch part) => Enumerable.Range(part.FromRight + 1, part.Count);
    }

    private static void Parts(Seam seam, ReadSeam made, List<string> found)
    {
        static string Named(IEnumerable<string> first, IEnumerable<string> second) => $"{string.Join(" + ", first)} to {string.Join(" + ", second)}";
        static IEnumerable<string> Read(SeamEdge first, IEnumerable<SeamEdge> more) => more.Prepend(first).Select(e => $"{e.Edge} of {e.Piece}");
        var all = seam.WholeFirst.Concat(seam.WholeSecond).ToList();
        var expected = $"{Named(seam.WholeFirst.Select(Edge), seam.WholeSecond.Select(Edge))}, {Rate(seam.Rate)}";
        expected += seam.Eased ? "" : $", rows {all.Exists(s => s.RowEnds > 0)}, stitches {all.Exists(s => s.Stitches > 0)}";
        var actual = $"{Named(Read(made.First, made.GoesOn.First), Read(made.Second, made.GoesOn.Second))}, {made.Rate}";
        actual += seam.Eased ? "" : $", rows {made.RowForRowOnly}, stitches {made.StitchForStitch}";
        if (expected != actual) found.Add($"a seam is {expected} in the row model, {actual} as read");
    }

    private static string Ease(Seam seam)
    {
        static string Halves(Rational length) => (Math.Floor((length.ToDouble() * 2) + 0.5) / 2).ToString("0.#", CultureInfo.InvariantCulture);
        return seam.Lengths is { } lengths ? $"{Halves(lengths.First)} to {Halves(lengths.Second)}" : seam.Eased ? "eased" : "";
    }

    private static string Rate(SeamRate? rate) => rate is null ? "sewn"
        : $"{rate.Stitches} {rate.Stitch} in {rate.Per} {(rate.OfStitches ? "st" : "row")}";

    // An edge folded onto itself has one list of rows that are in no part of the seam.
    private static IEnumerable<string> Open(Seam seam) => seam.First.Piece == seam.Second.Piece && seam.First.Hand == seam.Second.Hand
        ? [Open(seam.First, seam.Second)]
        : [Open(seam.First), Open(seam.Second)];

    // Rows of the same name that are not in the seam.
    private static string Open(JoinSide side, JoinSide? other = null)
    {
        if (side.Hand is not { } hand || side.RowEnds == 0) return string.Empty;
        var name = side.Stretches.Select(s => s.Name).FirstOrDefault(n => n is not null);
        var all = side.Piece.At(hand).Stretches.Where(s => s.Kind == StretchKind.RowEnds && s.Name == name);
        var open = all.SelectMany(s => Enumerable.Range(s.FirstRow, s.Count)).Except(Rows(side)).Except(other is null ? [] : Rows(other)).ToList();
        return open.Count == 0 ? string.Empty : $"{Title(side.Piece)} {string.Join(" ", open)}";
    }

    private static string Edge(JoinSide side) => side.Hand is { } hand
        ? $"{(hand == Hand.Right ? "right" : "left")} edge of {Title(side.Piece)}"
        : side.Stretches[0] is { Kind: StretchKind.OpenStitches, Name: not null } part
        ? $"stitches {part.FromRight + 1}-{part.FromRight + part.Count} of the last {(side.Piece.EndsInRounds ? "round" : "row")} of {Title(side.Piece)}"
        : side.Stretches[0] is { Kind: StretchKind.BridgeChain, Name: { } bridge } ? $"other side of the chain for {bridge.Replace('-', ' ')} of {Title(side.Piece)}"
        : side.Stretches[0] is { Kind: StretchKind.HeldStitches, Name: { } held } ? $"stitches held for {held.Replace('-', ' ')} of {Title(side.Piece)}"
        : side.Stretches[0] is { Kind: StretchKind.FreeLoops } loops ? $"free loops of row {loops.FirstRow} of {Title(side.Piece)}"
        : side.Stretches[0] is { Kind: StretchKind.Side } ofMotif ? $"{ofMotif.Name} of {Title(side.Piece)}"
        : $"{(side.Stretches[0].Kind == StretchKind.Foundation ? "beginning edge" : side.Piece.EndsInRounds ? "last round" : "last row")} of {Title(side.Piece)}";

    private static IEnumerable<string> Pairs(Seam seam)
    {
        var first = Rows(seam.First).ToList();
        var second = (seam.OppositeOrder ? Rows(seam.Second).Reverse() : Rows(seam.Second)).ToList();
        // Row-ends that are eased into stitches meet none one by one.
        return seam.Eased && first.Count > 0 && second.Count > 0 ? [$"{first[0]}+{second[0]}", $"{first[^1]}+{second[^1]}"] : first.Zip(second, (a, b) => $"{a}+{b}");
    }

    private static IEnumerable<int> Rows(JoinSide side) =>
        side.Stretches.Where(s => s.Kind == StretchKind.RowEnds).SelectMany(s => Enumerable.Range(s.FirstRow, s.Count));

    private static string Title(Piece piece) => char.ToUpperInvariant(piece.Name[0]) + piece.Name[1..].Replace('-', ' ');
}
