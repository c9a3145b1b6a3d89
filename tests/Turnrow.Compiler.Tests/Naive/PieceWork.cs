namespace Turnrow.Compiler.Tests.Naive;

/// <summary>
/// Works the statements of one piece in one size. In a mirrored piece the words of a row are met from their end
/// (beginnings become ends), so they are worked over the places from the other edge; all else is found afresh.
/// </summary>
public sealed partial class PieceWork(PieceResult result, TurnTable turns, bool isMirrored)
{
    private (StitchPattern Pattern, int Worked)? _in;
    private readonly string[] _names = ["", ""];
    private List<Place> _places = [];
    private int? _chains;
    private string? _plain;
    private Manner _manner = new(null, null);
    private (Hand Hand, int Count, string Name)? _addLater;
    private Side _side = Side.RS;
    private bool _inRounds;
    private bool _afterRound;
    private bool _leavesLoops;
    private bool _goesOn;
    private bool _isBegunByRow;

    /// <summary>Asked when the first row starts at an edge: does the yarn of what it stands on go on?</summary>
    public Func<Hand, bool>? TakesYarn { get; set; }

    /// <summary>How many places another piece has where it is joined to.</summary>
    public Func<JoinNext, int>? PlacesBeside { get; set; }

    /// <summary>How many of them are taken, edge by edge.</summary>
    private readonly Dictionary<(string, RimEdge, int?), int> _taken = [];

    private int Size => result.Size;

    private int NextRow => result.Rows.Count + 1;

    public void BeginWith(int stitches)
    {
        _places = Enumerable.Repeat(new Place(Place.Chain), stitches).ToList();
        result.FoundationChains = 0;
    }

    /// <summary>Of the chain only so much is made before as the first stitch needs; each stitch makes the chain at its own foot.</summary>
    public void BeginWithFoundationRow(string stitch, int count)
    {
        var rule = turns.Rule(stitch);
        var chainStandsAlone = count == 1 && rule.CountsInFoundation;
        result.FoundationChains = chainStandsAlone ? rule.FirstChain - 1 : rule.FirstChain;
        result.FoundationPlaces = count;
        _plain = stitch;
        MakeRow(Enumerable.Repeat(new Place(stitch), count).ToList());
        _isBegunByRow = true;
    }

    /// <summary>How many places the chain has depends on the first row's stitch, so it waits for it.</summary>
    public void BeginWithChains(int chains)
    {
        _chains = chains;
        result.FoundationChains = chains;
    }

    /// <summary>Goes on from rows, or from rounds: then what comes next may be either, on the same side.</summary>
    public void GoOnFrom(IReadOnlyList<Place> places, Side lastSide, bool afterRound)
    {
        _places = places.ToList();
        _side = afterRound ? lastSide : Frame.Opposite(lastSide);
        (_inRounds, _afterRound, _goesOn) = (afterRound, afterRound, true);
        _lastOrder = lastSide;
    }

    /// <summary>The row of picked-up stitches: it faces the right side and is the piece's first.</summary>
    public void PickUp(string stitch, int count, bool around) => PickUp(stitch, Enumerable.Repeat(new Place(stitch), count), around);

    /// <summary>The same from right to left, some of them corners.</summary>
    public void PickUp(string stitch, IEnumerable<Place> places, bool around)
    {
        _plain = stitch;
        result.PickedUp = true;
        _inRounds = around;
        MakeRow(places.ToList());
    }

    public void Work(Statement statement)
    {
        if (!statement.IsFor(Size))
        {
            result.CountsAfter.Add(Counted(statement));
            return;
        }
        switch (statement)
        {
            case RowLine row: WorkRowLine(row); break;
            case RowsLine rows: WorkRowsLine(rows); break;
            case Straight straight: GoOnAs(straight); WorkShape(straight.Rows[Size], []); break;
            case StraightIn straight: WorkIn(straight); break;
            case EdgedIn edged: WorkEdged(edged); break;
            case Shape shape: GoOnAs(shape); CheckSpan(shape.Span); WorkShape(shape.Span.Count(Size), shape.Schedules); break;
            case SpreadSchedule spread: GoOnAs(spread); Spread(spread); break;
            case SlopeAround slope: GoOnAs(slope); Slope(slope); break;
            case LeaveAtEdge leave: Leave(leave); break;
            case LeaveForLater later: HandsOf(later.Edge).ForEach(hand => LeaveForLater(hand, later.Stitches[Size])); break;
            case AddAtEdge add: Add(add); break;
            case ShapeManner manner: _manner = manner.Manner; break;
            case NameEdge name: Name(name); break;
            case FastenOff: result.IsFastenedOff = true; break;
            case RoundsAre are: _way = are.Way; break;
            case TakeYarn take: Take(take); break;
            case StripesAre stripes: TakeTurns(stripes); break;
        }
        if (statement.Claim is { } claim)
            CheckClaim(claim[Size], Counted(statement));
        result.CountsAfter.Add(Counted(statement));
    }

    /// <summary>A step that no row follows stands in no rule.</summary>
    public void End()
    {
        CheckNothingWaits();
        foreach (var ((piece, edge, side), taken) in _taken)
        {
            if (taken < PlacesBeside!(new JoinNext(piece, edge, 0) { Side = side }))
                throw new UnworkableException($"{piece} is not joined to its end");
        }
        if (result.Edge(Hand.Right).Concat(result.Edge(Hand.Left)).Any(stretch => stretch.Row > result.Rows.Count))
            throw new UnclearException("a step at the end of the piece has no row after it");
    }

    private void Join(JoinNext join)
    {
        var edge = (join.Piece, join.Edge, join.Side);
        _taken[edge] = _taken.GetValueOrDefault(edge) + join.Skipping + 1;
        if (_taken[edge] > PlacesBeside!(join))
            throw new UnworkableException($"nothing is left of {join.Piece} to join to");
    }

    /// <summary>At a step what the next row meets, with what waits where it goes; else the last row: chains that are there for the next row are not in it.</summary>
    private int Counted(Statement statement) => statement is LeaveForLater || statement is LeaveAtEdge or AddAtEdge || result.Rows.Count == 0
        ? Ahead().Count(place => !place.IsSpace)
        : result.Rows[^1].Places.Count(place => place.IsStitch);

    private static void CheckClaim(int claimed, int calculated)
    {
        if (claimed != calculated)
            throw new UnworkableException(FormattableString.Invariant($"claimed {claimed}, calculated {calculated}"));
    }

    /// <summary>The rows of a stitch pattern, from where they stopped if nothing came between, else from the first.</summary>
    private void WorkIn(StraightIn straight)
    {
        GoOnAs(straight);
        if (_edged?.Pattern == straight.Pattern)
            throw new UnclearException("the pattern had edges, and then none");
        var worked = _in is { } before && before.Pattern == straight.Pattern ? before.Worked : 0;
        if (worked == 0 && !straight.IsNamed)
            throw new UnworkableException("the piece is worked in no pattern that could go on");
        if (worked == 0 && !straight.Pattern.Fits(Ahead().Count))
            throw new UnworkableException("the stitches are no whole number of repeats");
        // The bottom line is a right-side row.
        if (worked == 0 && straight is { Pattern: Picture, IsRound: false } && result.Rows.Count > 0 && _side == Side.WS)
            throw new UnworkableException("the picture would begin on the wrong side");
        if (straight is { Pattern: Picture, IsRound: true } && _side == Side.WS)
            throw new UnclearException("a picture in rounds is seen from the outside");
        for (var row = 0; row < straight.Rows[Size]; row++)
        {
            _picture = straight.Pattern is Picture picture ? (picture, worked) : null;
            WorkWords(straight.Pattern.Row(worked));
            _in = (straight.Pattern, ++worked);
        }
    }

    private void WorkRowLine(RowLine row)
    {
        if (row.Number is { } number && number != NextRow)
            throw new UnworkableException(FormattableString.Invariant($"row {number} would be row {NextRow}"));
        SetOut(row.IsRound, row.Side);
        if (row.Side is { } side && side != _side)
        {
            // Only a piece that stands on nothing may choose the side of its first row.
            if (result.Rows.Count > 0 || result.FoundationChains is null)
                throw new UnworkableException("the row has the other side");
            _side = side;
        }
        WorkWords(row.Words);
    }

    private void WorkRowsLine(RowsLine rows)
    {
        CheckSpan(rows.Span);
        SetOut(rows.IsRound, null);
        for (var i = rows.Span.Count(Size); i > 0; i--)
            WorkWords(rows.Words);
    }

    private void CheckSpan(RowSpan span)
    {
        if (span.From is { } from && from[Size] != NextRow)
            throw new UnworkableException(FormattableString.Invariant($"row {from[Size]} would be row {NextRow}"));
        if (span.Count(Size) < 0)
            throw new UnworkableException("fewer rows than none");
        if (span.From is not null && span.Count(Size) == 0)
            throw new UnclearException("the rows end before they begin");
    }

    private void WorkWords(IReadOnlyList<Word> words)
    {
        if (NextRow == 1)
        {
            LayFoundation(Opening.Of(words, isMirrored, Size));
            result.FoundationPlaces = _places.Count;
        }
        // Stitches that wait are beside the edge, and a round goes to none.
        if (_inRounds)
            CheckNoStepAtRound();
        TurnRound(IsBack(words));
        // The words' own order: that of the working row, or the other way round in a mirrored piece.
        var wordSide = isMirrored ? Frame.Opposite(_order) : _order;
        var behind = BehindTurn();
        var isOverAll = _asked.Sum() + _waiting.Sum(pile => pile.Count) == 0 && !result.Edge(Hand.Right).Concat(result.Edge(Hand.Left)).Any(stretch => stretch.Row == NextRow);
        var work = new RowWork(BegunFurtherOn(Frame.InWorkingOrder(InOrder(), wordSide), ref words), Size, _inRounds) { BehindTurn = behind, PassedAtStart = _begunAt };
        _leavesLoops = isOverAll && result.Rows.Count > 0 && words.Where(word => word is not WithYarn).ToList() is [Across { Loop: not null }];
        work.Work(words);
        _leavesLoops &= result.Rows.Count > 0 && work.Made.Count == result.Rows[^1].Places.Count;
        work.Joins.ForEach(Join);
        StepInRow(Frame.StartOf(wordSide), work.SlippedOver);
        if (work.LeftForLater > 0 && isMirrored)
            throw new UnworkableException("the row would turn where it begins");
        PileUp(work.LeftForLater);
        StepInRow(Frame.Opposite(Frame.StartOf(wordSide)), work.Left);
        if (_inRounds && work.SlippedOver + work.Left + work.LeftForLater > 0)
            throw new UnworkableException("a round has no edge to leave anything at");
        result.Inner.AddRange((isMirrored ? Enumerable.Reverse(work.Inner) : work.Inner).Select(inner => inner with { Row = NextRow }));
        _plain = Opening.PlainStitch(words);
        var begun = YarnOf(words);
        _rowYarns = work.YarnsFrom(begun);
        if (wordSide == Side.WS)
            _rowYarns.Reverse();
        _after = work.YarnAfter(begun);
        Show(work.Made.Count);
        if (work.BeforeMarker is not null && (words.Count == 1 || !_inRounds || !_afterRound || _way != RoundsWay.Spiral || _lastWay != RoundsWay.Spiral))
            throw new UnworkableException("there is no marker to move");
        MakeRow(Frame.InWorkingOrder(work.Made, wordSide));
        if (work.BeforeMarker is { } first)
            _places.InsertRange(0, first);
    }

    private void LayFoundation(Opening first)
    {
        if (result.FoundationChains is null)
            return;
        if (_inRounds)
        {
            // A ring is as many chains as the round has places; the chain that begins the round is made on top of it.
            if (_chains is { } ring)
                _places = Enumerable.Repeat(new Place(Place.Chain), ring).ToList();
            result.FoundationChains = _places.Count;
            return;
        }
        if (_chains is not null && !first.IsPlainlyBegun)
            throw new UnclearException("no rule says how many places the chain has under such a first stitch");
        if (_chains is { } chains)
            _places = Enumerable.Repeat(new Place(Place.Chain), Math.Max(0, turns.StitchesFrom(chains, first))).ToList();
        else
            result.FoundationChains = first.IsPlainlyBegun && _places.Count > first.Leaves ? turns.ChainsFor(_places.Count, first) : null;
    }

    private void StepInRow(Hand hand, int count)
    {
        if (count > 0)
            AddStretch(hand, LeftKind(hand), count, NameOf(hand));
    }

    private void WorkShape(int rows, IReadOnlyList<Schedule> schedules)
    {
        if (_plain is not { } stitch)
            throw new UnworkableException("the last row has no one plain stitch to go on with");
        if (rows < 0)
            throw new UnworkableException("fewer rows than none");
        var shaping = new ShapingWork(rows, schedules, _manner, HandsOf);
        for (var row = 1; row <= rows; row++)
        {
            TurnRound(stitch == "rsc");
            foreach (var hand in new[] { Hand.Right, Hand.Left })
            {
                LeaveAt(hand, shaping.At(hand, row).Left);
                LeaveForLater(hand, shaping.At(hand, row).Later);
            }
            MakeRow(ShapingWork.MakeRow(InOrder(), stitch, shaping.At(Hand.Right, row), shaping.At(Hand.Left, row)));
        }
    }

    private void Spread(SpreadSchedule spread)
    {
        var stitch = _plain ?? throw new UnworkableException("the last row has no one plain stitch to go on with");
        for (var row = 1; row <= spread.Rows[Size]; row++)
            WorkWords(row % spread.Every == 0 ? [new Evenly(stitch, spread.Increase, spread.Many)] : [new Across(stitch)]);
    }

    /// <summary>Each row has what a straight slope has there, to the nearest stitch.</summary>
    private void Slope(SlopeAround slope)
    {
        var stitch = _plain ?? throw new UnworkableException("the last row has no one plain stitch to go on with");
        var (from, rows) = (Meet().Count, slope.Rows[Size]);
        for (var row = 1; row <= rows; row++)
        {
            var here = (int)Math.Floor(from + (slope.To[Size] - from) * row / (decimal)rows + 0.5m);
            var change = here - Meet().Count;
            WorkWords([new Evenly(stitch, change > 0, Math.Abs(change))]);
        }
        if (Meet().Count != slope.To[Size])
            throw new UnworkableException("the slope has no rows to get there");
    }

    private void Leave(LeaveAtEdge leave)
    {
        var count = leave.Stitches[Size];
        foreach (var hand in HandsOf(leave.Edge))
        {
            if (count >= _places.Count)
                throw new UnworkableException("no stitch would remain");
            LeaveAt(hand, count);
        }
    }

    private void LeaveAt(Hand hand, int count)
    {
        if (count > _places.Count)
            throw new UnworkableException("more is left than there is");
        if (count > 0 && HasStepHere(hand, StretchKind.AddedChain, StretchKind.SeparateChain))
            throw new UnworkableException("chains are added here already");
        _places.RemoveRange(hand == Hand.Right ? 0 : _places.Count - count, count);
        AddStretch(hand, LeftKind(hand), count, NameOf(hand));
    }

    private StretchKind LeftKind(Hand hand) =>
        hand == Frame.StartOf(_side) ? StretchKind.SlippedOver : StretchKind.Left;

    private void Add(AddAtEdge add)
    {
        var count = add.Stitches[Size];
        var hook = Frame.StartOf(_side);
        foreach (var hand in HandsOf(add.Edge))
        {
            if (add.OneRowApart && hand != hook)
                _addLater = (hand, count, NameOf(hand));
            else
                AddChains(hand, count, NameOf(hand));
        }
    }

    private bool HasStepHere(Hand hand, StretchKind one, StretchKind other) =>
        result.Edge(hand).Exists(stretch => stretch.Row == NextRow && (stretch.Kind == one || stretch.Kind == other));

    private void AddChains(Hand hand, int count, string name)
    {
        if (count > 0 && HasStepHere(hand, StretchKind.SlippedOver, StretchKind.Left))
            throw new UnworkableException("stitches are left here already");
        var chains = Enumerable.Repeat(new Place(Place.Chain), count);
        _places.InsertRange(hand == Hand.Right ? 0 : _places.Count, chains);
        var kind = hand == Frame.StartOf(_side) ? StretchKind.AddedChain : StretchKind.SeparateChain;
        AddStretch(hand, kind, count, name);
    }

    private void AddStretch(Hand hand, StretchKind kind, int count, string name)
    {
        if (count > 0)
            result.Edge(hand).Add(new Stretch(kind, NextRow, "", count, name));
    }

    private void Name(NameEdge name)
    {
        foreach (var hand in HandsOf(name.Edge))
        {
            _names[(int)hand] = name.Name;
            // The first row is there before anything can be said of its edges.
            if (_isBegunByRow && !name.FromHere && result.Rows.Count == 1)
                result.Edge(hand)[0] = result.Edge(hand)[0] with { Name = name.Name };
        }
    }

    private string NameOf(Hand hand) => _names[(int)hand];

    private List<Hand> HandsOf(EdgeRef edge)
    {
        if (edge == EdgeRef.Both)
            return [Hand.Right, Hand.Left];
        if (edge.Hand is { } hand)
            return [hand];
        var named = new[] { Hand.Right, Hand.Left }.Where(h => NameOf(h) == edge.Name).ToList();
        return named.Count == 1 ? named : throw new UnworkableException($"{edge.Name} is not one edge");
    }

    /// <summary>Takes a row's places from right to left, ends it at both edges and turns the work.</summary>
    private void MakeRow(List<Place> made)
    {
        if (made.TrueForAll(place => place.IsSpace))
            throw new UnworkableException("the row has no stitch");
        if (TakesYarn is { } takes && result.Rows.Count == 0)
            result.Yarn = takes(Frame.StartOf(_side)) ? YarnAt.GoesOn : YarnAt.JoinedAnew;
        (_in, _edged) = (null, null);
        if (_inRounds)
            CheckNoStepAtRound();
        // The pile where the row starts is what the row before left there: this one starts at the turn. A round has no row-ends.
        if (!_inRounds && WaitingAt(Hand.Right).Count == 0)
            AddRowEnd(Hand.Right, made[0]);
        if (!_inRounds && WaitingAt(Hand.Left).Count == 0)
            AddRowEnd(Hand.Left, made[^1]);
        // In rows the hook is where this side would start: from there a row that is worked back has the other side.
        var face = _back && !_inRounds ? Frame.Opposite(_side) : _side;
        _lastOrder = _back ? _order : _side;
        result.Rows.Add(new RowResult(NextRow, face, made, _inRounds) { IsBack = _back, LeavesLoops = _leavesLoops, Yarns = TakeRowYarns(made.Count) });
        _leavesLoops = false;
        _places = made.ToList();
        _side = _inRounds ? _side : Frame.Opposite(_side);
        (_afterRound, _goesOn, _lastWay, _lastBack, _back) = (_inRounds, true, _way, _back, false);
        if (_addLater is { } later)
        {
            _addLater = null;
            AddChains(later.Hand, later.Count, later.Name);
        }
    }

    private void AddRowEnd(Hand hand, Place end) =>
        result.Edge(hand).Add(new Stretch(StretchKind.RowEnd, NextRow, end.Kind == Place.Chain || end.IsSpace ? "" : end.BaseStitch, 1, NameOf(hand)));
}
