using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Tree;

/// <summary>Opens a piece: <c>piece back</c>.</summary>
public sealed record PieceStatement(NameSyntax Name, PieceOriginSyntax? Origin, ClaimSyntax? Claim, TextSpan Span)
    : StatementSyntax(Span)
{
    /// <summary><c>, make 2</c>: how often it is made; null if that is not said.</summary>
    public CopiesSyntax? Copies { get; init; }
}

/// <summary>How often a piece is made.</summary>
public sealed record CopiesSyntax(int Count, TextSpan Span) : SyntaxNode(Span);

/// <summary>What a piece begins from.</summary>
public abstract record PieceOriginSyntax(TextSpan Span) : SyntaxNode(Span);

/// <summary><c>from back: shoulder stitches at right edge</c></summary>
public sealed record PartOriginSyntax(NameSyntax Piece, ExpressionSyntax Stitches, EdgeSyntax Edge, TextSpan Span)
    : PieceOriginSyntax(Span);

/// <summary><c>from yoke: left-front</c>, a part that <c>divide</c> named.</summary>
public sealed record NamedPartOriginSyntax(NameSyntax Piece, NameSyntax Part, TextSpan Span) : PieceOriginSyntax(Span);

/// <summary><c>across left-front, back, right-front</c>: pieces whose last rows one row goes over, from its right edge to its left.</summary>
public sealed record AcrossOriginSyntax(IReadOnlyList<AcrossPartSyntax> Parts, TextSpan Span) : PieceOriginSyntax(Span);

/// <summary>A piece, or a part of it that <c>divide</c> named, <c>body front</c>; of a piece that is made several times also which, <c>first sleeve</c>.</summary>
public sealed record AcrossPartSyntax(IReadOnlyList<NameSyntax> Words, TextSpan Span) : SyntaxNode(Span);

/// <summary><c>is right-front mirrored</c>, <c>is right-front mirrored, turned over</c></summary>
public sealed record MirrorOriginSyntax(NameSyntax Piece, bool TurnedOver, TextSpan Span) : PieceOriginSyntax(Span);

/// <summary><c>picked up along right-front neck, last 3 rows: 2 dc in each row</c></summary>
/// <param name="Walks">The edges, in the order in which they are walked; several are joined by <c>and</c>.</param>
/// <param name="Side">The side that faces (<c>, WS facing</c>); null for the right side.</param>
/// <param name="Rates">How many stitches; none for the customary rates of <paramref name="Stitch"/>.</param>
/// <param name="Stitch">The stitch alone (<c>: sc</c>), where no rate is given; else null.</param>
/// <param name="Span">Where it stands.</param>
public sealed record PickUpOriginSyntax(
    IReadOnlyList<WalkSyntax> Walks, SideSyntax? Side, IReadOnlyList<RateSyntax> Rates, NameSyntax? Stitch, TextSpan Span)
    : PieceOriginSyntax(Span)
{
    /// <summary>True for <c>picked up around …</c>: the row is joined to a round.</summary>
    public bool Around { get; init; }
}

/// <summary><c>begin with hem stitches</c></summary>
public sealed record BeginStatement(ExpressionSyntax Stitches, ClaimSyntax? Claim, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>begin with 40 foundation sc</c>: the foundation and the first row, worked at once</summary>
/// <param name="Stitches">How many.</param>
/// <param name="Stitch">The stitch.</param>
/// <param name="Claim">The claim at its end.</param>
/// <param name="Span">Where it stands.</param>
public sealed record FoundationRowStatement(ExpressionSyntax Stitches, NameSyntax Stitch, ClaimSyntax? Claim, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>begin with ring</c>, <c>begin with ring of 4 chains</c></summary>
/// <param name="Chains">The chains that are joined to a ring; null for a ring that is drawn together.</param>
/// <param name="Claim">The claim at its end.</param>
/// <param name="Span">Where it stands.</param>
public sealed record RingStatement(ExpressionSyntax? Chains, ClaimSyntax? Claim, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>begin with both sides of 10 stitches</c></summary>
public sealed record BothSidesStatement(ExpressionSyntax Stitches, ClaimSyntax? Claim, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>rounds are joined</c>, <c>rounds are joined and turned</c>, <c>rounds are spiral</c></summary>
public sealed record RoundsAreStatement(RoundsAre Way, TextSpan Span) : StatementSyntax(Span);

/// <summary>How rounds follow each other.</summary>
public enum RoundsAre
{
    /// <summary>Each is joined to its beginning, and the next one goes on from there.</summary>
    Joined,

    /// <summary>Each is joined to its beginning, and the work is turned.</summary>
    Turned,

    /// <summary>Each goes on where the one before ends.</summary>
    Spiral,
}

/// <summary><c>chain 79</c></summary>
public sealed record ChainStatement(ExpressionSyntax Chains, ClaimSyntax? Claim, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>both edges are side-seam</c>, <c>from here right edge is armhole</c></summary>
public sealed record EdgeNameStatement(bool FromHere, EdgeSyntax Edge, NameSyntax Name, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>row 5 WS: …</c>, <c>row: …</c>, <c>rows 2 to 19: …</c></summary>
/// <param name="First">The row's number; null for the next one.</param>
/// <param name="Last">The last row's number with <c>rows … to …</c>; else null.</param>
/// <param name="Side">The side said; null if unsaid.</param>
/// <param name="Items">The words of the row.</param>
/// <param name="Claim">The claim at its end; of several rows, the last one's.</param>
/// <param name="Span">Where it stands.</param>
public sealed record RowStatement(
    ExpressionSyntax? First,
    ExpressionSyntax? Last,
    SideSyntax? Side,
    IReadOnlyList<RowItemSyntax> Items,
    ClaimSyntax? Claim,
    TextSpan Span) : StatementSyntax(Span)
{
    /// <summary>True for <c>round</c> and <c>rounds</c>.</summary>
    public bool IsRound { get; init; }
}

/// <summary><c>straight 12 rows</c>, <c>straight to 20 cm, even rows</c>, <c>straight 6 rows from armhole</c></summary>
/// <param name="Extent">A number of rows, a length to reach, or a length to add.</param>
/// <param name="Amount">The number or length.</param>
/// <param name="From">The mark to count or measure from; null for the piece's beginning (<c>to</c>) or here.</param>
/// <param name="Fixes">Which numbers of rows are allowed.</param>
/// <param name="Claim">The claim at its end.</param>
/// <param name="Span">Where it stands.</param>
public sealed record StraightStatement(
    StraightExtent Extent,
    ExpressionSyntax Amount,
    NameSyntax? From,
    IReadOnlyList<RowFixSyntax> Fixes,
    ClaimSyntax? Claim,
    TextSpan Span) : StatementSyntax(Span)
{
    /// <summary>The edge along which a length is measured; null if unsaid.</summary>
    public EdgeSyntax? At { get; init; }

    /// <summary>Where rows or rounds are named, the word; else null.</summary>
    public NameSyntax? RowsWord { get; init; }

    /// <summary><c>, in lattice</c>: the stitch pattern; null if unsaid.</summary>
    public NameSyntax? Pattern { get; init; }

    /// <summary><c>, edges in dc</c>: the stitch of what stands beside whole repeats; null if unsaid.</summary>
    public NameSyntax? EdgeStitch { get; init; }
}

/// <summary>How far straight rows go.</summary>
public enum StraightExtent
{
    /// <summary><c>straight 12 rows</c></summary>
    Rows,

    /// <summary><c>straight to 20 cm</c></summary>
    To,

    /// <summary><c>straight for 6 cm</c></summary>
    For,
}

/// <summary><c>leave drop at both edges</c>, <c>leave 6 for later at left edge</c></summary>
public sealed record LeaveStatement(ExpressionSyntax Count, EdgeSyntax Edge, ClaimSyntax? Claim, TextSpan Span)
    : StatementSyntax(Span)
{
    /// <summary>True with <c>for later</c>: the next row that goes to the edge turns before them, and a later row works over them.</summary>
    public bool ForLater { get; init; }
}

/// <summary><c>add 6 at both edges, one row apart</c></summary>
public sealed record AddStatement(
    ExpressionSyntax Count, EdgeSyntax Edge, bool OneRowApart, ClaimSyntax? Claim, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>mark next row armhole</c></summary>
public sealed record MarkStatement(NameSyntax Name, TextSpan Span) : StatementSyntax(Span);

/// <summary>The rows that a line repeats: <c>rows 3 to 6</c>, <c>row 3</c>, <c>last 2 rows</c>.</summary>
/// <param name="First">The first of them; of the last ones, how many.</param>
/// <param name="Last">The last of them; null for one row, or for the last ones.</param>
/// <param name="Span">Where it stands.</param>
public sealed record RepeatedRowsSyntax(ExpressionSyntax First, ExpressionSyntax? Last, TextSpan Span) : SyntaxNode(Span)
{
    /// <summary>True of the last ones there are.</summary>
    public bool AreLast { get; init; }
}

/// <summary><c>repeat rows 3 to 6, 9 more times</c>, <c>…, 10 times in all</c></summary>
/// <param name="Rows">The rows repeated.</param>
/// <param name="Times">How often.</param>
/// <param name="Counting">How the number is meant; <see cref="RepeatCounting.Unsaid"/> is an error.</param>
/// <param name="Claim">The claim at its end.</param>
/// <param name="Span">Where it stands.</param>
public sealed record RepeatStatement(
    RepeatedRowsSyntax Rows,
    ExpressionSyntax Times,
    RepeatCounting Counting,
    ClaimSyntax? Claim,
    TextSpan Span) : StatementSyntax(Span);

/// <summary>What the number of a repeat counts.</summary>
public enum RepeatCounting
{
    /// <summary>A bare <c>9 times</c>, which print uses both ways.</summary>
    Unsaid,

    /// <summary><c>9 more times</c></summary>
    More,

    /// <summary><c>10 times in all</c></summary>
    InAll,
}

/// <summary><c>divide: 22 for left, skip 8, 50 for back, skip 8, 22 for right</c>, read from the right edge.</summary>
public sealed record DivideStatement(IReadOnlyList<DividePartSyntax> Parts, TextSpan Span) : StatementSyntax(Span);

/// <summary>A part of a divided row; without a name it is skipped.</summary>
public sealed record DividePartSyntax(ExpressionSyntax Stitches, NameSyntax? Name, TextSpan Span) : SyntaxNode(Span);

/// <summary><c>for S, L to 3X: leave 3 at both edges</c>: done in the sizes named, not there in the others.</summary>
/// <param name="Sizes">The sizes.</param>
/// <param name="Done">What is done.</param>
/// <param name="Span">Where it stands.</param>
public sealed record ForSizesStatement(IReadOnlyList<SizeRangeSyntax> Sizes, StatementSyntax Done, TextSpan Span) : StatementSyntax(Span);

/// <summary><c>L to 3X</c>; one size alone is its own first and last.</summary>
public sealed record SizeRangeSyntax(NameSyntax First, NameSyntax Last, TextSpan Span) : SyntaxNode(Span);

/// <summary><c>fasten off</c></summary>
public sealed record FastenOffStatement(TextSpan Span) : StatementSyntax(Span);

/// <summary><c>weave in ends</c></summary>
public sealed record WeaveInStatement(TextSpan Span) : StatementSyntax(Span);

/// <summary><c>seam back right side-seam, all but first 3 rows, with right-front side-seam: 2 sc in each row</c></summary>
/// <param name="First">One edge, part by part.</param>
/// <param name="Second">The other, part by part.</param>
/// <param name="Order">What the designer says of the row order, checked against what can lie flat; null if unsaid.</param>
/// <param name="Eased">With <c>easing</c>, unequal lengths are meant.</param>
/// <param name="Rate">How it is worked; null for sewn.</param>
/// <param name="Span">Where it stands.</param>
public sealed record SeamStatement(
    IReadOnlyList<WalkSyntax> First, IReadOnlyList<WalkSyntax> Second, SeamOrderSyntax? Order, bool Eased, RateSyntax? Rate, TextSpan Span) : StatementSyntax(Span)
{
    /// <summary>By how much the first edge is the longer; null if unsaid.</summary>
    public EasingSyntax? Easing { get; init; }

    /// <summary>The yarn that it is worked or sewn with; null if unsaid.</summary>
    public NameSyntax? Yarn { get; init; }

    /// <summary>The sides that lie together, <c>RS together</c>; null if unsaid.</summary>
    public SideSyntax? Inside { get; init; }

    /// <summary>Where it says <c>with itself</c>: the stitches of one edge are folded and joined to each other, and there is no second; else null.</summary>
    public NameSyntax? Itself { get; init; }

    /// <summary>The stitch that lies at the fold, <c>from stitch 12</c>; null for the first.</summary>
    public ExpressionSyntax? FoldedAt { get; init; }
}

/// <summary><c>blanket throw of tile: 5 across, 7 down, join in each sp</c></summary>
/// <param name="Name">What the whole is called; its rim is a piece of that name.</param>
/// <param name="Motif">The motif.</param>
/// <param name="Across">How many in a row.</param>
/// <param name="Between">How many in every second row, <c>5 and 4 across</c>; null if unsaid.</param>
/// <param name="Down">How many rows.</param>
/// <param name="Stitch">The stitch that joins; null for a slip stitch.</param>
/// <param name="Place">Where they are joined between the corners.</param>
/// <param name="Claim">The claim at its end, of the rim.</param>
/// <param name="Span">Where it stands.</param>
public sealed record BlanketStatement(
    NameSyntax Name, NameSyntax Motif, ExpressionSyntax Across, ExpressionSyntax? Between, ExpressionSyntax Down, NameSyntax? Stitch, PlaceSyntax Place, ClaimSyntax? Claim, TextSpan Span) : StatementSyntax(Span)
{
    /// <summary>Other kinds of motif, which take turns with the first.</summary>
    public IReadOnlyList<NameSyntax> MoreMotifs { get; init; } = [];
}

/// <summary><c>easing 1 to 3 cm</c></summary>
/// <param name="Least">At least so much longer.</param>
/// <param name="Most">At most so much longer.</param>
/// <param name="Span">Where it stands.</param>
public sealed record EasingSyntax(ExpressionSyntax Least, ExpressionSyntax Most, TextSpan Span) : SyntaxNode(Span);

/// <summary><c>, in the same order</c>, <c>, in opposite order</c>.</summary>
public sealed record SeamOrderSyntax(SeamOrder Order, TextSpan Span) : SyntaxNode(Span);

/// <summary>The order in which the rows of two edges meet.</summary>
public enum SeamOrder
{
    /// <summary><c>in the same order</c>: first row to first row.</summary>
    Same,

    /// <summary><c>in opposite order</c>: first row to last row.</summary>
    Opposite,
}

/// <summary>How two values have to be to each other.</summary>
public enum Bound
{
    /// <summary>The same.</summary>
    Same,

    /// <summary><c>at least</c></summary>
    AtLeast,

    /// <summary><c>at most</c></summary>
    AtMost,
}

/// <summary><c>expect hem stitches measure bust / 2 + 2 cm, within 1 cm</c></summary>
public sealed record ExpectMeasureStatement(
    ExpressionSyntax Count,
    bool OfRows,
    NameSyntax? OfWord,
    NameSyntax? Stitch,
    Bound Bound,
    ExpressionSyntax Length,
    ExpressionSyntax? Within,
    TextSpan Span) : StatementSyntax(Span);

/// <summary><c>expect crown lies flat in rounds 1 to 6</c>, <c>expect crown cups</c></summary>
/// <param name="Piece">Which piece.</param>
/// <param name="Lie">How it is to lie.</param>
/// <param name="From">The first round meant; null for all.</param>
/// <param name="To">The last.</param>
/// <param name="Span">Where it stands.</param>
public sealed record ExpectLieStatement(NameSyntax Piece, Lie Lie, ExpressionSyntax? From, ExpressionSyntax? To, TextSpan Span) : StatementSyntax(Span);

/// <summary>How work in rounds lies.</summary>
public enum Lie
{
    /// <summary><c>flat</c></summary>
    Flat,

    /// <summary><c>cup</c>: it grows too little, and rises to a bowl.</summary>
    Cup,

    /// <summary><c>ruffle</c>: it grows too much, and falls in waves.</summary>
    Ruffle,
}

/// <summary><c>expect back rows are right-front rows</c>, <c>expect neck stitches are at least 60</c></summary>
public sealed record ExpectEqualStatement(ExpressionSyntax Left, Bound Bound, ExpressionSyntax Right, TextSpan Span) : StatementSyntax(Span);
