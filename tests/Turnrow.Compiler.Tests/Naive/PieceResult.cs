namespace Turnrow.Compiler.Tests.Naive;

/// <summary>A finished row; its places stand from the right edge to the left, whatever way it was worked.</summary>
public sealed record RowResult(int Number, Side Side, IReadOnlyList<Place> Places, bool IsRound)
{
    /// <summary>True if it is worked from the maker's left to her right.</summary>
    public bool IsBack { get; init; }

    public Hand Start => IsBack ? Frame.Opposite(Frame.StartOf(Side)) : Frame.StartOf(Side);

    public Hand End => Frame.Opposite(Start);

    public int Stitches => Places.Count(place => place.IsStitch);

    /// <summary>True if it went through the same one loop of each place of the row below, and of nothing else.</summary>
    public bool LeavesLoops { get; init; }

    /// <summary>The yarn of each place.</summary>
    public IReadOnlyList<string> Yarns { get; init; } = [];
}

/// <summary>One single row-end, or one step of so many stitches or chains, with the name in force there.</summary>
public sealed record Stretch(StretchKind Kind, int Row, string Stitch, int Count, string Name);

/// <summary>Stitches held inside a row, or the other side of a bridge there.</summary>
public sealed record InnerEdge(int Row, bool IsBridge, int Count, string? Name);

/// <summary>A right-handed maker works right to left: a right-side row goes from the right edge to the left.</summary>
public static class Frame
{
    public static Hand StartOf(Side side) => side == Side.RS ? Hand.Right : Hand.Left;

    public static Side SideFrom(Hand hand) => hand == Hand.Right ? Side.RS : Side.WS;

    public static Hand Opposite(Hand hand) => hand == Hand.Right ? Hand.Left : Hand.Right;

    public static Side Opposite(Side side) => side == Side.RS ? Side.WS : Side.RS;

    /// <summary>Places from right to left as the row of this side meets them, or back again.</summary>
    public static List<Place> InWorkingOrder(IReadOnlyList<Place> places, Side side)
    {
        var list = places.ToList();
        if (side == Side.WS)
            list.Reverse();
        return list;
    }
}

/// <summary>One piece in one size, worked as far as it can be.</summary>
public sealed class PieceResult(string piece, int size)
{
    private readonly List<Stretch> _right = [];
    private readonly List<Stretch> _left = [];

    public string Piece { get; } = piece;

    public int Size { get; } = size;

    public string? WhyNot { get; set; }

    public bool IsValid => WhyNot is null;

    /// <summary>Whether it stopped at something for which the row model has no rule.</summary>
    public bool IsUnclear { get; set; }

    public List<RowResult> Rows { get; } = [];

    /// <summary>The stitches that stand after each statement: what a claim on it has to say.</summary>
    public List<int> CountsAfter { get; } = [];

    public YarnAt Yarn { get; set; } = YarnAt.Begun;

    /// <summary>The yarn in the hand at its end.</summary>
    public string LastYarn { get; set; } = "";

    public bool PickedUp { get; set; }

    public int? FoundationChains { get; set; }

    /// <summary>The chains of its foundation that its first row is worked into.</summary>
    public int FoundationPlaces { get; set; }

    public IReadOnlyList<int> PickedUpRows { get; set; } = [];

    public bool IsFastenedOff { get; set; }

    /// <summary>A part that goes on with the yarn takes it away from the piece it comes from.</summary>
    public bool IsYarnTaken { get; set; }

    /// <summary>Which places of the last row parts have used, counted from the right edge.</summary>
    public HashSet<int> UsedPlaces { get; } = [];

    /// <summary>Edges inside it, row by row in the order in which the rows are worked.</summary>
    public List<InnerEdge> Inner { get; } = [];

    public List<Stretch> Edge(Hand hand) => hand == Hand.Right ? _right : _left;

    /// <summary>Row numbers of the row-ends at one edge, first row first, of one name or of any.</summary>
    public List<int> RowEnds(Hand hand, string? name) =>
        Edge(hand).Where(s => s.Kind == StretchKind.RowEnd && (name is null || s.Name == name)).Select(s => s.Row).ToList();
}
