namespace Turnrow.Fabric.Words;

/// <summary>Why a row can't be worked as it is written.</summary>
public enum RowFaultKind
{
    /// <summary>A word needs more places than there are.</summary>
    NotEnough,

    /// <summary>Places remain at the end of the row.</summary>
    LeftOver,

    /// <summary>A repeat does not come out.</summary>
    RepeatDoesNotComeOut,

    /// <summary>A repeat to the end of the row uses up no places, so it would never end.</summary>
    RepeatTakesNothing,

    /// <summary>A stitch would go into a space, and the row does not say so.</summary>
    SpaceAhead,

    /// <summary>A loop or a post of a space, which has neither.</summary>
    SpaceWithoutLoops,

    /// <summary>There is no place of the kind named ahead; or a space stands before it, and what is there is the number of its chains.</summary>
    NoneOfKind,

    /// <summary><c>in first</c> stands behind other words.</summary>
    NotFirst,

    /// <summary><c>in last</c>, but it is not the last place that comes next.</summary>
    NotLast,

    /// <summary><c>in same</c> before anything was worked.</summary>
    NothingBefore,

    /// <summary>Slip stitches over places that are not at the beginning of the row.</summary>
    SlipOverInside,

    /// <summary>More words follow places that are left.</summary>
    AfterLeave,

    /// <summary>So many increases or decreases do not fit.</summary>
    SpreadTooMany,

    /// <summary>A marker, and no stitch before it that it could go into.</summary>
    MarkNothing,

    /// <summary>What stands on the stitch before it, and nothing is made before it in the row.</summary>
    StandsOnNothing,

    /// <summary>Chains at an end of a special stitch lie beside other chains, and would be one space with them.</summary>
    ChainsMeet,

    /// <summary>There is no corner ahead.</summary>
    NoCorner,

    /// <summary>Other places come before the corner.</summary>
    CornerNotNext,

    /// <summary>The corner is nearer than the places that were to remain before it.</summary>
    CornerTooNear,

    /// <summary>No row below turned before this edge, or its turn is nearer than the places that were to remain before it.</summary>
    NoTurn,

    /// <summary>What is worked into a corner has no middle.</summary>
    CornerWithoutMiddle,

    /// <summary>A corner is passed over.</summary>
    CornerPassed,

    /// <summary>A corner is worked together with others, and is not the middle of them.</summary>
    CornerTogether,

    /// <summary>More is worked into a corner by words of its own.</summary>
    CornerAgain,

    /// <summary>Words go into a ring, and the row is worked over something else.</summary>
    NoRing,

    /// <summary>The row is worked into a ring, and a word does not say so, or nothing goes into it.</summary>
    RingAhead,

    /// <summary>Stitches are left or chains added at an edge before a round, which has none.</summary>
    StepInRound,

    /// <summary>A round would begin where the row before turned, and stitches wait between there and where rounds begin.</summary>
    RoundAtTurn,

    /// <summary>The marker of a round's beginning is moved where there is none that could be: the round is no spiral's, or it is not its end.</summary>
    MarkerMoved,

    /// <summary>The first row over a foundation would turn before its end.</summary>
    TurnInFirstRow,

    /// <summary>Stitches are left for good or chains added at an edge that the row does not reach.</summary>
    EdgeNotReached,

    /// <summary>A chain that counts would have to stand for a stitch of a special stitch that goes back over others.</summary>
    BeginsGoingBack,

    /// <summary>A stitch that is worked the other way than others of the row.</summary>
    TwoDirections,

    /// <summary>A stitch that is worked back where there is no row yet to go back over.</summary>
    NothingToGoBackOver,

    /// <summary>The hook would go further down than there are rows.</summary>
    TooFarDown,

    /// <summary>A row joins the piece to an edge of which nothing is left.</summary>
    JoinBeyond,

    /// <summary>What a row is joined in does not come next along the edge.</summary>
    JoinElsewhere,

    /// <summary>A row is joined to another piece, and not at its end.</summary>
    JoinInside,

    /// <summary>A row that ends at one edge is joined where rows that end at the other one are.</summary>
    JoinOtherEnd,

    /// <summary>The row is too long to be laid out.</summary>
    TooLong,
}

/// <summary>The first thing in a row that can't be worked.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Word">The word at fault; null where it is the row's end.</param>
/// <param name="Needed">Places that the word needs, or that one time of a repeat takes.</param>
/// <param name="There">Places that are there or are left over.</param>
/// <param name="Before">Places taken before the word.</param>
public sealed record RowFault(RowFaultKind Kind, Word? Word, int Needed, int There, int Before)
{
    /// <summary>Of a repeat that does not come out, the places that it has for itself: to the row's end or to the corner, without what is to remain.</summary>
    public int Way { get; init; }

    /// <summary>Of a repeat that does not come out, how often it could be worked.</summary>
    public int Times { get; init; }
}
