using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>Tells the words of a row in order, by the places that they meet.</summary>
internal sealed class WordTeller(RowContext row)
{
    private readonly RowPlaces _places = row.Places;
    private int _inRepeat;
    private PlaceName _made = PlaceName.AnyStitch;

    /// <summary>What has been told so far.</summary>
    public List<Phrase> Phrases { get; private set; } = [];

    /// <summary>True as long as nothing has been worked into the row's first place: it is "first" then, not "next".</summary>
    public bool AtFirst { get; set; } = true;

    /// <summary>Tells words.</summary>
    public void Tell(IEnumerable<Word> words)
    {
        foreach (var word in words) Tell(word);
    }

    /// <summary>Tells a word.</summary>
    public void Tell(Word word)
    {
        switch (word)
        {
            case Work { Amount.Times: 0 } or Group { Times: 0 } or Repeat { Amount.Times: 0 }:
                return;
            case Work work:
                Stitches(work);
                Shape(work);
                Finished(work);
                break;
            case Group group:
                InOnePlace(group);
                Finished(group);
                break;
            case MarkCorner:
                Phrases.Add(new PlaceMarker(_made, false));
                return;
            case Repeat repeat:
                Again(repeat);
                break;
            case Chains chains:
                Phrases.Add(new ChainSpace(Sized.Of(chains.Count)));
                Finished(chains);
                break;
            case Skip { Count: > 0 } skip:
                PassOver(skip.Count);
                break;
            case SlipOver { Count: > 0 } slip:
                _places.Pass(slip.Count);
                Phrases.Add(new SlipOverPlaces(Sized.Of(slip.Count)));
                break;
            case Leave { Count: > 0 } leave:
                _places.Pass(leave.Count);
                Phrases.Add(new LeaveLast(Sized.Of(leave.Count), false));
                break;
        }

        AtFirst = false;
    }

    /// <summary>Keeps in mind what a word made last, and says where the marker goes if it was worked into a corner.</summary>
    public void Finished(Word word)
    {
        _made = Markers.LastMade(word) ?? _made;
        if (Markers.Moved(word) is { } moved) Phrases.Add(moved);
    }

    /// <summary>Passes places over, in words.</summary>
    public void PassOver(int count)
    {
        if (count == 1 && _places.TopAt(0) is { } top && !AtFirst)
        {
            Phrases.Add(new SkipChainTop(top.Beginning));
        }
        else if (Phrases.Count > 0 && Phrases[^1] is SkipPlaces before)
        {
            Phrases[^1] = before with { Count = Sized.Of(before.Count.First + count), Place = before.Place.With(_places.NameOf(count)) };
        }
        else
        {
            Phrases.Add(new SkipPlaces(Sized.Of(count), _places.NameOf(count), AtFirst));
        }

        _places.Pass(count);
        AtFirst = false;
    }

    /// <summary>Says at the last phrase that it shapes an edge, if the word does so by the row's plan.</summary>
    public void Shape(Work work)
    {
        if (row.Row.Plan is not ShapedPlan plan || work is { Makes: 1, Takes: 1 } || Phrases.Count == 0) return;
        // A shaped row changes at its start first, then at its end: what is ahead tells which it is.
        var hand = plan.At(row.Row.StartsAt).Change != 0 && (plan.At(row.Row.EndsAt).Change == 0 || !PlainAheadIsDone())
            ? row.Row.StartsAt
            : row.Row.EndsAt;
        Phrases[^1] = Phrases[^1] with { Shaping = new EdgeShaping(Sized.Of(plan.At(hand).Change), row.EdgeName(hand)) };
    }

    /// <summary>The words of a group as phrases.</summary>
    public static PhraseList Inside(IEnumerable<Word> words)
    {
        var phrases = new List<Phrase>();
        var made = PlaceName.AnyStitch;
        foreach (var word in words)
        {
            if (word is Work work) phrases.Add(new BareStitches(work.Stitch, work.Hook, Sized.Of(work.Makes * work.Amount.Count)));
            else if (word is Chains chains) phrases.Add(new ChainSpace(Sized.Of(chains.Count)));
            else if (word is MarkCorner) phrases.Add(new PlaceMarker(made, false));
            made = Markers.LastMade(word is Work { Amount.Times: 0 } one ? one with { Amount = one.Amount with { Times = one.Amount.Count } } : word) ?? made;
        }

        return new PhraseList(phrases);
    }

    /// <summary>A group's words in a place; one kind of stitch alone needs no brackets.</summary>
    public static Phrase InPlace(PhraseList inside, Where where) => inside.Phrases is [BareStitches only]
        ? new StitchesIn(only.Stitch, only.Hook, only.Count, where)
        : new GroupIn(inside, where);

    private bool IsAtEnd => _places.Remaining == 0 && row.LeftAtEnd == 0 && _inRepeat == 0 && !row.IsFirstOfPart;

    private bool PlainAheadIsDone()
    {
        var plan = (ShapedPlan)row.Row.Plan;
        var end = plan.At(row.Row.EndsAt);
        return _places.Remaining <= end.StitchesIn;
    }

    private void Stitches(Work work)
    {
        switch (work.Target.Aim)
        {
            case Aim.Same:
                Phrases.Add(new StitchesIn(work.Stitch, work.Hook, Sized.Of(work.Makes * work.Amount.Times), Same()));
                break;
            case Aim.EachOfKind:
                EachOfKind(work.Target, where => new StitchesIn(work.Stitch, work.Hook, Sized.Of(work.Makes), where));
                break;
            case Aim.NextOfKind:
                _places.Pass(work.Passed);
                if (work.Passed > 0) AtFirst = false;
                NextOfKind(work);
                break;
            case Aim.Last:
                Phrases.Add(new StitchesIn(work.Stitch, work.Hook, Sized.Of(work.Makes), Last()));
                break;
            case Aim.Corner:
                Phrases.Add(new StitchesIn(work.Stitch, work.Hook, Sized.Of(work.Makes), new MarkedPlace(_places.Take(1).Name)));
                break;
            default:
                if (work.Takes > 1) TogetherAll(work);
                else OneByOne(work);
                break;
        }
    }

    private void OneByOne(Work work)
    {
        var left = work.Amount.Times;
        while (left > 0)
        {
            var stretch = _places.Take(left);
            left -= stretch.Count;
            var where = stretch is { Top: null, Added: false } && IsLast(work)
                ? new LastPlaces(Sized.Of(stretch.Count), stretch.Name)
                : WhereOf(stretch, work.Amount, left);
            Phrases.Add(new StitchesIn(work.Stitch, work.Hook, Sized.Of(work.Makes), where));
            AtFirst = false;
        }
    }

    // A number of stitches that ends the row is said to be its last ones; the first ones are called so even then.
    private bool IsLast(Work work) => IsAtEnd && (work.Makes > 1 ? work.Amount.Times == 1 : !AtFirst && work.Amount.Reach == Reach.Fixed);

    private Where WhereOf(PlaceStretch stretch, Amount amount, int leftOfWord)
    {
        if (stretch.Top is { } top) return top;
        if (stretch.Added) return new AddedChains(Sized.Of(stretch.Count));
        if (amount.Reach == Reach.ToCorner && leftOfWord == 0 && _places.At(amount.Count) is { IsCorner: true } corner)
            return new EachToMarked(stretch.Name, PlaceName.Of(corner), Sized.Of(amount.Count));
        var open = amount.Reach is Reach.Across or Reach.Until && _inRepeat == 0 && !row.IsFirstOfPart;
        if (!open) return new NextPlaces(Sized.Of(stretch.Count), stretch.Name, AtFirst);
        // "To last 5 sts" would leave open whether spaces among them are counted.
        if (leftOfWord == 0 && _places.At(0) is { Kind: PlaceKind.Space } space) return new EachToSpace(stretch.Name, PlaceName.Of(space));
        if (_places.AnyFrom(0, IsSpace)) return new NextPlaces(Sized.Of(stretch.Count), stretch.Name, AtFirst);
        var beyond = _places.Remaining + row.LeftAtEnd;
        // Chains before the hook and chains added at the end are both "ch": only a top between them parts them by itself.
        var alike = stretch.Name.HasChains && _places.TopAt(0) is null && _places.HasAddedAhead;
        if (row.LeftAtEnd == 0 && !alike && IsAtEndOfStitches()) return new EachAcross(stretch.Name);
        return !alike && (leftOfWord > 0 || _places.HasAddedAhead)
            ? new NextPlaces(Sized.Of(stretch.Count), stretch.Name, AtFirst)
            : new EachToLast(stretch.Name, Sized.Of(beyond));
    }

    // Nothing is ahead but the chain that stands for the last stitch, and chains added behind it.
    private bool IsAtEndOfStitches()
    {
        if (_places.Remaining == 0) return true;
        var top = _places.TopAt(0) is null ? 0 : 1;
        if (_places.Remaining == top) return true;
        return _places.HasAddedAhead && _places.NameOfFrom(top) == PlaceName.Chain;
    }

    private void TogetherAll(Work work)
    {
        var whole = work.Amount.Times * work.Takes;
        var plain = _places.UntilTop(whole) / work.Takes;
        if (plain > 0) AddTogether(work, plain, null);
        if (plain == work.Amount.Times) return;
        var top = _places.TopAt(work.Takes - 1);
        AddTogether(work, 1, top);
        var rest = work.Amount.Times - plain - 1;
        if (rest > 0) AddTogether(work, rest, null);
    }

    private void AddTogether(Work work, int times, ChainTop? top)
    {
        var places = times * work.Takes;
        var name = _places.NameOf(top is null ? places : places - 1);
        var first = AtFirst;
        _places.Pass(places);
        var at = times > 1 ? TogetherAt.Next : first ? TogetherAt.First : IsAtEnd ? TogetherAt.Last : TogetherAt.Next;
        Phrases.Add(new Together(work.Stitch, work.Hook, work.Takes, Sized.Of(times), name, at, top));
        AtFirst = false;
    }

    private void NextOfKind(Work work)
    {
        if (work.Takes > 1)
        {
            TogetherAll(work);
            return;
        }

        OneByOne(work with { Amount = Amount.Of(work.Amount.Times) });
    }

    // "Across" where nothing of the kind is behind, but the chain that stands for the last stitch, which is told by itself.
    private void EachOfKind(Target target, Func<Where, Phrase> phrase)
    {
        var reach = _places.UpToLast(target.Filter.Has, target.Remain);
        var top = reach == _places.Remaining && reach > 0 ? _places.TopAt(reach - 1) : null;
        var last = _places.Remaining - reach;
        var onlyTop = last == 1 && _places.TopAt(reach) is not null;
        var name = NameOf(target.Filter);
        Where where = last == 0 || onlyTop || !_places.AnyFrom(reach, target.Filter.Has) ? new EachAcross(name)
            : _places.AnyFrom(reach, IsSpace) ? new NextPlaces(Sized.Of(_places.CountOf(target.Filter.Has, reach)), name, AtFirst)
            : new EachToLast(name, Sized.Of(last + row.LeftAtEnd));
        if (top is null || _places.Until(target.Filter.Has) < reach - 1) Phrases.Add(phrase(where));
        _places.Pass(reach);
        if (top is not null) Phrases.Add(phrase(top));
    }

    private static bool IsSpace(Place place) => place.Kind == PlaceKind.Space;

    private PlaceName NameOf(PlaceFilter filter) => filter.Kind switch
    {
        PlaceFilterKind.AnyStitch => PlaceName.AnyStitch,
        PlaceFilterKind.StitchOrSpace => new(PlaceNameKind.StitchAndSpace),
        PlaceFilterKind.OneStitch => new(PlaceNameKind.Stitch, filter.Stitch),
        PlaceFilterKind.SpaceOf => new(PlaceNameKind.Space, null, filter.Chains),
        _ => _places.SpaceName(),
    };

    private void InOnePlace(Group group)
    {
        var inside = Inside(group.Words);
        switch (group.Target.Aim)
        {
            case Aim.Same:
                Phrases.Add(InPlace(inside, Same()));
                return;
            case Aim.EachOfKind:
                EachOfKind(group.Target, where => InPlace(inside, where));
                return;
            case Aim.Last:
                Phrases.Add(InPlace(inside, Last()));
                return;
            case Aim.Corner:
                Phrases.Add(InPlace(inside, new MarkedPlace(_places.Take(1).Name)));
                return;
            default:
                _places.Pass(group.Passed);
                if (group.Passed > 0) AtFirst = false;
                var stretch = _places.Take(1);
                Phrases.Add(InPlace(inside, stretch.Top is { } top ? top : new NextPlaces(Sized.Of(1), stretch.Name, AtFirst)));
                return;
        }
    }

    private Where Same()
    {
        var name = _places.Last is { } place ? PlaceName.Of(place) : PlaceName.AnyStitch;
        return new SamePlace(name);
    }

    private Where Last()
    {
        var stretch = _places.Take(1);
        if (stretch.Top is { } top) return top;
        // The last stitch of a part is not the last that is there.
        return row.IsFirstOfPart ? new NextPlaces(Sized.Of(1), stretch.Name, AtFirst) : new LastPlaces(Sized.Of(1), stretch.Name);
    }

    // Told time by time, but times that meet the same places are told once.
    private void Again(Repeat repeat)
    {
        var outer = Phrases;
        _inRepeat++;
        PhraseList? before = null;
        var times = 0;
        foreach (var way in Leading.Ways(repeat))
        {
            var left = way.Amount.Times;
            while (left > 0)
            {
                var start = _places.Cursor;
                AtFirst = false;
                Phrases = [];
                Tell(way.Words);
                var told = new PhraseList(Phrases);
                var more = Math.Min(left - 1, _places.LikeStepsAhead(start));
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
        if (times == 1) phrases.AddRange(told.Phrases);
        else phrases.Add(new Repeated(told, Sized.Of(times)));
    }
}
