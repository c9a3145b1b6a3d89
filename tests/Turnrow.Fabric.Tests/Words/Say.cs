using Turnrow.Fabric.Places;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Xunit;

namespace Turnrow.Fabric.Tests.Words;

/// <summary>Short ways to say rows in tests.</summary>
internal static class Say
{
    public static Place Dc { get; } = Place.TopOf(StitchBook.Double);

    public static Place Sc { get; } = Place.TopOf(StitchBook.Single);

    public static Place Space(int chains) => Place.SpaceOf(chains);

    /// <summary>A row of plain dc.</summary>
    public static PlaceSequence Plain(int count) => PlaceSequence.Of(Dc, count);

    /// <summary>dc, (space of 2, dc) so many times.</summary>
    public static PlaceSequence Mesh(int times)
    {
        var builder = new PlaceSequenceBuilder();
        builder.Add(Dc, 1);
        builder.AddTimes(Of((Space(2), 1), (Dc, 1)), times);
        return builder.Build();
    }

    public static PlaceSequence Of(params (Place Place, int Count)[] runs)
    {
        var builder = new PlaceSequenceBuilder();
        foreach (var (place, count) in runs) builder.Add(place, count);
        return builder.Build();
    }

    public static Work Stitches(Amount amount) => Work.Plain(StitchBook.Double, amount);

    public static Work Stitches(int count) => Stitches(Amount.Of(count));

    public static Work In(Aim aim, int many = 1) => In(aim, PlaceFilter.AnyStitch, many);

    public static Work In(Aim aim, PlaceFilter filter, int many = 1) =>
        new(StitchBook.Double, 1, many, Amount.Once, new Target(aim, filter), HookInto.BothLoops);

    public static Target EachUntil(int remain) =>
        new(Aim.EachOfKind, new PlaceFilter(PlaceFilterKind.StitchOrSpace, null, 0)) { Remain = remain };

    public static PlaceFilter AnySpace { get; } = new(PlaceFilterKind.AnySpace, null, 0);

    public static PlaceFilter SpaceOf(int chains) => new(PlaceFilterKind.SpaceOf, null, chains);

    public static PlaceFilter DcOnly { get; } = new(PlaceFilterKind.OneStitch, StitchBook.Double, 0);

    public static Repeat Times(Amount amount, params Word[] words) => new(words, amount);

    /// <summary>Works a row that comes out, and holds what its words say they take and make to what is there and made.</summary>
    public static WorkedRow Good(PlaceSequence below, params Word[] words)
    {
        var row = RowWorker.Work(words, below);
        Assert.Null(row.Fault);
        Assert.Equal(below.Count, row.Words.Sum(WordCounts.Takes));
        Assert.Equal(row.Stitches, row.Words.Sum(WordCounts.Makes));
        return row;
    }

    /// <summary>The fault of a row that does not come out.</summary>
    public static RowFault Bad(PlaceSequence below, params Word[] words)
    {
        var fault = RowWorker.Work(words, below).Fault;
        Assert.NotNull(fault);
        return fault;
    }

    public static int SpacesOf(WorkedRow row) => row.Tops.CountWhere(static p => p.Kind == PlaceKind.Space);
}
