using System.Globalization;

namespace Turnrow.Compiler.Tests.Naive;

/// <summary>Works the words of one row, stitch by stitch, over the places of the row below.</summary>
public sealed partial class RowWork(IReadOnlyList<Place> below, int size, bool isRound = false)
{
    private readonly List<Place> _made = [];
    private int _at;
    private bool _ended;
    private Func<Place, bool>? _meant;

    public IReadOnlyList<Place> Made => _made;

    /// <summary>Of a round, how many of the places lie before its beginning and come last.</summary>
    public int PassedAtStart { get; init; }

    /// <summary>How many of the places, the last ones, wait behind the turn below.</summary>
    public int BehindTurn { get; init; }

    /// <summary>Places slipped over at the beginning of the words, and left at their end.</summary>
    public int SlippedOver { get; private set; }

    public int Left { get; private set; }

    public int LeftForLater { get; private set; }

    /// <summary>Where the marker was moved, the places that the next round begins with.</summary>
    public List<Place>? BeforeMarker { get; private set; }

    /// <summary>What is joined to other pieces, stitch by stitch.</summary>
    public List<JoinNext> Joins { get; } = [];

    /// <summary>What is held and bridged, in the order of the words.</summary>
    public List<InnerEdge> Inner { get; } = [];

    private int Remaining => below.Count - _at;

    public void Work(IEnumerable<Word> words)
    {
        var list = words.ToList();
        _removes = list.Exists(word => word is RemoveCorners);
        WorkAll(list);
        if (IsRoundDone())
            _at = below.Count;
        if (Remaining > 0)
            throw new UnworkableException(Invariant($"{Remaining} places are left unworked"));
    }

    private void WorkAll(IEnumerable<Word> words)
    {
        foreach (var word in words)
            WorkOne(word);
    }

    private void WorkOne(Word word)
    {
        if (_ended)
            throw new UnworkableException("something is worked after the places that are left");
        switch (word)
        {
            case Each each: Many(each.Count[size], () => OneInNext(each.Stitch)); break;
            case Across across: Many(Remaining, () => OneInNext(across.Stitch)); break;
            case Until until: Many(NotBelowZero(Remaining - until.Remain[size]), () => OneInNext(until.Stitch)); break;
            case Into into: IntoPlace(into); break;
            case Group group: GroupInPlace(group); break;
            case Inc inc: Many(inc.Count[size], () => Increase(inc.Stitch)); break;
            case Dec dec: Many(dec.Count[size], () => TogetherOver(dec.Stitch, 2)); break;
            case Together together: TogetherOver(together.Stitch, together.Over); break;
            case ToCorner to: Many(Math.Min(Remaining, NotBelowZero(BeforeCorner() - to.Remain[size])), () => OneInNext(to.Stitch)); break;
            case ToTurn to: Many(NotBelowZero(BehindTurn == 0 ? -1 : Remaining - BehindTurn - to.Remain[size]), () => OneInNext(to.Stitch)); break;
            case MarkCorner: Mark(); break;
            case MoveMarker:
                BeforeMarker = below.Skip(_at).ToList();
                (_at, _ended) = (below.Count, true);
                break;
            case WithYarn with: _yarns.Add((with.Yarn, _made.Count)); break;
            case JoinNext join: Joins.Add(join); break;
            case Hold hold: HoldNext(hold); break;
            case Bridge bridge: BridgeOver(bridge); break;
            case IntoRing ring: IntoTheRing(ring); break;
            case Skip skip: Many(skip.Count[size], PassOne); break;
            case Space: Chain(); break;
            case SlipOver slip: SlipOverFirst(slip.Count[size]); break;
            case LeaveUnworked leave: LeaveLast(leave.Count?[size] ?? Remaining, leave.ForLater); break;
            case InEach inEach: InEachPlace(inEach); break;
            case InEachToCorner inEach: InEachBeforeCorner(inEach); break;
            case Evenly evenly: SpreadEvenly(evenly); break;
            case SpreadOver spread: SpreadOut(spread); break;
            case EachByKind each: Many(Remaining, () => ByKind(each)); break;
            case Special special: Many(special.Count[size], () => WorkSpecial(special.Stitch)); break;
            case Repeat repeat: WorkRepeat(repeat); break;
        }
    }

    private static void Many(int times, Action work)
    {
        for (var i = 0; i < times; i++)
            work();
    }

    private static int NotBelowZero(int count) =>
        count >= 0 ? count : throw new UnworkableException("fewer places remain than the row wants to keep");

    private Place TakeAny()
    {
        _meant = null;
        return _at < below.Count ? below[_at++] : throw new UnworkableException("no place is left to work into");
    }

    /// <summary>Whoever goes to the next place of a kind goes past what is left of a round: behind that the round begins.</summary>
    private bool IsRoundDone() =>
        isRound && _meant is not null && BelowAhead.All(place => !_meant(place) && (_removes || place is not { IsCorner: true, Kind: not Place.Chain }));

    /// <summary>
    /// Of a repeat, nothing is left either that its next time would go to first; and what she went past to where the round begins she goes past again.
    /// </summary>
    private bool IsRoundDone(Repeat repeat)
    {
        if (PieceWork.FirstTarget(repeat) is not { Place: PlaceWord.NextSpace or PlaceWord.NextStitch or PlaceWord.NextCentre } first)
            return IsRoundDone();
        if (BelowAhead.Any(place => PieceWork.IsMeant(first, place)))
            return false;
        if (Remaining <= PassedAtStart && BelowAhead.All(place => !place.IsCorner || _removes))
            _meant = place => PieceWork.IsMeant(first, place);
        return IsRoundDone();
    }

    private void TakeStitch()
    {
        if (TakeAny() is { IsSpace: true } or { Kind: Place.Ring })
            throw new UnworkableException("the next place is a space, and the row does not say so");
    }

    /// <summary>Chains go on the chains before them, unless these have another yarn.</summary>
    private void Chain()
    {
        if (ChainsMeet(ofStitch: false))
            throw new UnworkableException("chains of a stitch lie beside other chains");
        if (_made is not [.., { IsSpace: true }] || _yarns is [.., var last] && last.From == _made.Count)
            _made.Add(new Place(Place.Space));
    }

    private void Make(string stitch) => _made.Add(new Place(stitch));

    private void OneInNext(string stitch)
    {
        Carry(() =>
        {
            TakeStitch();
            Make(stitch);
        });
    }

    private void Increase(string stitch)
    {
        Carry(() =>
        {
            TakeStitch();
            Make(stitch);
            Make(stitch);
        });
    }

    private void TogetherOver(string stitch, int over)
    {
        Carry(
            () =>
            {
                Many(over, TakeStitch);
                _made.Add(Place.Together(stitch, over));
            },
            isTogether: true);
    }

    private void IntoPlace(Into into) => Carry(() =>
    {
        GoTo(into.Target);
        Many(into.Count, () => Make(into.Stitch));
    });

    private void GroupInPlace(Group group) => Carry(() =>
    {
        GoTo(group.Target);
        AllInPlace(group.Words);
    });

    private void AllInPlace(IEnumerable<Word> words)
    {
        foreach (var word in words)
        {
            if (word is Into into)
                Many(into.Count, () => Make(into.Stitch));
            else if (word is Repeat repeat)
                Many(repeat.Count[size], () => AllInPlace(repeat.Words));
            else if (word is MarkCorner)
                Mark();
            else
                Chain();
        }
    }

    private void GoTo(Target target)
    {
        switch (target.Place)
        {
            case PlaceWord.First when _at != SlippedOver: throw new UnworkableException("the first place is behind");
            case PlaceWord.Last when Remaining != 1: throw new UnworkableException("the last place is not the next one");
            case PlaceWord.Corner: TakeCorner(); break;
            case PlaceWord.NextCorner: PassTo(place => place.IsCorner); break;
            case PlaceWord.NextSpace: PassTo(place => place.IsSpace); break;
            case PlaceWord.NextStitch: PassTo(place => place.Kind == target.Kind); break;
            case PlaceWord.NextCentre: PassToCentre(target.Kind!); break;
            default: TakeStitch(); break;
        }
    }

    private void PassToCentre(string special)
    {
        while (TakeAny() is var place && place.CentreOf != special)
        {
            if (place.IsCorner && !_removes)
                throw new UnworkableException("a corner stands before the place that is looked for");
        }
        _meant = place => place.CentreOf == special;
    }

    /// <summary>Passes over what is before the place that is looked for, and takes it.</summary>
    private void PassTo(Func<Place, bool> isIt)
    {
        while (true)
        {
            var place = TakeAny();
            if (isIt(place))
            {
                _meant = isIt;
                return;
            }
            if (place.IsCorner && !_removes)
                throw new UnworkableException("a corner stands before the place that is looked for");
        }
    }

    private void SlipOverFirst(int count)
    {
        if (_at > 0)
            throw new UnworkableException("slipping over begins the row");
        Many(count, () => TakeAny());
        SlippedOver = count;
    }

    private void LeaveLast(int count, bool forLater)
    {
        if (count > Remaining)
            throw new UnworkableException("fewer places remain than are to be left");
        Many(count, () => TakeAny());
        (Left, LeftForLater) = forLater ? (0, count) : (count, 0);
        _ended = true;
    }

    private void HoldNext(Hold hold)
    {
        Many(hold.Count[size], PassOne);
        Inner.Add(new InnerEdge(0, false, hold.Count[size], hold.Name));
    }

    private void BridgeOver(Bridge bridge)
    {
        Many(bridge.Count[size], () => Make(Place.Chain));
        Inner.Add(new InnerEdge(0, true, bridge.Count[size], bridge.Name));
    }

    private void InEachPlace(InEach inEach)
    {
        var lastOfKind = -1;
        for (var i = _at; i < below.Count; i++)
        {
            if (IsMeant(below[i], inEach.Of))
                lastOfKind = i;
        }
        while (_at <= lastOfKind)
        {
            if (IsMeant(below[_at], inEach.Of))
            {
                Carry(() =>
                {
                    TakeAny();
                    Make(inEach.Stitch);
                });
            }
            else
                PassOne();
        }
        if (lastOfKind >= 0)
            _meant = place => IsMeant(place, inEach.Of);
    }

    /// <summary>Up to the corner, or the round's end where the first corner comes again: what is not of the kind is passed over, at the end too.</summary>
    private void InEachBeforeCorner(InEachToCorner inEach)
    {
        var end = _at + Math.Min(Remaining, NotBelowZero(BeforeCorner() - inEach.Remain));
        if (end > _at && below.Skip(_at).Take(end - _at).All(place => !IsMeant(place, inEach.Of)))
            throw new UnworkableException("no such place comes before the corner");
        while (_at < end)
        {
            if (IsMeant(below[_at], inEach.Of))
                Carry(() =>
                {
                    TakeAny();
                    Make(inEach.Stitch);
                });
            else
                PassOne();
        }
    }

    private static bool IsMeant(Place place, EachOf of) => of switch
    {
        EachOf.Space => place.IsSpace,
        EachOf.Stitch => !place.IsSpace,
        _ => true,
    };

    /// <summary>Spreads the changes over what remains: change number i comes where i/n of the rest are worked.</summary>
    private void SpreadEvenly(Evenly evenly)
    {
        var changes = evenly.Count[size];
        var perChange = evenly.Increase ? 1 : 2;
        if (changes * perChange > Remaining)
            throw new UnworkableException("so many changes do not fit in the row");
        var plain = Remaining - changes * perChange;
        for (var change = 0; change < changes; change++)
        {
            Many(plain * (change + 1) / (changes + 1) - plain * change / (changes + 1), () => OneInNext(evenly.Stitch));
            if (evenly.Increase)
                Increase(evenly.Stitch);
            else
                TogetherOver(evenly.Stitch, 2);
        }
        Many(Remaining, () => OneInNext(evenly.Stitch));
    }

    private void WorkRepeat(Repeat repeat)
    {
        if (repeat.End == RepeatEnd.Times)
        {
            Many(repeat.Count[size], () => WorkAll(repeat.Words));
            return;
        }
        if (repeat.End == RepeatEnd.Across && repeat.Words.Any(GoesIntoCorner))
        {
            do
                WorkAll(repeat.Words);
            while (BelowAhead.Any(place => place.IsCorner));
            return;
        }
        var keep = repeat.End == RepeatEnd.Until ? repeat.Count[size] : 0;
        while (Remaining > keep && !(keep == 0 && IsRoundDone(repeat)))
        {
            var before = _at;
            WorkAll(repeat.Words);
            if (_at == before)
                throw new UnworkableException("the repeat takes no place");
        }
        if (Remaining != keep && !(keep == 0 && IsRoundDone(repeat)))
            throw new UnworkableException("the repeat does not come out");
    }

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
