namespace Turnrow.Compiler.Tests.Naive;

public enum Hand { Right, Left }

public enum Side { RS, WS }

/// <summary>A random or hand-made pattern as plain data: what a designer says, and nothing that is derived from it.</summary>
public sealed record NaivePattern(
    IReadOnlyList<string> Sizes,
    IReadOnlyList<TurnRule> Turns,
    IReadOnlyList<NaivePiece> Pieces);

/// <summary>How many chains turn before a stitch, whether they count, and from which chain a foundation is worked.</summary>
public sealed record TurnRule(string Stitch, int Chains, bool Counts, bool NotInFoundation = false, int? FirstStitchIn = null)
{
    /// <summary>Unsaid, the first stitch goes into the chain after the turning chain's.</summary>
    public int FirstChain => FirstStitchIn ?? Chains + 1;

    public bool CountsInFoundation => Counts && !NotInFoundation;
}

public sealed record NaivePiece(string Name, Start Start, IReadOnlyList<Statement> Statements);

/// <summary>How a piece begins.</summary>
public abstract record Start;

public sealed record BeginWith(Sized Stitches) : Start;

public sealed record ChainStart(Sized Chains) : Start;

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

/// <summary>A row over the last rows of several pieces, from its right edge to its left.</summary>
public sealed record AcrossOf(IReadOnlyList<string> Pieces) : Start;

public enum WindowKind { All, First, Last, AllButFirst, AllButLast }

public sealed record RowWindow(WindowKind Kind, Sized Rows)
{
    public static readonly RowWindow All = new(WindowKind.All, 0);
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
