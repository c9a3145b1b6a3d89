namespace Turnrow.Publishing.Tests.Reader;

/// <summary>A row being worked, stitch by stitch. Whatever cannot be done with the places that are there is a misreading.</summary>
internal sealed partial class RowInHand
{
    private readonly Ground _ground;
    private readonly ChainRules _rules;
    private readonly List<Place> _made = [];
    private readonly RowBeginning _beginning;
    private readonly MarkersInHand _markers;
    private int _at;
    private PlaceWords? _called;
    private int _last = -1;
    private int _turns;
    private int _kept = -1;
    private int _entered;
    private List<Place> _waiting = [];
    private List<Place> _unworked = [];
    private bool _isBeyondStart;

    private RowInHand(Ground ground, ChainRules rules, IReadOnlyList<Step> steps, List<string> doubts)
    {
        _ground = ground;
        _rules = rules;
        _beginning = new RowBeginning(ground, rules, steps, doubts);
        _markers = new MarkersInHand(_made);
        if (ground.JoinedAt >= 0) (_at, _last) = (ground.JoinedAt + 1, ground.JoinedAt);
    }

    public static WorkedRow Work(Ground ground, IReadOnlyList<Step> steps, ChainRules rules, List<string> doubts)
    {
        var row = new RowInHand(ground, rules, steps, doubts);
        row.Do(steps);
        return row.Finish();
    }

    private List<Place> Below => _ground.Places;

    /// <summary>The end of what is there to be worked: slip stitches behind it are nobody's places.</summary>
    private int End
    {
        get
        {
            var end = Below.Count;
            while (end > 0 && Below[end - 1].Seen == Seen.SlipStitch) end--;
            return end;
        }
    }

    private int Slipped { get; set; }

    private int Left { get; set; }

    private bool LeftSlipStitches { get; set; }

    private bool JoinedIsUsed { get; set; }

    /// <summary>True once a round is joined, false once it is left open; null if nothing is said.</summary>
    private bool? IsJoined { get; set; }

    private bool IsSpiral { get; set; }

    private bool ClosesRing { get; set; }

    private int OwnChains { get; set; }

    private List<JoinBeside> Joins { get; } = [];

    private List<InnerPart> Inner { get; } = [];

    /// <summary>Yarns taken up, and how many places are made before.</summary>
    private List<(string Yarn, int From)> Yarns { get; } = [];

    private void Do(IReadOnlyList<Step> steps)
    {
        foreach (var step in steps)
        {
            Do(step);
            foreach (var remark in step.Remarks.Where(remark => remark.StartsWith("completes 1 ", StringComparison.Ordinal))) Complete(remark["completes 1 ".Length..]);
        }
    }

    private void Do(Step step)
    {
        switch (step)
        {
            case Turn:
                _turns++;
                break;
            case MakeChains chains:
                Chain(chains);
                break;
            case JoinBeside join:
                Joins.Add(join);
                break;
            case SkipBeginning skip:
                Enter(_beginning.Skipped(skip.Chains, skip.Remarks), skip.Chains);
                break;
            case SkipPlaces skip:
                Skip(skip);
                break;
            // At the beginning they get the hook past; behind other stitches one is a stitch.
            case WorkInto { Stitch: "sl st" } slip when !_made.Exists(static place => place.Seen != Seen.SlipStitch):
                Slip(slip);
                MoveOn(slip);
                break;
            case WorkInto work:
                Stitches(work);
                break;
            case WorkOnOwnChain own:
                if (!_beginning.IsSkipped || _at != _entered + 1 || _at < End) throw new Misread("only the first of them goes into a ch that is there, the last of those");
                _made.AddRange(Enumerable.Repeat(new Place(Seen.Stitch, own.Stitch), own.Count));
                OwnChains += own.Count;
                break;
            case SpreadOver spread:
                Spread(spread);
                break;
            case WorkOver over:
                Over(over);
                break;
            case WorkNothing:
                if (_made.Count == 0) throw new Misread("there is no st for it to stand on");
                break;
            case WorkTogether work:
                Together(work);
                break;
            case WorkGroup group:
                Group(group);
                break;
            case RepeatSteps repeat:
                for (var i = 0; i < repeat.Times; i++) Do(repeat.Steps);
                if (repeat.IsSlipping) MoveOn(repeat);
                break;
            case WithYarn with:
                Yarns.Add((with.Yarn, _made.Count(place => place.Seen != Seen.SlipStitch)));
                break;
            case GoOverPart:
                if (_at != _ground.HangingChains) throw new Misread("it goes over before all new chains are worked, or behind them");
                break;
            case ChangeAtEnd or RestYarn or StayOnSide:
                break;
            case LeaveUnworked leave:
                Leave(leave);
                break;
            case LeaveForNow leave:
                Leave(leave);
                break;
            case OverThoseLeft over:
                if (over.Count != Below.Count - _ground.Turn) throw new Misread("so many were not left before");
                break;
            case BridgeOver bridge:
                _made.AddRange(Enumerable.Repeat(new Place(Seen.BridgeChain), bridge.Count));
                Inner.Add(new InnerPart(true, bridge.Count, bridge.Name));
                break;
            case JoinRound join:
                Join(join);
                break;
            case PutMarkerInMiddle middle:
                _markers.PutInMiddle(middle.Of);
                break;
            case GoOnInSpiral:
                IsSpiral = true;
                break;
            case EndRoundHere:
                // Where she has not been, the next round begins.
                if (!_ground.GoesOn || _ground.JoinedAt >= 0 || _at == End) throw new Misread("only a round of a spiral ends before its marker");
                _unworked = Below.Take(_at..End).ToList();
                _at = End;
                break;
            case CloseRing:
                ClosesRing = Below is [{ Seen: Seen.Ring }] ? true : throw new Misread("there is no ring to close");
                break;
            case CloseToRing:
                if (_at == Below.Count && Left == 0) throw new Misread("a whole round is a ring already");
                break;
            case OtherSide:
                Turnaround();
                break;
            case PutMarker put:
                _markers.Put(put);
                break;
            case ShiftMarker shift:
                _markers.Shift(shift);
                break;
            case DropMarkers drop:
                _markers.Drop(drop.AtEdge);
                break;
            case GoAlong along:
                if (_at < End) throw new Misread($"{End - _at} places of the edge before are left");
                _isBeyondStart = true;
                Below.AddRange((_ground.Along ?? throw new Misread("this row goes along no edge"))(along.Edge));
                break;
        }
    }

    private void Skip(SkipPlaces skip)
    {
        PassFirst(skip.Places);
        ComeBack(skip.Places);
        if (HeldFor(skip) is { } name) Inner.Add(new InnerPart(false, skip.Places.Count, name));
        // In a row of one stitch the first dc may be the ch that stands for it.
        if (skip.Places is { Where: Where.First, Count: 1 } && _at == 0 && Below[0] is { Seen: Seen.TurningChain or Seen.BeginningChain } only && (skip.Places.Names[0].Word == only.Stitch || skip.Places.Names[0].Word == "st")) _at = 1;
        else foreach (var at in Reach(skip.Places)) Pass(at);
    }

    private void Chain(MakeChains chains)
    {
        if (_made.All(place => place.Seen == Seen.SlipStitch) && !_beginning.IsChained && !_beginning.IsSkipped && _at <= Math.Max(Slipped + (_ground.GoesOn ? 1 : 0), _ground.JoinedAt + 1))
        {
            var opening = _beginning.Chained(chains);
            if (opening.Count > 0 && _made.Count > 0) _made.RemoveAt(_made.Count - 1);
            _made.AddRange(opening);
            if (opening.Count > 0) JoinedIsUsed = true;
            if (opening.Count > 0 && _last >= 0 && Below[_last].IsMarked) _markers.CarryTo(_made.Count - opening.Count, _last);
            return;
        }

        // Of another yarn it is no part of the chain that was skipped.
        if (_beginning.IsSkipped && _made is [{ Seen: Seen.BeginningChain }] && !Yarns.Exists(static yarn => yarn.From == 1)) throw new Misread($"ch {chains.Count} is made where the skipped ch already hang");
        if (_made.Count > 0 && _made[^1] is { Seen: Seen.Space } space) _made[^1] = space with { Chains = space.Chains + chains.Count };
        else _made.Add(new Place(Seen.Space, Chains: chains.Count));
    }

    private void Enter(IReadOnlyList<Place> opening, int chains)
    {
        if (_at != 0 || _made.Count > 0) throw new Misread("chains from the hook are only at the beginning of a row");
        _made.AddRange(opening);
        _at = _entered = chains;
    }

    private void Slip(WorkInto slip)
    {
        var onlySlips = _made.TrueForAll(place => place.Seen == Seen.SlipStitch);
        var goesOn = _ground.GoesOn && slip.Places.Where == Where.Next && (_made.Count > 0 || _at == _ground.JoinedAt + 1);
        if (!onlySlips || !(goesOn || (_made.Count == 0 && _at == 0 && slip.Places.Where == Where.First))) throw new Misread("sl sts to get past sts are at the beginning of a row");
        foreach (var at in Reach(slip.Places))
        {
            (_at, _last) = (at + 1, at);
            _made.Add(new Place(Seen.SlipStitch));
            Slipped++;
        }
    }

    // `the round begins here, and ends in the sts before this`; in a spiral behind the sl sts, else in the last of them.
    private void MoveOn(Step slips)
    {
        if (!slips.Remarks.Contains("the round begins here, and ends in the sts before this")) return;
        if (!_ground.GoesOn) throw new Misread("only a round ends in what is before its beginning");
        var here = _ground.JoinedAt < 0 ? _at : _last;
        Below.AddRange([.. Below.Take(here)]);
        Below.RemoveRange(0, here);
        (_at, _last) = _ground.JoinedAt < 0 ? (0, -1) : (1, 0);
        _made.Clear();
        Slipped = _ground.JoinedAt < 0 ? 0 : Slipped;
    }

    // All of one side is worked: on the other are the same chains but for the two at the ends, met from where the hook is.
    private void Turnaround()
    {
        if (_at < End) throw new Misread($"{End - _at} ch are left on the first side");
        Below.AddRange([.. Below.Take((_entered + 1)..^1).Reverse()]);
    }

    private void Stitches(WorkInto work)
    {
        if (work.Places.Where == Where.FromHook) Enter(_beginning.Skipped(work.Places.Count - 1, work.Remarks), work.Places.Count - 1);
        PassFirst(work.Places);
        var partner = RowBeginning.PartnerOf(work);
        if (partner && _made.Count > 0) _made.RemoveAt(_made.Count - 1);
        var places = Reach(work.Places);
        if (places.Count == 0) throw new Misread($"there is nothing for `{work.Stitch}` to go into");
        foreach (var at in places)
        {
            for (var i = 0; i < work.Each; i++) Make(work.Stitch, work.Special);
            Used(at);
        }

        if (partner) _made[^work.Each] = new Place(Seen.ChainAndStitch, work.Stitch) { IsMarked = _made[^work.Each].IsMarked };
    }

    /// <summary>So many over all that is there of an edge, wherever she puts them; the first edge begins where the yarn is joined, be there a ch or not.</summary>
    private void Spread(SpreadOver spread)
    {
        if (spread.Part == "first" && _isBeyondStart) throw new Misread("the first of them are behind her");
        var from = _isBeyondStart || spread.Part == "next" ? _at : Math.Max(0, _ground.JoinedAt);
        _isBeyondStart = true;
        var end = spread.Part is not null ? from + spread.Places : End;
        if (end > End || end - from != spread.Places) throw new Misread($"{spread.Places} places are spoken of, {End - from} are there");
        for (var at = from; at < end; at++)
        {
            if (!spread.Name.Fits(Below[at]) && spread.Spaces?.Fits(Below[at]) != true) throw new Misread($"{Below[at]} is no {spread.Name.Word}");
        }

        _made.AddRange(Enumerable.Repeat(new Place(Seen.Stitch, spread.Stitch), spread.Count));
        for (var at = from; at < end; at++) Used(at);
    }

    // The row's ch and what was worked into its base are one special stitch.
    private void Complete(string name)
    {
        var parts = _rules.Words.Special(name)?.Parts(_rules.Words) ?? throw new Misread($"`{name}` is no stitch that a ch could begin");
        var count = parts.Sum(part => part.Stitch is null ? 1 : part.Count);
        var with = new MadeSpecial(_rules.Words.Special(name)!.Name);
        if (_made.Count < count) throw new Misread($"{name} has {count} places, {_made.Count} are made");
        for (var i = _made.Count - count; i < _made.Count; i++) _made[i] = _made[i] with { With = with };
        var made = _made.TakeLast(count).Select(place => place.Seen == Seen.Space ? $"ch {place.Chains}" : place.Stitch);
        var said = parts.SelectMany(part => part.Stitch is null ? [$"ch {part.Count}"] : Enumerable.Repeat(part.Stitch, part.Count));
        if (!made.SequenceEqual(said)) throw new Misread($"{name} is not what is made");
    }

    private void Make(string stitch, SpecialStitch? special)
    {
        if (special?.Parts(_rules.Words) is not { } parts)
        {
            _made.Add(new Place(Seen.Stitch, stitch));
            return;
        }

        var with = new MadeSpecial(special.Name);
        foreach (var (count, name) in parts)
        {
            if (name is null) _made.Add(new Place(Seen.Space, Chains: count) { With = with });
            else _made.AddRange(Enumerable.Repeat(new Place(Seen.Stitch, name) { With = with }, count));
        }
    }

    private void Over(WorkOver over)
    {
        PassFirst(over.Places);
        var places = Reach(over.Places);
        if (places.Count != over.Special.Takes) throw new Misread($"{over.Special.Name} is over {over.Special.Takes} places");
        Make(over.Special.Name, over.Special);
        foreach (var at in places) Used(at);
    }

    private void Group(WorkGroup group)
    {
        if (group.Places.Where == Where.FromHook) Enter(_beginning.Skipped(group.Places.Count - 1, group.Remarks), group.Places.Count - 1);
        PassFirst(group.Places);
        var at = Reach(group.Places).Single();
        for (var i = 0; i < group.Parts.Count; i++)
        {
            var (count, stitch) = group.Parts[i];
            if (i == 0 && group.GoesOnSpace && _made[^1].Seen == Seen.Space) _made[^1] = _made[^1] with { Chains = _made[^1].Chains + count };
            else if (stitch is null) _made.Add(new Place(Seen.Space, Chains: count));
            else for (var n = 0; n < count; n++) Make(stitch, group.Specials.GetValueOrDefault(i));
            if (i == group.MarkerBehind) _made[^1] = _made[^1] with { IsMarked = true };
        }

        Joins.AddRange(group.Joins);
        Used(at, group.MarkerBehind < 0);
    }

    // `join with sl st in …`: in the first place that the round made.
    private void Join(JoinRound join)
    {
        if (IsJoined is not null) throw new Misread("the round is joined, or left open, twice");
        IsJoined = join.Place is not null;
        if (join.Place is not { } place) return;
        var first = _made.Find(p => p.Seen != Seen.SlipStitch) ?? throw new Misread("there is nothing to join to");
        var called = first.Seen switch
        {
            Seen.TurningChain when first.Top == first.Chains && first.Chains > 0 => [$"top of ch-{first.Chains}"],
            Seen.TurningChain when first.Top > 0 => [$"{first.Top}{(first.Top == 1 ? "st" : first.Top == 2 ? "nd" : first.Top == 3 ? "rd" : "th")} ch of ch-{first.Chains}"],
            Seen.Space => [$"the ch-{first.Chains} sp at its beginning"],
            Seen.ChainAndStitch when first.Stitch.Length > 0 => [$"first {_rules.Words.Called(first.Stitch)} and not in the ch", "first st"],
            Seen.Stitch => [$"first {_rules.Words.Called(first.Stitch)}", "first st"],
            Seen.ChainAndStitch => ["first st"],
            Seen.BeginningChain => ["top of beginning ch"],
            _ => Array.Empty<string>(),
        };
        if (!called.Contains(place)) throw new Misread($"it is joined in {place}, and begins with {first}");
    }

    // Where the ch of a round is no stitch, the st that the last round was joined in is still the first.
    private void ComeBack(PlaceWords places)
    {
        if (_ground.GoesOn && places.Where == Where.First && _at == 1 && !JoinedIsUsed && _made.All(place => place.Seen == Seen.Space)) _at = 0;
    }

    private static string? HeldFor(Step skip) => skip.Remarks.Where(remark => remark.StartsWith("held for ", StringComparison.Ordinal)).Select(remark => remark["held for ".Length..]).FirstOrDefault();

    private void Pass(int at)
    {
        // The chain that the row opens with stands where the first stitch is passed over.
        if (at == 0 && Below[0].IsMarked && _made.Count > 0) _markers.CarryTo(0, 0);
        _at = at + 1;
    }

    private void Used(int at, bool carries = true)
    {
        if (carries && Below[at].IsMarked) _markers.CarryTo(_made.Count - 1, at);
        if (!carries) _markers.TakeFrom(at);
        if (at == _ground.JoinedAt) JoinedIsUsed = true;
        _last = at;
        _at = Math.Max(_at, at + 1);
    }

    /// <summary>Where the ch stands for the first st, that st is passed over unless it is named: so the notes say.</summary>
    private void PassFirst(PlaceWords places)
    {
        if (_at == 0 && _ground.ComesBack && _beginning.StandsForFirst && places.Where is not (Where.First or Where.Same)) Pass(0);
    }

    // "Across" and "to last 4 sts" go by the row before: what short rows left lies beyond its turn.
    private IReadOnlyList<int> Reach(PlaceWords words)
    {
        if (words.Where != Where.Same) _called = words.Where is Where.Across or Where.NextMarked || words is { Where: Where.Next, Count: 1 } ? words : null;
        return new Search(Below, _at, words.Where is Where.Across or Where.ToLast && _at < _ground.Turn ? Math.Min(End, _ground.Turn) : End, _last) { Turn = _ground.Turn, GoesOn = _ground.GoesOn }.Find(words, keep => _kept = keep);
    }

    // Whoever looks for the next of a kind finds it behind the round's end.
    private bool IsRoundDone() => (IsJoined == true || IsSpiral || _ground.GoesOn) && _called is { } called
        && Below.Take(_at..End).All(place => !place.IsMarked && (called.Where == Where.NextMarked || !called.Names.Any(name => name.Fits(place))));

    private void Leave(LeaveUnworked leave)
    {
        if (leave.SlipStitches)
        {
            if (End == Below.Count) throw new Misread("there are no sl sts to leave");
            LeftSlipStitches = true;
            return;
        }

        var rest = Below.Take(_at..End).Count(place => place.IsLikeAStitch);
        var said = leave.Count ?? _kept;
        if (rest != said) throw new Misread($"{said} sts are to be left, {rest} are there");
        Left = rest;
        _at = End;
    }

    private void Leave(LeaveForNow leave)
    {
        var turn = Math.Min(_ground.Turn, End);
        var fresh = Below.Take(_at..Math.Max(_at, turn)).Count(place => place.IsLikeAStitch);
        var before = Below.Take(Math.Max(_at, turn)..End).Count(place => place.IsLikeAStitch);
        var fits = leave.Which switch
        {
            "other" => _at > turn && before == leave.Count,
            "before" => _at == turn && before == leave.Count,
            _ => _at < turn && fresh == (leave.Count ?? _kept) && leave.Beside == before > 0,
        };
        if (!fits) throw new Misread($"{fresh} sts of the row before and {before} of those left before would be left, which is not what is said");
        _waiting = Below.Take(_at..End).ToList();
        _at = End;
    }

    private WorkedRow Finish()
    {
        if (_turns != (_ground.IsTurned ? 1 : 0)) throw new Misread(_ground.IsTurned ? "it does not say to turn" : "it says to turn where no row is to turn from");
        if (_ground is { JoinedAt: >= 0, GoesOn: false } && !JoinedIsUsed) throw new Misread("nothing is worked into the place where the yarn is joined");
        if (IsRoundDone()) _at = End;
        if (_at < End) throw new Misread($"{End - _at} places are left at the end, the first of them {Below[_at]}");
        if (End < Below.Count && !LeftSlipStitches && Left == 0 && _waiting.Count == 0) throw new Misread("what is to happen with the sl sts is not said");
        return new WorkedRow(_made, _made.Count(place => place.Seen == Seen.SlipStitch), Left, _entered, _beginning.PassedChains, End - Left) { Waiting = _waiting, Unworked = _unworked, Inner = Inner, IsJoined = IsJoined, IsSpiral = IsSpiral, ClosesRing = ClosesRing, Yarns = Yarns, OwnChains = OwnChains, Joins = Joins };
    }
}
