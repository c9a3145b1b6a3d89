using Turnrow.Fabric.Places;

namespace Turnrow.Fabric.Words;

/// <content>Words that become others by what they are worked over.</content>
internal sealed partial class RowRun
{
    private void SpreadOut(Spread spread, List<Word> done)
    {
        var places = spread.Over.Reach switch
        {
            Reach.Fixed => spread.Over.Count,
            Reach.Until => _cursor.Remaining - spread.Over.Count,
            Reach.ToCorner => UpToCorner(spread, spread.Over.Count),
            Reach.ToTurn => UpToTurn(spread, spread.Over.Count),
            _ => _cursor.Remaining,
        };
        if (_fault is not null) return;
        if (places < 0 || places > _cursor.Remaining) Fail(RowFaultKind.NotEnough, spread, spread.Over.Count, _cursor.Remaining);
        else if (Spreading.Over(spread, places, isRound && places == below.Count) is { } words) done.AddRange(InOrder(words));
        else Fail(RowFaultKind.SpreadTooMany, spread, spread.Times, places);
    }

    // One thing in each stitch and another in each space.
    private void PlaceByPlace(ByPlace word, List<Word> done)
    {
        if (Stretch(word, new Target(Aim.EachOfKind, word.InSpace.Target.Filter) { Remain = word.Remain, ToCorner = word.ToCorner }) is not (>= 0 and var length)) return;
        var ahead = new PlaceCursor(below.Slice(Taken, length));
        var words = new List<Word>();
        var (stitches, spaces) = (RunAhead(ref ahead, word.InStitch), 0);
        if (stitches > 0) words.Add(word.InStitch with { Amount = Amount.Until(_cursor.Remaining - stitches), Origin = word.Origin });
        while (ahead.Remaining > 0)
        {
            if (++_steps > MostSteps) Fail(RowFaultKind.TooLong, word, 0, 0);
            if (_fault is not null) return;
            var space = ahead.CurrentRun(1);
            if (!word.InSpace.Target.Filter.Has(space.Place))
            {
                Fail(RowFaultKind.SpaceAhead, word, space.Place.Chains, 1);
                return;
            }

            ahead.Pass(1);
            spaces++;
            AddSpace(words, word, RunAhead(ref ahead, word.InStitch));
        }

        if (spaces == 0) Fail(RowFaultKind.NoneOfKind, word.InSpace, 1, 0);
        else done.AddRange(InOrder([.. words.SelectMany(OnceInWords)]));
    }

    private static IReadOnlyList<Word> OnceInWords(Word word) => word is Repeat { Amount.Count: 1 } once ? once.Words : [word];

    private static Work Stitches(ByPlace word, int count) => word.InStitch with { Amount = Amount.Of(count), Origin = word.Origin };

    private static int RunAhead(ref PlaceCursor ahead, Work stitch)
    {
        var count = 0;
        while (ahead.Remaining > 0 && ahead.CurrentRun(int.MaxValue) is var run && stitch.Target.Filter.Has(run.Place))
        {
            ahead.Pass(run.Count);
            count += run.Count;
        }

        return count;
    }

    // A space and the stitches behind it; as the last one was, it is that once more.
    private static void AddSpace(List<Word> words, ByPlace word, int stitches)
    {
        List<Word> body = [word.InSpace with { Origin = word.Origin }];
        if (stitches > 0) body.Add(Stitches(word, stitches));
        if (words is [.., Repeat last] && WordLists.Same(last.Words, body)) words[^1] = last with { Amount = Amount.Of(last.Amount.Count + 1) };
        else words.Add(new Repeat(body, Amount.Of(1)) { Origin = word.Origin });
    }
}
