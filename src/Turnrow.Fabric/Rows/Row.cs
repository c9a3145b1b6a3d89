using Turnrow.Fabric.Places;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Rows;

/// <summary>What is done at an edge before a row: stitches left, or chains added.</summary>
/// <param name="Adds">True for chains added, false for stitches left.</param>
/// <param name="Count">How many.</param>
/// <param name="Edge">The name that the edge has there; null if it has none.</param>
public sealed record Step(bool Adds, int Count, string? Edge)
{
    /// <summary>Of the stitches or chains, those that were left or added before, where the edge had another name; null for none.</summary>
    public Step? Earlier { get; init; }

    /// <summary>What it was made from.</summary>
    public Origin Origin { get; init; }
}

/// <summary>Where the yarn of a row comes from.</summary>
public enum RowBegins : byte
{
    /// <summary>The row is worked into a foundation chain.</summary>
    Foundation,

    /// <summary>The row before ends here: turn.</summary>
    Turned,

    /// <summary>Yarn is joined anew.</summary>
    Joined,

    /// <summary>The row is picked up along an edge, by the yarn that is there.</summary>
    PickedUp,

    /// <summary>The row is picked up along an edge, with yarn joined anew.</summary>
    PickedUpJoined,

    /// <summary>The round is worked into a foundation chain that is joined into a ring; or a round or row goes into a ring that is one place.</summary>
    Ring,

    /// <summary>The round goes on where the end of the round or row before was joined to its beginning.</summary>
    Round,

    /// <summary>The round goes on where the round before was joined, after the work is turned.</summary>
    RoundTurned,

    /// <summary>The round goes on where the round before ends, which was not joined.</summary>
    Spiral,

    /// <summary>The round is worked into both sides of a foundation chain.</summary>
    BothSides,

    /// <summary>The row goes back over the one before with the same side facing, worked the other way.</summary>
    Back,

    /// <summary>The round goes the other way with the same side facing, from where the one before was joined.</summary>
    RoundBack,

    /// <summary>The row makes its own foundation, a chain at the foot of each stitch.</summary>
    FoundationStitches,
}

/// <summary>How rounds follow each other.</summary>
public enum RoundWay : byte
{
    /// <summary>The end of each is joined to its beginning.</summary>
    Joined,

    /// <summary>The same, and the work is turned there.</summary>
    Turned,

    /// <summary>None is joined: each goes on where the one before ends.</summary>
    Spiral,
}

/// <summary>The chain that a row opens with.</summary>
/// <param name="Stitch">The stitch whose rule it follows; null where the row opens with a space or needs no chain.</param>
/// <param name="Chains">Chains to be made: of a foundation row all of them, else those that turn the row, the space's included.</param>
/// <param name="Counts">True if it stands for the row's first stitch.</param>
/// <param name="FirstStitchIn">In a foundation or an added chain, which chain from the hook the first stitch goes into; else 0.</param>
/// <param name="Space">Chains of the space that the row opens with, made in one with the turning chain; else 0.</param>
public sealed record Opening(Stitch? Stitch, int Chains, bool Counts, int FirstStitchIn, int Space)
{
    /// <summary>
    /// True if more goes into the row's first place than the stitch that the chain stands for: of a foundation that place is then the chain behind
    /// those that are skipped.
    /// </summary>
    public bool SharesPlace { get; init; }
}

/// <summary>How a row is worked, known in every number. Rows that are worked alike share one.</summary>
/// <param name="Words">Its words, without what the steps do.</param>
/// <param name="Below">The places it is worked over, in working order, steps taken into account.</param>
/// <param name="Tops">The places it makes, in working order.</param>
/// <param name="Opening">The chain that it opens with.</param>
public sealed record RowWork(IReadOnlyList<Word> Words, PlaceSequence Below, PlaceSequence Tops, Opening Opening)
{
    /// <summary>
    /// Of a round, how many places later than the round below it begins: it goes there by slip stitches, and the places before come last.
    /// <see cref="Below"/> begins there.
    /// </summary>
    public int BegunAt { get; init; }

    /// <summary>Edges inside the row: stitches held and the other sides of bridges, in working order.</summary>
    public IReadOnlyList<Word> Inner { get; } = InnerOf(Words);

    /// <summary>Stitches made.</summary>
    public int Stitches { get; } = Tops.CountWhere(static p => p.IsStitch);

    /// <summary>Its stitches that go furthest down; null if all go into the row below.</summary>
    public Work? Deepest { get; } = HookDepth.Deepest(Words);

    /// <summary>True if it joins the piece to another.</summary>
    public bool Joins { get; } = JoinWords.Any(Words);

    /// <summary>Spaces made.</summary>
    public int Spaces { get; } = Tops.CountWhere(static p => p.Kind == PlaceKind.Space);

    // They stand in no bracket: each is an edge of its own.
    internal static IReadOnlyList<Word> InnerOf(IReadOnlyList<Word> words)
    {
        List<Word>? inner = null;
        for (var i = 0; i < words.Count; i++)
        {
            if (words[i] is Hold or Bridge) (inner ??= []).Add(words[i]);
        }

        return inner ?? (IReadOnlyList<Word>)[];
    }
}

/// <summary>One row of a piece.</summary>
/// <param name="Number">Its number in the piece, from 1.</param>
/// <param name="RightSide">True for a right-side row.</param>
/// <param name="Begins">Where its yarn comes from.</param>
/// <param name="Work">How it is worked; null if that is not known because of an error before it.</param>
/// <param name="Start">What is done at the edge where it starts; null for nothing.</param>
/// <param name="End">What is done at the edge where it ends; null for nothing.</param>
/// <param name="Plan">What it was meant to be.</param>
/// <param name="Ordinal">Its number among the rows that its line makes, from 0.</param>
public sealed record Row(
    int Number, bool RightSide, RowBegins Begins, RowWork? Work, Step? Start, Step? End, RowPlan Plan, int Ordinal)
{
    /// <summary>The line that made it.</summary>
    public Origin Origin { get; init; }

    /// <summary>The yarn that it begins with, its chain included; null where the pattern names none.</summary>
    public string? Yarn { get; init; }

    /// <summary>The yarn in the hand at its end.</summary>
    public string? YarnAfter => Work is { } work ? YarnWords.Last(work.Words) ?? Yarn : Yarn;

    /// <summary>True if its end is joined to its beginning.</summary>
    public bool IsRound { get; init; }

    /// <summary>Of a round, how the next one follows it.</summary>
    public RoundWay Way { get; init; }

    /// <summary>
    /// Of a round whose marker was moved to where it ends, the places of the round below that it did not come to: they come first in the next one. Null
    /// where it goes from marker to marker.
    /// </summary>
    public PlaceSequence? Unworked { get; init; }

    /// <summary>The places that what comes next is worked over, in the order in which they were made.</summary>
    public PlaceSequence? Next => Work is not { } work ? null : Unworked is { } first ? first.Then(work.Tops) : work.Tops;

    /// <summary>What it has to do with stitches left for later.</summary>
    public ShortWork Short { get; init; } = ShortWork.None;

    /// <summary>The edge where it starts; of a round the right one, where it is joined.</summary>
    public Hand StartsAt => Frame.StartOf(RightSide, IsBack);

    /// <summary>True if it is worked back, from the maker's left to her right, as reverse single crochet is.</summary>
    public bool IsBack { get; init; }

    /// <summary>The edge where it ends. After a row the hook is there; after a round it is where the round started.</summary>
    public Hand EndsAt => StartsAt.Opposite();

    /// <summary>True if it reaches an edge: it neither turns before it nor starts where a row before it turned.</summary>
    public bool Reaches(Hand hand) => hand == StartsAt ? !Short.StartsAtTurn : Short.Waiting == 0;

    /// <summary>The step at an edge; null for none.</summary>
    public Step? StepAt(Hand hand) => hand == StartsAt ? Start : End;
}
