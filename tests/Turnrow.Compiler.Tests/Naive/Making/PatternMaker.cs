namespace Turnrow.Compiler.Tests.Naive.Making;

/// <summary>Makes up a whole pattern from a tape of choices; every pattern it makes can be worked in every size.</summary>
public sealed class PatternMaker
{
    private static readonly string[] s_sizes = ["S", "M", "L", "XL"];
    private static readonly string[] s_pieces = ["back", "front", "sleeve", "collar", "cuff", "pocket"];

    private readonly ChoiceTape _tape;
    private readonly int _sizes;
    private readonly List<TurnRule> _turns = [];
    private readonly TurnTable _table;
    private readonly List<string> _stitches;
    private readonly RowMaker _rows;
    private readonly ShapingMaker _shaping;
    private readonly PickUpMaker _pickUps;
    private readonly RimMaker _rims;
    private readonly RoundMaker _rounds;
    private readonly StitchPatternMaker _patterns;
    private readonly RingMaker _rings;
    private readonly JoinMaker _joins;
    private readonly List<Sketch> _made = [];

    private PatternMaker(ChoiceTape tape)
    {
        _tape = tape;
        _sizes = tape.Between(1, 4);
        _stitches = tape.Of<List<string>>(["dc"], ["sc"], ["hdc"], ["tr"], ["dc", "sc"], ["hdc", "dc"], ["sc", "tr", "dc"]);
        foreach (var stitch in _stitches)
            _turns.AddRange(TurnRules.Any(tape, stitch));
        _table = new TurnTable(_turns);
        _rows = new RowMaker(tape, _stitches);
        _shaping = new ShapingMaker(tape, _rows);
        _pickUps = new PickUpMaker(tape, _stitches);
        _rims = new RimMaker(tape, _stitches);
        _rounds = new RoundMaker(tape, _rows, _stitches);
        _patterns = new StitchPatternMaker(tape, _stitches);
        _rings = new RingMaker(tape, _rows, _stitches);
        _joins = new JoinMaker(tape, _stitches);
    }

    public static NaivePattern Make(ChoiceTape tape)
    {
        var maker = new PatternMaker(tape);
        maker.Foundation();
        for (var pieces = tape.Below(s_pieces.Length); pieces > 0; pieces--)
            maker.AnotherPiece();
        return YarnMaker.Added(new SeamMaker(tape, maker._made).Added(maker.Pattern), tape);
    }

    private string NewName => s_pieces[_made.Count];

    private void AnotherPiece()
    {
        var from = _tape.Of<Sketch>(_made);
        // Not many pieces have edges inside, so of those that do more is made.
        if (from.Inner.Count > 0 && _tape.OneIn(2) && PickUpInside(from))
            return;
        Func<Sketch, bool>[] kinds = [Part, MirrorImage, PickUp, PickUpInside, Across, PickUpRim, AcrossBoth, JoinedTo, PickUpLoops];
        if (!_tape.Of(kinds)(from) && !MirrorImage(_made[^1]))
            Foundation();
    }

    private void Foundation()
    {
        if (_tape.OneIn(8))
        {
            InPattern();
            return;
        }
        var widths = _tape.Sizes(_sizes, 3, _ => 40);
        var onChain = _tape.OneIn(3);
        var sketch = new Sketch(NewName, new BeginWith(new Sized(widths)), _sizes) { Widths = widths, FirstSide = Side.RS };
        _made.Add(sketch);
        if (_tape.OneIn(5))
        {
            sketch.FirstSide = null;
            sketch.Start = _rings.Begin(sketch);
            More(sketch);
            return;
        }
        if (!onChain && _tape.OneIn(4))
        {
            FoundationStitches(sketch);
            return;
        }
        _shaping.NameEdges(sketch);
        if (onChain)
        {
            _rows.FirstRowOnChain(sketch);
            sketch.Start = OnChain(sketch, widths);
        }
        else if (_tape.OneIn(4))
            _rounds.Begin(sketch);
        else
            FirstRow(sketch);
        More(sketch);
        if (!_tape.OneIn(5))
            return;
        (sketch.Copies, sketch.CanBeMirrored) = (_tape.Between(2, 4), false);
    }

    /// <summary>The first row makes its own chain; rounds may go on from it at once.</summary>
    private void FoundationStitches(Sketch sketch)
    {
        var stitch = _tape.Of<string>(_stitches);
        sketch.Start = new FoundationRow(new Sized(sketch.Widths), stitch);
        _shaping.NameEdges(sketch);
        sketch.AddRows(_ => 1);
        sketch.PlainStitch = stitch;
        if (_tape.OneIn(3))
            _rounds.Begin(sketch);
        More(sketch);
        if (_tape.OneIn(5))
            (sketch.Copies, sketch.CanBeMirrored) = (_tape.Between(2, 4), false);
    }

    /// <summary>A piece whose first row is a stitch pattern's.</summary>
    private void InPattern()
    {
        var pattern = _patterns.Any();
        var repeats = _tape.Sizes(_sizes, 1, _ => 5);
        var widths = repeats.Select(times => (times * pattern.Multiple) + pattern.Plus).ToArray();
        var sketch = new Sketch(NewName, new BeginWith(new Sized(widths)), _sizes) { Widths = widths };
        _made.Add(sketch);
        _shaping.NameEdges(sketch);
        _patterns.Work(sketch, pattern);
        More(sketch);
    }

    private NaivePattern Pattern =>
        new(s_sizes[.._sizes], _turns, _made.Select(sketch => new NaivePiece(sketch.Name, sketch.Start, sketch.Statements) { Copies = sketch.Copies }).ToList()) { Stitches = _rows.Defined, StitchPatterns = _patterns.Made };

    /// <summary>What it is called where one of several has to be meant.</summary>
    private string One(Sketch sketch) => sketch.Copies > 1 ? NaiveWorker.Copy(sketch.Name, _tape.Below(sketch.Copies)) : sketch.Name;

    /// <summary>One or two of the edges inside a piece, each of them once.</summary>
    private bool PickUpInside(Sketch from)
    {
        if (from.Inner.Count == 0)
            return false;
        var count = _tape.Between(1, Math.Min(2, from.Inner.Count));
        var first = _tape.Below(from.Inner.Count - count + 1);
        var start = new PickedUpInside(One(from), from.Inner.GetRange(first, count), _tape.Of<string>(_stitches), _tape.OneIn(2));
        var worked = NaiveWorker.Work(Pattern);
        var counts = Enumerable.Range(0, _sizes)
            .Select(size => worked.Of(from.Name, size).Inner.Where(inner => start.Names.Contains(inner.Name)).Sum(inner => inner.Count)).ToArray();
        if (!worked.IsValid || counts.Min() < 2)
            return false;
        from.Inner.RemoveRange(first, count);
        var piece = new Sketch(NewName, start, _sizes) { Widths = counts, Begun = counts, FirstSide = start.Around ? null : Side.RS, InRounds = start.Around };
        _made.Add(piece);
        piece.AddRows(_ => 1);
        piece.PlainStitch = start.Stitch;
        More(piece);
        return true;
    }

    /// <summary>Loops of a row in the middle of a piece.</summary>
    private bool PickUpLoops(Sketch from)
    {
        if (from.LoopRows.Count == 0)
            return false;
        var row = _tape.Of<int>(from.LoopRows);
        var worked = NaiveWorker.Work(Pattern);
        var start = new PickedUpLoops(One(from), row, _tape.Of<string>(_stitches), _tape.OneIn(2));
        if (!worked.IsValid || !NaiveWorker.Work(Pattern with { Pieces = [.. Pattern.Pieces, new NaivePiece(NewName, start, [])] }).IsValid)
            return false;
        var counts = Enumerable.Range(0, _sizes).Select(size => worked.Of(from.Name, size).Rows[row - 1].Places.Count).ToArray();
        if (counts.Min() < 2)
            return false;
        var piece = new Sketch(NewName, start, _sizes) { Widths = counts, Begun = counts, FirstSide = start.Around ? null : Side.RS, InRounds = start.Around, CanBeMirrored = !from.HasShortRows };
        _made.Add(piece);
        piece.AddRows(_ => 1);
        piece.PlainStitch = start.Stitch;
        More(piece);
        return true;
    }

    /// <summary>A piece that is joined to it while it is worked.</summary>
    private bool JoinedTo(Sketch from)
    {
        var worked = NaiveWorker.Work(Pattern);
        if (from.Copies > 1 || !worked.IsValid || _joins.Along(NewName, from, [.. Enumerable.Range(0, _sizes).Select(size => worked.Of(from.Name, size))]) is not { } piece)
            return false;
        from.IsJoined = piece.IsJoined = true;
        _made.Add(piece);
        More(piece);
        return true;
    }

    /// <summary>A border along edges of a piece, if it comes out and no part goes on from them.</summary>
    private bool PickUpRim(Sketch from)
    {
        var start = _rims.Along(One(from));
        var worked = NaiveWorker.Work(Pattern with { Pieces = [.. Pattern.Pieces, new NaivePiece(NewName, start, [])] });
        if (!worked.IsValid || _rims.Begun(NewName, start, [.. Enumerable.Range(0, _sizes).Select(size => worked.Of(NewName, size))]) is not { } piece)
            return false;
        _made.Add(piece);
        More(piece);
        return true;
    }

    /// <summary>Its last row is of one kind of stitch, so that the stitches of a row over several pieces are.</summary>
    private static bool EndsPlainly(Sketch sketch) =>
        sketch.Statements.LastOrDefault(statement => statement is not (FastenOff or NameEdge or ShapeManner))
            is Straight or RowsLine or Shape or RowLine { Words: [Naive.Across] };

    /// <summary>The piece and one beside it, if they face alike in all sizes and nothing goes on from either.</summary>
    private bool Across(Sketch one)
    {
        var other = _tape.Of<Sketch>(_made);
        if (one == other || one.Copies > 1 || other.Copies > 1 || !EndsPlainly(one) || !EndsPlainly(other) || !CanTake(one, Hand.Right, one.Widths) || !CanTake(other, Hand.Left, other.Widths)
            || one.Taken[1] is not null || other.Taken[0] is not null)
            return false;
        var worked = NaiveWorker.Work(Pattern with { Pieces = [.. Pattern.Pieces, new NaivePiece(NewName, new AcrossOf([one.Name, other.Name]), [])] });
        if (!worked.IsValid)
            return false;
        foreach (var part in (Sketch[])[one, other])
        {
            part.Taken[0] = part.Taken[1] = [.. part.Widths];
            part.CanBeMirrored &= part.Counterpart is not null;
        }
        GoOnOver(new Sketch(NewName, new AcrossOf([one.Name, other.Name]), _sizes)
        {
            Widths = one.Widths.Select((width, size) => width + other.Widths[size]).ToArray(),
        });
        return true;
    }

    /// <summary>The piece, which no other is joined to, made twice and both laid side by side.</summary>
    private bool AcrossBoth(Sketch one)
    {
        if (one.Copies > 1 || one.IsJoined || one.Start is not (BeginWith or FoundationRow or ChainStart) || _made.Exists(sketch => IsJoinedTo(sketch.Start, one.Name)) || !EndsPlainly(one)
            || !CanTake(one, Hand.Right, one.Widths) || !CanTake(one, Hand.Left, one.Widths))
            return false;
        one.Copies = 2;
        one.CanBeMirrored = false;
        one.Taken[0] = one.Taken[1] = [.. one.Widths];
        GoOnOver(new Sketch(NewName, new AcrossOf([$"first {one.Name}", $"second {one.Name}"]), _sizes)
        {
            Widths = one.Widths.Select(width => 2 * width).ToArray(),
            CanBeMirrored = false,
        });
        return true;
    }

    private static bool IsJoinedTo(Start start, string name) => start switch
    {
        PartOf part => part.Piece == name,
        MirrorOf mirror => mirror.Piece == name,
        PickedUp up => up.Piece == name,
        PickedUpInside inside => inside.Piece == name,
        PickedUpLoops loops => loops.Piece == name,
        PickedUpRim rim => rim.Piece == name,
        AcrossOf across => across.Pieces.Contains(name),
        _ => false,
    };

    private void GoOnOver(Sketch sketch)
    {
        _made.Add(sketch);
        _shaping.NameEdges(sketch);
        if (!_tape.OneIn(4) || !_rounds.Begin(sketch))
            _rows.PlainRow(sketch);
        More(sketch);
    }

    /// <summary>The chains for the widths under the first row's rule, written in place of the stitches.</summary>
    private ChainStart OnChain(Sketch sketch, int[] widths)
    {
        var words = sketch.Statements.OfType<RowLine>().Last().Words;
        var chains = sketch.For(size => _table.ChainsFor(widths[size], Opening.Of(words, false, size)));
        return new ChainStart(chains);
    }

    private void FirstRow(Sketch sketch)
    {
        if (_tape.OneIn(4))
            sketch.FirstSide = Side.WS;
        if (sketch.FirstSide == Side.WS)
        {
            sketch.Statements.Add(new RowLine([new Across(_stitches[0])], 1, Side.WS));
            sketch.AddRows(_ => 1);
            sketch.PlainStitch = _stitches[0];
        }
        else
            _rows.AnyRow(sketch);
    }

    private bool Part(Sketch from)
    {
        var hand = _tape.Of(Hand.Right, Hand.Left);
        var counts = _tape.Sizes(_sizes, 2, size => from.Widths[size] - 1);
        if (!CanTake(from, hand, counts))
            return false;
        from.Taken[(int)hand] = counts;
        var part = new Sketch(NewName, new PartOf(from.Name, new Sized(counts), hand), _sizes) { Widths = [.. counts] };
        _made.Add(part);
        _shaping.NameEdges(part);
        // What comes after rounds goes on, unless it is a row that goes back; here it does not, since the yarn may be there.
        if (!from.InRounds || !_tape.OneIn(2) || !_rounds.Begin(part))
            _rows.AnyRow(part);
        More(part);
        return true;
    }

    private static bool CanTake(Sketch from, Hand hand, int[] counts)
    {
        if (!from.StandsOnStitches || from.EndsInCorners || from.Copies > 1 || from.Taken[(int)hand] is not null)
            return false;
        var other = from.Taken[(int)Frame.Opposite(hand)];
        return !counts.Where((count, size) => count + (other?[size] ?? 0) > from.Widths[size]).Any();
    }

    private bool PickUp(Sketch from)
    {
        if (_pickUps.Along(from) is not { } along)
            return false;
        var piece = new Sketch(NewName, Claimed(along.Start with { Piece = One(from) }, along.Counts), _sizes) { Widths = [.. along.Counts], Begun = along.Counts, FirstSide = Side.RS };
        _made.Add(piece);
        piece.AddRows(_ => 1);
        piece.PlainStitch = along.Start.Stitch;
        More(piece);
        return true;
    }

    private PickedUp Claimed(PickedUp up, int[] counts) => _tape.OneIn(2) ? up with { Claim = new Sized(counts) } : up;

    /// <summary>A mirror stands on the mirror of its model's base; without one, on the same base at the other edge.</summary>
    private bool MirrorImage(Sketch model)
    {
        if (!model.CanBeMirrored || !CanStand(model))
            return false;
        _made.Add(model.MirroredAs(NewName));
        return true;
    }

    private bool CanStand(Sketch model)
    {
        switch (model.Start)
        {
            case PartOf part:
                var (hand, counts) = (Frame.Opposite(part.Edge), Enumerable.Range(0, _sizes).Select(size => part.Stitches[size]).ToArray());
                var from = BaseOf(part.Piece);
                if (!CanTake(from, hand, counts))
                    return false;
                from.Taken[(int)hand] = counts;
                from.CanBeMirrored = false;
                return true;
            case PickedUp up:
                var along = BaseOf(up.Piece);
                if (along.Counterpart is null && !ComesOutAtTheOtherEdge(along, up, model.Begun))
                    return false;
                along.CanBeMirrored = false;
                return true;
            case PickedUpInside inside:
                return CanBeTurnedOver(model, inside.Piece);
            case PickedUpRim rim:
                return CanBeTurnedOver(model, rim.Piece);
            case AcrossOf across:
                var bases = across.Pieces.Select(BaseOf).ToList();
                if (bases.Exists(b => across.Pieces.Contains(b.Name) || !CanTake(b, Hand.Right, b.Widths) || !CanTake(b, Hand.Left, b.Widths)))
                    return false;
                foreach (var b in bases)
                {
                    b.Taken[0] = b.Taken[1] = [.. b.Widths];
                }
                return true;
            default:
                return true;
        }
    }

    private bool CanBeTurnedOver(Sketch model, string piece)
    {
        if (!NaiveWorker.Work(Pattern with { Pieces = [.. Pattern.Pieces, new NaivePiece(NewName, new MirrorOf(model.Name), [])] }).IsValid)
            return false;
        BaseOf(piece).CanBeMirrored = false;
        return true;
    }

    private static bool ComesOutAtTheOtherEdge(Sketch along, PickedUp up, int[] counts)
    {
        if (up.Hand is not { } hand || PickUpMaker.Counts(along, Frame.Opposite(hand), up)?.SequenceEqual(counts) != true)
            return false;
        var rows = up with { Evenly = null, Stitches = 1, PerRows = 1 };
        return PickUpMaker.Counts(along, Frame.Opposite(hand), rows)?.SequenceEqual(PickUpMaker.Counts(along, hand, rows) ?? []) == true;
    }

    private Sketch BaseOf(string piece)
    {
        var model = _made.First(sketch => sketch.Name == piece || (sketch.Copies > 1 && piece.EndsWith($" {sketch.Name}", StringComparison.Ordinal)));
        return model.Counterpart is { } name ? _made.First(sketch => sketch.Name == name) : model;
    }

    private void More(Sketch sketch)
    {
        for (var lines = sketch.EndsInCorners ? 0 : _tape.Below(6); lines > 0 && sketch.Rows.Max() < 20; lines--)
        {
            if (sketch.InRounds)
            {
                if (_patterns.Goes(sketch))
                    continue;
                _rounds.Another(sketch);
                continue;
            }
            if (_patterns.Goes(sketch))
                continue;
            switch (_tape.Below(5))
            {
                case 4 when _rounds.Begin(sketch): break;
                case 0: _rows.AnyRow(sketch); break;
                case 1 when sketch.StandsOnStitches: _rows.PlainRows(sketch); break;
                default: _shaping.Any(sketch); break;
            }
        }
        if (sketch.StandsOnStitches && !sketch.InRounds && !sketch.EndsInCorners && _tape.OneIn(8))
            sketch.EndsInCorners = _rows.BackAlone(sketch);
        else if (sketch.StandsOnStitches && !sketch.InRounds && !sketch.EndsInCorners && _tape.OneIn(6))
            new CornerMaker(_tape, _tape.Of<string>(_stitches)).Ending(sketch);
        if (_tape.OneIn(4))
            sketch.Statements.Add(new FastenOff());
    }
}
