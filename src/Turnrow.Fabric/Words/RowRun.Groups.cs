using Turnrow.Fabric.Places;

namespace Turnrow.Fabric.Words;

/// <content>What is worked in one place.</content>
internal sealed partial class RowRun
{
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
            if (group.Target.Aim is not (Aim.Same or Aim.Ring))
            {
                corners = CornersAhead(1, Corners.IsIn(group));
                if (!TakeOne(group)) return;
            }
            else if (group.Target.Aim == Aim.Same && !HasLoops(group, _last))
            {
                return;
            }
        }

        if (times > 0 && group.Words.Count > 0 && !HasFoot(group.Words[0], group)) return;
        if (times > 0) Name(group.Target);
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
            Fail(AheadOf(_cursor.Next), group, _cursor.Next.Chains, 1);
            return false;
        }

        if (!HasLoops(group, _cursor.Next)) return false;
        _last = _cursor.Next;
        _cursor.Pass(1);
        return true;
    }

    private PlaceSequence TopsOf(Group group)
    {
        if (ReferenceEquals(group.Known.For, group.Words)) return group.Known.Made!;
        var tops = new PlaceSequenceBuilder();
        for (var i = 0; i < group.Words.Count; i++)
        {
            var word = group.Words[i];
            if (word is Work { Stitch.IsOne: true } work) AddOnes(tops, work, work.Amount.Count);
            else if (word is Work special) tops.AddTimes(special.Stitch.Tops, special.Makes * special.Amount.Count);
            else if (word is Chains more && JoinWords.GoesOnSpace(group.Words, i)) tops.WidenLast(more.Count);
            else if (word is Chains chains) tops.Add(Place.SpaceOf(chains.Count), 1);
            else if (word is MarkCorner && !tops.MarkLast()) Fail(RowFaultKind.MarkNothing, word, 0, 0);
        }

        if (tops.TooLong) Fail(RowFaultKind.TooLong, group, 0, 0);
        var made = tops.Build();
        if (_fault is null) group.Known = (group.Words, made);
        return made;
    }
}
