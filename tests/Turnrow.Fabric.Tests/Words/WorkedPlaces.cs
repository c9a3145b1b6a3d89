using Turnrow.Fabric.Places;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Tests.Words;

/// <summary>One thing made in a row, and the places below that it was worked into: of a decrease, from the first to the last.</summary>
internal readonly record struct WorkedTop(Place Top, int First, int Last);

/// <summary>A worked row laid out stitch by stitch: what is made, and where the hook went for it.</summary>
internal sealed class WorkedPlaces
{
    private readonly List<Place> _below;
    private readonly List<WorkedTop> _made = [];
    private int _at;
    private (int First, int Last) _place = (-1, -1);

    private WorkedPlaces(PlaceSequence below) => _below = WordGen.Flat(below);

    /// <summary>What words of a worked row make; chains over the work have no place.</summary>
    public static List<WorkedTop> Of(IReadOnlyList<Word> worked, PlaceSequence below)
    {
        var row = new WorkedPlaces(below);
        row.All(worked);
        return row._made;
    }

    /// <summary>The same seen from the other end.</summary>
    public static List<WorkedTop> Turned(IEnumerable<WorkedTop> made, int places) =>
        [.. made.Reverse().Select(m => m.First < 0 ? m : new WorkedTop(m.Top, places - 1 - m.Last, places - 1 - m.First))];

    private void All(IReadOnlyList<Word> words)
    {
        foreach (var word in words) One(word);
    }

    private void One(Word word)
    {
        switch (word)
        {
            case Work work:
                if (work.Target.Aim is not (Aim.EachOfKind or Aim.Same)) _at += work.Passed;
                for (var i = 0; i < work.Amount.Times; i++)
                {
                    GoTo(work.Target, work.Takes);
                    Make(Place.TopOf(work.Stitch), work.Makes);
                }

                break;
            case Group group:
                if (group.Target.Aim is not (Aim.EachOfKind or Aim.Same)) _at += group.Passed;
                for (var i = 0; i < group.Times; i++)
                {
                    GoTo(group.Target, 1);
                    foreach (var inner in group.Words)
                    {
                        if (inner is Work work) Make(Place.TopOf(work.Stitch), work.Makes * work.Amount.Count);
                        else _made.Add(new WorkedTop(Place.SpaceOf(((Chains)inner).Count), -1, -1));
                    }
                }

                break;
            case Repeat { Ways.Count: > 0 } repeat:
                All(repeat.Ways);
                break;
            case Repeat repeat:
                for (var i = 0; i < repeat.Amount.Times; i++) All(repeat.Words);
                break;
            case Chains chains:
                _made.Add(new WorkedTop(Place.SpaceOf(chains.Count), -1, -1));
                break;
            default:
                _at += WordCounts.Takes(word);
                break;
        }
    }

    private void GoTo(Target target, int takes)
    {
        if (target.Aim == Aim.Same) return;
        var first = Next(target);
        var last = first;
        for (var i = 1; i < takes; i++) last = Next(target);
        _place = (first, last);
    }

    private int Next(Target target)
    {
        while (target.Aim == Aim.EachOfKind && !target.Filter.Has(_below[_at])) _at++;
        return _at++;
    }

    private void Make(Place top, int count)
    {
        for (var i = 0; i < count; i++) _made.Add(new WorkedTop(top, _place.First, _place.Last));
    }
}
