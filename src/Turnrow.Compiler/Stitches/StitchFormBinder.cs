using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Stitches;

/// <summary>
/// Reads what a stitch is made of: stitches and chains in one place, or over the next places, some of them passed over and gone back to. It
/// is read once for each number that the stitch can have.
/// </summary>
internal sealed partial class StitchFormBinder(Context context, StitchLines lines)
{
    private const int MostParts = 100;
    private const int MostSteps = 1000;

    private readonly List<StitchPart> _parts = [];
    private readonly List<int> _skipped = [];
    private StitchStatement? _statement;
    private int _at;
    private int _steps;
    private int _last;
    private bool _inOne;
    private Crossing? _crossing;
    private bool _failed;

    /// <summary>The form; null, and reported, if it can't be understood.</summary>
    public StitchForm? Bind(StitchStatement statement)
    {
        _statement = statement;
        var items = statement.Items.ToList();
        var centre = items is [.., CentreItem last] ? last : null;
        if (centre is not null) items.RemoveAt(items.Count - 1);
        if (items is [StitchItem chain, StitchItem { Words: [var turn, var back] }, .. var along] && turn.Text == "turn" && back.Text == "back") return Spur(statement, chain, along);
        var together = items is [TogetherItem];
        if (items is [TogetherItem joined]) items = [joined.What];
        _inOne = items is [GroupItem { Place.Word: PlaceWord.One } or StitchItem { Place.Word: PlaceWord.One }];
        foreach (var item in items) One(item, false);
        if (_failed) return null;
        var takes = _inOne ? 1 : _at;
        if (!_parts.Exists(static p => p.Worked is not null) || takes == 0) return Refuse(StitchUnclear.Nothing(statement));
        if (together && (_parts.Sum(static p => p.Stitch is null ? 0 : p.Count) < 2 || _parts.Exists(static p => p.Worked is null))) return Refuse(StitchUnclear.Together(statement.Span));
        var form = new StitchForm([.. _parts], takes, together) { Crossing = _crossing ?? Crossing.Unsaid };
        return centre is null ? form : WithCentre(form, centre);
    }

    // A chain, and what goes back along it: the first stitch into the chain that its height asks for, and then each chain down to the foot.
    private StitchForm? Spur(StitchStatement statement, StitchItem chain, List<RowItemSyntax> along)
    {
        Stitch(chain, false);
        if (_failed) return null;
        if (_parts is not [{ Stitch: null } stalk]) return Refuse(StitchSpur.NoChain(chain.Span));
        foreach (var item in along) One(item, false);
        if (_failed) return null;
        if (_parts.Find(static p => p.Worked is not null).Worked is not { } first) return Refuse(StitchUnclear.Nothing(statement));
        if (_parts.FindIndex(1, static p => p.Stitch is null) > 0) return Refuse(StitchSpur.ChainAlong(statement.Span));
        var there = stalk.Count - first.Height;
        return _at == there ? new StitchForm([.. _parts], 0, true) : Refuse(StitchSpur.At(context, along[0].Span.To(along[^1].Span), first, stalk.Count, there, _at));
    }

    private StitchForm? Refuse(Turnrow.Syntax.Diagnostics.Diagnostic diagnostic)
    {
        if (!_failed) context.Findings.Add(diagnostic);
        _failed = true;
        return null;
    }

    private StitchForm? WithCentre(StitchForm form, CentreItem centre)
    {
        if (form.Together) return Refuse(StitchUnclear.CentreOfOne(centre.Span));
        if (new PlaceBinder(context).KindOf(centre.Which.Kind) is not { } kind) return Fail();
        var seen = 0;
        var at = 0;
        foreach (var part in form.Parts)
        {
            for (var i = 0; i < part.Makes; i++, at++)
            {
                if (part.Stitch == kind.Stitch && ++seen == centre.Which.Nth.Numerator) return form with { Centre = at };
            }
        }

        return Refuse(StitchPlace.CentreMissing(centre.Which.Span, seen));
    }

    private StitchForm? Fail()
    {
        _failed = true;
        return null;
    }

    private void One(RowItemSyntax item, bool inGroup)
    {
        if (_failed) return;
        if (_parts.Count > MostParts || _at > MostParts || ++_steps > MostSteps) Refuse(StitchUnclear.TooLong(item.Span, MostParts));
        else if (item is SkipItem skip && !inGroup) Skip(skip);
        else if (item is GroupItem { Times: null, Place: { } place } group && !inGroup) Group(group, place);
        else if (item is GroupItem { Times: null, Place: null } bare && !inGroup && !_inOne) foreach (var inside in bare.Items) One(inside, false);
        else if (item is GroupItem { Times: CountAmount times, Place: null } repeat) Again(repeat, times, inGroup);
        else if (item is StitchItem { Change: null } stitch) Stitch(stitch, inGroup);
        else Refuse(StitchUnclear.Of(item));
    }

    // A repeat is laid out: its stitches are parts as all others are.
    private void Again(GroupItem repeat, CountAmount times, bool inGroup)
    {
        if (Count(times.Count, 0) is not { } count) return;
        for (var i = 0; i < count; i++)
        {
            foreach (var inside in repeat.Items) One(inside, inGroup);
        }
    }

    private void Skip(SkipItem skip)
    {
        if (Count(skip.Count, 0) is not { } count) return;
        for (var i = 0; i < count; i++) _skipped.Add(_at++);
    }

    private void Group(GroupItem group, PlaceSyntax place)
    {
        if (PlaceOf(place) is not { } at) return;
        foreach (var inside in group.Items)
        {
            _last = at;
            One(inside, true);
        }
    }

    private void Stitch(StitchItem item, bool inGroup)
    {
        if (Read(item) is not { } read) return;
        if (read.NumberIsAmount) item = item with { Amount = null };
        if (read.Stitch == StitchBook.Chain)
        {
            if (item.Place is not null || item.Before is not null) Refuse(ChainPlace.At(item));
            else if (CountOf(item, read.Behind) is { } chains) AddChains(chains);
            return;
        }

        var takes = read.Stitch.Takes;
        if (takes == 0) Knot(item, read);
        else if (takes > 1 && (inGroup || _inOne)) Refuse(StitchInside.Wide(item.Span, read.Stitch.Id, takes));
        else if (inGroup) InPlace(item, read, _last, read.Together);
        else if (item.Place is { } place && (takes == 1 || place is not { Word: PlaceWord.Next, Kind.Count: 0 })) AtPlace(item, place, read);
        else InNext(item with { Place = null }, read);
    }

    // Chains beside chains are one space, wherever a repeat or another stitch ends between them.
    private void AddChains(int chains)
    {
        if (_parts is [.., { Stitch: null } before]) _parts[^1] = before with { Count = before.Count + chains };
        else _parts.Add(new StitchPart(null, HookInto.BothLoops, chains, 0));
    }

    private void Knot(StitchItem item, StitchRead read)
    {
        if (item.Place is not null || item.Before is not null || read.Before is not null) Refuse(StitchHere.Place(item.Span, read.Stitch.Id, 0));
        else if (_parts.Count == 0) Refuse(StitchInside.OnNothing(item.Span, read.Stitch.Id));
        else if (CountOf(item, read.Behind) is { } count) _parts.Add(new StitchPart(read.Stitch, HookInto.BothLoops, count, 0));
    }

    private void AtPlace(StitchItem item, PlaceSyntax place, StitchRead read)
    {
        if (read.Stitch.Takes > 1)
        {
            Refuse(StitchHere.Place(item.Span, read.Stitch.Id, read.Stitch.Takes));
            return;
        }

        var each = item.Amount is null && read.Behind is null ? 1 : CountOf(item, read.Behind);
        for (var i = 0; i < each && !_failed; i++)
        {
            if (PlaceOf(place) is { } at) InPlace(item with { Amount = null }, read with { Behind = null }, at, read.Together);
        }
    }

    private void InNext(StitchItem item, StitchRead read)
    {
        if (item.Before is not null || read.Before is not null)
        {
            Refuse(StitchUnclear.Number(item.Span));
            return;
        }

        var each = CountOf(item, read.Behind);
        for (var i = 0; i < each; i++)
        {
            InPlace(item with { Amount = null }, read with { Behind = null }, _at, read.Together);
            _at += read.Stitch.Takes;
        }
    }

    private void InPlace(StitchItem item, StitchRead read, int place, int together)
    {
        if (item.Amount is not null || read.Behind is not null || together > 1)
        {
            Refuse(StitchUnclear.At(item.Span));
            return;
        }

        var count = item.Before is { } said ? Count(said, 1) : read.Before is { } name ? Count(new NameExpression(name, name.Span), 1) : 1;
        if (count is not { } n) return;
        _last = place;
        if (read.Stitch.IsOne) _parts.Add(new StitchPart(read.Stitch, read.Hook, n, place));
        else for (var i = 0; i < n && _parts.Count <= MostParts; i++) AddPartsOf(item, read, place);
    }

    // Another special stitch is what it is made of, over the places that it takes.
    private void AddPartsOf(StitchItem item, StitchRead read, int place)
    {
        if (read.Stitch.Form!.GoesBack) Cross(read.Stitch.Form.Crossing, item.Span);
        foreach (var part in read.Stitch.Form!.Parts)
        {
            if (part.Stitch is null) AddChains(part.Count);
            else if (part.IsKnot) _parts.Add(part);
            else _parts.Add(part with { Place = _last = place + part.Place, Hook = part.Hook == HookInto.BothLoops ? read.Hook : part.Hook });
        }
    }

    private int? PlaceOf(PlaceSyntax place)
    {
        if (place.Kind.Count > 0 || place.AndKind.Count > 0) return Wrong(StitchUnclear.Place(place.Span));
        switch (place.Word)
        {
            case PlaceWord.One when _inOne:
                return 0;
            case PlaceWord.Next when !_inOne:
                return _at++;
            case PlaceWord.Same when _parts.Count > 0:
                return _last;
            case PlaceWord.Skipped:
                if (_skipped.Count == 0) return Wrong(StitchUnclear.NothingSkipped(place.Span));
                Cross(place.Crossing switch { CrossingWord.InFront => Crossing.InFront, CrossingWord.Behind => Crossing.Behind, _ => Crossing.Unsaid }, place.Span);
                var at = _skipped[0];
                _skipped.RemoveAt(0);
                return at;
            default:
                return Wrong(StitchUnclear.Place(place.Span));
        }
    }

    // One stitch crosses in one way.
    private void Cross(Crossing crossing, TextSpan span)
    {
        if (_crossing is { } before && before != crossing) Refuse(StitchUnclear.Crossings(span));
        _crossing = crossing;
    }

    private int? Wrong(Turnrow.Syntax.Diagnostics.Diagnostic diagnostic)
    {
        Refuse(diagnostic);
        return null;
    }

    private int? CountOf(StitchItem item, NameSyntax? behind)
    {
        if (behind is not null) return Count(new NameExpression(behind, behind.Span), 1);
        if (item.Amount is null) return 1;
        if (item.Amount is CountAmount count) return Count(count.Count, 1);
        return Wrong(StitchUnclear.At(item.Amount.Span));
    }

    // A number, which is the same in all sizes.
    private int? Count(ExpressionSyntax? expression, int least)
    {
        if (expression is null) return 1;
        var counts = context.Evaluate.Counts(expression, least);
        if (Array.TrueForAll(counts, c => c == counts[0]) && counts[0] is { } count && count <= MostParts) return count;
        if (!Array.Exists(counts, static c => c is null)) return Wrong(counts[0] > MostParts ? StitchUnclear.TooLong(expression.Span, MostParts) : StitchUnclear.Sizes(expression.Span));
        _failed = true;
        return null;
    }
}
