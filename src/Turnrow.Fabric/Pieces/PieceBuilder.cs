using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Pieces;

/// <summary>
/// Makes a piece of one size, row by row. It knows where the hook is, what the next row is worked over, and what both edges are
/// made of. What can't be worked comes back as a <see cref="RowFault"/>; from then on the count is not known until it is told again.
/// </summary>
public sealed partial class PieceBuilder
{
    /// <summary>The most rows that a piece may have.</summary>
    public const int MostRows = 20_000;

    private readonly TurnRules _rules;
    private readonly List<Row> _rows = [];
    private readonly List<PieceEvent> _events = [];
    private readonly EdgeBuilder _right = new(Hand.Right);
    private readonly EdgeBuilder _left = new(Hand.Left);
    private readonly StepBook _steps = new();
    private readonly List<Stretch> _inner = [];
    private readonly RowBook _book;
    private RowCache _cache;
    private PieceStart? _start;
    private RowBegins _begins = RowBegins.Foundation;
    private Course _course = new(true);
    private int _chainsGiven = -1;
    private bool _fastenedOff;
    private Doubts _doubts;
    private Func<Hand, bool>? _takeYarn;

    /// <param name="name">The piece's name.</param>
    /// <param name="rules">The pattern's turning-chain rules where they differ from custom.</param>
    /// <param name="book">The rows worked so far for the pattern's other pieces; null for a piece by itself.</param>
    public PieceBuilder(string name, IReadOnlyDictionary<Stitch, TurnRule> rules, RowBook? book = null)
    {
        Name = name;
        _rules = new TurnRules(rules);
        _book = book ?? new RowBook();
        _cache = _book.For(_rules);
    }

    /// <summary>The piece's name.</summary>
    public string Name { get; }

    /// <summary>Rows so far.</summary>
    public int RowCount => _rows.Count;

    /// <summary>The rows so far.</summary>
    public IReadOnlyList<Row> Rows => _rows;

    /// <summary>True if the next row is a right-side row.</summary>
    public bool NextIsRightSide => _course.NextIsRightSide;

    /// <summary>True if the next row is a round: its end is joined to its beginning, and the next one goes on in the same direction.</summary>
    public bool InRounds => _course.InRounds;

    /// <summary>The edge where the next row starts: in rows that is where the hook is; a round begins and ends there.</summary>
    public Hand HookAt => _course.StartsAt;

    /// <summary>True if the piece has begun.</summary>
    public bool HasBegun { get; private set; }

    /// <summary>True if it begins with a foundation chain of its own.</summary>
    public bool BeginsWithFoundation => _begins is RowBegins.Foundation or RowBegins.FoundationStitches && _start is FoundationStart;

    /// <summary>True if an error leaves the number of rows in doubt, and with it sides and ends.</summary>
    public bool RowsInDoubt => _doubts.Rows;

    /// <summary>The last row, as far as its count is known; null if an error put it in doubt since.</summary>
    public RowWork? LastWork { get; private set; }

    /// <summary>True if the next row begins with chains whose number of stitches its first stitch decides.</summary>
    public bool WaitsForFirstStitch => _chainsGiven >= 0;

    /// <summary>The places that the next row has to work over, in its working order, steps taken into account; null if not known.</summary>
    public PlaceSequence? Ahead
    {
        get
        {
            if (_course.Ahead is not { } ahead) return null;
            var (start, end) = StepsOf(_rows.Count + 1);
            return Reachable(ahead) is { } reachable ? StepBook.Over(reachable, start, end) : null;
        }
    }

    /// <summary>The same where the piece begins with chains that the designer counted: how many places those are, the row's own words decide.</summary>
    public PlaceSequence? AheadFor(IReadOnlyList<Word> words) => _chainsGiven < 0 ? Ahead
        : InRounds ? Openings.RingOf(_chainsGiven) : Openings.PlacesOf(_chainsGiven, words, RuleOf);

    /// <summary>Begins with a foundation for so many plain stitches.</summary>
    public void BeginWithStitches(int stitches)
    {
        Begin(new FoundationStart(0, false), RowBegins.Foundation, true);
        _course.Set(PlaceSequence.Of(new Place(PlaceKind.FoundationChain, null, 0), stitches));
    }

    /// <summary>Begins with so many chains; the first row's first stitch decides how many stitches they give.</summary>
    public void BeginWithChains(int chains)
    {
        Begin(new FoundationStart(chains, true), RowBegins.Foundation, true);
        _chainsGiven = chains;
    }

    /// <summary>Begins from part of an earlier piece's last row. The next row has the side after that row's.</summary>
    /// <param name="part">The part.</param>
    /// <param name="takeYarn">
    /// Asked at the first row, by the edge where it starts, if the yarn goes on from there: after rounds only that row says which edge it is. Null
    /// if the part says it.
    /// </param>
    public void BeginPart(PartStart part, Func<Hand, bool>? takeYarn = null)
    {
        _takeYarn = takeYarn;
        Begin(part, part.Joined ? RowBegins.Joined : RowBegins.Turned, true);
        Yarn = part.Base.YarnAfter ?? Yarn;
        _course = Course.After(part.Base.Rows[^1], part.PlacesFromRight(), _course.Way);
        _doubts = Doubts.Of(part.Base);
    }

    /// <summary>Begins from the last rows of several pieces, over which the first row goes.</summary>
    /// <param name="across">The pieces.</param>
    /// <param name="takeYarn">As for a part.</param>
    public void BeginAcross(AcrossStart across, Func<Hand, bool>? takeYarn = null)
    {
        _takeYarn = takeYarn;
        Yarn = across.Parts[0].Base.YarnAfter ?? Yarn;
        Begin(across, across.Joined ? RowBegins.Joined : RowBegins.Turned, true);
        _course = Course.After(across.Parts.FirstOrDefault(static p => !p.Base.EndsInRounds, across.Parts[0]).Base.Rows[^1], across.PlacesFromRight(), _course.Way);
        _doubts = Doubts.Of(across.Parts.Select(static part => part.Base));
    }

    /// <summary>
    /// Begins with a row of stitches picked up along edges. The row is there at once; a turning chain that counts stands for its first
    /// stitch.
    /// </summary>
    public void BeginPickUp(PickUpStart pickUp, Stitch stitch, int? stitches, Origin origin)
    {
        Begin(pickUp, pickUp.Joined ? RowBegins.PickedUpJoined : RowBegins.PickedUp, pickUp.RightSide);
        _course.InRounds = pickUp.Around;
        if (!pickUp.Joined && pickUp.Walk is [var leg, ..]) Yarn = leg.Piece.YarnAfter ?? Yarn;
        _course.Set(stitches is { } count ? PlaceSequence.Of(new Place(PlaceKind.FoundationChain, null, 0), count) : null);
        WorkRow(PickUpWords.PlanOf(pickUp, stitch), origin, 0);
    }

    /// <summary>Begins without knowing from what, because of an error.</summary>
    public void BeginUnknown()
    {
        Begin(null, RowBegins.Foundation, true);
        _doubts = _doubts with { Corners = true };
    }

    /// <summary>Says which side the next row has, where it may have either: the first row, or the first one after rounds.</summary>
    public void BeginOnSide(bool rightSide)
    {
        if (!SideIsOpen || rightSide == NextIsRightSide) return;
        if (_rows.Count > 0 || _start is PartStart or AcrossStart) _events.Add(new SideEvent(rightSide));
        _course = _course.On(rightSide);
    }

    /// <summary>True if the designer says which side the next row has.</summary>
    public bool SideIsOpen => _course.SideIsOpen && (_rows.Count > 0 || BeginsWithFoundation || _start is PartStart or AcrossStart or RingStart);

    /// <summary>From the next row on the piece is worked in rounds, or back and forth in rows.</summary>
    public void WorkInRounds(bool rounds)
    {
        if (_course.InRounds == rounds) return;
        _events.Add(new RoundsEvent(rounds));
        _course.InRounds = rounds;
    }

    /// <summary>Names an edge from the next row on, or from the beginning: what is picked up has a row before anything can be said of it.</summary>
    public void NameEdge(Hand hand, string name, bool fromBeginning = false)
    {
        _events.Add(new NameEvent(hand, name, fromBeginning));
        if (fromBeginning && _start is null or { MakesFirstRow: true } && _rows.Count == 1) Edge(hand).NameAll(name);
        else Edge(hand).Name = name;
    }

    /// <summary>The name of an edge here; null if it has none.</summary>
    public string? NameOf(Hand hand) => Edge(hand).Name;

    /// <summary>The names that an edge has had so far.</summary>
    public IEnumerable<string> NamesOf(Hand hand) => Edge(hand).AllNames;

    /// <summary>True if an edge has had a name, in whatever letters.</summary>
    public bool HasHadName(Hand hand, string name) => Edge(hand).HasHad(name);

    /// <summary>Leaves stitches unworked or adds chains at an edge, before the next row.</summary>
    public void AddStep(Hand hand, bool adds, int count, Origin origin)
    {
        var step = new Step(adds, count, Edge(hand).UseName()) { Origin = origin };
        _events.Add(new StepEvent(hand, step));
        _steps.Lay(hand, step, _rows.Count + 1);
    }

    /// <summary>What is left or added at an edge before the next row so far; null for nothing.</summary>
    public Step? PendingStep(Hand hand)
    {
        var (start, end) = StepsOf(_rows.Count + 1);
        return hand == HookAt ? start : end;
    }

    /// <summary>How many stitches a later row has more at an edge by steps said so far; below 0 for fewer.</summary>
    /// <param name="hand">The edge.</param>
    /// <param name="ahead">Which row: 1 for the next.</param>
    public int GainAt(Hand hand, int ahead) => StepBook.GainOf(_steps.At(hand, _rows.Count + ahead));

    /// <summary>Steps said for a row that is not there yet.</summary>
    public IEnumerable<Step> UnworkedSteps() => _steps.After(_rows.Count);

    /// <summary>True if the yarn is cut after the last row.</summary>
    public bool IsFastenedOff => _fastenedOff;

    /// <summary>
    /// Adds chains at both edges, one row apart, so that none is a length by itself: first where the hook is, then where it is after the
    /// next row.
    /// </summary>
    public void AddChainsApart(int count, Origin origin)
    {
        _events.Add(new ApartEvent(count, origin));
        _steps.Lay(HookAt, new Step(true, count, Edge(HookAt).UseName()) { Origin = origin }, _rows.Count + 1);
        _steps.Lay(HookAt.Opposite(), new Step(true, count, Edge(HookAt.Opposite()).UseName()) { Origin = origin }, _rows.Count + 2);
    }

    /// <summary>Works the next row. Returns what is wrong with it, or null.</summary>
    public RowFault? WorkRow(RowPlan plan, Origin origin, int ordinal)
    {
        AskForYarn();
        _course.IsBack = Direction.IsBack(plan);
        var number = _rows.Count + 1;
        var (start, end) = StepsOf(number);
        var fault = Work(plan, start, end, out var work, out var words);
        var turns = ShortWork.None;
        PlaceSequence? unworked = null;
        if (work is null)
        {
            LoseWaiting(plan);
            LoseJoins();
        }
        else
        {
            unworked = TakeMarker(ref work, ref words);
            TakeStepsFromWords(ref work, ref start, ref end, origin);
            turns = TakeShortWork(ref work, end, number, origin);
            fault ??= Join(work);
        }

        var row = new Row(number, NextIsRightSide, Begins, work, start, end, plan, ordinal)
        {
            Origin = origin,
            IsRound = InRounds,
            IsBack = _course.IsBack,
            Way = InRounds ? _course.Way : RoundWay.Joined,
            Short = turns,
            Unworked = unworked,
            Yarn = YarnOf(plan),
        };
        _events.Add(new RowEvent(plan is WordsPlan said ? said with { Words = WithWay(said, work, words) } : plan, work is not null, origin, ordinal) { Yarn = row.Yarn });
        Lay(row);
        LayDown(row);
        if (_rows.Count == 1) _start = WithChains(_start, row);
        _course = Course.After(row, _course.Way);
        _doubts = _doubts with { Kinds = _doubts.Kinds && work is null };
        LastWork = work;
        _begins = RowBegins.Turned;
        _chainsGiven = -1;
        if (_rules.EndRow()) _cache = _book.For(_rules);
        return fault;
    }

    /// <summary>Says that the yarn is cut after the last row.</summary>
    public void FastenOff()
    {
        _events.Add(new FastenOffEvent());
        _fastenedOff = true;
    }

    /// <summary>From here on the number of rows is not known; the count is.</summary>
    public void DoubtRows()
    {
        _events.Add(new RowsDoubtEvent());
        _doubts = _doubts with { Rows = true };
    }

    /// <summary>From here on the count is not known, and with <paramref name="rows"/> neither is the number of rows.</summary>
    public void Doubt(bool rows)
    {
        _events.Add(new DoubtEvent(rows, null));
        _course.Set(null);
        LastWork = null;
        _chainsGiven = -1;
        _doubts = _doubts with { Rows = _doubts.Rows || rows };
        LoseWaiting(null);
        LoseJoins();
        // A row that can't be read may have been worked over them: what is said at an edge next need not meet them.
        if (rows) _steps.ForgetAfter(_rows.Count);
    }

    /// <summary>It is known again what the next row has to work over, by a claim: so many plain stitches, steps taken into account.</summary>
    public void Trust(int stitches)
    {
        _events.Add(new DoubtEvent(false, stitches));
        var stitch = LastStitch() ?? StitchBook.Single;
        var (start, end) = StepsOf(_rows.Count + 1);
        var before = (long)stitches - StepBook.GainOf(start) - StepBook.GainOf(end);
        // Where the marker was moved, a claim tells what the round made, and not how many places lie before that.
        if (_rows is [.., { Plan: WordsPlan { Words: [.., MarkerHere] } }]) before = -1;
        _course.Set(before is >= 0 and <= int.MaxValue && !_doubts.HideTurns(_rows.Count) ? PlaceSequence.Of(Place.TopOf(stitch), (int)before) : null);
        LastWork = null;
        _chainsGiven = -1;
        // A claim tells how many stitches there are, not which of them are corners, nor of which kind each is.
        _doubts = _doubts with { Corners = true, Kinds = true };
    }

    /// <summary>
    /// The one plain stitch of the last row, which <c>straight</c> and <c>shape</c> go on with; null if that row is not plain or is not there.
    /// </summary>
    public Stitch? PlainStitch() => _rows.Count == 0 ? null : PlainRows.StitchOf(_rows[^1]);

    /// <summary>Of a last row that does not come out, its words as far as they were worked; null if it came out, or none was worked.</summary>
    public IReadOnlyList<Word>? UpToFault { get; private set; }

    /// <summary>Where the last row stands in a stitch pattern; null if it is in none.</summary>
    public InPattern? LastInPattern => _rows.Count > 0 && _rows[^1].Plan is WordsPlan { Of: { } of } ? of : null;

    /// <summary>The piece as it stands.</summary>
    public Piece Finish() => new(Name, _start, [.. _rows], _right.Walk(), _left.Walk(), _fastenedOff)
    {
        Top = _rows.Count > 0 ? _course.Last : null,
        Inner = [.. _inner],
        JoinedTo = _joined.Count == 0 ? [] : [.. _joined],
        RowsInDoubt = RowsInDoubt,
        CornersInDoubt = _doubts.Corners || (_rows.Count > 0 && _course.Last is null),
        Events = _events,
    };

    private void Begin(PieceStart? start, RowBegins begins, bool rightSide)
    {
        _start = start;
        _begins = begins;
        _course = _course.On(rightSide);
        HasBegun = true;
    }

    private void AskForYarn()
    {
        if (_takeYarn is not { } take) return;
        _takeYarn = null;
        var joined = !take(HookAt);
        _start = _start switch
        {
            PartStart part => part with { Joined = joined },
            AcrossStart across => across with { Joined = joined },
            _ => _start,
        };
        // Over several pieces the hook is at the first of them: there it may be round that the work went.
        var goesOn = _start is AcrossStart over && over.First(HookAt).Base is { EndsInRounds: true } first && first.EndsOnRightSide == NextIsRightSide;
        _begins = joined ? RowBegins.Joined : goesOn ? RowBegins.Round : RowBegins.Turned;
    }

    private static PieceStart? WithChains(PieceStart? start, Row row) => start switch
    {
        FoundationStart { GivenAsChains: false } foundation => foundation with { Chains = ChainsOf(row) },
        BothSidesStart both => both with { Chains = ChainsOf(row) },
        _ => start,
    };

    // A ring is as many chains as it has places; a foundation that is turned has those of the turning chain too.
    private static int ChainsOf(Row row) => row.Work is not { } work ? 0 : row.Begins == RowBegins.Ring ? work.Below.Count : work.Opening.Chains;

    // Rows under the hook: a foundation is none, though it can be worked into from the second row.
    private int RowsBelow => _rows.Count + (_start is PartStart part ? part.Base.Rows.Count : _start is AcrossStart across ? across.Parts.Min(static p => p.Base.Rows.Count) : 0);

    private EdgeBuilder Edge(Hand hand) => hand == Hand.Right ? _right : _left;

    private (Step? Start, Step? End) StepsOf(int row)
    {
        var startsAt = HookAt;
        return (_steps.At(startsAt, row), _steps.At(startsAt.Opposite(), row));
    }

    private RowFault? Work(RowPlan plan, Step? start, Step? end, out RowWork? work, out IReadOnlyList<Word> words)
    {
        work = null;
        UpToFault = null;
        words = plan is ShapedPlan shaped ? _cache.WordsOf(shaped, HookAt) : plan.WordsFrom(HookAt);
        // The yarn that it begins with is the row's, whatever else stands at its beginning.
        var key = words;
        words = YarnWords.WithoutFirst(words);
        if (_chainsGiven >= 0) _course.Set(AheadFor(words));
        if (_course.Ahead is not { } ahead || _doubts.Hide(words, _rows.Count)) return null;
        if (RoundFault(words, start, end) is { } atEdge) return atEdge;
        if (MarkerFault(words) is { } moved) return moved;
        words = UpToMarker(words);
        if (TurnFault(plan, words, start, end) is { } turned) return turned;
        if (Reachable(ahead) is not { } reachable) return TooMuchForLater(ahead);
        if (StepBook.Over(reachable, start, end) is not { } below)
        {
            var left = StepBook.LeftBy(start) + StepBook.LeftBy(end);
            var origin = StepBook.LeftBy(start) > 0 ? start!.Origin : end!.Origin;
            return new RowFault(RowFaultKind.NotEnough, new Leave(left) { Origin = origin }, left, reachable.Count, 0);
        }

        if (below.Count > PlaceSequenceBuilder.MostPlaces) return new RowFault(RowFaultKind.TooLong, null, 0, 0, 0);
        // Rows over the same places are not worked alike where these wait behind another turn.
        var toTurn = Turns.AreSaid(words);
        work = toTurn ? null : _cache.Find(key, below, start, Begins, InRounds);
        if (work is null)
        {
            if (WorkOver(words, below, start, end, toTurn, out work) is { } fault) return fault;
            if (!toTurn) _cache.Keep(key, below, start, Begins, InRounds, work!);
        }

        words = work!.Words;
        return RowsBelowFault(work);
    }

    private RowFault? WorkOver(IReadOnlyList<Word> words, PlaceSequence below, Step? start, Step? end, bool toTurn, out RowWork? work)
    {
        work = null;
        var begunAt = BegunAt(words, below);
        var there = below.BegunAt(begunAt);
        var worked = RowWorker.Work(WithoutWay(words, begunAt), there, InRounds, toTurn ? BehindTurn(end) : 0, begunAt);
        if (worked.Fault is not null)
        {
            UpToFault = worked.Words;
            return worked.Fault;
        }

        var opening = Openings.Of(Begins, worked.Words, RuleOf, StitchesOfChain(below), start);
        if (Openings.GoingBackFirst(worked.Words, opening) is { } back) return new RowFault(RowFaultKind.BeginsGoingBack, back, 0, opening.Chains, 0);
        var marked = Openings.MarkFirst(worked.Tops, opening, opening.FirstStitchIn > 0 ? PlaceKind.SkippedChains : PlaceKind.TurningChain);
        work = new RowWork(worked.Words, there, _cache.Intern(marked), opening) { BegunAt = begunAt };
        return null;
    }

    // What hangs on more rows than the one below is no matter of the words and the places alone.
    private RowFault? RowsBelowFault(RowWork work)
    {
        if (_course.IsBack && Direction.Fault(work.Words, !RowsInDoubt && (_rows.Count == 0 || !_course.HasWayBack)) is { } both) return both;
        return work.Deepest is { } deep && deep.Hook.RowsDown() > RowsBelow ? new RowFault(RowFaultKind.TooFarDown, deep, deep.Hook.RowsDown(), RowsBelow, 0) : null;
    }

    // Words that slip over at the start or leave at the end make the same steps as the statements do.
    private void TakeStepsFromWords(ref RowWork work, ref Step? start, ref Step? end, Origin origin)
    {
        var words = work.Words;
        if (words.Count > 0 && words[0] is SlipOver { Count: > 0 } slip && start is null)
        {
            start = new Step(false, slip.Count, Edge(HookAt).UseName()) { Origin = origin };
            words = [.. words.Skip(1)];
            work = work with { Words = words, Below = work.Below.Slice(slip.Count, work.Below.Count - slip.Count) };
        }

        if (words.Count > 0 && words[^1] is Leave { Count: > 0, ForLater: false } leave && end is null)
        {
            end = new Step(false, leave.Count, Edge(HookAt.Opposite()).Name) { Origin = origin };
            work = work with { Words = [.. words.Take(words.Count - 1)], Below = work.Below.Slice(0, work.Below.Count - leave.Count) };
        }
    }

    private void Lay(Row row)
    {
        _rows.Add(row);
        // Of a row that could not be worked the edges inside it are known all the same.
        var inner = row.Work?.Inner ?? (row.Plan is WordsPlan said ? RowWork.InnerOf(said.Words) : []);
        for (var i = 0; i < inner.Count; i++) _inner.Add(InnerOf(row, inner[i]));
        // A round has no ends that could be an edge.
        if (row.IsRound) return;
        foreach (var hand in (ReadOnlySpan<Hand>)[Hand.Right, Hand.Left])
        {
            Edge(hand).Add(row, row.StepAt(hand));
        }
    }

    private static Stretch InnerOf(Row row, Word word) => word is Hold hold
        ? new Stretch(StretchKind.HeldStitches, row.Number, hold.Count, null, hold.Name)
        : new Stretch(StretchKind.BridgeChain, row.Number, ((Bridge)word).Count, null, ((Bridge)word).Name);

    private Stitch? LastStitch()
    {
        for (var i = _rows.Count - 1; i >= 0; i--)
        {
            if (_rows[i].Work is { Tops.Count: > 0 } work && work.Tops.Last.Stitch is { } stitch) return stitch;
            if (_rows[i].Plan is ShapedPlan plan) return plan.Stitch;
        }

        return null;
    }
}
