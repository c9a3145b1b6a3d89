namespace Turnrow.Compiler.Tests.Naive;

/// <content>
/// Rounds: joined where they began, so that the next one goes on from there on the same side. What comes after rounds goes on too, unless a
/// row is said to go back; what comes before does not matter to a first round, which is worked from the outside of the tube.
/// </content>
public sealed partial class PieceWork
{
    /// <summary>A row or round that says by its name what it is.</summary>
    private void SetOut(bool round, Side? said)
    {
        if (round && !_afterRound && _goesOn)
            _side = Side.RS;
        if (!round && _afterRound && said is { } side)
            _side = side;
        _inRounds = round;
    }

    /// <summary>What has no name of its own goes on as the last row went, and says so.</summary>
    private void GoOnAs(Statement statement)
    {
        if (statement.IsRound != _afterRound)
            throw new UnworkableException("rows are said where the last was a round, or the other way round");
    }

    private void CheckNoStepAtRound()
    {
        // What waits she comes to before she is round, if she stands at the marker and not at a turn.
        var isAtMarker = WaitingAt(Hand.Right).Count == 0 && (WaitingAt(Hand.Left).Count == 0 || (!_afterRound && result.Rows[^1].Side == Side.WS));
        if (_addLater is not null || _asked.Sum() > 0 || !isAtMarker
            || result.Edge(Hand.Right).Concat(result.Edge(Hand.Left)).Any(stretch => stretch.Row == NextRow))
            throw new UnworkableException("a round has no edge to leave or add anything at");
    }

    private RoundsWay _way;
    private RoundsWay _lastWay;
    private int _begunAt;
    private bool _turnedAtJoin;

    public void BeginWithRing() => _places = [new Place(Place.Ring)];

    public void BeginWithBothSides(int stitches)
    {
        if (stitches < 2)
            throw new UnworkableException("a chain of one has no two sides");
        var side = Enumerable.Repeat(new Place(Place.Chain), stitches - 2).Prepend(new Place(Place.Chain) { IsCorner = true }).ToList();
        _places = [.. side, .. side];
    }

    private bool _back;
    private bool _lastBack;
    private Side _order;
    private Side _lastOrder;

    /// <summary>
    /// Where rounds are turned, each one after a round has the other side. What is worked back goes from the hook like any row, but is not turned
    /// where that would be, and turned where it would not; a round keeps its side, and goes the other way.
    /// </summary>
    private void TurnRound(bool back)
    {
        if (_inRounds && _afterRound && _way == RoundsWay.Turned && back == _lastBack)
            _side = Frame.Opposite(_side);
        _back = back;
        _order = _inRounds && back ? Frame.Opposite(_side) : _side;
        _turnedAtJoin = _inRounds && _afterRound && _order != _lastOrder;
        if (back && (!_goesOn || result.Rows.Count == 0 || (_inRounds && !_afterRound)))
            throw new UnworkableException("there is nothing to go back over");
    }

    private static bool IsBack(IEnumerable<Word> words) => words.Any(word => word is Across { Stitch: "rsc" });

    /// <summary>Going the other way from the join, she stands in the first place of the round: that comes first all the same.</summary>
    private List<Place> InOrder()
    {
        var met = Meet();
        if (!_turnedAtJoin || met.Count == 0)
            return met;
        var order = Frame.InWorkingOrder(met, _order).ToList();
        return Frame.InWorkingOrder(order.Prepend(order[^1]).Take(order.Count).ToList(), _order).ToList();
    }

    /// <summary>A round that slips on, or goes to a corner first, begins there; what it has gone past comes last.</summary>
    private IReadOnlyList<Place> BegunFurtherOn(IReadOnlyList<Place> places, ref IReadOnlyList<Word> words)
    {
        _begunAt = 0;
        if (!_inRounds || !_goesOn || (result.Rows.Count > 0 && !_afterRound))
            return places;
        var on = 0;
        if (words[0] is SlipOver slip)
        {
            on = slip.Count[Size];
            words = words.Skip(1).ToList();
        }
        else if (FirstGoesIntoCorner(_way == RoundsWay.Spiral && _lastWay == RoundsWay.Spiral, words.First(word => word is not WithYarn)))
            on = places.TakeWhile(place => !place.IsCorner).Count();
        else if (!(_way == RoundsWay.Spiral && _lastWay == RoundsWay.Spiral) && FirstTarget(words.First(word => word is not WithYarn)) is { } target)
        {
            // A marked place on the way is nothing that one slips past.
            var way = places.TakeWhile(place => !IsMeant(target, place)).ToList();
            on = way.Count == places.Count || way.Exists(place => place.IsCorner) ? 0 : way.Count;
        }
        if (on >= places.Count)
            throw new UnworkableException("the round would begin where it does");
        _begunAt = on;
        return [.. places.Skip(on), .. places.Take(on)];
    }

    internal static Target? FirstTarget(Word word) => word switch
    {
        Repeat repeat => FirstTarget(repeat.Words.First(inner => inner is not WithYarn)),
        Into into => into.Target,
        Group group => group.Target,
        _ => null,
    };

    internal static bool IsMeant(Target target, Place place) => target.Place switch
    {
        PlaceWord.NextSpace => place.IsSpace,
        PlaceWord.NextStitch => place.Kind == target.Kind,
        PlaceWord.NextCentre => place.CentreOf == target.Kind,
        // All others begin in the first place, whatever it is.
        _ => true,
    };

    private static bool FirstGoesIntoCorner(bool isSpiral, Word word) => word switch
    {
        Repeat repeat => FirstGoesIntoCorner(isSpiral, repeat.Words.First(word => word is not WithYarn)),
        Into into => into.Target.Place is PlaceWord.Corner || (into.Target.Place is PlaceWord.NextCorner && !isSpiral),
        Group group => group.Target.Place is PlaceWord.Corner || (group.Target.Place is PlaceWord.NextCorner && !isSpiral),
        _ => false,
    };
}
