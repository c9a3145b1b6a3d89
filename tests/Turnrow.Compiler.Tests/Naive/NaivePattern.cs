namespace Turnrow.Compiler.Tests.Naive;

public enum Hand { Right, Left }

public enum Side { RS, WS }

/// <summary>A random or hand-made pattern as plain data: what a designer says, and nothing that is derived from it.</summary>
public sealed record NaivePattern(
    IReadOnlyList<string> Sizes,
    IReadOnlyList<TurnRule> Turns,
    IReadOnlyList<NaivePiece> Pieces)
{
    /// <summary>The stitches that it defines.</summary>
    public IReadOnlyList<NaiveStitch> Stitches { get; init; } = [];

    /// <summary>Its yarns; a piece begins with the first.</summary>
    public IReadOnlyList<string> Yarns { get; init; } = [];

    public IReadOnlyList<NaiveSeam> Seams { get; init; } = [];

    /// <summary>The stitch patterns that pieces are worked in.</summary>
    public IReadOnlyList<StitchPattern> StitchPatterns { get; init; } = [];
}

/// <summary>Rows over so many times a multiple and some stitches more; when all are worked, those from one of them on come again.</summary>
public record StitchPattern(string Name, int Multiple, int Plus, IReadOnlyList<IReadOnlyList<Word>> Rows, int AgainFrom)
{
    public bool Fits(int stitches) => stitches >= Multiple + Plus && (stitches - Plus) % Multiple == 0;

    /// <summary>The row that comes when so many were worked.</summary>
    public IReadOnlyList<Word> Row(int worked)
    {
        while (worked >= Rows.Count)
            worked -= Rows.Count - AgainFrom;
        return Rows[worked];
    }
}

/// <summary>
/// A picture in yarns, as it is drawn: the top line first, each letter one stitch. The bottom line is the first row, which has the right side; whichever
/// way a row is worked, the cloth shows the picture as it stands, again and again beside itself and above.
/// </summary>
public sealed record Picture(string Name, string Stitch, IReadOnlyList<string> Lines, IReadOnlyList<(char Letter, string Yarn)> Keys)
    : StitchPattern(Name, Lines[0].Length, 0, [.. Lines.Select(_ => (IReadOnlyList<Word>)[new Across(Stitch)])], 0)
{
    /// <summary>The yarn of a stitch, so many from the right edge of a row that comes when so many were worked.</summary>
    public string Yarn(int worked, int fromRight)
    {
        var letter = Lines[Lines.Count - 1 - (worked % Lines.Count)][Multiple - 1 - (fromRight % Multiple)];
        return Keys.First(key => key.Letter == letter).Yarn;
    }
}

/// <summary>How many chains turn before a stitch, whether they count, and from which chain a foundation is worked.</summary>
public sealed record TurnRule(string Stitch, int Chains, bool Counts, bool NotInFoundation = false, int? FirstStitchIn = null)
{
    /// <summary>Unsaid, the first stitch goes into the chain after the turning chain's.</summary>
    public int FirstChain => FirstStitchIn ?? Chains + 1;

    public bool CountsInFoundation => Counts && !NotInFoundation;
}

public sealed record NaivePiece(string Name, Start Start, IReadOnlyList<Statement> Statements)
{
    /// <summary>How often it is made; of several each has its own name, `first cuff`, `second cuff`.</summary>
    public int Copies { get; init; } = 1;
}

/// <summary>How a piece begins.</summary>
public abstract record Start;

public sealed record BeginWith(Sized Stitches) : Start;

public sealed record ChainStart(Sized Chains) : Start;

/// <summary>`begin with 40 foundation sc`: a row that stands on nothing, made with the chain at its feet.</summary>
public sealed record FoundationRow(Sized Stitches, string Stitch) : Start;

/// <summary>`begin with ring`, or with 0 chains drawn together.</summary>
public sealed record RingOf(int Chains) : Start;

/// <summary>`begin with both sides of 10 stitches`.</summary>
public sealed record BothSidesOf(Sized Stitches) : Start;

public sealed record PartOf(string Piece, Sized Stitches, Hand Edge) : Start;

public sealed record MirrorOf(string Piece) : Start;

/// <summary>Stitches along row-ends: a hand, a name or both say which edge; the window says which of its rows.</summary>
public sealed record PickedUp(string Piece, Hand? Hand, string? Name, RowWindow Window, int Stitches, string Stitch, int PerRows, Sized? Claim = null) : Start
{
    /// <summary>True of a mirror whose base has none: a name need not mean the same rows on both edges of that base.</summary>
    public bool OnSameBase { get; init; }

    /// <summary>So many in all, spread over the rows, instead of a rate.</summary>
    public Sized? Evenly { get; init; }
}

/// <summary>One stitch in each stitch held inside a piece, and in each chain of a bridge there; joined to a round or not.</summary>
public sealed record PickedUpInside(string Piece, IReadOnlyList<string> Names, string Stitch, bool Around) : Start
{
    /// <summary>True of a mirror whose base has none: it is picked up where, turned over, its model was.</summary>
    public bool OnSameBase { get; init; }
}

/// <summary>One stitch in each loop of a row that the row above left free; joined to a round or not.</summary>
public sealed record PickedUpLoops(string Piece, int Row, string Stitch, bool Around) : Start;

/// <summary>The four edges of a piece, as they come against the clock.</summary>
public enum RimEdge { Right, LastRow, Left, Foundation }

/// <summary>
/// Stitches along edges of a piece, each where the one before it ends: so many in so many rows, one in each stitch, and in each corner as
/// many as are said for it. Around goes back to where it began.
/// </summary>
public sealed record PickedUpRim(string Piece, IReadOnlyList<RimEdge> Edges, string Stitch, int Stitches, int PerRows, int? InCorner, bool Around) : Start
{
    /// <summary>How many go into each space of a last row; null if that is not said.</summary>
    public int? InSpace { get; init; }

    /// <summary>How many are shared out between each two corners, in place of the rates; null if so many are not said.</summary>
    public int? ToCorner { get; init; }

    /// <summary>True of a mirror: its walk goes along the same edges from the other end.</summary>
    public bool FromOtherEnd { get; init; }

    /// <summary>True of a mirror whose base has none: it is picked up where, turned over, its model was.</summary>
    public bool OnSameBase { get; init; }

    public Sized? Claim { get; init; }
}

/// <summary>A row over the last rows of several pieces, from its right edge to its left; of one made twice `first` or `second` stands before its name.</summary>
public sealed record AcrossOf(IReadOnlyList<string> Pieces) : Start;

public enum WindowKind { All, First, Last, AllButFirst, AllButLast }

public sealed record RowWindow(WindowKind Kind, Sized Rows)
{
    public static readonly RowWindow All = new(WindowKind.All, 0);
}

/// <summary>An edge of a piece, or of one of several.</summary>
public sealed record NaiveWalk(string Piece, RimEdge Edge)
{
    /// <summary>Of a motif whose last round has corners, which of its sides, from 0; null for the edge.</summary>
    public int? Side { get; init; }
}

/// <summary>Two edges that are joined; eased, they need not be as long as each other.</summary>
public sealed record NaiveSeam(NaiveWalk First, NaiveWalk Second, bool Eased)
{
    /// <summary>Of an edge that is folded and joined to itself, the stitch that lies at the fold; null where two edges are joined. Then both are the same.</summary>
    public int? FoldedAt { get; init; }
}

/// <summary>An edge as a statement names it: both, a hand, or the name in force there.</summary>
public sealed record EdgeRef(Hand? Hand, string? Name)
{
    public static readonly EdgeRef Both = new(null, null);
    public static readonly EdgeRef Right = new(Naive.Hand.Right, null);
    public static readonly EdgeRef Left = new(Naive.Hand.Left, null);

    public static EdgeRef Of(Hand hand) => hand == Naive.Hand.Right ? Right : Left;

    public static EdgeRef Named(string name) => new(null, name);
}
