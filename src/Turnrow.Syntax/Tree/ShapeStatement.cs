using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Tree;

/// <summary>
/// Rows with shaping: <c>shape rows 2 to 16: inc 1 at neck every row</c>, <c>shape 30 rows: dec 1 at both edges every 4 rows</c>,
/// <c>shape 60 rows evenly to 73, at both edges</c>.
/// </summary>
/// <param name="Rows">How many rows; null where <paramref name="First"/> and <paramref name="Last"/> say which.</param>
/// <param name="First">Number of the first row, with <c>rows … to …</c>.</param>
/// <param name="Last">Number of the last row.</param>
/// <param name="Shapings">The schedules given, at the same time; empty if solved.</param>
/// <param name="Solve">The schedule to be solved; null if given.</param>
/// <param name="Claim">The claim at its end.</param>
/// <param name="Span">Where it stands.</param>
public sealed record ShapeStatement(
    ExpressionSyntax? Rows,
    ExpressionSyntax? First,
    ExpressionSyntax? Last,
    IReadOnlyList<ShapingSyntax> Shapings,
    SolveSyntax? Solve,
    ClaimSyntax? Claim,
    TextSpan Span) : StatementSyntax(Span);

/// <summary><c>after 10 rows, dec 1 at both edges, 1 stitch in, every 6 rows 3 times, then every 4 rows 5 times</c></summary>
/// <param name="After">Rows kept plain first; null for none.</param>
/// <param name="Change"><c>inc</c> or <c>dec</c>.</param>
/// <param name="Count">How many single ones side by side.</param>
/// <param name="Edge">At which edge.</param>
/// <param name="StitchesIn">How many stitches from the edge; null for none.</param>
/// <param name="Frequencies">When; in order.</param>
/// <param name="Span">Where it stands.</param>
public sealed record ShapingSyntax(
    ExpressionSyntax? After,
    ChangeSyntax Change,
    ExpressionSyntax Count,
    EdgeSyntax Edge,
    ExpressionSyntax? StitchesIn,
    IReadOnlyList<FrequencySyntax> Frequencies,
    TextSpan Span) : SyntaxNode(Span);

/// <summary>
/// <c>every row</c> (no interval), <c>every 4 rows</c>, <c>every 6 rows 3 times</c>, or <c>by turns every 3 and 4 rows</c>
/// (then <paramref name="ByTurns"/> holds the second interval).
/// </summary>
public sealed record FrequencySyntax(ExpressionSyntax? Interval, ExpressionSyntax? ByTurns, ExpressionSyntax? Times, TextSpan Span)
    : SyntaxNode(Span);

/// <summary><c>evenly to 73, at both edges, on RS rows, longer first</c></summary>
/// <param name="To">The count to reach.</param>
/// <param name="Edge">At which edge.</param>
/// <param name="Options">Further wishes.</param>
/// <param name="Span">Where it stands.</param>
public sealed record SolveSyntax(
    ExpressionSyntax To, EdgeSyntax Edge, IReadOnlyList<SolveOptionSyntax> Options, TextSpan Span) : SyntaxNode(Span);

/// <summary>A wish about a solved schedule.</summary>
/// <param name="Option">Which.</param>
/// <param name="Count">Its number of rows or stitches, for those that have one.</param>
/// <param name="Span">Where it stands.</param>
public sealed record SolveOptionSyntax(SolveOption Option, ExpressionSyntax? Count, TextSpan Span) : SyntaxNode(Span);

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
}
