using System.Text.RegularExpressions;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>Makes one piece, paragraph by paragraph.</summary>
internal sealed partial class PieceReader(ReadPiece piece, Dictionary<string, ReadPiece> pieces, StitchWords stitches, ChainRules rules, Claims claims, List<string> doubts)
{
    private Ground? _first;
    private bool? _firstSide;
    private int _hanging;
    private int _added;
    private bool _toRound;
    private string? _loopOf;
    private readonly YarnMemory _yarns = new();
    private readonly JoinsInHand _joins = new(pieces);

    /// <summary>Does what a paragraph says; false if it says nothing that a maker does.</summary>
    public bool Read(string paragraph)
    {
        if (RowParagraph.Of(paragraph, stitches) is { } row)
        {
            Rows(row);
            return true;
        }

        if (OffMarker().Match(paragraph) is { Success: true } off)
        {
            if (Earlier(off.Groups["piece"].Value).ComeFirst.Length == 0) throw new Misread("there is no loop on a marker");
            _loopOf = off.Groups["piece"].Value;
            return Read(off.Groups["first"].Value.ToUpperInvariant() + off.Groups["rest"].Value);
        }

        if (_joins.Begin(paragraph)) return true;
        if (Heading().IsMatch(paragraph) || MakeSeveral().IsMatch(paragraph)) return true;
        if (BeginYarn().Match(paragraph) is { Success: true } yarn)
        {
            MustBegin();
            _yarns.InHand = yarn.Groups["yarn"].Value;
            return true;
        }

        if (Chain().Match(paragraph) is { Success: true } chain) Begin(Number.Of(chain.Groups["n"].Value));
        else if (paragraph == "Fasten off.") FastenOff();
        else if (YarnStays().Match(paragraph) is { Success: true } stays) Stay(stays);
        else if (GoOn().Match(paragraph) is { Success: true } goOn) Part(goOn);
        else if (JoinPart().Match(paragraph) is { Success: true } join) Join(StitchOfLast.Of(join));
        else if (Middle().Match(paragraph) is { Success: true } middle) BeginInMiddle(middle);
        else if (paragraph.StartsWith(SpiralEnd, StringComparison.Ordinal)) return EndSpiral(paragraph[SpiralEnd.Length..].Trim());
        else if (Ring().Match(paragraph) is { Success: true } ring) BeginRing(Number.Of(ring.Groups["n"].Value));
        else if (ToRound().IsMatch(paragraph)) JoinToRound(paragraph.Contains("twist", StringComparison.Ordinal));
        else if (SideBySide().Match(paragraph) is { Success: true } sides) Lay(sides);
        else if (YarnStaysAtJoin().Match(paragraph) is { Success: true } kept) StayAtJoin(kept);
        else if (NewChain().Match(paragraph) is { Success: true } newChain) NewYarn(newChain);
        else if (GoOnOver().Match(paragraph) is { Success: true } over) BeginOver(StitchOfLast.Of(over));
        else if (PickUp().Match(paragraph) is { Success: true } pickUp) Pick(pickUp);
        else if (ChainAtHook().Match(paragraph) is { Success: true } atHook) AddAtHook(atHook);
        else if (ChainBehind().Match(paragraph) is { Success: true } behind) AddBehind(behind);
        else if (ChainElsewhere().Match(paragraph) is { Success: true } elsewhere) AddElsewhere(elsewhere);
        else return false;
        return true;
    }

    /// <summary>Takes the last round out again and lays the piece along others, to which it is joined in another last round.</summary>
    public void JoinInstead(IEnumerable<(string Edge, IEnumerable<Place> Places)> beside)
    {
        piece.Steps.Remove(piece.Rows.Count);
        piece.Rows.RemoveAt(piece.Rows.Count - 1);
        foreach (var (edge, places) in beside) _joins.LayAlong(edge, places);
    }

    /// <summary>What must be said before the piece is put aside.</summary>
    public void End()
    {
        if (piece.Rows.Count == 0) throw new Misread("the piece has no row");
        _joins.End();
        if (_hanging > 0 || _added > 0) throw new Misread("chains are made that nothing is worked into");
        if (!piece.IsFastenedOff && piece.YarnGoesTo is null) throw new Misread("what becomes of the yarn is not said");
    }

    private void Begin(int chains)
    {
        MustBegin();
        piece.Foundation = chains;
        _first = new Ground(Enumerable.Repeat(new Place(Seen.Chain), chains)) { HangingChains = chains };
    }

    private void BeginRing(int chains)
    {
        MustBegin();
        piece.Foundation = chains;
        piece.FoundationStitches = chains;
        _firstSide = true;
        _first = new Ground(Enumerable.Repeat(new Place(Seen.Chain), chains)) { JoinedAt = 0, GoesOn = true };
    }

    private const string SpiralEnd = "Sl st in next st, which ends the spiral.";
    private bool _inSpiral;

    private void BeginInMiddle(Match ring)
    {
        MustBegin();
        piece.Ring = ring.Groups["n"].Success ? Number.Of(ring.Groups["n"].Value) : 0;
        _firstSide = null;
        _first = new Ground([new Place(Seen.Ring)]) { GoesOn = true };
    }

    private bool EndSpiral(string rest)
    {
        if (!_inSpiral) throw new Misread("there is no spiral to end");
        _inSpiral = false;
        // The next st is the first one of the round: the sl st joins it.
        piece.Rows[^1] = piece.Rows[^1] with { IsJoined = true };
        return rest.Length == 0 || Read(rest);
    }

    private void JoinToRound(bool ofFoundation)
    {
        if (ofFoundation != (piece is { Rows: [_], IsBegunByRow: true })) throw new Misread("only a row that is its own foundation twists");
        if (piece.Rows is not ([] or [.., { IsRound: false, RightSide: true }])) throw new Misread("only after a row with the right side facing is the end beside the beginning");
        _toRound = true;
    }

    // "12 sts of Right front, 24 sts of Back and 12 sts of Left front": their right sides or their wrong sides face.
    private void Lay(Match match)
    {
        MustBegin();
        _firstSide = match.Groups["side"].Value == "RS";
        foreach (var part in match.Groups["parts"].Value.Replace(" and ", ", ", StringComparison.Ordinal).Split(", "))
        {
            if (CountedPart().Match(part) is not { Success: true } counted) throw new Misread($"`{part}` is no piece with its sts");
            var from = Earlier(counted.Groups["piece"].Value);
            var all = from.Rows[^1].Made.Count(place => place.Seen != Seen.SlipStitch);
            if (counted.Groups["n"] is { Success: true } whole)
            {
                if (all != Number.Of(whole.Value)) throw new Misread($"the last row of {from.Title} has other sts");
                piece.Over.Add(new LaidPart(from, 0, all));
                continue;
            }

            var ends = counted.Groups["which"].Value.Split('-').Select(Number.Of).ToArray();
            if (!match.Groups["from"].Success || ends[^1] > all) throw new Misread($"which sts of {from.Title} are meant is not said");
            piece.Over.Add(new LaidPart(from, _firstSide == true ? ends[0] - 1 : all - ends[^1], ends[^1] - ends[0] + 1));
        }

        // Sizes are told together: where one leaves some, the others are spoken of too.
        var leaves = piece.Over.GroupBy(static part => part.Piece).Any(parts => parts.Sum(part => part.Count) < parts.Key.Rows[^1].Made.Count(place => place.Seen != Seen.SlipStitch));
        if (leaves && !match.Groups["open"].Success) throw new Misread("that some sts stay unworked is not said");
    }

    private void GoesTo(Match match)
    {
        piece.YarnGoesTo = match.Groups["piece"].Value;
        piece.ComeFirst = match.Groups["first"].Value;
    }

    private void StayAtJoin(Match match)
    {
        if (!piece.Rows[^1].IsRound) throw new Misread("the last row is no round");
        GoesTo(match);
    }

    private IEnumerable<Place> LaidSideBySide() => piece.Over.SelectMany(part =>
    {
        var fromRight = part.Piece.Rows[^1].FromRight.Where(place => place.Seen != Seen.SlipStitch).Skip(part.From).Take(part.Count);
        return _firstSide == true ? fromRight : fromRight.Reverse();
    }).Select(place => place with { OfRound = false });

    private void FastenOff()
    {
        if (piece.IsFastenedOff || piece.Rows.Count == 0) throw new Misread("there is no yarn to cut");
        piece.IsFastenedOff = true;
    }

    private void Stay(Match match)
    {
        At(match.Groups["edge"].Value, piece.HookAt);
        GoesTo(match);
    }

    private void NewYarn(Match match)
    {
        MustBegin();
        _hanging = Number.Of(match.Groups["n"].Value);
    }

    private void Pick(Match match)
    {
        MustBegin();
        _firstSide = match.Groups["side"].Value == "RS";
        piece.IsJoined = !match.Groups["same"].Success;
        var walk = new EdgeWalk(pieces, _firstSide.Value, piece.PickedUp);
        var places = piece.IsJoined ? walk.From(match.Groups["where"].Value) : walk.Along(match.Groups["where"].Value.TrimEnd('.'));
        if (!piece.IsJoined) TakeYarn(pieces[match.Groups["piece"].Value]);
        // Yarn that goes on hangs at the first place already.
        _first = new Ground(places) { JoinedAt = 0, Along = walk.Along };
    }

    private void AddAtHook(Match match)
    {
        At(match.Groups["edge"].Value, piece.Rows.Count > 0 ? piece.HookAt : (piece.Over.Count > 0 ? piece.Over[0].Piece : piece.StandsOn?.Base ?? throw new Misread("there is no yarn yet")).HookAt);
        _hanging = Number.Of(match.Groups["n"].Value);
        if (piece.Rows.Count > 0) return;
        var part = _first ?? throw new Misread("there is no yarn yet");
        _first = new Ground(Enumerable.Repeat(new Place(Seen.Chain), _hanging).Concat(part.Places)) { HangingChains = _hanging, IsTurned = part.IsTurned, BaseAt = -_hanging };
    }

    private void AddElsewhere(Match match)
    {
        var hook = piece.Rows.Count > 0 ? piece.HookAt : _firstSide == true ? Side.Right : Side.Left;
        var other = hook == Side.Right ? Side.Left : Side.Right;
        if (match.Groups["yarn"].Value == match.Groups["edge"].Value) doubts.Add("the yarn is left at one edge and a length joined at the other, and both have one name");
        At(match.Groups["yarn"].Value, hook);
        At(match.Groups["edge"].Value, other);
        _added = Number.Of(match.Groups["n"].Value);
        if (FirstStitchOf().Match(match.Groups["place"].Value) is { Success: true } first)
        {
            var number = Number.Of(first.Groups["n"].Value);
            if (first.Groups["round"].Success != piece.Rows[number - 1].IsRound) throw new Misread($"there is no such row as {first.Value}");
            // It is at that edge if its row is the last that reached it; that row began there, for now it is in the hand that one would end in.
            if (!piece.Rows[number - 1].IsRound && piece.Edge(other).Last(part => part.Lies == Lies.RowEnd).Row != number) throw new Misread($"{first.Value} is not at that edge");
            if (piece.Rows[number - 1].Made.First(place => place.Seen != Seen.SlipStitch).Seen is not (Seen.Stitch or Seen.ChainAndStitch)) throw new Misread("that is no st");
            return;
        }

        var edge = (piece.Waiting[(int)other] is [.., var outermost] ? outermost : null) ?? piece.Rows[^1].Made.First(place => place.Seen != Seen.SlipStitch);
        if ($"{edge}" != match.Groups["place"].Value) throw new Misread($"at that edge is a {edge}");
    }

    private void Rows(RowParagraph row)
    {
        if (row.Lines.Count > 0)
        {
            Grow(row);
            return;
        }

        var steps = row.Text.StartsWith("Repeat ", StringComparison.Ordinal)
            ? Fold.Models(row.Text, row.From, row.To).Select(Model).ToList()
            : [One(row.Text)];
        if (row.From == row.To) piece.Texts[row.From] = AsRow().Match(row.Text) is { Success: true } exact ? piece.Texts.GetValueOrDefault(Number.Of(exact.Groups["row"].Value), row.Text) : row.Text;
        if (steps.Count != row.To - row.From + 1) throw new Misread("the heading names more rows than are told");
        for (var i = 0; i < steps.Count; i++)
        {
            // A row repeated may be one of those that the same paragraph makes.
            Work(row, row.From + i, steps[i]);
            if (row.InEachRow) claims.Check(row.Count!, piece.Rows[^1]);
        }

        claims.Check(row.Count ?? throw new Misread("the row has no count"), piece.Rows[^1]);
        // What grows on another piece has no beginning of its own but its first row.
        var own = piece.Foundation is not null || piece.Ring is not null ? "Piece" : $"From its {(piece.Rows[0].IsRound ? "Round" : "Row")} 1, {piece.Title}";
        if (row.Measured is { } measured && measured != own) throw new Misread($"`{measured}` is measured, and this is `{own}`");
        if (Fold.Gain(row.Text) is { } gain) Claims.Check(gain, piece, row.From);
    }

    private void Work(RowParagraph row, int number, IReadOnlyList<Step> steps)
    {
        if (number != piece.Rows.Count + 1) throw new Misread($"after Row {piece.Rows.Count} comes Row {number}");
        if (piece.IsFastenedOff) throw new Misread("the yarn is cut");
        var turned = steps.OfType<Turn>().Any();
        // A chain may be all that is worked back.
        var back = IsBack(steps) || (row.Count is { Count: 1 } only && stitches.IsBack(only.Keys.Single()));
        var side = SideOf(row, turned);
        if (piece.Rows.Count == 0 && _first is null && steps.OfType<GoOverPart>().FirstOrDefault() is { } over) GoOnFromChain(over.Stitch);
        var ground = Under(row, side, back, turned);
        if (ground is { ComesBack: true, GoesOn: false } && !row.IsRound && turned == steps.OfType<StayOnSide>().Any()) throw new Misread("whether the work is turned is not said");
        if (piece.Rows.Count == 0 && _added > 0) AddBehindPart(ground, steps);
        if (row.RightSide is { } said && (row.From != row.To ? false : said != side)) throw new Misread($"the row is a {(side ? "RS" : "WS")} row");
        var worked = RowInHand.Work(ground, steps, rules, doubts);
        var spiral = worked.IsSpiral || (_inSpiral && row.IsRound);
        if (spiral ? worked.IsJoined is not null : worked.IsJoined is null == row.IsRound) throw new Misread(row.IsRound ? "whether the round is joined is not said" : "a row is not joined to its beginning");
        if (piece is { Rows: [], Ring: 0 } != worked.ClosesRing) throw new Misread("an adjustable ring is closed when its first row is done");
        if (piece.Rows is [.., { IsRound: true, IsJoined: false }] && !ground.ComesBack && !_inSpiral) throw new Misread("the round before is not joined");
        if (!row.IsRound && piece.Rows is [.., { IsRound: true, IsJoined: true }] && ground.IsTurned) throw new Misread("the work is turned where a round was joined");
        var places = row.IsRound ? [.. worked.Made.Where(place => place.Seen != Seen.SlipStitch).Select(place => place.Seen == Seen.TurningChain ? place with { OfRound = true } : place)] : worked.Made;
        var made = new ReadRow(number, side, places) { IsRound = row.IsRound, IsBack = back, IsJoined = worked.IsJoined == true, Shaped = Shaping.Of(steps, side), Unworked = worked.Unworked };
        _joins.Take(worked.Joins, made);
        _inSpiral = spiral;
        made = made with { Yarns = _yarns.Row(made, worked, steps) };
        piece.Yarn = _yarns.InHand;
        EdgeMemory.Keep(piece, made, worked, ground, _added, steps);
        if (number == 1) EdgeMemory.Take(piece, ground, worked, side);
        piece.Rows.Add(made);
        piece.Steps[number] = steps;
        (_hanging, _added, _toRound) = (0, 0, false);
    }

    // A round after rows is worked from the outside; what comes after rounds goes on, unless its side says that it goes back.
    private bool SideOf(RowParagraph row, bool turned)
    {
        if (piece.Rows is [.., var last]) return last.IsRound ? (row.IsRound ? last.RightSide != turned : row.RightSide ?? last.IsJoined == last.RightSide) : row.IsRound || last.RightSide != turned;
        if (piece is { StandsOn.Base: var from, IsJoined: false }) return from.Rows[^1].IsRound ? (row.IsRound ? from.Rows[^1].RightSide != turned : row.RightSide ?? from.Rows[^1].RightSide) : row.IsRound || !from.Rows[^1].RightSide;
        if (row.IsRound && row.RightSide is null) return true;
        return _firstSide ?? row.RightSide ?? throw new Misread("which side faces is not said");
    }

    private Ground Under(RowParagraph row, bool side, bool back, bool turned)
    {
        var hint = row.Count is { Count: 1 } count ? count.Keys.Single() : null;
        if (piece is { Rows: [], StandsOn.Base.Rows: [.., var base_], IsJoined: false } && (_toRound || (base_.IsRound && base_.RightSide == side)))
            return new Ground(FromJoin(base_)) { JoinedAt = 0, GoesOn = true, Hint = hint };
        if (row.IsRound && piece.Rows is [.., { IsRound: true } joined] && joined.RightSide != side)
            return new Ground(TurnedAtJoin([.. FromJoin(joined)])) { IsTurned = true, GoesOn = true, JoinedAt = 0, Hint = hint };
        if (row.IsRound && piece.Rows is [.., var met] && (_toRound || met.IsRound) && met.IsBack != back)
            return new Ground(TurnedAtJoin([.. FromJoin(met)])) { GoesOn = true, JoinedAt = 0, Hint = hint };
        if (_inSpiral && row.IsRound) return new Ground(FromJoin(piece.Rows[^1])) { GoesOn = true, Hint = hint };
        if (piece.Rows is [.., var above] && (_toRound || (above.IsRound && above.RightSide == side && above.IsBack == back)))
            return new Ground(FromJoin(above)) { JoinedAt = 0, GoesOn = true, Hint = hint };
        if (piece.Rows.Count == 0) return (_first ?? throw new Misread("what the piece begins from is not said")).With(hint);
        if ((side != back ? Side.Right : Side.Left) != piece.Rows[^1].EndsAt) throw new Misread("the hook is at the other end of the row");
        // A length joined at the edge reaches over the sl sts there, which are left behind it.
        var below = piece.Rows[^1].Made.Reverse().ToLookup(place => place.Seen == Seen.SlipStitch);
        var before = Enumerable.Repeat(new Place(Seen.Chain), _hanging).Concat(below[false]).ToList();
        var waiting = piece.Waiting[(int)piece.Rows[^1].StartsAt];
        var places = before.Concat(waiting).Concat(Enumerable.Repeat(new Place(Seen.AddedChain), _added)).Concat(below[true]);
        return new Ground(places) { IsTurned = turned, ComesBack = true, HangingChains = _hanging, Hint = hint, Turn = waiting.Count > 0 ? before.Count : int.MaxValue };
    }

    private bool IsBack(IReadOnlyList<Step> steps) => steps.Any(step => step switch
    {
        WorkInto work => stitches.IsBack(work.Stitch),
        SpreadOver spread => stitches.IsBack(spread.Stitch),
        WorkTogether together => stitches.IsBack(together.Stitch),
        WorkGroup group => group.Parts.Any(part => part.Stitch is { } stitch && stitches.IsBack(stitch)),
        RepeatSteps repeat => IsBack(repeat.Steps),
        _ => false,
    });

    // A row that is joined to a round is joined in its first st: the sl sts before that lie outside.
    private static IEnumerable<Place> FromJoin(ReadRow row) => row.Unworked.Concat(row.Made).Where(place => place.Seen != Seen.SlipStitch);

    // The hook is in the first place, and the work is turned: all others are met from the last.
    private static IEnumerable<Place> TurnedAtJoin(List<Place> made) => made.Take(1).Concat(made.Skip(1).Reverse());

    private IReadOnlyList<Step> One(string text)
    {
        if (WithYarns().Match(text) is { Success: true } with)
            return [.. One(with.Groups["row"].Value + "."), .. RowSentence.Read(with.Groups["yarns"].Value, stitches)];
        if (AsRow().Match(text) is not { Success: true } match) return RowSentence.Read(text, stitches);
        var steps = Model(Number.Of(match.Groups["row"].Value)).ToList();
        if (match.Groups["top"].Success) steps = Ending.In(match.Groups["top"].Value, match.Groups["nth"].Success ? (Number.Of(match.Groups["nth"].Value), Number.Of(match.Groups["of"].Value)) : null, steps);
        if (match.Groups["with"].Success) steps = InYarn(match.Groups["with"].Value, steps);
        if (match.Groups["leave"].Success) steps.Add(new LeaveUnworked(null, true));
        if (match.Groups["over"].Success) steps.Add(new OverThoseLeft(match.Groups["n"].Success ? Number.Of(match.Groups["n"].Value) : 1));
        if (match.Groups["open"].Success && !steps.OfType<JoinRound>().Any()) steps.Add(new JoinRound((string?)null));
        if (match.Groups["out"].Success) steps.Add(new DropMarkers(match.Groups["edge"].Success));
        return steps;
    }

    // The same row in another yarn: what became of the yarns there is not said of this one.
    private static List<Step> InYarn(string yarn, List<Step> steps) =>
        [.. steps.Where(static step => step is not (ChangeAtEnd or RestYarn)).Select(step => step is WithYarn ? new WithYarn(yarn) : step)];

    private IReadOnlyList<Step> Model(int row) => piece.Steps.GetValueOrDefault(row) ?? throw new Misread($"there is no Row {row} to repeat");

    private ReadPiece Earlier(string title) => pieces.GetValueOrDefault(title) ?? throw new Misread($"there is no piece {title}");

    private void TakeYarn(ReadPiece from)
    {
        if (from.IsFastenedOff || from.YarnGoesTo != piece.Title) throw new Misread($"the yarn of {from.Title} is not kept for {piece.Title}");
        var between = pieces.Values.SkipWhile(p => p != from).Skip(1).Where(p => !p.IsCopy).Select(p => p.Title).ToList();
        var names = between.Count < 2 ? string.Concat(between) : $"{string.Join(", ", between.SkipLast(1))} and {between[^1]}";
        if (from.ComeFirst != names) throw new Misread($"before {piece.Title} goes on with the yarn of {from.Title} comes `{names}`");
        if (from.ComeFirst.Length > 0 != (_loopOf == from.Title)) throw new Misread($"the loop of {from.Title} is on a marker, or is it not?");
        _yarns.InHand ??= from.Yarn;
    }

    private static void At(string edge, Side side)
    {
        if (edge is "right" or "left" && edge == "right" != (side == Side.Right)) throw new Misread($"the hook is at the {side} edge");
    }

    private void MustBegin()
    {
        if (_first is not null) throw new Misread("the piece has begun already");
    }

    [GeneratedRegex(@"^\*[^*]+\*$")]
    private static partial Regex Heading();

    [GeneratedRegex(@"^Begin with (?<yarn>[^.,]+)\.$")]
    private static partial Regex BeginYarn();

    [GeneratedRegex(@"^(?<row>As (?:Row|Round) .*?)[;,] (?<yarns>(?:change to|cut) .*)$")]
    private static partial Regex WithYarns();

    [GeneratedRegex(@"^Ch (?<n>\d+)\.$")]
    private static partial Regex Chain();

    [GeneratedRegex(@"^Ch (?<n>\d+), join with sl st in first ch to form a ring, without twisting the chain\.$")]
    private static partial Regex Ring();

    [GeneratedRegex(@"^(?:Make an adjustable ring|Ch (?<n>\d+), join with sl st in first ch to form a ring)\.$")]
    private static partial Regex Middle();

    [GeneratedRegex(@"^Hold (?:these pieces side by side|[A-Z][\w' -]*?) with (?<side>RS|WS) facing and work over (?:their last (?:rows|rounds)|its last (?:row|round)) as one, in this order: (?<parts>.+?)(?: \(sts are counted from the (?<from>beginning of the round|right edge|left edge)(?<open>; those between stay unworked)?\))?\.$")]
    private static partial Regex SideBySide();

    [GeneratedRegex(@"^(?:all (?<n>\d+) sts?|sts? (?<which>\d+(?:-\d+)?)) of (?<piece>.+)$")]
    private static partial Regex CountedPart();

    [GeneratedRegex(@"^Do not fasten off(?:, but put the loop on a marker)?: (?<piece>.+) goes on from where the last round is joined, with a (?<side>RS|WS) (?:row|round)\.(?: (?<first>.+) comes? first, with another ball of yarn\.)?$")]
    private static partial Regex YarnStaysAtJoin();

    [GeneratedRegex(@"^Do not fasten off(?:, but put the loop on a marker)?: the yarn is at the (?<edge>.+) edge, where (?<piece>.+) goes on(?: with a (?<side>RS|WS) row)?\.(?: (?<first>.+) comes? first, with another ball of yarn\.)?$")]
    private static partial Regex YarnStays();

    [GeneratedRegex(@"^Take the loop of (?<piece>.+?) off the marker; (?<first>.)(?<rest>.+)$")]
    private static partial Regex OffMarker();

    [GeneratedRegex(@"^Go on from the last (?:row|(?<round>round)) of (?<piece>.+), with the same yarn\.$")]
    private static partial Regex GoOn();

    [GeneratedRegex(@"^Do not turn; (?:join with sl st in the first st of the last row, and work in rounds from here|taking care not to twist the row, join with sl st in its first st, and work in rounds from here; the yarn end closes the gap below the join later)\.$")]
    private static partial Regex ToRound();

    [GeneratedRegex(@"^With new yarn ch (?<n>\d+)\.$")]
    private static partial Regex NewChain();

    [GeneratedRegex(@"^With (?<same>the same yarn and )?(?<side>RS|WS) facing, (?:join yarn with sl st at|go on along) (?<where>the .*? of (?<piece>.+?)(?:,.*| from .*| at .*)?\.)$")]
    private static partial Regex PickUp();

    [GeneratedRegex(@"^Make \d+, one for each motif of [A-Z][^.]*\.$")]
    private static partial Regex MakeSeveral();

    [GeneratedRegex(@"^The yarn is at the (?<edge>.+) edge: ch (?<n>\d+)\.$")]
    private static partial Regex ChainAtHook();

    [GeneratedRegex(@"^the first st of (?:Row|(?<round>Round)) (?<n>\d+)$")]
    private static partial Regex FirstStitchOf();

    [GeneratedRegex(@"^Leave the yarn at the (?<yarn>.+) edge; at the (?<edge>.+) edge, join another length of yarn with sl st in (?<place>.+), ch (?<n>\d+), fasten off\.$")]
    private static partial Regex ChainElsewhere();

    [GeneratedRegex(@"^As (?:Row|Round) (?<row>\d+)(?:, ending in (?:top|(?<nth>\d+)(?:st|nd|rd|th) ch) of (?<top>turning|beginning) ch(?:-(?<of>\d+))?)?(?:, with (?<with>[^,;.]+) throughout)?(?:; (?<over>the last (?:(?<n>\d+) sts|st) worked over (?:are those|is the one) left before))?(?:; (?<open>do not join))?(?:; (?<leave>leave the sl sts unworked))?(?:[;,] (?<out>take the marker(?:s|(?<edge> at the edge))? out))?\.$")]
    private static partial Regex AsRow();
}
