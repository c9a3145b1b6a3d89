using Turnrow.Fabric.Places;
using Turnrow.Fabric.Words;

namespace Turnrow.Publishing.Charts.Layout;

/// <summary>Lays the words of a worked row out in columns, each with the places that it is worked into.</summary>
internal sealed class StripBuilder(PlaceSequence below, bool inRing)
{
    private LoopBuilder _open = new(0);

    /// <summary>The strip of a row.</summary>
    /// <param name="words">Its words.</param>
    /// <param name="below">The places that it is worked over.</param>
    /// <param name="inRing">True if it is worked into a ring, where stitches in one place stand side by side all round.</param>
    public static Strip Build(IReadOnlyList<Word> words, PlaceSequence below, bool inRing = false)
    {
        var builder = new StripBuilder(below, inRing);
        builder.AddAll(words);
        return new Strip(builder._open.Close(1));
    }

    private void AddAll(IReadOnlyList<Word> words)
    {
        foreach (var word in words) Add(word);
    }

    private void Add(Word word)
    {
        switch (word)
        {
            case Work { Target.Aim: Aim.EachOfKind, Stitch.IsOne: false } special:
                InEach(special, special.Target.Filter, count => AddLoop(count, 1, () => AddParts(special)));
                break;
            case Work { Stitch.IsOne: false } special:
                _open.Pass(special.Passed);
                AddLoop(special.Amount.Times, special.Target.Aim == Aim.Same ? 0 : special.Takes, () => AddParts(special));
                break;
            case Work { Target.Aim: Aim.EachOfKind } work:
                InEach(work, work.Target.Filter, count => AddLoop(count, 1, () => _open.Add(CellOf(work, work.Makes), work.Takes)));
                break;
            case Work work:
                _open.Pass(work.Passed);
                var takes = work.Target.Aim == Aim.Same ? 0 : work.Takes;
                AddLoop(work.Amount.Times, takes, () => AddCell(CellOf(work, work.Makes), takes));
                break;
            case Group { Target.Aim: Aim.EachOfKind } group:
                InEach(group, group.Target.Filter, count => AddLoop(count, 1, () => InOnePlace(group)));
                break;
            case Group group:
                _open.Pass(group.Passed);
                InOnePlace(group);
                break;
            case Repeat { Ways.Count: > 0 } repeat:
                foreach (var way in repeat.Ways) AddLoop(way.Amount.Times, 1, () => AddAll(way.Words));
                break;
            case Repeat repeat:
                AddLoop(repeat.Amount.Times, 1, () => AddAll(repeat.Words));
                break;
            case Chains chains when _open.EndsInJoinedSpace:
                _open.WidenSpace(chains.Count);
                break;
            case Chains chains:
                _open.AddSpace(chains.Count);
                break;
            case Bridge bridge:
                AddLoop(bridge.Count, 0, () => _open.AddSpace(1));
                break;
            case Skip or SlipOver or Leave or Hold:
                _open.Pass(WordCounts.Takes(word));
                break;
        }
    }

    private Cell CellOf(Work work, int tops)
    {
        var same = work.Target.Aim == Aim.Same;
        if (work.Takes == 0) return new Cell(work.Stitch, work.Hook, _open.PlaceBefore, 1, 1, 0, 0, 0) { Joins = work.To is not null };
        var feet = same ? 1 : work.Takes;
        return new Cell(work.Stitch, work.Hook, same ? _open.PlaceBefore : 0, feet, Math.Max(work.Takes, tops), tops, 0, tops);
    }

    private void AddCell(Cell cell, int takes)
    {
        if (!inRing || cell.Tops <= 1 || cell.Legs != cell.Tops)
        {
            _open.Add(cell, takes);
            return;
        }

        var one = new Cell(cell.Stitch, cell.Hook, cell.Foot, 1, 1, 1, 0, 1);
        AddLoop(cell.Tops, 0, () => _open.Add(one, 0));
        _open.Pass(takes, worked: takes > 0);
    }

    // What is made of several is drawn as those, over the places that each of them goes into.
    private void AddParts(Work special)
    {
        var same = special.Target.Aim == Aim.Same;
        var first = same ? _open.PlaceBefore : 0;
        for (var i = 0; i < special.Makes; i++) AddParts(special, first);
        if (!same) _open.Pass(special.Takes, worked: special.Takes > 0);
    }

    private void AddParts(Work special, int first)
    {
        foreach (var part in special.Stitch.Form!.Parts)
        {
            if (part.Stitch is not { } stitch) _open.AddSpace(part.Count);
            else if (part.IsKnot) for (var i = 0; i < part.Count; i++) _open.Add(new Cell(stitch, part.Hook, first, 1, 1, 0, 0, 0) { Special = special.Stitch }, 0);
            else _open.Add(new Cell(stitch, part.Hook == HookInto.BothLoops ? special.Hook : part.Hook, first + part.Place, 1, part.Count, part.Count, 0, part.Count) { Special = special.Stitch }, 0);
        }
    }

    private void InOnePlace(Group group)
    {
        var foot = group.Target.Aim == Aim.Same ? _open.PlaceBefore : 0;
        foreach (var word in group.Words)
        {
            if (word is Chains more && _open.EndsInJoinedSpace) _open.WidenSpace(more.Count);
            else if (word is Chains chains) _open.AddSpace(chains.Count);
            else if (word is Work { Amount.Count: > 0 } work) AddInPlace(work, foot);
        }

        if (group.Target.Aim != Aim.Same) _open.Pass(1, worked: true);
    }

    private void AddInPlace(Work work, int foot)
    {
        if (!work.Stitch.IsOne)
        {
            for (var i = 0; i < work.Makes * work.Amount.Count; i++) AddParts(work, foot);
            return;
        }

        var tops = work.Takes == 0 ? 0 : work.Makes * work.Amount.Count;
        if (tops == 0) _open.Add(new Cell(work.Stitch, work.Hook, foot, 1, 1, 0, 0, 0) { Joins = work.To is not null }, 0);
        else AddCell(new Cell(work.Stitch, work.Hook, foot, 1, Math.Max(work.Takes, tops), tops, 0, tops), 0);
    }

    // Once needs no loop of its own, which keeps the tree as flat as the words are.
    private void AddLoop(int times, int takes, Action once)
    {
        if (times <= 0) return;
        if (times == 1)
        {
            once();
            return;
        }

        var outer = _open;
        _open = new LoopBuilder(outer.Place);
        once();
        var loop = _open.Close(times);
        _open = outer;
        if (loop.Children.Count == 0) _open.Pass(loop.Unit.Place * times);
        else _open.Add(loop, loop.Unit.Place * times, worked: takes > 0);
    }

    // Goes to each place of a kind as far as the word does, repeat by repeat of what is below.
    private void InEach(Word word, PlaceFilter filter, Action<int> work)
    {
        var reached = below.Slice(0, _open.Place + WordCounts.Takes(word));
        foreach (var (runs, times) in PlaceRuns.From(reached, _open.Place))
        {
            AddLoop(times, 1, () =>
            {
                foreach (var run in runs)
                {
                    if (filter.Has(run.Place)) work(run.Count);
                    else _open.Pass(run.Count);
                }
            });
        }
    }
}
