namespace Turnrow.Publishing.Tests.Reader;

/// <summary>Right or left of a piece held with its right side facing and its first row at the bottom.</summary>
internal enum Side
{
    Right,
    Left,
}

/// <summary>A row as it came out.</summary>
internal sealed record ReadRow(int Number, bool RightSide, IReadOnlyList<Place> Made)
{
    /// <summary>What its remarks say that it does at the right and the left edge: increases above 0; null where they do not tell which.</summary>
    public (int Right, int Left)? Shaped { get; init; }

    public bool IsRound { get; init; }

    /// <summary>The yarns of its places in working order, `navy 5, cream 3`; empty if the page names none.</summary>
    public string Yarns { get; init; } = "";

    /// <summary>False of a round whose end is left open.</summary>
    public bool IsJoined { get; init; }

    /// <summary>Of a round that ended before its marker, the places below that come first in the next one.</summary>
    public IReadOnlyList<Place> Unworked { get; init; } = [];

    /// <summary>A right-side row runs from the right edge to the left: there the hook is after it.</summary>
    public Side EndsAt => StartsAt == Side.Right ? Side.Left : Side.Right;

    public Side StartsAt => RightSide != IsBack ? Side.Right : Side.Left;

    /// <summary>True if it is worked from her left to her right.</summary>
    public bool IsBack { get; init; }

    public int Stitches => Made.Count(place => place.Counts);

    /// <summary>The places that later stitches go into, from the right edge to the left.</summary>
    public IReadOnlyList<Place> FromRight => StartsAt == Side.Right ? Made : [.. Made.Reverse()];
}

/// <summary>What lies along an edge, first row first.</summary>
internal enum Lies
{
    RowEnd,
    LeftStitches,
    AddedChain,
}

/// <summary>A part of an edge: the end of a row, or stitches or chains at a step.</summary>
internal sealed record EdgePart(Lies Lies, int Row, int Count);

/// <summary>Stitches of an earlier piece's last row that one row goes over.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="From">Stitches between them and its right edge.</param>
/// <param name="Count">How many.</param>
internal sealed record LaidPart(ReadPiece Piece, int From, int Count);

/// <summary>Stitches held inside a row, or a bridge there.</summary>
internal sealed record InnerPart(bool IsBridge, int Count, string? Name)
{
    public int Row { get; init; }
}

/// <summary>A piece as the maker made it.</summary>
internal sealed class ReadPiece(string title)
{
    private readonly List<EdgePart>[] _edges = [[], []];

    public string Title => title;

    public List<ReadRow> Rows { get; } = [];

    /// <summary>The steps of each row, by number, for `As Row 3`.</summary>
    public Dictionary<int, IReadOnlyList<Step>> Steps { get; } = [];

    /// <summary>The words of each row that is told in full, by number, for a row that works a part of them more often.</summary>
    public Dictionary<int, string> Texts { get; } = [];

    /// <summary>Chains of the foundation; null if it begins otherwise.</summary>
    public int? Foundation { get; set; }

    /// <summary>Chains of the ring that it begins with, 0 for one that is drawn together; null if it begins otherwise.</summary>
    public int? Ring { get; set; }

    /// <summary>Stitches that the foundation's other side would take.</summary>
    public int? FoundationStitches { get; set; }

    /// <summary>True if its first row makes its own foundation.</summary>
    public bool IsBegunByRow { get; set; }

    /// <summary>Of a part: the piece that it stands on, and the stitch (from the right edge, from 0) where it begins.</summary>
    public (ReadPiece Base, int At)? StandsOn { get; set; }

    /// <summary>Of a piece that is picked up: what it was picked up along, in order.</summary>
    public List<string> PickedUp { get; } = [];

    public bool IsJoined { get; set; }

    /// <summary>Of a row over several pieces: these, in the order in which the row meets them.</summary>
    public List<LaidPart> Over { get; } = [];

    /// <summary>What is held and bridged in it, row by row.</summary>
    public List<InnerPart> Inner { get; } = [];

    /// <summary>True once the yarn is cut.</summary>
    public bool IsFastenedOff { get; set; }

    /// <summary>The yarn in the hand after its last row; null if the page names none.</summary>
    public string? Yarn { get; set; }

    /// <summary>The piece that goes on with this one's yarn.</summary>
    public string? YarnGoesTo { get; set; }

    /// <summary>The pieces that are said to come before that one; empty for none.</summary>
    public string ComeFirst { get; set; } = "";

    /// <summary>True of one of several that are made alike: it has no heading of its own.</summary>
    public bool IsCopy { get; init; }

    /// <summary>What short rows left for later at each edge, as a row that goes there meets it.</summary>
    public IReadOnlyList<Place>[] Waiting { get; } = [[], []];

    /// <summary>Stitches of the last row that a part stands on, from the right edge.</summary>
    public HashSet<int> Taken { get; } = [];

    /// <summary>The places of a side, counted by its markers: from one to the next, the last from the last marker round to the first.</summary>
    public IReadOnlyList<Place> SideOf(string name)
    {
        var round = Rows[^1].Made.Where(place => place.Seen != Seen.SlipStitch).ToList();
        var corners = Enumerable.Range(0, round.Count).Where(at => round[at].IsMarked).ToList();
        var nth = Array.IndexOf(["first", "second", "third", "fourth", "fifth", "sixth"], name.Split(' ')[0]);
        if (!Rows[^1].IsRound || nth < 0 || nth >= corners.Count) throw new Misread($"{title} has no {name}");
        var (from, to) = (corners[nth], corners[(nth + 1) % corners.Count]);
        return [.. Enumerable.Range(from, (to > from ? to : to + round.Count) - from + 1).Select(at => round[at % round.Count])];
    }

    public Side HookAt => Rows[^1].IsRound ? Rows[^1].StartsAt : Rows[^1].EndsAt;

    public IReadOnlyList<EdgePart> Edge(Side side) => _edges[(int)side];

    public void AddToEdge(Side side, EdgePart part) => _edges[(int)side].Add(part);
}
