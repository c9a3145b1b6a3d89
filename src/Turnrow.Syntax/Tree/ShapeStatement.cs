using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Tree;

/// <summary>
/// Rows with shaping: <c>shape rows 2 to 16: inc 1 at neck every row</c>, <c>shape 30 rows: dec 1 at both edges every 4 rows</c>,
/// <c>shape 60 rows evenly to 73, at both edges</c>, <c>shape to 20 cm from armhole: …</c>.
/// </summary>
/// <param name="Rows">How many rows, or how far; null where <paramref name="First"/> and <paramref name="Last"/> say which.</param>
/// <param name="First">Number of the first row, with <c>rows … to …</c>.</param>
/// <param name="Last">Number of the last row.</param>
/// <param name="Shapings">The schedules given, at the same time; empty if solved.</param>
/// <param name="Solve">The schedule to be solved; null if given.</param>
/// <param name="Claim">The claim at its end.</param>
/// <param name="Span">Where it stands.</param>
public sealed record ShapeStatement(
    RowExtentSyntax? Rows,
    ExpressionSyntax? First,
    ExpressionSyntax? Last,
    IReadOnlyList<ShapingSyntax> Shapings,
    SolveSyntax? Solve,
    ClaimSyntax? Claim,
    TextSpan Span) : StatementSyntax(Span)
{
    /// <summary>Where rows or rounds are named, the word; else null.</summary>
    public NameSyntax? RowsWord { get; init; }
}

/// <summary><c>12 rows</c>, <c>to 20 cm from armhole, even rows</c>, <c>for 6 cm</c></summary>
/// <param name="Extent">A number of rows, a length to reach, or a length to add.</param>
/// <param name="Amount">The number or length.</param>
/// <param name="From">The mark to count or measure from; null for the piece's beginning (<c>to</c>) or here.</param>
/// <param name="Fixes">Which numbers of rows are allowed.</param>
/// <param name="Span">Where it stands.</param>
public sealed record RowExtentSyntax(
    StraightExtent Extent, ExpressionSyntax Amount, NameSyntax? From, IReadOnlyList<RowFixSyntax> Fixes, TextSpan Span) : SyntaxNode(Span)
{
    /// <summary>The edge along which a length is measured; null if unsaid.</summary>
    public EdgeSyntax? At { get; init; }

    /// <summary><c>, in lattice</c>: the stitch pattern; null if unsaid.</summary>
    public NameSyntax? Pattern { get; init; }

    /// <summary><c>, edges in dc</c>: the stitch of what stands beside whole repeats; null if unsaid.</summary>
    public NameSyntax? EdgeStitch { get; init; }
}

/// <summary><c>solid sphere 10 cm across</c>, <c>solid egg 8 cm across by 11 cm high, multiple of 6</c></summary>
/// <param name="Shape">Which body.</param>
/// <param name="Across">How wide it is where it is widest.</param>
/// <param name="Other">How high or how thick it is; null if unsaid.</param>
/// <param name="Thick">Whether that was said to be its thickness.</param>
/// <param name="Multiple">What its counts are multiples of; null for any.</param>
/// <param name="Parts">Further words behind commas.</param>
/// <param name="Claim">The claim at its end.</param>
/// <param name="Span">Where it stands.</param>
public sealed record SolidStatement(
    NameSyntax Shape,
    ExpressionSyntax Across,
    ExpressionSyntax? Other,
    bool Thick,
    ExpressionSyntax? Multiple,
    IReadOnlyList<NameSyntax> Parts,
    ClaimSyntax? Claim,
    TextSpan Span) : StatementSyntax(Span)
{
    /// <summary>Where the changes of a round lie to those below; null if unsaid.</summary>
    public StackingSyntax? Stacking { get; init; }
}

/// <summary><c>shape 1 stitch in</c>, <c>shape by skipping</c>: how edges are shaped from here on.</summary>
/// <param name="StitchesIn">How many stitches from the edge; null if unsaid.</param>
/// <param name="Decreasing">How decreases are worked; null if unsaid.</param>
/// <param name="Span">Where it stands.</param>
public sealed record ShapeMannerStatement(ExpressionSyntax? StitchesIn, DecreasingSyntax? Decreasing, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>by skipping</c>, <c>by slipping over</c>, <c>by working together</c></summary>
public sealed record DecreasingSyntax(Decreasing Way, TextSpan Span) : SyntaxNode(Span);

/// <summary>The ways to decrease at an edge.</summary>
public enum Decreasing
{
    /// <summary><c>by working together</c>: two stitches become one.</summary>
    Together,

    /// <summary><c>by skipping</c>: a stitch is passed over.</summary>
    Skipping,

    /// <summary><c>by slipping over</c>: slip stitches at the start of a row, stitches left at its end.</summary>
    SlippingOver,
}

/// <summary><c>after 10 rows, leave 5 at armhole, then dec 1 every row 4 times, then every 2 rows 3 times, 1 stitch in</c></summary>
/// <param name="After">Rows kept plain first; null for none.</param>
/// <param name="Stages">What is done, one after the other.</param>
/// <param name="Edge">At which edge.</param>
/// <param name="StitchesIn">How many stitches from the edge; null if unsaid.</param>
/// <param name="Decreasing">How decreases are worked; null if unsaid.</param>
/// <param name="Span">Where it stands.</param>
public sealed record ShapingSyntax(
    ExpressionSyntax? After,
    IReadOnlyList<StageSyntax> Stages,
    EdgeSyntax Edge,
    ExpressionSyntax? StitchesIn,
    DecreasingSyntax? Decreasing,
    TextSpan Span) : SyntaxNode(Span)
{
    /// <summary>Where changes that are spread over the row lie to those below; null if unsaid.</summary>
    public StackingSyntax? Stacking { get; init; }
}

/// <summary><c>staggered</c> or <c>stacked</c>: between the changes below, or above them.</summary>
public sealed record StackingSyntax(bool Staggered, TextSpan Span) : SyntaxNode(Span);

/// <summary><c>dec 1 every row 4 times, then every 2 rows 3 times</c>; a step without a frequency is done once, in the next row.</summary>
/// <param name="Kind">What is done.</param>
/// <param name="Count">How many stitches.</param>
/// <param name="Frequencies">When; in order.</param>
/// <param name="Span">Where it stands.</param>
public sealed record StageSyntax(StageKind Kind, ExpressionSyntax Count, IReadOnlyList<FrequencySyntax> Frequencies, TextSpan Span)
    : SyntaxNode(Span);

/// <summary>What is done at an edge while it is shaped.</summary>
public enum StageKind
{
    /// <summary><c>inc</c></summary>
    Increase,

    /// <summary><c>dec</c></summary>
    Decrease,

    /// <summary><c>leave</c></summary>
    Leave,

    /// <summary><c>leave … for later</c></summary>
    LeaveForLater,

    /// <summary><c>add</c></summary>
    Add,
}

/// <summary>
/// <c>every row</c> (no interval), <c>every 4 rows</c>, <c>every 6 rows 3 times</c>, or <c>by turns every 3 and 4 rows</c>
/// (then <paramref name="ByTurns"/> holds the second interval).
/// </summary>
public sealed record FrequencySyntax(ExpressionSyntax? Interval, ExpressionSyntax? ByTurns, ExpressionSyntax? Times, TextSpan Span)
    : SyntaxNode(Span);

/// <summary><c>evenly to 73, at both edges, on RS rows, longer first</c>, or <c>evenly to 60, around</c></summary>
/// <param name="To">The count to reach.</param>
/// <param name="Edge">At which edge, or all round.</param>
/// <param name="Options">Further wishes.</param>
/// <param name="Span">Where it stands.</param>
public sealed record SolveSyntax(
    ExpressionSyntax To, EdgeSyntax Edge, IReadOnlyList<SolveOptionSyntax> Options, TextSpan Span) : SyntaxNode(Span);

/// <summary>A wish about a solved schedule.</summary>
/// <param name="Option">Which.</param>
/// <param name="Count">Its number of rows or stitches, for those that have one.</param>
/// <param name="Decreasing">With <see cref="SolveOption.Decreasing"/>, how decreases are worked.</param>
/// <param name="Span">Where it stands.</param>
public sealed record SolveOptionSyntax(SolveOption Option, ExpressionSyntax? Count, DecreasingSyntax? Decreasing, TextSpan Span) : SyntaxNode(Span);

/// <summary>The wishes there are.</summary>
public enum SolveOption
{
    /// <summary><c>on RS rows</c></summary>
    RightSideRows,

    /// <summary><c>longer first</c></summary>
    LongerFirst,

    /// <summary><c>by turns</c></summary>
    ByTurns,

    /// <summary><c>first 4 rows plain</c></summary>
    FirstRowsPlain,

    /// <summary><c>last 4 rows plain</c></summary>
    LastRowsPlain,

    /// <summary><c>1 stitch in</c></summary>
    StitchesIn,

    /// <summary><c>by skipping</c></summary>
    Decreasing,
}
