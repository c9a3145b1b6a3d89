using System.Text.RegularExpressions;

namespace Turnrow.Publishing.Tests.Reader;

/// <content>Pieces that go on from a part of an earlier one's last row.</content>
internal sealed partial class PieceReader
{
    private int? _leftBehindAdded;

    private void Part(Match match)
    {
        MustBegin();
        var from = Earlier(match.Groups["piece"].Value);
        TakeYarn(from);
        if (match.Groups["round"].Success != from.Rows[^1].IsRound) throw new Misread($"the end of {from.Title} is no {(from.Rows[^1].IsRound ? "row" : "round")}");
        if (piece.Over.Count > 0)
        {
            var goesOn = from.Rows[^1] is { IsRound: true } round && round.RightSide == _firstSide;
            _first = new Ground(LaidSideBySide()) { IsTurned = !goesOn, GoesOn = goesOn, JoinedAt = goesOn ? 0 : -1 };
            return;
        }

        piece.StandsOn = (from, 0);
        _firstSide = !from.Rows[^1].RightSide;
        _first = new Ground(from.Rows[^1].Made.Reverse()) { IsTurned = true };
    }

    // A length joined to the last st that a part has, when the row is yet to come.
    private void AddBehind(Match match)
    {
        if (match.Groups["hangs"].Success == _first is null) throw new Misread("whether yarn hangs at the beginning already is not as said");
        var stitch = StitchOfLast.Of(match);
        var (from, places, at) = Find(stitch);
        if (piece.StandsOn is { Base: var on } && (on != from || stitch.RightSide != _firstSide)) throw new Misread("the length is joined to another row than is gone on with");
        _added = Number.Of(match.Groups["chains"].Value);
        if (piece.Over.Count == 0)
        {
            _leftBehindAdded = places.Skip(at + 1).Count(place => place.IsLikeAStitch);
            return;
        }

        var last = piece.Over[^1];
        if (from != last.Piece || stitch.RightSide != _firstSide || FromRight(stitch, places, at) != (_firstSide == true ? last.From + last.Count - 1 : last.From)) throw new Misread("the length is not joined in the last st of the last piece");
    }

    private void MustBeFirst(StitchOfLast stitch)
    {
        var first = piece.Over[0];
        var (from, places, at) = Find(stitch);
        if (from != first.Piece || stitch.RightSide != _firstSide || FromRight(stitch, places, at) != (_firstSide == true ? first.From : first.From + first.Count - 1)) throw new Misread("the row begins in the first st of the first piece");
    }

    // How many sts lie between it and the right edge.
    private static int FromRight(StitchOfLast stitch, List<Place> places, int at) =>
        (stitch.RightSide ? places.Take(at) : places.Skip(at + 1)).Count(place => place.Seen != Seen.SlipStitch);

    private void BeginOver(StitchOfLast stitch)
    {
        MustBegin();
        GoOnFromChain(stitch);
    }

    // The row is begun on new chains, and goes on over a part of an earlier row.
    private void GoOnFromChain(StitchOfLast stitch)
    {
        if (_hanging == 0) throw new Misread("there are no chains to begin on");
        var chains = Enumerable.Repeat(new Place(Seen.Chain), _hanging);
        if (piece.Over.Count > 0)
        {
            MustBeFirst(stitch);
            piece.IsJoined = true;
            _first = new Ground(chains.Concat(LaidSideBySide())) { HangingChains = _hanging };
            return;
        }

        var (from, places, at) = Find(stitch);
        Stand(from, stitch.RightSide);
        _first = new Ground(chains.Concat(places.Skip(at))) { HangingChains = _hanging, BaseAt = at - _hanging };
    }

    private void Join(StitchOfLast stitch)
    {
        MustBegin();
        if (piece.Over.Count > 0)
        {
            MustBeFirst(stitch);
            piece.IsJoined = true;
            _first = new Ground(LaidSideBySide()) { JoinedAt = 0 };
            return;
        }

        var (base_, places, at) = Find(stitch);
        Stand(base_, stitch.RightSide);
        _first = new Ground(places) { JoinedAt = at };
    }

    private void Stand(ReadPiece from, bool rightSide)
    {
        piece.StandsOn = (from, 0);
        piece.IsJoined = true;
        _firstSide = rightSide;
    }

    // The places of an earlier piece's last row as she meets them, and which of them is meant.
    private (ReadPiece From, List<Place> Places, int At) Find(StitchOfLast stitch)
    {
        var from = Earlier(stitch.Piece);
        var last = from.Rows[^1];
        var places = stitch.RightSide ? last.FromRight.ToList() : [.. last.FromRight.Reverse()];
        var sts = Enumerable.Range(0, places.Count).Where(i => places[i].Counts || places[i].Seen == Seen.BridgeChain).ToList();
        // She works from right to left as the side faces her: a right-side row from the right edge.
        if (stitch.OfRound != last.IsRound) throw new Misread($"the end of {from.Title} is no {(last.IsRound ? "row" : "round")}");
        var countsAlong = stitch.FromRight == stitch.RightSide;
        if (stitch.Nth > sts.Count) throw new Misread($"the last row has {sts.Count} sts");
        var passed = countsAlong ? sts.Take(stitch.Nth) : sts.TakeLast(stitch.Nth);
        if (stitch.Bridged != passed.Any(i => places[i].Seen == Seen.BridgeChain)) throw new Misread("whether chs of a bridge are counted is not as said");
        return (from, places, countsAlong ? sts[stitch.Nth - 1] : sts[^stitch.Nth]);
    }

    // A length joined to a part lies between it and the sts that are left to others.
    private void AddBehindPart(Ground ground, IReadOnlyList<Step> steps)
    {
        var others = steps.OfType<LeaveUnworked>().Sum(leave => leave.Count ?? 0);
        if (_leftBehindAdded is { } behind && behind != others) throw new Misread($"behind the length joined are {behind} sts, and {others} are left");
        var at = ground.Places.Count;
        for (var left = 0; left < others; left += ground.Places[at].IsLikeAStitch ? 1 : 0) at--;
        ground.Places.InsertRange(at, Enumerable.Repeat(new Place(Seen.AddedChain), _added));
    }

    [GeneratedRegex(@"^With (?<side>RS|WS) of (?<piece>.+) facing, join yarn with sl st in the (?:(?<round>(?<rim>top left corner of its rim))|(?<n>\w+) st of its last (?:row, counted from its (?<edge>right|left) edge|(?<round>round)(?<back>, counted back from where that was joined)?)(?<bridged> \(each bridging ch counts as a st here\))?)\.$")]
    private static partial Regex JoinPart();

    [GeneratedRegex(@"^The row goes on, with (?<side>RS|WS) of (?<piece>.+) facing, in the (?<n>\w+) st of its last (?:row, counted from its (?<edge>right|left) edge|(?<round>round)(?<back>, counted back from where that was joined)?)(?<bridged> \(each bridging ch counts as a st here\))?\.$")]
    private static partial Regex GoOnOver();

    [GeneratedRegex(@"^(?:(?<hangs>Leave the yarn where it is; with)|With) (?<side>RS|WS) of (?<piece>.+) facing, join (?:another|a separate) length of yarn with sl st in the (?<n>\w+) st of its last (?:row, counted from its (?<edge>right|left) edge|(?<round>round)(?<back>, counted back from where that was joined)?)(?<bridged> \(each bridging ch counts as a st here\))?, ch (?<chains>\d+), fasten off\.$")]
    private static partial Regex ChainBehind();
}
