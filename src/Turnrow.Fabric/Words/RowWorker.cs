using Turnrow.Fabric.Places;

namespace Turnrow.Fabric.Words;

/// <summary>
/// Works the words of a row over the places of the row below, run by run. A repeat is worked once and then taken as often as it meets
/// the same places again, so a wide row costs what its words cost.
/// </summary>
public static partial class RowWorker
{
    private const int MostSteps = 200_000;

    /// <summary>Works words over places, both in working order.</summary>
    public static WorkedRow Work(IReadOnlyList<Word> words, PlaceSequence below) => new Run(below).Row(words);

    private sealed partial class Run(PlaceSequence below)
    {
        private PlaceCursor _cursor = new(below);
        private PlaceSequenceBuilder _tops = new();
        private RowFault? _fault;
        private int _steps;
        private bool _worked;
        private bool _left;

        private int Taken => below.Count - _cursor.Remaining;

        public WorkedRow Row(IReadOnlyList<Word> words)
        {
            _removes = words.Any(static w => w is RemoveCorners);
            var done = InOrder(words);
            if (_fault is null && _tops.TooLong) Fail(RowFaultKind.TooLong, null, 0, 0);
            if (_fault is null && _cursor.Remaining > 0) Fail(RowFaultKind.LeftOver, null, 0, _cursor.Remaining);
            return new WorkedRow(done, _tops.Build(), _fault);
        }

        private List<Word> InOrder(IReadOnlyList<Word> words)
        {
            var done = new List<Word>(words.Count);
            foreach (var word in words)
            {
                if (++_steps > MostSteps || _tops.TooLong) Fail(RowFaultKind.TooLong, word, 0, 0);
                if (_left && _fault is null) Fail(RowFaultKind.AfterLeave, word, 0, 0);
                if (_fault is not null) break;
                One(word, done);
            }

            return done;
        }

        private void One(Word word, List<Word> done)
        {
            switch (word)
            {
                case Work work: Stitches(work, done); break;
                case Group group: InOnePlace(group, done); break;
                case Repeat repeat: Times(repeat, done); break;
                case Chains chains: _tops.Add(Place.SpaceOf(chains.Count), 1); done.Add(chains); break;
                case Skip skip when MeetsCorner(skip.Count): Fail(RowFaultKind.CornerPassed, skip, 0, 1); break;
                case Skip skip: PassOver(skip, skip.Count, done); break;
                case SlipOver slip: Slip(slip, done); break;
                case Leave leave: LeaveUnworked(leave, done); break;
                case MarkCorner mark: Mark(mark, done); break;
                case RemoveCorners remove: done.Add(remove); break;
                case Spread spread: SpreadOut(spread, done); break;
            }
        }

        private void Fail(RowFaultKind kind, Word? word, int needed, int there) =>
            _fault ??= new RowFault(kind, word, needed, there, Taken);

        private void PassOver(Word word, int count, List<Word> done)
        {
            if (count > _cursor.Remaining)
            {
                Fail(RowFaultKind.NotEnough, word, count, _cursor.Remaining);
                return;
            }

            _cursor.Pass(count);
            done.Add(word);
        }

        private void Slip(SlipOver slip, List<Word> done)
        {
            if (Taken > 0) Fail(RowFaultKind.SlipOverInside, slip, slip.Count, _cursor.Remaining);
            else PassOver(slip, slip.Count, done);
        }

        private void LeaveUnworked(Leave leave, List<Word> done)
        {
            var count = leave.Count < 0 ? _cursor.Remaining : leave.Count;
            _left = count > 0;
            PassOver(leave with { Count = count }, count, done);
        }

        private void SpreadOut(Spread spread, List<Word> done)
        {
            if (Spreading.Over(spread, _cursor.Remaining) is { } words) done.AddRange(InOrder(words));
            else Fail(RowFaultKind.SpreadTooMany, spread, Math.Abs(spread.Change), _cursor.Remaining);
        }

        private void Stitches(Work work, List<Word> done)
        {
            if (work.Target.Aim == Aim.EachOfKind)
            {
                Each(work, done);
                return;
            }

            if (!TimesOf(work, out var times)) return;
            var passed = GoTo(work, work.Target);
            if (passed < 0) return;
            var corners = 0;
            if (work.Target.Aim != Aim.Same && times <= _cursor.Remaining / work.Takes && MeetsCorner(work.Takes * times))
            {
                if (!WorkOverCorners(work, times, out corners)) return;
            }
            else
            {
                if (!TakePlaces(work, work.Takes * times)) return;
                AddTops(work, times);
            }

            if (times > 0) _worked = true;
            done.Add(work with { Amount = work.Amount with { Times = times }, Passed = passed, PassedBefore = passed, Corners = corners });
        }

        // How many times a word is worked: so many, or as often as the places to come allow without a rest.
        private bool TimesOf(Work work, out int times)
        {
            times = work.Amount.Count;
            if (work.Amount.Reach == Reach.Fixed) return Fits(work, times);
            var keep = work.Amount.Reach == Reach.Until ? work.Amount.Count : 0;
            var places = work.Amount.Reach == Reach.ToCorner ? UpToCorner(work, work.Amount.Count) : _cursor.Remaining - keep;
            if (_fault is not null) return false;
            if (places < 0)
            {
                Fail(RowFaultKind.NotEnough, work, keep, _cursor.Remaining);
                return false;
            }

            times = places / work.Takes;
            if (places % work.Takes == 0) return true;
            Fail(RowFaultKind.RepeatDoesNotComeOut, work, work.Takes, places % work.Takes);
            return false;
        }

        private bool Fits(Work work, int times)
        {
            var needed = work.Target.Aim == Aim.Same ? 0 : (long)work.Takes * times;
            if (needed <= _cursor.Remaining) return true;
            Fail(RowFaultKind.NotEnough, work, (int)Math.Min(needed, int.MaxValue), _cursor.Remaining);
            return false;
        }

        // Goes to the place that is meant. Returns the places passed over, or -1 if it can't be reached.
        private int GoTo(Word word, Target target)
        {
            switch (target.Aim)
            {
                case Aim.First when Taken > 0:
                    Fail(RowFaultKind.NotFirst, word, 0, Taken);
                    return -1;
                case Aim.Last when _cursor.Remaining != 1:
                    Fail(RowFaultKind.NotLast, word, 1, _cursor.Remaining);
                    return -1;
                case Aim.Same when !_worked:
                    Fail(RowFaultKind.NothingBefore, word, 0, 0);
                    return -1;
                case Aim.Same when _last.IsCorner && !_removes:
                    Fail(RowFaultKind.CornerAgain, word, 0, 0);
                    return -1;
                case Aim.Corner:
                    return AtCorner(word) ? 0 : -1;
                case Aim.NextOfKind:
                    return PassTo(word, target);
                default:
                    return 0;
            }
        }

        private int PassTo(Word word, Target target)
        {
            var passed = 0;
            while (_cursor.Remaining > 0)
            {
                var run = _cursor.CurrentRun(int.MaxValue);
                if (target.Filter.Has(run.Place)) return passed;
                if (run.Place.IsCorner && !_removes)
                {
                    Fail(RowFaultKind.CornerPassed, word, 0, 1);
                    return -1;
                }

                // "Next ch-3 sp" never passes over another space: that is left to the designer to say.
                if (target is { OverOthers: false, Filter.Kind: PlaceFilterKind.SpaceOf } && run.Place.Kind == PlaceKind.Space) break;
                _cursor.Pass(run.Count);
                passed += run.Count;
                if (++_steps > MostSteps) break;
            }

            Fail(RowFaultKind.NoneOfKind, word, 1, 0);
            return -1;
        }

        // Uses up places for stitches; a space among them stops the row unless the word asks for one.
        private bool TakePlaces(Work work, int count)
        {
            if (work.Target.Aim == Aim.Same) return true;
            if (count > _cursor.Remaining)
            {
                Fail(RowFaultKind.NotEnough, work, count, _cursor.Remaining);
                return false;
            }

            var filter = work.Target.Filter;
            while (count > 0)
            {
                if (_cursor.AtRepeat(out var segment, out var units) && segment.UnitCount <= count && AllOf(segment, filter))
                {
                    units = Math.Min(units, count / segment.UnitCount);
                    _last = segment.Unit[^1].Place;
                    _cursor.Pass(units * segment.UnitCount);
                    count -= units * segment.UnitCount;
                    continue;
                }

                var run = _cursor.CurrentRun(count);
                if (!filter.Has(run.Place))
                {
                    Fail(RowFaultKind.SpaceAhead, work, run.Place.Chains, count);
                    return false;
                }

                _last = run.Place;
                _cursor.Pass(run.Count);
                count -= run.Count;
                if (++_steps > MostSteps) Fail(RowFaultKind.TooLong, work, 0, 0);
            }

            return _fault is null;
        }

        private static bool AllOf(PlaceSegment segment, PlaceFilter filter)
        {
            foreach (var run in segment.Unit)
            {
                if (!filter.Has(run.Place)) return false;
            }

            return true;
        }

        private void Each(Work work, List<Word> done)
        {
            var (found, passed, before) = CountAhead(work, work.Target);
            if (_fault is not null) return;
            var corners = CornersAhead(found + passed);
            if (found % work.Takes != 0)
            {
                Fail(RowFaultKind.RepeatDoesNotComeOut, work, work.Takes, found % work.Takes);
                return;
            }

            PassUpToLast(found + passed);
            var times = found / work.Takes;
            _worked |= times > 0;
            if (corners is not null && work.Takes > 1) Fail(RowFaultKind.CornerTogether, work, 0, work.Takes);
            else if (corners is not null) OneEach(work, corners, PlaceSequence.Of(Place.TopOf(work.Stitch), work.Makes), work.Target.Filter.Has);
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
            else _tops.Add(Place.TopOf(work.Stitch), work.Makes * times);
        }

        // The places of a kind up to the last one, and what is passed over on the way. What stands after that one is not passed: it
        // must be worked, skipped or left in words.
        private (int Found, int Passed, int Before) CountAhead(Word word, Target target)
        {
            if (target.Remain > _cursor.Remaining)
            {
                Fail(RowFaultKind.NotEnough, word, target.Remain, _cursor.Remaining);
                return (0, 0, 0);
            }

            var filter = target.Filter;
            var ahead = below.Slice(Taken, _cursor.Remaining - target.Remain);
            var found = ahead.CountWhere(filter.Has);
            if (found == 0) return (0, 0, 0);
            return (found, ahead.Count - found - BeforeFirst(ahead.Reversed(), filter), BeforeFirst(ahead, filter));
        }

        // There is one of the kind.
        private static int BeforeFirst(PlaceSequence places, PlaceFilter filter)
        {
            var cursor = new PlaceCursor(places);
            while (cursor.CurrentRun(int.MaxValue) is var run && !filter.Has(run.Place)) cursor.Pass(run.Count);
            return places.Count - cursor.Remaining;
        }

        private void InOnePlace(Group group, List<Word> done)
        {
            var times = 1;
            int passed, before;
            PlaceSequence? corners = null;
            if (group.Target.Aim == Aim.EachOfKind)
            {
                (times, passed, before) = CountAhead(group, group.Target);
                if (_fault is not null) return;
                corners = CornersAhead(times + passed);
                PassUpToLast(times + passed);
            }
            else
            {
                passed = before = GoTo(group, group.Target);
                if (passed < 0) return;
                if (group.Target.Aim != Aim.Same)
                {
                    corners = CornersAhead(1);
                    if (!TakeOne(group)) return;
                }
            }

            _worked |= times > 0;
            if (corners is null) _tops.AddTimes(TopsOf(group), times);
            else if (!OneEach(group, corners, TopsOf(group), group.Target.Filter.Has)) return;
            done.Add(group with
            {
                Passed = passed,
                PassedBefore = before,
                Times = times,
                Corners = corners?.CountWhere(static p => p.IsCorner) ?? 0,
            });
        }

        private bool TakeOne(Group group)
        {
            if (_cursor.Remaining == 0)
            {
                Fail(RowFaultKind.NotEnough, group, 1, 0);
                return false;
            }

            if (!group.Target.Filter.Has(_cursor.Next))
            {
                Fail(RowFaultKind.SpaceAhead, group, _cursor.Next.Chains, 1);
                return false;
            }

            _last = _cursor.Next;
            _cursor.Pass(1);
            return true;
        }

        private PlaceSequence TopsOf(Group group)
        {
            var tops = new PlaceSequenceBuilder();
            foreach (var word in group.Words)
            {
                if (word is Work work) tops.Add(Place.TopOf(work.Stitch), work.Makes * work.Amount.Count);
                else if (word is Chains chains) tops.Add(Place.SpaceOf(chains.Count), 1);
                else if (word is MarkCorner && !tops.MarkLast()) Fail(RowFaultKind.MarkNothing, word, 0, 0);
            }

            return tops.Build();
        }

        private void Times(Repeat repeat, List<Word> done)
        {
            var before = Taken;
            var keep = repeat.Amount.Reach switch
            {
                Reach.Until => repeat.Amount.Count,
                Reach.ToCorner => _cursor.Remaining - UpToCorner(repeat, repeat.Amount.Count),
                _ => 0,
            };
            // "Across" is, of what goes into corners, as long as there is a corner ahead.
            var byCorners = repeat.Amount.Reach == Reach.Across && repeat.Words.Any(Corners.IsIn);
            if (byCorners && _cursor.ToCorner() < 0) Fail(RowFaultKind.NoCorner, repeat, 0, 0);
            var open = repeat.Amount.Reach != Reach.Fixed;
            var times = open ? int.MaxValue : repeat.Amount.Count;
            var ways = new List<Repeat>();
            var total = 0;
            while (_fault is null && total < times && (!open || (byCorners ? _cursor.ToCorner() >= 0 : _cursor.Remaining > keep)))
            {
                var start = _cursor;
                var (words, made) = OnceThrough(repeat);
                if (_fault is not null)
                {
                    if (open && !byCorners) DoesNotComeOut(repeat, before, keep, start.Remaining - keep);
                    break;
                }

                if (open && _cursor.Remaining == start.Remaining)
                {
                    Fail(RowFaultKind.RepeatTakesNothing, repeat, 0, start.Remaining);
                    break;
                }

                var again = Again(start, times - total - 1, keep);
                // What goes up to a corner looks further than it goes: the last time may find another.
                if (Corners.AreSaid(repeat.Words)) again = _cursor.LikeStepsAhead(start) > 0 && HasCorner(start) ? Math.Max(0, again - 1) : 0;
                _cursor.Pass(again * (start.Remaining - _cursor.Remaining));
                _tops.AddTimes(made, again + 1);
                AddWay(ways, words, again + 1);
                total += again + 1;
            }

            if (_fault is null && open && _cursor.Remaining < keep) DoesNotComeOut(repeat, before, keep, 0);
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

        // How often the same step can be taken again without meeting other places or what must be kept.
        private int Again(PlaceCursor start, int atMost, int keep)
        {
            var took = start.Remaining - _cursor.Remaining;
            if (took == 0) return Math.Min(atMost, MostSteps);
            return Math.Min(Math.Min(_cursor.LikeStepsAhead(start), atMost), Math.Max(0, (_cursor.Remaining - keep) / took));
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
        private void DoesNotComeOut(Repeat repeat, int before, int keep, int left)
        {
            if (_fault is { Kind: not (RowFaultKind.NotEnough or RowFaultKind.NoneOfKind) }) return;
            var per = PerTime(repeat);
            var over = per > 0 ? (int)((below.Count - before - keep) % per) : left;
            _fault = new RowFault(RowFaultKind.RepeatDoesNotComeOut, repeat, (int)Math.Min(per, int.MaxValue), over == 0 ? left : over, before);
        }

        private static long PerTime(Repeat repeat)
        {
            var takes = 0L;
            foreach (var word in repeat.Words)
            {
                takes += word switch
                {
                    Work { Target.Aim: Aim.Same } => 0,
                    Work { Amount.Reach: Reach.Fixed } work => (long)work.Takes * work.Amount.Count,
                    Group { Target.Aim: not Aim.Same } => 1,
                    Skip skip => skip.Count,
                    Repeat { Amount.Reach: Reach.Fixed } inner => Math.Min(PerTime(inner), int.MaxValue) * inner.Amount.Count,
                    _ => 0,
                };
            }

            return Math.Min(takes, int.MaxValue);
        }
    }
}
