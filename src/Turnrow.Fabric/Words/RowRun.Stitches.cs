using Turnrow.Fabric.Places;

namespace Turnrow.Fabric.Words;

/// <content>Stitches: how many times, and what they make.</content>
internal sealed partial class RowRun
{
    private void Stitches(Work work, List<Word> done)
    {
        if (work.Target.Aim == Aim.EachOfKind)
        {
            Each(work, done);
            return;
        }

        if (!TimesOf(work, out var times)) return;
        if (times > 0 && !HasFoot(work, work)) return;
        var passed = GoTo(work, work.Target);
        if (passed < 0 || (work.Target.Aim == Aim.Corner && !HasLoops(work, _cursor.Next))) return;
        var corners = 0;
        if (work is { Takes: > 0, Target.Aim: not (Aim.Same or Aim.Ring) } && times <= _cursor.Remaining / work.Takes && MeetsCorner(work.Takes * times, Corners.IsIn(work)))
        {
            if (!WorkOverCorners(work, times, out corners)) return;
        }
        else
        {
            if (!TakePlaces(work, work.Takes * times)) return;
            AddTops(work, times);
        }

        if (times > 0 && work.Takes > 0)
        {
            _worked = true;
            Name(work.Target);
        }

        done.Add(work with { Amount = work.Amount with { Times = times }, Passed = passed, PassedBefore = passed, Corners = corners });
    }

    // What takes no place is worked on what was made last; at the beginning of a row that is nothing.
    private bool HasFoot(Word? first, Word word)
    {
        if (first is not Work { Takes: 0, To: null } || _worked || _chained) return true;
        return Failed(RowFaultKind.StandsOnNothing, word, 0);
    }

    // How many times a word is worked: so many, or as often as the places to come allow without a rest.
    private bool TimesOf(Work work, out int times)
    {
        times = work.Amount.Count;
        if (work.Amount.Reach == Reach.Fixed) return Fits(work, times);
        var keep = work.Amount.Reach == Reach.Until ? work.Amount.Count : 0;
        var places = work.Amount.Reach switch
        {
            Reach.ToCorner => UpToCorner(work, work.Amount.Count),
            Reach.ToTurn => UpToTurn(work, work.Amount.Count),
            _ => _cursor.Remaining - keep,
        };
        if (_fault is not null) return false;
        if (places < 0)
        {
            Fail(RowFaultKind.NotEnough, work, keep, _cursor.Remaining);
            return false;
        }

        if (work.Takes == 0)
        {
            Fail(RowFaultKind.RepeatTakesNothing, work, 0, places);
            return false;
        }

        times = places / work.Takes;
        if (places % work.Takes == 0) return true;
        _fault ??= new RowFault(RowFaultKind.RepeatDoesNotComeOut, work, work.Takes, places % work.Takes, Taken) { Way = places, Times = times };
        return false;
    }

    // The places before the turn of the row below, but for those that are to remain; below 0 if that can't be.
    private int UpToTurn(Word word, int remain)
    {
        var before = _cursor.Remaining - waiting;
        if (waiting > 0 && before >= remain) return before - remain;
        Fail(RowFaultKind.NoTurn, word, remain, waiting > 0 ? Math.Max(0, before) : -1);
        return -1;
    }

    private bool Fits(Work work, int times)
    {
        var needed = work.Target.Aim is Aim.Same or Aim.Ring ? 0 : (long)work.Takes * times;
        if (needed <= _cursor.Remaining) return true;
        Fail(RowFaultKind.NotEnough, work, (int)Math.Min(needed, int.MaxValue), _cursor.Remaining);
        return false;
    }

    private void Each(Work work, List<Word> done)
    {
        var (found, passed, before) = CountAhead(work, work.Target);
        if (_fault is not null) return;
        var corners = CornersAhead(found + passed);
        if (found % work.Takes != 0)
        {
            _fault ??= new RowFault(RowFaultKind.RepeatDoesNotComeOut, work, work.Takes, found % work.Takes, Taken) { Way = found, Times = found / work.Takes };
            return;
        }

        PassUpToLast(found + passed);
        var times = found / work.Takes;
        if (times > 0) Name(work.Target);
        _worked |= times > 0;
        if (corners is not null && work.Takes > 1) Fail(RowFaultKind.CornerTogether, work, 0, work.Takes);
        else if (corners is not null) OneEach(work, corners, MadeBy(work), work.Target.Filter.Has);
        else AddTops(work, times);
        if (corners is not null && _fault is not null) return;
        done.Add(work with
        {
            Amount = work.Amount with { Times = times },
            Passed = passed,
            PassedBefore = before,
            Corners = corners?.CountWhere(static p => p.IsCorner) ?? 0,
        });
    }

    private void AddTops(Work work, int times)
    {
        if ((long)work.Makes * times > PlaceSequenceBuilder.MostPlaces) Fail(RowFaultKind.TooLong, work, 0, 0);
        else if (work.Stitch.IsOne) AddOnes(_tops, work, times);
        else _tops.AddTimes(work.Stitch.Tops, work.Makes * times);
    }

    private static void AddOnes(PlaceSequenceBuilder tops, Work work, int times)
    {
        if (work.Takes > 0) tops.Add(Place.TopOf(work.Stitch), work.Makes * times);
    }

    // What a word makes each time.
    private static PlaceSequence MadeBy(Work work)
    {
        if (work.Stitch.IsOne) return PlaceSequence.Of(Place.TopOf(work.Stitch), work.Makes);
        var made = new PlaceSequenceBuilder();
        made.AddTimes(work.Stitch.Tops, work.Makes);
        return made.Build();
    }
}
