using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Telling;

/// <content>Stitches: one by one and together, and where each goes.</content>
internal sealed partial class WordTeller
{
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
            case Aim.NextOfKind when work.Target.Filter.Kind == PlaceFilterKind.Corner && PassesAlike(work.Passed):
                _places.Pass(work.Passed);
                Phrases.Add(new StitchesIn(work.Stitch, work.Hook, Sized.Of(work.Makes), new MarkedPlace(_places.Take(1).Name) { IsNext = true }));
                break;
            case Aim.NextOfKind:
                _places.Pass(work.Passed);
                if (work.Passed > 0) AtFirst = false;
                NextOfKind(work);
                break;
            case Aim.Last:
                Phrases.Add(new StitchesIn(work.Stitch, work.Hook, Sized.Of(work.Makes), Last()));
                break;
            case Aim.Ring:
                Phrases.Add(new StitchesIn(work.Stitch, work.Hook, Sized.Of(work.Makes), new InRing()));
                break;
            case Aim.Corner:
                Phrases.Add(new StitchesIn(work.Stitch, work.Hook, Sized.Of(work.Makes), Corner()));
                break;
            case Aim.Next when work.Takes == 0:
                Phrases.Add(new BareStitches(work.Stitch, work.Hook, Sized.Of(work.Makes * work.Amount.Times)));
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
            AtOtherGround();
            var stretch = _places.Take(Math.Min(left, ToOtherGround));
            left -= stretch.Count;
            var where = stretch is { Top: null, Added: false, Waited: false } && IsLast(work)
                ? new LastPlaces(Sized.Of(stretch.Count), stretch.Name)
                : WhereOf(stretch, work.Amount, left);
            AddOneByOne(new StitchesIn(work.Stitch, work.Hook, Sized.Of(work.Makes), where));
            AtFirst = false;
        }
    }

    // The same stitch in more places of the same name goes on where the one before stopped: the maker counts once.
    private void AddOneByOne(StitchesIn stitches)
    {
        if (stitches is { Where: NextPlaces { FromFirst: false } next } && Phrases.Count > 0 && Phrases[^1] is StitchesIn { Shaping: null, Where: NextPlaces before } last
            && last with { Where = next } == stitches && before.Place == next.Place)
        {
            Phrases[^1] = last with { Where = before with { Count = Sized.Of(before.Count.First + next.Count.First) } };
            return;
        }

        Phrases.Add(stitches);
    }

    // A number of stitches that ends the row is said to be its last ones; the first ones are called so even then.
    private bool IsLast(Work work) => IsAtEnd && (work.Makes > 1 ? work.Amount.Times == 1 : !AtFirst && work.Amount.Reach == Reach.Fixed);

    private Where WhereOf(PlaceStretch stretch, Amount amount, int leftOfWord)
    {
        if (stretch.Top is { } top) return top;
        if (stretch.Waited) return new LeftBefore(Sized.Of(stretch.Count), stretch.Name, IsAllLeftBefore(stretch.Count));
        if (stretch.Added) return new AddedChains(Sized.Of(stretch.Count));
        if (_places.Passed <= row.ChainsBefore || (row.Row.Begins == RowBegins.BothSides && _places.Remaining > 0)) return new NextPlaces(Sized.Of(stretch.Count), stretch.Name, AtFirst);
        if (amount.Reach == Reach.ToCorner && leftOfWord == 0 && _places.At(amount.Count) is { IsCorner: true } corner)
            return new EachToMarked(stretch.Name, PlaceName.Of(corner), Sized.Of(amount.Count));
        if (amount.Reach == Reach.ToTurn && leftOfWord == 0 && _places.HasTurnAhead && _places.RemainingToTurn == amount.Count)
            return new EachToTurn(stretch.Name) { Before = Sized.Of(amount.Count) };
        var open = (amount.Reach is Reach.Across or Reach.Until && _inRepeat == 0 && !row.IsFirstOfPart)
            || (amount is { Reach: Reach.ToCorner, Count: 0 } && leftOfWord == 0 && _places.Remaining == 0);
        if (!open) return new NextPlaces(Sized.Of(stretch.Count), stretch.Name, AtFirst);
        if (_places.HasTurnAhead) return BeforeTurn(stretch);
        // "To last 5 sts" would leave open whether spaces among them are counted.
        if (leftOfWord == 0 && _places.At(0) is { Kind: PlaceKind.Space } space) return new EachToSpace(stretch.Name, PlaceName.Of(space));
        if (_places.AnyFrom(0, IsSpace)) return new NextPlaces(Sized.Of(stretch.Count), stretch.Name, AtFirst);
        var beyond = _places.Remaining + row.LeftAtEnd;
        // Chains before the hook and chains added at the end are both "ch": only a top between them parts them by itself.
        var alike = stretch.Name.HasChains && _places.TopAt(0) is null && _places.HasAddedAhead;
        // "Each st around" takes in the chain that the round below began with.
        if (stretch.Name == PlaceName.AnyStitch && _places.TopAt(0) is { OfRound: true }) return new NextPlaces(Sized.Of(stretch.Count), stretch.Name, AtFirst);
        if (row.LeftAtEnd == 0 && !alike && IsAtEndOfStitches()) return new EachAcross(stretch.Name, row.Row.IsRound);
        return !alike && (leftOfWord > 0 || _places.HasAddedAhead)
            ? new NextPlaces(Sized.Of(stretch.Count), stretch.Name, AtFirst)
            : new EachToLast(stretch.Name, Sized.Of(beyond));
    }

    // All that the row before made, but for the chain that stands for its last stitch; else so many of it.
    private Where BeforeTurn(PlaceStretch stretch)
    {
        var toTurn = _places.RemainingToTurn;
        return toTurn == 0 || (toTurn == 1 && _places.TopAt(0) is not null)
            ? new EachToTurn(stretch.Name)
            : new NextPlaces(Sized.Of(stretch.Count), stretch.Name, AtFirst);
    }

    // So many were just passed: all that wait, but for the chain that stands for the last of them.
    private bool IsAllLeftBefore(int count)
    {
        if (row.Row.Short.Waiting > 0) return false;
        var behind = _places.Remaining == 1 && _places.TopAt(0) is not null ? 1 : _places.Remaining;
        return behind <= 1 && count + behind == row.Row.Short.Taken;
    }

    // Nothing is ahead but the chain that stands for the last stitch, and chains added behind it.
    private bool IsAtEndOfStitches()
    {
        if (_places.Remaining == 0) return true;
        var top = _places.TopAt(0) is null ? 0 : 1;
        if (_places.Remaining == top) return true;
        return _places.HasAddedAhead && _places.NameOfFrom(top) == PlaceName.Chain;
    }

    // The place ahead by what it is in its special stitch.
    private NextPlaces InSpecial(PlaceFilter filter)
    {
        var name = PlaceName.InSpecial(_places.At(0)!.Value, filter);
        _places.Pass(1);
        AtFirst = false;
        return new NextPlaces(Sized.Of(1), name, false);
    }

    private void TogetherAll(Work work)
    {
        // Those before the turn below, the one that goes across it, and those behind it are told apart.
        var (takes, times, before) = (work.Takes, work.Amount.Times, _places.HasTurnAhead ? _places.RemainingToTurn : 0);
        if (before > 0 && before < times * takes && times > 1)
        {
            var here = before / takes > 0 ? before / takes : 1;
            TogetherAll(work with { Amount = Amount.Of(here) });
            TogetherAll(work with { Amount = Amount.Of(times - here) });
            return;
        }

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
        // In a spiral the first of them may be the chain that the round below began with: a stitch of no kind.
        var name = top is null && _places.TopAt(0) is not null ? PlaceName.AnyStitch : _places.NameOf(top is null ? places : places - 1);
        var first = AtFirst;
        var before = _places.HasTurnAhead && _places.RemainingToTurn is var toTurn && toTurn < places ? toTurn : 0;
        _places.Pass(places);
        var at = times > 1 ? TogetherAt.Next : first ? TogetherAt.First : IsAtEnd ? TogetherAt.Last : TogetherAt.Next;
        Phrases.Add(new Together(work.Stitch, work.Hook, work.Takes, Sized.Of(times), name, at, top) { BeforeTurn = before });
        AtFirst = false;
    }

    private void NextOfKind(Work work)
    {
        if (work.Target.Filter.Special is not null)
        {
            Phrases.Add(new StitchesIn(work.Stitch, work.Hook, Sized.Of(work.Makes), InSpecial(work.Target.Filter)));
            return;
        }

        if (work.Takes > 1)
        {
            TogetherAll(work);
            return;
        }

        OneByOne(work with { Amount = Amount.Of(work.Amount.Times) });
    }
}
