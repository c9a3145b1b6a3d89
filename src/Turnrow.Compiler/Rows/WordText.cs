using System.Globalization;
using Turnrow.Fabric.Words;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Rows;

/// <summary>Words of a row as the notation writes them, with their numbers, for ledgers and messages.</summary>
internal sealed class WordText(Context context)
{
    private const int MostWords = 8;

    public string Of(Word word) => word switch
    {
        Work work => OfWork(work),
        Group group => $"({OfList(group.Words)}) {PlaceText(group.Target)}" + (group.Times > 1 ? $", {Number(group.Times)} of them" : string.Empty),
        Chains chains => $"ch {Number(chains.Count)}",
        ChangeYarn change => $"with {change.Yarn}",
        MarkCorner => "mark corner",
        RemoveCorners => "remove corners",
        MarkerHere => "move marker",
        Skip skip => $"skip {Number(skip.Count)}",
        SlipOver slip => $"slip over {Number(slip.Count)}",
        Leave { Count: < 0 } rest => "leave the rest" + ForLater(rest),
        Leave leave => $"leave {Number(leave.Count)}" + ForLater(leave),
        Hold hold => $"hold {Number(hold.Count)} for {hold.Name}",
        Bridge bridge => $"bridge {Number(bridge.Count)}" + (bridge.Name is { } name ? $" for {name}" : string.Empty),
        Repeat repeat => $"({OfList(repeat.Words)}) {Times(repeat)}",
        Spread spread => OfSpread(spread),
        ByPlace each => $"{OfWork(each.InStitch with { Target = each.InStitch.Target with { Aim = Aim.EachOfKind } })} and {OfWork(each.InSpace with { Target = each.InSpace.Target with { Aim = Aim.EachOfKind, Remain = each.Remain, ToCorner = each.ToCorner } })}",
        _ => string.Empty,
    };

    private static string ForLater(Leave leave) => leave.ForLater ? " for later" : string.Empty;

    /// <summary>The kind of place that a word goes to: "space", "ch-3 space", "dc".</summary>
    public string PlaceOf(Word word)
    {
        var filter = word switch
        {
            Work work => work.Target.Filter,
            Group group => group.Target.Filter,
            _ => PlaceFilter.AnyStitch,
        };
        return filter.Kind switch
        {
            PlaceFilterKind.AnySpace => "space",
            PlaceFilterKind.SpaceOf => $"ch-{Number(filter.Chains)} space",
            PlaceFilterKind.OneStitch when filter.Stitch is { } stitch => context.Word(stitch),
            PlaceFilterKind.StitchOrSpace => "stitch or space",
            PlaceFilterKind.CentreOf => filter.Special!.Id,
            PlaceFilterKind.NthOf => NthText(filter),
            PlaceFilterKind.Corner => "corner",
            _ => "stitch",
        };
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    // To the end of the row, in the word that the line has for it.
    private static string ToEnd(Word word) =>
        word.Origin.Value is GroupItem { Times: AcrossAmount { Around: true } } or StitchItem { Amount: AcrossAmount { Around: true } } ? "around" : "across";

    private static string Times(Repeat repeat) => repeat.Amount.Reach switch
    {
        Reach.Across when repeat.Amount.Times == 0 => ToEnd(repeat),
        Reach.Until when repeat.Amount.Times == 0 => $"until {Number(repeat.Amount.Count)} remain",
        Reach.ToCorner => ReachText(repeat.Amount, "corner"),
        Reach.ToTurn => ReachText(repeat.Amount, "turn"),
        _ => $"{Number(repeat.Amount.Times)} times",
    };

    private static string Count(Word word, Amount amount) => amount.Reach switch
    {
        Reach.Across when amount.Times == 0 => $" {ToEnd(word)}",
        Reach.Until when amount.Times == 0 => $" until {Number(amount.Count)} remain",
        Reach.ToCorner => " " + ReachText(amount, "corner"),
        Reach.ToTurn => " " + ReachText(amount, "turn"),
        _ => amount.Times == 1 ? string.Empty : " " + Number(amount.Times),
    };

    private static string ReachText(Amount amount, string to) =>
        amount.Count == 0 ? $"to {to}" : $"until {Number(amount.Count)} {(amount.Count == 1 ? "remains" : "remain")} before {to}";

    private string PlaceText(Target target) => target.Aim switch
    {
        Aim.First => "in first",
        Aim.Last => "in last",
        Aim.Same => "in same",
        Aim.Corner => "in corner",
        Aim.Ring => "in ring",
        Aim.EachOfKind when target.ToCorner => $"in each {FilterText(target.Filter)} {ReachText(Amount.ToCorner(target.Remain), "corner")}",
        Aim.EachOfKind => "in each " + FilterText(target.Filter) + (target.Remain > 0 ? $" until {Number(target.Remain)} remain" : string.Empty),
        Aim.NextOfKind when target.Filter.Kind == PlaceFilterKind.NthOf => $"in {NthText(target.Filter)} of next {target.Filter.Special!.Id}",
        Aim.NextOfKind => "in next " + FilterText(target.Filter),
        _ => "in next",
    };

    private string FilterText(PlaceFilter filter) => filter.Kind switch
    {
        PlaceFilterKind.AnySpace => "sp",
        PlaceFilterKind.StitchOrSpace => "st and sp",
        PlaceFilterKind.CentreOf => filter.Special!.Id,
        PlaceFilterKind.SpaceOf => $"ch-{Number(filter.Chains)} sp",
        PlaceFilterKind.OneStitch when filter.Stitch is { } stitch => context.Word(stitch),
        PlaceFilterKind.Corner => "corner",
        _ => "st",
    };

    /// <summary>The edge that a stitch joins to: "the right edge of front".</summary>
    public static string EdgeOf(Fabric.Joins.JoinSide side) => side switch
    {
        { Hand: { } hand } => $"the {(hand == Fabric.Rows.Hand.Right ? "right" : "left")} edge of {side.Piece.Name}",
        { Stretches: [{ Kind: Fabric.Pieces.StretchKind.Side, Name: { } name }] } => $"the {name} of {side.Piece.Name}",
        { Stretches: [{ Kind: Fabric.Pieces.StretchKind.Foundation }] } => $"the foundation of {side.Piece.Name}",
        _ => $"the last {(side.Piece.EndsInRounds ? "round" : "row")} of {side.Piece.Name}",
    };

    private string OfJoin(Work work, JoinTo to)
    {
        var with = work.Stitch == Fabric.Stitches.StitchBook.Slip ? string.Empty : $"with {context.Word(work.Stitch)} ";
        var place = to.Target is { Aim: Aim.Next, Filter.Kind: PlaceFilterKind.StitchOrSpace } ? string.Empty : $" {PlaceText(to.Target)}";
        return $"join {(to.Skipped > 0 ? $"skipping {Number(to.Skipped)} " : string.Empty)}{with}to {to.Edge.Side.Piece.Name}{place}";
    }

    private string OfWork(Work work)
    {
        if (work.To is { } to) return OfJoin(work, to);
        if (work.Stitch.Form is not null) return OfSpecial(work);
        var stitch = HookText(work.Hook) + context.Word(work.Stitch);
        var several = work.Makes > 1 || work.Target.Aim != Aim.Next;
        if (work.Takes == 2) return $"{stitch} dec{Count(work, work.Amount)}";
        if (work.Takes > 2) return $"{stitch}{Number(work.Takes)}tog{Count(work, work.Amount)}";
        if (work.Makes == 2 && work.Target.Aim == Aim.Next) return $"{stitch} inc{Count(work, work.Amount)}";
        if (!several) return stitch + Count(work, work.Amount);
        var number = work.Makes > 1 ? Number(work.Makes) + " " : string.Empty;
        return number + stitch + " " + PlaceText(work.Target);
    }

    private string NthText(PlaceFilter filter) => $"{Nth(filter.Chains)} {(filter.Stitch is { } stitch ? context.Word(stitch) : "sp")}";

    private static string Nth(int number) => Number(number) + (number % 100 is >= 11 and <= 13 ? "th" : (number % 10) switch { 1 => "st", 2 => "nd", 3 => "rd", _ => "th" });

    // As the designer writes it: her own name, and not the one that print has.
    private string OfSpecial(Work work)
    {
        var number = work.Makes > 1 ? Number(work.Makes) + " " : string.Empty;
        var place = work.Makes > 1 || work.Target.Aim != Aim.Next ? " " + PlaceText(work.Target) : Count(work, work.Amount);
        return number + HookText(work.Hook) + work.Stitch.Id + place;
    }

    private string OfSpread(Spread spread)
    {
        if (spread is { Words: [Work { Takes: 1, Makes: 2 } or Work { Takes: 2, Makes: 1 }], Over.Reach: Reach.Across, AtEachEnd: null })
            return $"{HookText(spread.Hook)}{context.Word(spread.Stitch)} {(spread.Words is [Work { Makes: 2 }] ? "inc" : "dec")} {Number(spread.Times)} evenly";
        var ends = spread.AtEachEnd is { } end ? $", {Number(end)} at each end" : string.Empty;
        return $"{HookText(spread.Hook)}{context.Word(spread.Stitch)}{Count(spread, spread.Over)} with ({OfList(spread.Words)}) {Number(spread.Times)} times evenly{ends}";
    }

    private static string HookText(HookInto hook) => hook switch
    {
        HookInto.BackLoop => "back-loop ",
        HookInto.FrontLoop => "front-loop ",
        HookInto.FrontPost => "front-post ",
        HookInto.BackPost => "back-post ",
        HookInto.OneDown => "spike ",
        HookInto.TwoDown => "spike-2 ",
        HookInto.ThreeDown => "spike-3 ",
        _ => string.Empty,
    };

    public string OfList(IReadOnlyList<Word> words)
    {
        var text = string.Join(", ", words.Take(MostWords).Select(Of));
        return words.Count > MostWords ? text + ", …" : text;
    }
}
