using Turnrow.Fabric.Places;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Telling;

/// <content>Places that are named: each of a kind, one that takes several, the last one.</content>
internal sealed partial class WordTeller
{
    // "Across" where nothing of the kind is behind, but the chain that stands for the last stitch, which is told by itself.
    private void EachOfKind(Target target, Func<Where, Phrase> phrase)
    {
        var takes = target.ToCorner ? _places.ToCorner(target.Remain) : 0;
        if (target.ToCorner && _places.At(takes + target.Remain) is { IsCorner: true } corner && Enumerable.Range(takes, target.Remain).All(at => _places.At(at) is { Kind: not PlaceKind.Space }))
        {
            if (takes > 0) Phrases.Add(phrase(new EachToMarked(NameOf(target.Filter, takes), PlaceName.Of(corner), Sized.Of(target.Remain))));
            _places.Pass(takes);
            return;
        }

        var reach = _places.UpToLast(target.Filter.Has, target.ToCorner ? _places.Remaining - takes : target.Remain);
        // Each stitch of a round is also the chain that it began with.
        var top = !row.Row.IsRound && reach == _places.Remaining && reach > 0 ? _places.TopAt(reach - 1) : null;
        var last = _places.Remaining - reach;
        var onlyTop = last == 1 && _places.TopAt(reach) is not null;
        var name = target.Filter.Special is not null && _places.Until(target.Filter.Has) is var to && _places.At(to) is { } there ? PlaceName.InSpecial(there, target.Filter) : NameOf(target.Filter, reach);
        Where where = last == 0 || onlyTop || !_places.AnyFrom(reach, target.Filter.Has) ? new EachAcross(name, row.Row.IsRound)
            : _places.AnyFrom(reach, IsSpace) ? new NextPlaces(Sized.Of(_places.CountOf(target.Filter.Has, reach)), target.Filter.Kind is PlaceFilterKind.AnyStitch or PlaceFilterKind.StitchOrSpace ? _places.NameOfThose(target.Filter.Has, reach) : name, AtFirst)
            : new EachToLast(name, Sized.Of(last + row.LeftAtEnd));
        if (top is null || _places.Until(target.Filter.Has) < reach - 1) Phrases.Add(phrase(where));
        _places.Pass(reach);
        if (top is not null) Phrases.Add(phrase(top));
        if (target.ToCorner && takes > reach) PassOver(takes - reach);
    }

    private static bool IsSpace(Place place) => place.Kind == PlaceKind.Space;

    // Chains of a bridge or of a foundation are worked into one by one, and a space is not: where some are met, each is called what it is.
    private PlaceName NameOf(PlaceFilter filter, int reach) => filter.Kind switch
    {
        PlaceFilterKind.AnyStitch or PlaceFilterKind.StitchOrSpace when _places.NameOfThose(filter.Has, reach) is { HasChains: true } name => name.OfAnyStitch(),
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
                Phrases.Add(InPlace(inside, Corner()));
                return;
            case Aim.NextOfKind when group.Target.Filter.Kind == PlaceFilterKind.Corner && PassesAlike(group.Passed):
                _places.Pass(group.Passed);
                Phrases.Add(InPlace(inside, new MarkedPlace(_places.Take(1).Name) { IsNext = true }));
                return;
            default:
                _places.Pass(group.Passed);
                if (group.Passed > 0) AtFirst = false;
                if (group.Target.Filter.Special is not null)
                {
                    Phrases.Add(InPlace(inside, InSpecial(group.Target.Filter)));
                    return;
                }

                var stretch = _places.Take(1);
                Phrases.Add(InPlace(inside, stretch.Top is { } top ? top : new NextPlaces(Sized.Of(1), stretch.Name, AtFirst)));
                return;
        }
    }

    // On the way to a corner lie places that are called as it is.
    private bool PassesAlike(int passed)
    {
        if (_places.At(passed) is not { } corner) return false;
        for (var i = 0; i < passed; i++)
        {
            if (_places.At(i) is { } place && PlaceName.Of(place) == PlaceName.Of(corner)) return true;
        }

        return false;
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
}
