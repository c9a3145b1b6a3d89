using Turnrow.Fabric.Words;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Telling;

/// <content>Repeats: told time by time, and as often as they meet the same places.</content>
internal sealed partial class WordTeller
{
    // Told time by time, but times that meet the same places are told once.
    private void Again(Repeat repeat)
    {
        var outer = Phrases;
        _inRepeat++;
        PhraseList? before = null;
        var times = 0;
        foreach (var way in repeat.WorkedWays)
        {
            var left = way.Amount.Times;
            while (left > 0)
            {
                if (IsAtOtherGround)
                {
                    AddTimes(outer, before, times);
                    (Phrases, before, times) = (outer, null, 0);
                    AtOtherGround();
                }

                var start = _places.Cursor;
                AtFirst = false;
                Phrases = [];
                Tell(way.Words);
                var told = new PhraseList(Phrases);
                var more = Math.Min(left - 1, _places.LikeStepsAhead(start));
                // What goes up to a corner looks further than it goes: the last time may find another, or none.
                if (more > 0 && _places.HasCorners) more--;
                _places.Pass(more * (start.Remaining - _places.Remaining));
                left -= 1 + more;
                if (!told.Equals(before)) AddTimes(outer, before, times);
                times = told.Equals(before) ? times + 1 + more : 1 + more;
                before = told;
            }
        }

        AddTimes(outer, before, times);
        _inRepeat--;
        Phrases = outer;
    }

    private static void AddTimes(List<Phrase> phrases, PhraseList? told, int times)
    {
        if (told is null || times == 0 || told.Count == 0) return;
        if (told.Count > 1 && EndsIn(phrases, told))
        {
            phrases.RemoveRange(phrases.Count - told.Count, told.Count);
            times++;
        }

        if (times == 1) phrases.AddRange(told.Phrases);
        else phrases.Add(new Repeated(told, Sized.Of(times)));
    }

    /// <summary>What stands behind a repeat and is that once more, as a round ends that began with half of it, is one time of it.</summary>
    public static void JoinLastTime(List<Phrase> phrases)
    {
        for (var i = 0; i < phrases.Count; i++)
        {
            if (phrases[i] is not Repeated { Words: { Count: > 0 } told } repeated || i + told.Count >= phrases.Count) continue;
            if (!told.Equals(new PhraseList([.. phrases.GetRange(i + 1, told.Count).Select(AsNext)]))) continue;
            phrases[i] = repeated with { Times = Sized.Of(repeated.Times.First + 1) };
            phrases.RemoveRange(i + 1, told.Count);
        }
    }

    // The last ones of a round are as well the next ones.
    private static Phrase AsNext(Phrase phrase) => phrase is StitchesIn { Where: LastPlaces last } stitches
        ? stitches with { Where = new NextPlaces(last.Count, last.Place, false) }
        : phrase;

    // The first time of a repeat is told by itself when a row begins with it; where it reads like the others after all, it is one of them.
    private static bool EndsIn(List<Phrase> phrases, PhraseList told)
    {
        var from = phrases.Count - told.Count;
        return from >= 0 && told.Equals(new PhraseList([.. phrases.GetRange(from, told.Count)]));
    }
}
