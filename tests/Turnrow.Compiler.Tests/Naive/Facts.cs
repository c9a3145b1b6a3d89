namespace Turnrow.Compiler.Tests.Naive;

/// <summary>What a row comes to, its corners by number from the right edge. Spaces have a count of their own (`sp`) and are no stitches.</summary>
public sealed record RowFact(
    string Piece,
    string Size,
    int Row,
    Side Side,
    int Stitches,
    IReadOnlyDictionary<string, int> Counts,
    Hand Start,
    Hand End,
    IReadOnlyList<int> Corners)
{
    public bool IsRound { get; init; }

    /// <summary>The yarns of its places from the right edge to the left, `navy 5, cream 3`.</summary>
    public string Yarns { get; init; } = "";

    /// <summary>Yarns in runs.</summary>
    public static string InRuns(IEnumerable<string> yarns)
    {
        var runs = new List<(string Yarn, int Count)>();
        foreach (var yarn in yarns)
        {
            if (runs.Count > 0 && runs[^1].Yarn == yarn)
                runs[^1] = (yarn, runs[^1].Count + 1);
            else
                runs.Add((yarn, 1));
        }
        return string.Join(", ", runs.Where(run => run.Yarn.Length > 0).Select(run => FormattableString.Invariant($"{run.Yarn} {run.Count}")));
    }
}

/// <summary>
/// <c>SlippedOver</c> is left at the start of the next row, <c>Left</c> at its end; <c>AddedChain</c> is worked
/// on where the hook is, <c>SeparateChain</c> is a length of its own, joined there.
/// </summary>
public enum StretchKind { RowEnd, Left, SlippedOver, AddedChain, SeparateChain }

/// <summary>A piece of an edge: so many row-ends of a stitch, or so many stitches or chains of a step.</summary>
public sealed record StretchFact(StretchKind Kind, string Stitch, int Count, string Name);

/// <summary>The walk along one edge, from the piece's first row to its last.</summary>
public sealed record EdgeFact(string Piece, string Size, Hand Hand, IReadOnlyList<StretchFact> Stretches);

/// <summary>Stitches held inside a row, or the other side of a bridge, in the order in which they are met.</summary>
public sealed record InnerFact(string Piece, string Size, int Row, bool IsBridge, int Count, string? Name);

/// <summary>A seam in one size: whose edges it joins, and how many row-ends and stitches each has.</summary>
public sealed record SeamFact(string Size, string First, int FirstRows, int FirstStitches, string Second, int SecondRows, int SecondStitches)
{
    /// <summary>Which stitches of a folded edge lie on each other, pair by pair from the fold; empty where two edges are joined.</summary>
    public string Fold { get; init; } = "";
}

public enum YarnAt { Begun, GoesOn, JoinedAnew }

/// <summary>
/// How a piece begins. Foundation chains are null where there are none, or where the first row opens in a way
/// for which the trade gives no one number; picked-up rows are the base's rows in the order in which they are met.
/// </summary>
public sealed record StartFact(string Piece, string Size, YarnAt Yarn, int? FoundationChains, IReadOnlyList<int> PickedUpRows);

/// <summary>All that the two models have to agree on. A pattern with a fault says why and is not compared further.</summary>
public sealed record PatternFacts(
    IReadOnlyList<string> Faults,
    IReadOnlyList<RowFact> Rows,
    IReadOnlyList<EdgeFact> Edges,
    IReadOnlyList<StartFact> Starts)
{
    public IReadOnlyList<InnerFact> Inner { get; init; } = [];

    public IReadOnlyList<SeamFact> Seams { get; init; } = [];

    /// <summary>The seams as they are written that use an edge which is used already.</summary>
    public IReadOnlyList<string> UsedAgain { get; init; } = [];
}

/// <summary>The model under test: reads notation text and tells the facts of every piece in every size.</summary>
public interface INaiveSubject
{
    PatternFacts Read(string notationText);
}
