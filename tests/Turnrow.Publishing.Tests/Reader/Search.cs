namespace Turnrow.Publishing.Tests.Reader;

/// <summary>Finds the places that words mean, from where the hook is to the end of what can be worked.</summary>
/// <param name="places">The places of the row below, in the order in which they are met.</param>
/// <param name="at">The next of them.</param>
/// <param name="end">Behind the last of them.</param>
/// <param name="last">The place worked into last; -1 for none.</param>
internal sealed class Search(IReadOnlyList<Place> places, int at, int end, int last)
{
    /// <summary>The first of the places that short rows left for later.</summary>
    public int Turn { get; init; } = int.MaxValue;

    /// <summary>True if a round goes on: each st of the one below is also the ch that it began with.</summary>
    public bool GoesOn { get; init; }

    public IReadOnlyList<int> Find(PlaceWords words, Action<int> keeping)
    {
        if (words.Of is not null) return OfSpecial(words);
        switch (words.Where)
        {
            case Where.First when at > 0:
                throw new Misread("the first places are behind the hook");
            case Where.First:
                return Following(words);
            case Where.Next:
                return words.Count == 1 ? [NextCalled(words.Names[0])] : Following(words);
            case Where.The:
                var added = Following(words);
                return added.All(i => places[i].Seen == Seen.AddedChain) ? added : throw new Misread("these are no added ch");
            case Where.Ring:
                return places is [{ Seen: Seen.Ring }] ? [0] : throw new Misread("there is no ring");
            case Where.Last:
                return Last(words);
            case Where.Same:
                if (last < 0 || !IsSame(words.Names, last)) throw new Misread($"the same place is no {words.Names[0].Word}");
                return [last];
            case Where.Across:
                return Across(words.Names, end);
            case Where.ToLast:
                keeping(words.Count);
                return ToLast(words);
            case Where.ToNext:
                return ToNext(words);
            case Where.ToTurn:
                return ToTurn(words);
            case Where.LeftBefore:
                return LeftBefore(words);
            case Where.ToMarked:
                return ToMarked(words);
            case Where.Marked:
                return [Marked()];
            case Where.NextMarked:
                return [NextMarked()];
            case Where.TopOf:
                return [Top(words.Names[0], place => place.Top == place.Chains && (words.Names[0].Chains == 0 || words.Names[0].Chains == place.Chains))];
            case Where.ChainOf:
                return [Top(words.Names[0], place => place.Top == words.Count && place.Chains == words.Names[0].Chains)];
            default:
                return at < end && places[at].Seen == Seen.Chain ? [at] : throw new Misread("there is no such ch from the hook");
        }
    }

    // One of the places of a special stitch, counted as this row meets them; of each such stitch ahead, or of the next.
    private List<int> OfSpecial(PlaceWords words)
    {
        var found = new List<int>();
        var seen = new HashSet<MadeSpecial>();
        for (var i = at; i < end && (found.Count == 0 || words.Where == Where.Across); i++)
        {
            if (places[i].With is not { } with || with.Name != words.Of || !seen.Add(with)) continue;
            var all = Enumerable.Range(0, places.Count).Where(j => places[j].With == with).ToList();
            var kind = words.Nth == 0 ? all : all.Where(j => words.Names[0].Fits(places[j]) || (places[j].Counts && places[j].Stitch == words.Names[0].Word)).ToList();
            if (words.Nth < 0 && kind.Count != 1) throw new Misread($"there are {kind.Count} {words.Names[0].Word} in {words.Of}");
            if (words.Nth == 0 && all.Count % 2 == 0) throw new Misread($"{words.Of} has no centre");
            var meant = words.Nth < 0 ? kind[0] : words.Nth == 0 ? all[all.Count / 2] : kind[words.Nth - 1];
            if (meant >= at) found.Add(meant);
            if (meant >= at && Enumerable.Range(at, meant - at).Any(j => places[j].Seen is Seen.TurningChain or Seen.BeginningChain && places[j].With is null)) throw new Misread("the chain at the row's end comes before it");
        }

        return found.Count > 0 ? found : throw new Misread($"there is no {words.Of} ahead");
    }

    /// <summary>So many, one after the other; only spaces are passed over, for a stitch never goes into one unsaid.</summary>
    private List<int> Following(PlaceWords words)
    {
        var found = new List<int>();
        for (var i = at; found.Count < words.Count; i++)
        {
            if (i >= end) throw new Misread($"of {words.Count} {words.Names[0].Word} only {found.Count} are there");
            if (Fits(words.Names, i) || IsSt(words, i)) found.Add(i);
            else if (places[i].Seen == Seen.Stitch && words.Names.All(name => name.Word == "sp")) continue;
            else if (places[i].Seen != Seen.Space) throw new Misread($"a {places[i]} comes where {words.Names[0].Word} is expected");
        }

        return found;
    }

    /// <summary>`next dc`, `next sp`: going there, the hook passes what is called otherwise, but never another space nor the end chain.</summary>
    private int NextCalled(PlaceName name)
    {
        for (var i = at; i < end; i++)
        {
            if (name.Fits(places[i]) || (GoesOn && i == at && name.Word == "st" && places[i] is { OfRound: true } or { Seen: Seen.BeginningChain })) return i;
            var mayPass = name.Word == "sp" ? places[i].Seen == Seen.Stitch || (GoesOn && (places[i].OfRound || places[i].Seen == Seen.BeginningChain)) : places[i].Seen is Seen.Space or Seen.Stitch && name.Word != "st";
            if (!mayPass) throw new Misread($"a {places[i]} comes where the next {name.Word} is expected");
        }

        throw new Misread($"there is no next {name.Word}");
    }

    private int NextMarked()
    {
        var marked = at;
        while (marked < end && !places[marked].IsMarked) marked++;
        return marked < end ? marked : throw new Misread("there is no marker ahead");
    }

    private List<int> Last(PlaceWords words)
    {
        var spaces = words.Names.Any(static name => name.Word.EndsWith("sp", StringComparison.Ordinal));
        var tail = Enumerable.Range(at, end - at).Where(i => places[i].IsLikeAStitch || (spaces && places[i].Seen == Seen.Space)).ToList();
        // `last dc and top of turning ch`: the chain behind the last dc is no dc.
        var after = tail.Count - words.Count > 0 && places[tail[^1]].Seen is Seen.TurningChain or Seen.BeginningChain && !Fits(words.Names, tail[^1]) ? 1 : 0;
        var found = tail.SkipLast(after).TakeLast(words.Count).ToList();
        if (found.Count < words.Count || found.Any(i => !Fits(words.Names, i) && !IsSt(words, i))) throw new Misread($"the last {words.Count} are no {words.Names[0].Word}");
        // The way to a space is seen; the way to a stitch has to be said.
        if (found[0] != at && !spaces) throw new Misread($"{found[0] - at} places before the last are passed over in silence");
        return found;
    }

    private List<int> Across(IReadOnlyList<PlaceName> names, int to)
    {
        var found = new List<int>();
        for (var i = at; i < to; i++)
        {
            if (Fits(names, i) || (GoesOn && places[i] is { Counts: true, OfRound: true } && names.Any(name => name.Word == "st"))) found.Add(i);
            else if (names.All(name => name.Word == "sp") && (places[i].Seen == Seen.Stitch || places[i] is { Counts: true, OfRound: true } || (GoesOn && (places[i].OfRound || places[i].Seen == Seen.BeginningChain)))) continue;
            else if (places[i].Seen is Seen.Stitch or Seen.Chain or Seen.BridgeChain) throw new Misread($"a {places[i]} is among what is called `each {names[0].Word}`");
            else if (places[i].Seen != Seen.Space) break;
        }

        return found;
    }

    private List<int> ToLast(PlaceWords words)
    {
        var to = end;
        for (var kept = 0; kept < words.Count; kept += places[to].IsLikeAStitch ? 1 : 0)
        {
            if (--to < at) throw new Misread($"there are no {words.Count} left");
        }

        var found = Across(words.Names, to);
        // A space right before them is still to come.
        var behind = found.Count > 0 ? found[^1] + 1 : at;
        if (Enumerable.Range(behind, to - behind).Any(i => places[i].Seen != Seen.Space)) throw new Misread($"a {places[behind]} comes before the last {words.Count}");
        return found;
    }

    // `sc in each sc to next sp`: that place is the last of the names.
    private List<int> ToNext(PlaceWords words)
    {
        var to = at;
        while (to < end && !words.Names[^1].Fits(places[to])) to++;
        if (to == end) throw new Misread($"there is no {words.Names[^1]} to come to");
        var found = Across([.. words.Names.SkipLast(1)], to);
        if (found.Count > 0 && found[^1] != to - 1) throw new Misread($"a {places[found[^1] + 1]} comes before it");
        return found;
    }

    // All of the row before, but for a ch that stands for its last st.
    private List<int> ToTurn(PlaceWords words)
    {
        if (at >= Turn || Turn >= places.Count) throw new Misread("there is no turn to come to");
        var found = Across(words.Names, Turn - words.Count);
        var behind = Turn - words.Count - (found.Count > 0 ? found[^1] + 1 : at);
        if (words.Count > 0 && behind != 0) throw new Misread("something else comes before the sts before the turn");
        if (behind > 1 || (behind == 1 && places[Turn - 1].Seen is not (Seen.TurningChain or Seen.BeginningChain))) throw new Misread("something else comes before the turn");
        return found;
    }

    private List<int> LeftBefore(PlaceWords words)
    {
        if (at < Turn) throw new Misread("the sts of the row before come first");
        var found = Following(words with { Where = Where.Next });
        var behind = end - found[^1] - 1;
        var all = found[0] == Turn && (behind == 0 || (behind == 1 && places[end - 1].Seen is Seen.TurningChain or Seen.BeginningChain));
        return !words.IsAll || all ? found : throw new Misread("these are not all that were left before");
    }

    // The next place, or behind a space that was passed with those before it: who went into each st up to the marker has passed that one too.
    private int Marked()
    {
        var i = at;
        while (i < end && !places[i].IsMarked && places[i].Seen == Seen.Space) i++;
        return i < end && places[i].IsMarked && (i == at || last == at - 1) ? i : throw new Misread("the marker is not in the next place");
    }

    // `dc in each dc to 1 st before the marked dc`.
    private List<int> ToMarked(PlaceWords words)
    {
        var marked = at;
        while (marked < end && !places[marked].IsMarked) marked++;
        if (marked == end) throw new Misread("there is no marker to come to");
        var found = Across([.. words.Names.SkipLast(1)], marked - words.Count);
        // Who goes into each st passes the spaces, one before the marker too.
        if (found.Count == 0 || Enumerable.Range(found[^1] + 1, marked - words.Count - 1 - found[^1]).Any(i => places[i].Seen != Seen.Space)) throw new Misread("something else comes before the marker");
        return found;
    }

    private int Top(PlaceName name, Func<Place, bool> fits)
    {
        // There is one such ch, at the row's end: a space before it may be passed, a stitch may not.
        var i = at;
        while (i < end && places[i].Seen == Seen.Space) i++;
        if (i >= end || !name.Fits(places[i])) throw new Misread($"what comes is {(i < end ? places[i].ToString() : "nothing")}, not the {name.Word} ch");
        return fits(places[i]) ? i : throw new Misread($"the {name.Word} ch is {places[i].Chains} ch, and its {places[i].Top}th is the top");
    }

    // Where sts are counted, the ch that stands for one is one.
    private bool IsSt(PlaceWords words, int i) => words is { Count: > 1, Names: [{ Word: "st" }] } && places[i].IsLikeAStitch;

    // Where the hook is already, a ch that stands for a st may be called that.
    private bool IsSame(IReadOnlyList<PlaceName> names, int i) => Fits(names, i)
        || (places[i].Counts && names.Any(name => name.Word == "st" || name.Word == places[i].Stitch));

    private bool Fits(IReadOnlyList<PlaceName> names, int i) => names.Any(name => name.Fits(places[i]));
}
