using Turnrow.Fabric.Places;

namespace Turnrow.Fabric.Words;

/// <content>Corners: how they are reached, and how what is worked over them carries them up.</content>
internal sealed partial class RowRun
{
    private bool _removes;
    private Place _last;

    // Corners among so many places ahead that have to be carried up.
    private bool MeetsCorner(int count, bool aimed = false) => !_removes && below.HasCorners && (aimed || !EndsOfChain) && _cursor.ToCorner() is >= 0 and var at && at < count;

    // The ends of a foundation chain bear no marker: only what goes into them as corners makes one.
    private bool EndsOfChain => below.First.Kind == PlaceKind.FoundationChain;

    // So many places ahead, if there are such corners among them.
    private PlaceSequence? CornersAhead(int count, bool aimed = false) => MeetsCorner(count, aimed) ? PlaceSequence.Ahead(_cursor, count) : null;

    private void PassUpToLast(int count)
    {
        if (count == 0) return;
        _cursor.Pass(count - 1);
        _last = _cursor.Next;
        _cursor.Pass(1);
    }

    private bool AtCorner(Word word)
    {
        var at = _cursor.ToCorner();
        if (at == 0) return true;
        Fail(at < 0 ? RowFaultKind.NoCorner : RowFaultKind.CornerNotNext, word, 0, at);
        return false;
    }

    // The places before the next corner, but for those that are to remain; below 0 if that can't be.
    private int UpToCorner(Word word, int remain)
    {
        var at = _cursor.ToCorner();
        // Behind the last corner of a round comes its first one again; what lies before that is behind its beginning.
        if (at < 0 && isRound && below.HasCorners) at = _cursor.Remaining + Math.Min(remain, new PlaceCursor(below).ToCorner());
        if (at >= remain) return at - remain;
        Fail(at < 0 ? RowFaultKind.NoCorner : RowFaultKind.CornerTooNear, word, remain, at);
        return -1;
    }

    private void Mark(Word mark, List<Word> done)
    {
        if (_tops.MarkLast()) done.Add(mark);
        else Fail(RowFaultKind.MarkNothing, mark, 0, 0);
    }

    // Works stitches over places with corners among them.
    private bool WorkOverCorners(Work work, int times, out int corners)
    {
        corners = 0;
        var places = PlaceSequence.Ahead(_cursor, work.Takes * times);
        if (!TakePlaces(work, work.Takes * times)) return false;
        corners = CornersIn(places);
        if (work.Takes > 1) return WorkTogether(work, places);
        return OneEach(work, places, MadeBy(work), static _ => true);
    }

    // The same in each of some places; those that are not meant are passed over.
    private bool OneEach(Word word, PlaceSequence places, PlaceSequence made, Func<Place, bool> isMeant)
    {
        for (var i = 0; i < places.Segments.Count; i++)
        {
            var segment = places.Segments[i];
            // What comes once goes straight to the row.
            var unit = segment.Times == 1 ? _tops : new PlaceSequenceBuilder();
            for (var j = 0; j < segment.Unit.Count; j++)
            {
                var run = segment.Unit[j];
                if (!isMeant(run.Place))
                {
                    if (run.Place.IsCorner) return Failed(RowFaultKind.CornerPassed, word, 1);
                    continue;
                }

                var here = run.Place.IsCorner ? Corners.WithMiddle(made) : made;
                if (here is null) return Failed(RowFaultKind.CornerWithoutMiddle, word, made.Count);
                unit.AddTimes(here, run.Count);
            }

            if (unit.TooLong) return Failed(RowFaultKind.TooLong, word, 0);
            if (segment.Times > 1) _tops.AddTimes(unit.Build(), segment.Times);
        }

        return !_tops.TooLong || Failed(RowFaultKind.TooLong, word, 0);
    }

    private static int CornersIn(PlaceSequence places) => places.HasCorners ? places.CountWhere(static p => p.IsCorner) : 0;

    // A corner that is the middle one of the stitches worked together is carried up; any other would be lost.
    private bool WorkTogether(Work work, PlaceSequence places)
    {
        var all = new PlaceSequenceBuilder();
        var cursor = new PlaceCursor(places);
        var made = MadeBy(work);
        while (cursor.Remaining > 0)
        {
            if (++_steps > MostSteps) return Failed(RowFaultKind.TooLong, work, 0);
            var before = cursor.ToCorner();
            var plain = (before < 0 ? cursor.Remaining : before) / work.Takes;
            all.AddTimes(made, plain);
            cursor.Pass(plain * work.Takes);
            if (before < 0) break;
            var group = PlaceSequence.Ahead(cursor, work.Takes);
            cursor.Pass(work.Takes);
            var isMiddle = work.Stitch.IsOne && before - (plain * work.Takes) == work.Takes / 2 && work.Takes % 2 != 0;
            if (!isMiddle || group.CountWhere(static p => p.IsCorner) > 1) return Failed(RowFaultKind.CornerTogether, work, work.Takes);
            if (Corners.WithMiddle(made) is not { } marked) return Failed(RowFaultKind.CornerWithoutMiddle, work, made.Count);
            all.Add(marked);
        }

        if (all.TooLong) return Failed(RowFaultKind.TooLong, work, 0);
        _tops.Add(all.Build());
        return true;
    }

    private bool Failed(RowFaultKind kind, Word word, int there)
    {
        Fail(kind, word, 0, there);
        return false;
    }
}
