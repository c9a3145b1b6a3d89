using Turnrow.Fabric.Places;

namespace Turnrow.Fabric.Words;

/// <content>Repeats: worked once, then taken as often as they meet the same places.</content>
internal sealed partial class RowRun
{
    private void Times(Repeat repeat, List<Word> done)
    {
        var before = Taken;
        var keep = repeat.Amount.Reach switch
        {
            Reach.Until => repeat.Amount.Count,
            Reach.ToCorner => _cursor.Remaining - UpToCorner(repeat, repeat.Amount.Count),
            Reach.ToTurn => _cursor.Remaining - UpToTurn(repeat, repeat.Amount.Count),
            _ => 0,
        };
        // "Across" is, of what goes to corners or into them, as long as there is a corner ahead.
        var byCorners = repeat.Amount.Reach == Reach.Across && Corners.AreSaid(repeat.Words);
        if (byCorners && _cursor.ToCorner() < 0) Fail(RowFaultKind.NoCorner, repeat, 0, 0);
        var open = repeat.Amount.Reach != Reach.Fixed;
        var times = open ? int.MaxValue : repeat.Amount.Count;
        var ways = new List<Repeat>();
        var total = 0;
        var (alike, alikeTimes) = (PlaceSequence.Empty, 0);
        while (_fault is null && total < times && (!open || (byCorners ? _cursor.ToCorner() >= 0 : _cursor.Remaining > keep && !(total > 0 && keep == 0 && IsRoundDone(repeat)))))
        {
            var start = _cursor;
            var (words, made) = OnceThrough(repeat);
            if (_fault is not null)
            {
                if (open && !byCorners) DoesNotComeOut(repeat, before, keep, start.Remaining - keep, total);
                break;
            }

            if (open && _cursor.Remaining == start.Remaining)
            {
                Fail(RowFaultKind.RepeatTakesNothing, repeat, 0, start.Remaining);
                break;
            }

            var again = Again(repeat, start, times - total - 1, keep);
            _cursor.Pass(again * (start.Remaining - _cursor.Remaining));
            // Places below that are written out one by one make the same all the same: what comes of them is a repeat again.
            if (!made.Equals(alike))
            {
                _tops.AddTimes(alike, alikeTimes);
                (alike, alikeTimes) = (made, 0);
            }

            alikeTimes += again + 1;
            AddWay(ways, words, again + 1);
            total += again + 1;
        }

        _tops.AddTimes(alike, alikeTimes);

        if (_fault is null && open && _cursor.Remaining < keep) DoesNotComeOut(repeat, before, keep, 0, total);
        if (_fault is not null) return;
        var first = ways.Count > 0 ? ways[0].Words : repeat.Words;
        done.Add(repeat with
        {
            Words = first,
            Amount = repeat.Amount with { Times = total },
            Ways = ways.Count > 1 ? ways : [],
        });
    }

    private (IReadOnlyList<Word> Words, PlaceSequence Made) OnceThrough(Repeat repeat)
    {
        var outer = _tops;
        _tops = new PlaceSequenceBuilder();
        var words = InOrder(repeat.Words);
        var made = _tops.Build();
        if (_tops.TooLong) Fail(RowFaultKind.TooLong, repeat, 0, 0);
        _tops = outer;
        return (words, made);
    }

    // How often the same step can be taken again without meeting other places or what must be kept. What goes up to a corner looks as far as the
    // next one behind the step; what goes up to the end of the row is never the same again.
    private int Again(Repeat repeat, PlaceCursor start, int atMost, int keep)
    {
        var took = start.Remaining - _cursor.Remaining;
        if (took == 0) return Math.Min(atMost, MostSteps);
        atMost = Math.Min(atMost, Math.Max(0, (_cursor.Remaining - keep) / took));
        if (atMost == 0 || WordLists.ReachEnd(repeat.Words)) return 0;
        if (!Corners.AreSaid(repeat.Words)) return Math.Min(atMost, Math.Max(_cursor.LikeStepsAhead(start), _cursor.LikeStepsAhead(start, 0, atMost)));
        return _cursor.ToCorner() is >= 0 and var corner ? _cursor.LikeStepsAhead(start, corner + 1, atMost) : 0;
    }

    private static void AddWay(List<Repeat> ways, IReadOnlyList<Word> words, int times)
    {
        if (ways.Count > 0 && WordLists.Same(ways[^1].Words, words))
        {
            ways[^1] = ways[^1] with { Amount = Amount.Of(ways[^1].Amount.Times + times) };
        }
        else
        {
            ways.Add(new Repeat(words, Amount.Of(times)));
        }
    }

    // A repeat that fails half-way has not come out, whatever the word inside says; but a space in the way or an aim that
    // can't be met is told as such.
    private void DoesNotComeOut(Repeat repeat, int before, int keep, int left, int total)
    {
        if (_fault is { Kind: not (RowFaultKind.NotEnough or RowFaultKind.NoneOfKind) }) return;
        // What was not worked once can't have a rest: what it looks for is not there, or something stands before it.
        if (total == 0 && _fault is { Kind: RowFaultKind.NoneOfKind }) return;
        var per = PerTime(repeat);
        var way = below.Count - before - keep;
        // On the way to a kind of place others are passed over, so that a time takes more than its words say.
        var over = per > 0 && !PlaceKinds.AreLookedFor(repeat.Words) ? (int)(way % per) : left;
        _fault = new RowFault(RowFaultKind.RepeatDoesNotComeOut, repeat, (int)Math.Min(per, int.MaxValue), over == 0 ? left : over, before) { Way = way, Times = total };
    }

    private static long PerTime(Repeat repeat)
    {
        var takes = 0L;
        foreach (var word in repeat.Words)
        {
            takes += word switch
            {
                Work { Target.Aim: Aim.Same or Aim.Ring } => 0,
                Work { Amount.Reach: Reach.Fixed } work => (long)work.Takes * work.Amount.Count,
                Group { Target.Aim: not (Aim.Same or Aim.Ring) } => 1,
                Skip skip => skip.Count,
                Repeat { Amount.Reach: Reach.Fixed } inner => Math.Min(PerTime(inner), int.MaxValue) * inner.Amount.Count,
                _ => 0,
            };
        }

        return Math.Min(takes, int.MaxValue);
    }
}
