using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Pieces;

/// <content>Rounds: what they begin with, how they follow each other, and where each begins over the one below.</content>
public sealed partial class PieceBuilder
{
    /// <summary>How rounds follow each other from here on.</summary>
    public RoundWay RoundsAre
    {
        get => _course.Way;
        set
        {
            if (_course.Way == value) return;
            _events.Add(new RoundWayEvent(value));
            _course.Way = value;
        }
    }

    /// <summary>Begins with a ring: of so many chains, or with 0 of yarn that is drawn together.</summary>
    public void BeginWithRing(int chains)
    {
        Begin(new RingStart(chains), RowBegins.Ring, true);
        _course.Set(PlaceSequence.Of(new Place(PlaceKind.Ring, null, 0), 1));
    }

    /// <summary>Begins with a chain of so many stitches, of which the first round takes both sides: the chains at its ends are a corner each.</summary>
    public void BeginWithBothSides(int stitches)
    {
        Begin(new BothSidesStart(0, stitches), RowBegins.BothSides, true);
        var chain = new Place(PlaceKind.FoundationChain, null, 0);
        var side = PlaceSequence.Of(chain with { IsCorner = true }, 1).Then(PlaceSequence.Of(chain, stitches - 2));
        _course.Set(side.Then(side));
    }

    // A round goes on where the round before it was joined or, in a spiral, ends; after rows it begins where they were turned, or is joined there.
    private RowBegins Begins => InRounds && _begins == RowBegins.Foundation ? RowBegins.Ring
        : _begins != RowBegins.Turned ? _begins
        : _course.IsSpiral && _rows.Count > 0 ? RowBegins.Spiral
        : _course.ReturnsAtJoin ? _course.Turns ? RowBegins.RoundTurned : RowBegins.RoundBack
        : _course.GoesOn && !IsFirstOverSeveral ? RowBegins.Round
        : _course.Turns || _rows.Count == 0 ? _begins
        : RowBegins.Back;

    // Over several pieces the course is of one of them, the yarn perhaps of another: whether it is turned there was found when the yarn was asked for.
    private bool IsFirstOverSeveral => _rows.Count == 0 && _start is AcrossStart;

    private bool GoesOnRound => InRounds && Begins is RowBegins.Round or RowBegins.RoundTurned or RowBegins.RoundBack or RowBegins.Spiral;

    /// <summary>Says before it is worked whether the next row is worked back, from left to right: on that depend its side and where it starts.</summary>
    /// <param name="words">What it is to be; null if that is not known.</param>
    public void WorkBack(IReadOnlyList<Word>? words) => _course.IsBack = words is not null && Direction.IsBack(new WordsPlan(words));

    // Where a round begins is the designer's to say: behind slip stitches, in a corner that it goes to first, or in the space or the kind of stitch that
    // it goes to first. A spiral goes on to its next corner as it goes on to anything else.
    private int BegunAt(IReadOnlyList<Word> words, PlaceSequence below)
    {
        if (!GoesOnRound) return 0;
        if (words is [SlipOver slip, ..]) return slip.Count < below.Count ? slip.Count : 0;
        if (FirstTarget(words) is not { } first || (first.Aim != Aim.Corner && Begins == RowBegins.Spiral)) return 0;
        return Corners.IsCorner(first) ? Math.Max(0, new PlaceCursor(below).ToCorner()) : first.Aim == Aim.NextOfKind ? UpToFirst(below, first) : 0;
    }

    // What can't be reached from where the round before was joined is no beginning: the words are told what is in their way.
    private static int UpToFirst(PlaceSequence below, Target target)
    {
        for (var cursor = new PlaceCursor(below); cursor.Remaining > 0;)
        {
            var run = cursor.CurrentRun(int.MaxValue);
            if (target.Filter.Has(run.Place)) return below.Count - cursor.Remaining;
            if (run.Place.IsCorner || (target is { OverOthers: false, Filter.Kind: PlaceFilterKind.SpaceOf } && run.Place.Kind == PlaceKind.Space)) return 0;
            cursor.Pass(run.Count);
        }

        return 0;
    }

    // The slip stitches are no words of a round that has been begun there.
    private static IReadOnlyList<Word> WithoutWay(IReadOnlyList<Word> words, int begunAt) => begunAt > 0 && words is [SlipOver, ..] ? [.. words.Skip(1)] : words;

    // To be worked again, it has to go there again.
    private static IReadOnlyList<Word> WithWay(WordsPlan said, RowWork? work, IReadOnlyList<Word> words) =>
        work is { BegunAt: > 0 } && YarnWords.WithoutFirst(said.Words) is [SlipOver slip, ..] ? [slip, .. words] : words;

    // Only what goes on and on has a beginning that may lie anywhere. How it goes on is not known where rows are in doubt.
    private RowFault? MarkerFault(IReadOnlyList<Word> words) =>
        words is [.., MarkerHere marker] && (!RowsInDoubt || words.Count == 1) && (!_course.IsSpiral || !GoesOnRound || words.Count == 1) ? new RowFault(RowFaultKind.MarkerMoved, marker, 0, 0, 0) : null;

    private static IReadOnlyList<Word> UpToMarker(IReadOnlyList<Word> words) =>
        words is [.., MarkerHere marker] ? [.. words.SkipLast(1), new Leave(-1) { ForLater = true, Origin = marker.Origin }] : words;

    // What the round did not come to comes first in the next one.
    private PlaceSequence? TakeMarker(ref RowWork work, ref IReadOnlyList<Word> words)
    {
        if (!InRounds || work.Words is not [.., Leave { ForLater: true } rest]) return null;
        var left = work.Below.Slice(work.Below.Count - rest.Count, rest.Count);
        work = work with { Words = [.. work.Words.SkipLast(1)], Below = work.Below.Slice(0, work.Below.Count - rest.Count) };
        words = [.. work.Words, new MarkerHere { Origin = rest.Origin }];
        return rest.Count > 0 ? left : null;
    }

    private static Target? FirstTarget(IReadOnlyList<Word> words) =>
        WordLists.First(words, static word => word is not Repeat, static word => word is RemoveCorners or ChangeYarn || WorkedWords.IsIdleUnworked(word))?.GoesTo;

    // Of a chain worked into on both sides, the chains: those at its ends are one place each.
    private int StitchesOfChain(PlaceSequence below) => Begins == RowBegins.BothSides ? (below.Count / 2) + 1 : below.Count;

    // A round has no edge at which anything could be left or added, be it for good or for later. What rows of a tube have left it goes over, as a row
    // would that works over all, if the last of them came back to where rounds begin.
    private RowFault? RoundFault(IReadOnlyList<Word> words, Step? start, Step? end)
    {
        if (!InRounds) return null;
        Word? word = (start ?? end) is { } step ? new Leave(step.Count) { Origin = step.Origin }
            : words is [SlipOver { Count: > 0 } slip, ..] && !GoesOnRound ? slip
            : words is [.., Leave { Count: not 0 } leave] ? leave
            : _waitingRight.Asked + _waitingLeft.Asked is > 0 and var asked ? new Leave(asked) { ForLater = true, Origin = AskedOrigin() }
            : null;
        if (word is not null) return new RowFault(RowFaultKind.StepInRound, word, 0, 0, 0);
        var waiting = Waiting(HookAt).Count + (_course.GoesOn ? Waiting(HookAt.Opposite()).Count : 0);
        return waiting > 0 ? new RowFault(RowFaultKind.RoundAtTurn, null, 0, waiting, 0) : null;
    }
}
