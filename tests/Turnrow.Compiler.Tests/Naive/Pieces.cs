using Xunit;

namespace Turnrow.Compiler.Tests.Naive;

/// <summary>Short ways to say small patterns in the tests.</summary>
internal static class Pieces
{
    public static NaivePattern One(Start start, params Statement[] statements) =>
        Of([new NaivePiece("swatch", start, statements)]);

    public static NaivePattern Of(IReadOnlyList<NaivePiece> pieces, params TurnRule[] turns) => new(["S"], turns, pieces);

    public static RowLine Row(params Word[] words) => new(words);

    public static Schedule Shaping(bool increase, int stitches, EdgeRef edge, params Leg[] legs) =>
        new(increase, stitches, edge, legs);

    /// <summary>Works one piece in one size and gives it; it has to be workable.</summary>
    public static PieceResult Worked(Start start, params Statement[] statements)
    {
        var result = NaiveWorker.Work(One(start, statements));
        Assert.Empty(result.Faults);
        return result.Of("swatch", 0);
    }

    public static string Fault(Start start, params Statement[] statements) =>
        Assert.Single(NaiveWorker.Work(One(start, statements)).Faults);

    public static string Kinds(RowResult row) => string.Join(' ', row.Places.Select(place => place.Kind));
}
