using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Instructions.Phrases;
using Turnrow.Publishing.Trade;

namespace Turnrow.Publishing.Instructions.Telling;

/// <summary>Tells the words of a row in order, by the places that they meet.</summary>
internal sealed partial class WordTeller(RowContext row)
{
    private readonly RowPlaces _places = row.Places;
    private int _inRepeat;
    private bool _startShaped;
    private int _skipsShaped;
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
        if (word is not (MarkCorner or RemoveCorners or Completed or Repeat or Work { Amount.Times: 0 } or Group { Times: 0 })) AtOtherGround();
        switch (word)
        {
            // The row's chain stands for all that there was of the kind: what is left before the corner is passed.
            case Work { Amount.Times: 0, Target: { ToCorner: true } to }:
                PassOverTo(to);
                return;
            case Group { Times: 0, Target: { ToCorner: true } to }:
                PassOverTo(to);
                return;
            case Work { Amount.Times: 0 } or Group { Times: 0 } or Repeat { Amount.Times: 0 }:
                return;
            case RemoveCorners:
                return;
            case Completed done:
                if (Phrases.Count > 0) Phrases[^1] = Phrases[^1] with { Completes = done.Special };
                return;
            case ChangeYarn change:
                if (row.ChangesYarn) Phrases.Add(new WithYarn(change.Yarn));
                return;
            case Work { To: { } to } work:
                var joins = JoinPhrases.Of(work, to);
                if (Phrases is [.., IntoOther before] && before.Then(joins) is { } both) Phrases[^1] = both;
                else Phrases.Add(joins);
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
            case Hold hold:
                Phrases.Add(new HoldPlaces(Sized.Of(hold.Count), _places.NameOfPassed(hold.Count), hold.Name, AtFirst));
                _places.Pass(hold.Count);
                break;
            case Bridge bridge:
                Phrases.Add(new BridgeOver(Sized.Of(bridge.Count), bridge.Name));
                return;
            case Skip { IsUnsaid: true } rest when rest.Count == _places.Remaining && rest.Count >= row.Work.BegunAt:
                _places.Pass(rest.Count);
                return;
            case Skip { Count: > 0 } skip:
                PassOver(skip.Count);
                ShapeSkipped(Phrases.Count - 1);
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
        if (Markers.Moved(word) is { } moved) Phrases.Add(moved is MoveMarker move ? move with { IsNew = row.Row.Begins == RowBegins.BothSides } : moved);
    }

    /// <summary>Passes places over, in words.</summary>
    public void PassOver(int count)
    {
        if (count == 1 && _places.TopAt(0) is { } top && !AtFirst)
        {
            Phrases.Add(new SkipChainTop(top));
        }
        else if (Phrases.Count > 0 && Phrases[^1] is SkipPlaces { Completes: null } before && before.Place.IsSpace == _places.NameOf(count).IsSpace)
        {
            Phrases[^1] = before with { Count = Sized.Of(before.Count.First + count), Place = before.Place.With(_places.NameOfPassed(count)) };
        }
        else
        {
            Phrases.Add(new SkipPlaces(Sized.Of(count), _places.NameOfPassed(count), AtFirst));
        }

        _places.Pass(count);
        AtFirst = false;
    }

    private void PassOverTo(Target toCorner)
    {
        if (_places.ToCorner(toCorner.Remain) is > 0 and var over) PassOver(over);
    }

    /// <summary>Says at the last phrase that it shapes an edge, if the word does so by the row's plan.</summary>
    public void Shape(Work work)
    {
        if (row.Row.Plan is not ShapedPlan plan || work is { Makes: 1, Takes: 1 } || Phrases.Count == 0) return;
        if (EdgeOf(plan) is not { } hand) return;
        Phrases[^1] = Phrases[^1] with { Shaping = new EdgeShaping(Sized.Of(plan.At(hand).Change), row.EdgeName(hand)) };
    }

    /// <summary>Says at a phrase that what it passes over is a decrease, if it is one by the row's plan.</summary>
    public void ShapeSkipped(int phrase)
    {
        if (phrase < 0 || row.Row.Plan is not ShapedPlan plan) return;
        // The first of them are those of the edge where the row starts.
        var atStart = plan.At(row.Row.StartsAt) is { Skips: true, Change: < 0 and var change } ? -change : 0;
        var hand = _skipsShaped++ < atStart ? row.Row.StartsAt : row.Row.EndsAt;
        if (plan.At(hand) is not { Skips: true, Change: < 0 }) return;
        Phrases[phrase] = Phrases[phrase] with { Shaping = new EdgeShaping(Sized.Of(-1), row.EdgeName(hand)) };
    }

    /// <summary>The words of a group as phrases.</summary>
    public static PhraseList Inside(IEnumerable<Word> words)
    {
        var phrases = new List<Phrase>();
        var made = PlaceName.AnyStitch;
        foreach (var word in words)
        {
            if (word is Work { To: { } to } joins) phrases.Add(JoinPhrases.Of(joins, to));
            else if (word is Work work) AddBare(phrases, work);
            else if (word is Chains chains) phrases.Add(new ChainSpace(Sized.Of(chains.Count)));
            else if (word is MarkCorner) phrases.Add(new PlaceMarker(made, false));
            made = Markers.LastMade(word) ?? made;
        }

        return new PhraseList(SamePhrases.Folded(phrases));
    }

    // Two words of one stitch, as a mirror has them on both sides of what was a middle, are one.
    private static void AddBare(List<Phrase> phrases, Work work)
    {
        var made = work.Makes * work.Amount.Count;
        if (phrases is [.., BareStitches last] && last.Stitch == work.Stitch && last.Hook == work.Hook) phrases[^1] = last with { Count = Sized.Of(last.Count.First + made) };
        else phrases.Add(new BareStitches(work.Stitch, work.Hook, Sized.Of(made)));
    }

    /// <summary>A group's words in a place; one kind of stitch alone needs no brackets.</summary>
    public static Phrase InPlace(PhraseList inside, Where where) => inside.Phrases is [BareStitches only]
        ? new StitchesIn(only.Stitch, only.Hook, only.Count, where)
        : new GroupIn(inside, where);

    private bool IsAtEnd => _places.Remaining == 0 && row.LeftAtEnd == 0 && _inRepeat == 0 && !row.IsFirstOfPart && !row.BeginsFurtherOn;

    // A shaped row changes at its start first, then at its end, and what is spread lies between: what is ahead tells which it is.
    private Hand? EdgeOf(ShapedPlan plan)
    {
        var (start, end) = (row.Row.StartsAt, row.Row.EndsAt);
        var atEnd = plan.At(end).Change != 0 && PlainAheadIsDone();
        var atStart = plan.At(start).Change != 0 && !atEnd && (plan.Evenly.Change == 0 || !_startShaped);
        _startShaped = true;
        return atStart ? start : plan.At(end).Change != 0 && (atEnd || plan.Evenly.Change == 0) ? end : null;
    }

    private bool PlainAheadIsDone()
    {
        var plan = (ShapedPlan)row.Row.Plan;
        var end = plan.At(row.Row.EndsAt);
        return _places.Remaining <= end.StitchesIn;
    }
}
