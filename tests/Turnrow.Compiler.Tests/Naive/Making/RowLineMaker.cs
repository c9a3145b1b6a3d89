namespace Turnrow.Compiler.Tests.Naive.Making;

/// <summary>Opens a row's line: bare, with its number, or with its side, where all sizes have the same.</summary>
public static class RowLineMaker
{
    public static RowLine Line(ChoiceTape tape, Sketch sketch, IReadOnlyList<Word> words)
    {
        var isSame = sketch.Rows.All(rows => rows == sketch.Rows[0]);
        var how = isSame ? tape.Below(3) : 0;
        int? number = how > 0 ? sketch.Rows[0] + 1 : null;
        Side? side = how == 2 ? SideOf(sketch) : null;
        return new RowLine(words, number, side) { IsRound = sketch.InRounds };
    }

    private static Side? SideOf(Sketch sketch) => sketch.FirstSide is { } first
        ? sketch.Rows[0] % 2 == 0 ? first : Frame.Opposite(first)
        : null;
}
