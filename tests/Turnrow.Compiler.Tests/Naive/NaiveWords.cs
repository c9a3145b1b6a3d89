namespace Turnrow.Compiler.Tests.Naive;

/// <summary>One word of an explicit row, in the order in which the designer writes it.</summary>
public abstract record Word;

/// <summary>`dc 5`: one in each of the next five.</summary>
public sealed record Each(string Stitch, Sized Count) : Word;

/// <summary>`dc across`.</summary>
public sealed record Across(string Stitch) : Word
{
    /// <summary>The one loop that it goes through, <c>back</c> or <c>front</c>; null for both.</summary>
    public string? Loop { get; init; }
}

/// <summary>`dc until 5 remain`.</summary>
public sealed record Until(string Stitch, Sized Remain) : Word;

public enum PlaceWord { Next, First, Last, NextSpace, NextStitch, NextCentre, Corner, NextCorner }

/// <summary>Which place a word goes to; <c>Kind</c> is the stitch that `in next dc` looks for.</summary>
public sealed record Target(PlaceWord Place, string? Kind = null)
{
    public static readonly Target Next = new(PlaceWord.Next);
    public static readonly Target First = new(PlaceWord.First);
    public static readonly Target Last = new(PlaceWord.Last);
    public static readonly Target NextSpace = new(PlaceWord.NextSpace);

    public static readonly Target Corner = new(PlaceWord.Corner);

    /// <summary>`in next shell`: the centre of a stitch that the pattern defines.</summary>
    public static Target CentreOf(string special) => new(PlaceWord.NextCentre, special);

    public static readonly Target NextCorner = new(PlaceWord.NextCorner);

    public static Target NextOf(string kind) => new(PlaceWord.NextStitch, kind);
}

/// <summary>`3 dc in next`, `dc in next sp`.</summary>
public sealed record Into(int Count, string Stitch, Target Target) : Word;

/// <summary>`(2 dc, ch 2, 2 dc) in next sp`: stitches as <see cref="Into"/>, their target being the group's.</summary>
public sealed record Group(IReadOnlyList<Word> Words, Target Target) : Word;

/// <summary>`(3 dc, ch 2, mark corner) 4 times in ring`; a single kind of stitch once is `6 sc in ring`.</summary>
public sealed record IntoRing(IReadOnlyList<Word> Words, int Times) : Word;

/// <summary>`inc 3`, or `dc inc 3` where the row does not say its stitch otherwise.</summary>
public sealed record Inc(string Stitch, Sized Count, bool Named = false) : Word;

/// <summary>`dec 3`, `dc dec 3`.</summary>
public sealed record Dec(string Stitch, Sized Count, bool Named = false) : Word;

/// <summary>`dc3tog`.</summary>
public sealed record Together(string Stitch, int Over) : Word;

public sealed record Skip(Sized Count) : Word;

/// <summary>`ch 2` over the work.</summary>
public sealed record Space(int Chains) : Word;

public sealed record SlipOver(Sized Count) : Word;

/// <summary>`leave 5`, or `leave the rest` without a number.</summary>
public sealed record LeaveUnworked(Sized? Count) : Word
{
    public bool ForLater { get; init; }
}

/// <summary>`dc to corner`, `dc until 2 remain before corner`.</summary>
public sealed record ToCorner(string Stitch, Sized Remain) : Word;

/// <summary>`dc to turn`, `dc until 1 remains before turn`: up to where the row below turned.</summary>
public sealed record ToTurn(string Stitch, Sized Remain) : Word;

/// <summary>`join skipping 1 to back right edge`: a slip stitch into the next place of an edge of another piece, or of a motif's side.</summary>
public sealed record JoinNext(string Piece, RimEdge Edge, int Skipping) : Word
{
    /// <summary>Which side of a motif, from 0; null for the edge.</summary>
    public int? Side { get; init; }

    /// <summary>How many places it has to be joined to.</summary>
    public int Places(PieceResult piece) => Side is { } side ? SeamWork.PlacesOfSide(piece, side) ?? 0
        : piece.Edge(Edge == RimEdge.Right ? Hand.Right : Hand.Left).Sum(stretch => stretch.Count);
}

/// <summary>`mark corner`.</summary>
public sealed record MarkCorner : Word;

/// <summary>`hold 20 for sleeve`: kept in the row for another piece.</summary>
public sealed record Hold(Sized Count, string Name) : Word;

/// <summary>`bridge 6 for underarm`: chains that the next row is worked into.</summary>
public sealed record Bridge(Sized Count, string? Name) : Word;

/// <summary>`with navy`: from here on.</summary>
public sealed record WithYarn(string Yarn) : Word;

/// <summary>`move marker`: a round of a spiral ends here.</summary>
public sealed record MoveMarker : Word;

/// <summary>`remove corners`.</summary>
public sealed record RemoveCorners : Word;

public enum EachOf { Stitch, StitchAndSpace, Space }

/// <summary>`dc in each st and sp`.</summary>
public sealed record InEach(string Stitch, EachOf Of) : Word;

/// <summary>`dc in each st and sp to corner`, `… until 2 remain before corner`.</summary>
public sealed record InEachToCorner(string Stitch, EachOf Of, int Remain = 0) : Word;

/// <summary>`dc inc 8 evenly`.</summary>
public sealed record Evenly(string Stitch, bool Increase, Sized Count) : Word;

/// <summary>`dc across with (ch 2, skip 2) 5 times evenly, 3 at each end`; without a number half of what lies between two is at each end.</summary>
public sealed record SpreadOver(string Stitch, IReadOnlyList<Word> Words, int Takes, Sized Times, Sized? AtEachEnd) : Word;

/// <summary>`dc in each st and 2 dc in each sp`.</summary>
public sealed record EachByKind(string Stitch, int InSpace) : Word;

public enum RepeatEnd { Times, Across, Until }

/// <summary>`(dc 4, inc) 6 times`, `across`, `until 3 remain`.</summary>
public sealed record Repeat(IReadOnlyList<Word> Words, RepeatEnd End, Sized Count) : Word
{
    public static Repeat Times(Sized times, params Word[] words) => new(words, RepeatEnd.Times, times);

    public static Repeat Across(params Word[] words) => new(words, RepeatEnd.Across, 0);

    public static Repeat Until(Sized remain, params Word[] words) => new(words, RepeatEnd.Until, remain);
}
