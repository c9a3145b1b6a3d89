using System.Globalization;
using Turnrow.Fabric.Words;

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
        MarkCorner => "mark corner",
        RemoveCorners => "remove corners",
        Skip skip => $"skip {Number(skip.Count)}",
        SlipOver slip => $"slip over {Number(slip.Count)}",
        Leave { Count: < 0 } rest => "leave the rest" + ForLater(rest),
        Leave leave => $"leave {Number(leave.Count)}" + ForLater(leave),
        Hold hold => $"hold {Number(hold.Count)} for {hold.Name}",
        Bridge bridge => $"bridge {Number(bridge.Count)}" + (bridge.Name is { } name ? $" for {name}" : string.Empty),
        Repeat repeat => $"({OfList(repeat.Words)}) {Times(repeat.Amount)}",
        Spread spread => OfSpread(spread),
        ByPlace each => $"{context.Word(each.InStitch.Stitch)} in each st and {OfWork(each.InSpace with { Target = each.InSpace.Target with { Aim = Aim.EachOfKind, Remain = each.Remain } })}",
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
            PlaceFilterKind.Corner => "corner",
            _ => "stitch",
        };
    }

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Times(Amount amount) => amount.Reach switch
    {
        Reach.Across when amount.Times == 0 => "across",
        Reach.Until when amount.Times == 0 => $"until {Number(amount.Count)} remain",
        Reach.ToCorner => CornerText(amount),
        _ => $"{Number(amount.Times)} times",
    };

    private static string Count(Amount amount) => amount.Reach switch
    {
        Reach.Across when amount.Times == 0 => " across",
        Reach.Until when amount.Times == 0 => $" until {Number(amount.Count)} remain",
        Reach.ToCorner => " " + CornerText(amount),
        _ => amount.Times == 1 ? string.Empty : " " + Number(amount.Times),
    };

    private static string CornerText(Amount amount) =>
        amount.Count == 0 ? "to corner" : $"until {Number(amount.Count)} remain before corner";

    private string PlaceText(Target target) => target.Aim switch
    {
        Aim.First => "in first",
        Aim.Last => "in last",
        Aim.Same => "in same",
        Aim.Corner => "in corner",
        Aim.Ring => "in ring",
        Aim.EachOfKind => "in each " + FilterText(target.Filter) + (target.Remain > 0 ? $" until {Number(target.Remain)} remain" : string.Empty),
        Aim.NextOfKind => "in next " + FilterText(target.Filter),
        _ => "in next",
    };

    private string FilterText(PlaceFilter filter) => filter.Kind switch
    {
        PlaceFilterKind.AnySpace => "sp",
        PlaceFilterKind.StitchOrSpace => "st and sp",
        PlaceFilterKind.SpaceOf => $"ch-{Number(filter.Chains)} sp",
        PlaceFilterKind.OneStitch when filter.Stitch is { } stitch => context.Word(stitch),
        PlaceFilterKind.Corner => "corner",
        _ => "st",
    };

    private string OfWork(Work work)
    {
        var stitch = HookText(work.Hook) + context.Word(work.Stitch);
        var several = work.Makes > 1 || work.Target.Aim != Aim.Next;
        if (work.Takes == 2) return $"{stitch} dec{Count(work.Amount)}";
        if (work.Takes > 2) return $"{stitch}{Number(work.Takes)}tog{Count(work.Amount)}";
        if (work.Makes == 2 && work.Target.Aim == Aim.Next) return $"{stitch} inc{Count(work.Amount)}";
        if (!several) return stitch + Count(work.Amount);
        var number = work.Makes > 1 ? Number(work.Makes) + " " : string.Empty;
        return number + stitch + " " + PlaceText(work.Target);
    }

    private string OfSpread(Spread spread)
    {
        if (spread is { Words: [Work { Takes: 1, Makes: 2 } or Work { Takes: 2, Makes: 1 }], Over.Reach: Reach.Across, AtEachEnd: null })
            return $"{context.Word(spread.Stitch)} {(spread.Words is [Work { Makes: 2 }] ? "inc" : "dec")} {Number(spread.Times)} evenly";
        var ends = spread.AtEachEnd is { } end ? $", {Number(end)} at each end" : string.Empty;
        return $"{context.Word(spread.Stitch)}{Count(spread.Over)} with ({OfList(spread.Words)}) {Number(spread.Times)} times evenly{ends}";
    }

    private static string HookText(HookInto hook) => hook switch
    {
        HookInto.BackLoop => "back-loop ",
        HookInto.FrontLoop => "front-loop ",
        HookInto.FrontPost => "front-post ",
        HookInto.BackPost => "back-post ",
        _ => string.Empty,
    };

    private string OfList(IReadOnlyList<Word> words)
    {
        var text = string.Join(", ", words.Take(MostWords).Select(Of));
        return words.Count > MostWords ? text + ", …" : text;
    }
}
