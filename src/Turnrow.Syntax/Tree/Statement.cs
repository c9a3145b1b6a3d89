using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Tree;

/// <summary>One statement: what stands on a line. The claim that may end it belongs to it.</summary>
public abstract record StatementSyntax(TextSpan Span) : SyntaxNode(Span);

/// <summary>
/// What could be made out of a line that could not be read: the names that it was to give, so that their uses below are not
/// faulted as well, and its claim, so that the counting can go on behind it. A broken <c>piece</c>, <c>sizes</c> or <c>terms</c> line keeps its own
/// statement.
/// </summary>
/// <param name="Names">A count's, a measure's, an edge's, a mark's, a yarn's, or those of a divided row's parts.</param>
/// <param name="Claim">The claim at its end.</param>
/// <param name="Span">Where it stands.</param>
public sealed record UnfinishedStatement(IReadOnlyList<NameSyntax> Names, ClaimSyntax? Claim, TextSpan Span) : StatementSyntax(Span);

/// <summary>Which edge of the piece: <c>both edges</c>, <c>right edge</c>, <c>left edge</c>, or by its name.</summary>
public sealed record EdgeSyntax(EdgeWord Word, NameSyntax? Name, TextSpan Span) : SyntaxNode(Span);

/// <summary>How an edge is called in a statement.</summary>
public enum EdgeWord
{
    /// <summary>Both.</summary>
    Both,

    /// <summary>The right one, right side facing.</summary>
    Right,

    /// <summary>The left one, right side facing.</summary>
    Left,

    /// <summary>By the name that the designer gave it.</summary>
    Named,

    /// <summary>At none: spread evenly over the whole row.</summary>
    Evenly,
}

/// <summary>A side, written <c>RS</c> or <c>WS</c>.</summary>
public sealed record SideSyntax(bool RightSide, TextSpan Span) : SyntaxNode(Span);

/// <summary>
/// An edge of any piece, as seams and pick-ups name it: <c>back right side-seam</c>, <c>right-front neck</c>,
/// <c>back foundation</c>, <c>back last row</c>. The binder tells the words apart.
/// </summary>
public sealed record WalkSyntax(IReadOnlyList<NameSyntax> Words, SelectionSyntax? Selection, TextSpan Span) : SyntaxNode(Span)
{
    /// <summary>Its words as they stand there.</summary>
    public string Written() => string.Join(' ', Words.Select(static w => w.Text));
}

/// <summary><c>last 3 rows</c>, <c>all but first 3 rows</c>, <c>rows 5 to 9</c>.</summary>
public abstract record SelectionSyntax(TextSpan Span) : SyntaxNode(Span);

/// <summary>Rows at one end of a stretch, or all but those.</summary>
public sealed record EndSelection(bool AllBut, bool First, ExpressionSyntax Rows, TextSpan Span) : SelectionSyntax(Span);

/// <summary><c>rows 5 to 9</c>, numbered as the piece's rows are.</summary>
public sealed record RangeSelection(ExpressionSyntax From, ExpressionSyntax To, TextSpan Span) : SelectionSyntax(Span);

/// <summary><c>2 dc in each row</c>, <c>3 sc per 2 rows</c>, <c>1 sc in each st</c>.</summary>
/// <param name="Count">How many stitches.</param>
/// <param name="Stitch">The stitch.</param>
/// <param name="Per">Over how many rows or stitches; null for one.</param>
/// <param name="OfStitches">True if it is said of stitches and chains, false if of row-ends.</param>
/// <param name="Kind">The words behind <c>each</c> or <c>per</c> that name what it is said of; none for rows.</param>
/// <param name="Span">Where it stands.</param>
public sealed record RateSyntax(
    ExpressionSyntax Count, NameSyntax Stitch, ExpressionSyntax? Per, bool OfStitches, IReadOnlyList<NameSyntax> Kind, TextSpan Span) : SyntaxNode(Span)
{
    /// <summary>Of <c>1 sc in each st and sp</c> the words behind <c>and</c>.</summary>
    public IReadOnlyList<NameSyntax> AlsoKind { get; init; } = [];

    /// <summary>True of <c>skip each sp</c>: nothing goes in there.</summary>
    public bool Skipped { get; init; }

    /// <summary>True of <c>84 sc evenly</c>: so many, shared out by length.</summary>
    public bool Evenly { get; init; }

    /// <summary>Of <c>37 sc evenly along front right edge</c> the edge; else null.</summary>
    public WalkSyntax? Along { get; init; }

    /// <summary>True of <c>37 sc evenly to each corner</c>: so many between each two corners.</summary>
    public bool ToEachCorner { get; init; }

    /// <summary>True of <c>84 sc evenly</c> alone: so many in all, whatever the edges are.</summary>
    public bool InAll => Evenly && Along is null && !ToEachCorner;

    /// <summary>True of <c>3 sc in each corner</c>.</summary>
    public bool OfCorners => Per is null && !Evenly && !Skipped && Kind is [{ Text: "corner" or "corners" }];
}

/// <summary><c>, odd</c>, <c>, even</c>, <c>, multiple of 6 + 1</c>, <c>, rounded up</c>: which counts are allowed.</summary>
public sealed record CountFixSyntax(CountFix Fix, ExpressionSyntax? Multiple, ExpressionSyntax? Plus, TextSpan Span)
    : SyntaxNode(Span);

/// <summary>The ways to fix a stitch count.</summary>
public enum CountFix
{
    /// <summary><c>odd</c></summary>
    Odd,

    /// <summary><c>even</c></summary>
    Even,

    /// <summary><c>multiple of 6 + 1</c></summary>
    Multiple,

    /// <summary><c>rounded up</c></summary>
    RoundedUp,

    /// <summary><c>rounded down</c></summary>
    RoundedDown,
}

/// <summary><c>, even rows</c>, <c>, odd rows</c>, <c>, end RS</c>, <c>, end WS</c>.</summary>
public sealed record RowFixSyntax(RowFix Fix, TextSpan Span) : SyntaxNode(Span);

/// <summary>The ways to fix a number of rows.</summary>
public enum RowFix
{
    /// <summary><c>even rows</c></summary>
    EvenRows,

    /// <summary><c>odd rows</c></summary>
    OddRows,

    /// <summary><c>end RS</c>: the last row is a right-side row.</summary>
    EndRightSide,

    /// <summary><c>end WS</c>: the last row is a wrong-side row.</summary>
    EndWrongSide,
}
