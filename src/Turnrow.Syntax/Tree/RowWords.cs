using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Tree;

/// <summary>One item of a row, as written between two commas.</summary>
public abstract record RowItemSyntax(TextSpan Span) : SyntaxNode(Span);

/// <summary>
/// A stitch with what stands round it: <c>dc</c>, <c>dc 5</c>, <c>dc across</c>, <c>3 dc in next</c>, <c>back-loop dc 5</c>,
/// <c>hdc dec 3</c>, <c>inc 8 evenly</c>, <c>ch 3</c>, <c>dc armhole-rows</c>. Which word is the stitch, which says where the hook
/// goes and which is a count, is the binder's to find out, since stitches are data.
/// </summary>
/// <param name="Before">The number in front (<c>3</c> dc in next), or null.</param>
/// <param name="Words">The words up to the amount; empty only where <paramref name="Change"/> is there.</param>
/// <param name="Change"><c>inc</c> or <c>dec</c>, or null.</param>
/// <param name="Amount">What follows the stitch: how many, across, until … remain, evenly; or null.</param>
/// <param name="Place">Where it goes (<c>in next sp</c>), or null.</param>
/// <param name="Span">Where it stands.</param>
public sealed record StitchItem(
    ExpressionSyntax? Before,
    IReadOnlyList<NameSyntax> Words,
    ChangeSyntax? Change,
    AmountSyntax? Amount,
    PlaceSyntax? Place,
    TextSpan Span) : RowItemSyntax(Span);

/// <summary><c>join to front right edge</c>, <c>join skipping 1 with sc to tile third side in next sp</c>: a stitch into another piece, in its next place there.</summary>
/// <param name="Stitch">The stitch; null for a slip stitch.</param>
/// <param name="Walk">The other piece's edge.</param>
/// <param name="Skipping">How many of its places are passed over before; null for none.</param>
/// <param name="Place">Which of them it goes into (<c>in next sp</c>), or null.</param>
/// <param name="Span">Where it stands.</param>
public sealed record JoinItem(NameSyntax? Stitch, WalkSyntax Walk, ExpressionSyntax? Skipping, PlaceSyntax? Place, TextSpan Span) : RowItemSyntax(Span);

/// <summary><c>5 dc together in one place</c>, <c>(sc, dc) together</c>: several that end in one loop, in a stitch that is defined.</summary>
/// <param name="What">The stitch or bracket, and where it goes.</param>
/// <param name="Span">Where it stands.</param>
public sealed record TogetherItem(RowItemSyntax What, TextSpan Span) : RowItemSyntax(Span);

/// <summary><c>centre is 3rd dc</c>: the place that is meant by the name of a stitch that is defined.</summary>
public sealed record CentreItem(NthSyntax Which, TextSpan Span) : RowItemSyntax(Span);

/// <summary><c>3rd dc</c>, <c>1st sp</c>.</summary>
public sealed record NthSyntax(NumberSyntax Nth, IReadOnlyList<NameSyntax> Kind, TextSpan Span) : SyntaxNode(Span);

/// <summary>A bracket: a repeat if it has times, a group in one place if it has a place; with neither, an error.</summary>
public sealed record GroupItem(
    IReadOnlyList<RowItemSyntax> Items, AmountSyntax? Times, PlaceSyntax? Place, TextSpan Span) : RowItemSyntax(Span);

/// <summary><c>sc across with (ch 2, skip 2) 5 times evenly, 3 at each end</c>.</summary>
/// <param name="Plain">The stitch between, and how far it goes.</param>
/// <param name="Items">What stands in the bracket.</param>
/// <param name="Times">How often.</param>
/// <param name="AtEachEnd">How many stitches stay plain at each end; null for half of what stands between two.</param>
/// <param name="Span">Where it stands.</param>
public sealed record SpreadItem(
    StitchItem Plain, IReadOnlyList<RowItemSyntax> Items, ExpressionSyntax Times, ExpressionSyntax? AtEachEnd, TextSpan Span) : RowItemSyntax(Span);

/// <summary><c>skip 2</c>.</summary>
public sealed record SkipItem(ExpressionSyntax? Count, TextSpan Span) : RowItemSyntax(Span);

/// <summary><c>slip over 5</c>.</summary>
public sealed record SlipOverItem(ExpressionSyntax Count, TextSpan Span) : RowItemSyntax(Span);

/// <summary><c>mark corner</c>: a marker in the stitch or space just made.</summary>
public sealed record MarkCornerItem(TextSpan Span) : RowItemSyntax(Span);

/// <summary><c>move marker</c>: the round ends here.</summary>
public sealed record MoveMarkerItem(TextSpan Span) : RowItemSyntax(Span);

/// <summary><c>remove corners</c>: the row takes the markers out.</summary>
public sealed record RemoveCornersItem(TextSpan Span) : RowItemSyntax(Span);

/// <summary><c>with navy</c>: what follows in the row, and after it, is worked with this yarn.</summary>
public sealed record YarnItem(NameSyntax Yarn, TextSpan Span) : RowItemSyntax(Span);

/// <summary><c>leave 5</c>, or <c>leave the rest</c> (count null).</summary>
public sealed record LeaveItem(ExpressionSyntax? Count, TextSpan Span) : RowItemSyntax(Span)
{
    /// <summary>True with <c>for later</c>: a later row works over them.</summary>
    public bool ForLater { get; init; }
}

/// <summary><c>hold 40 for left-sleeve</c>: stitches that another piece takes up.</summary>
public sealed record HoldItem(ExpressionSyntax Count, NameSyntax Name, TextSpan Span) : RowItemSyntax(Span);

/// <summary><c>bridge 6 for left-underarm</c>: chains that the next row is worked into, and whose other side may have a name.</summary>
public sealed record BridgeItem(ExpressionSyntax Count, NameSyntax? Name, TextSpan Span) : RowItemSyntax(Span);

/// <summary><c>inc</c> or <c>dec</c>.</summary>
public sealed record ChangeSyntax(Change Change, TextSpan Span) : SyntaxNode(Span);

/// <summary>Increase or decrease.</summary>
public enum Change
{
    /// <summary><c>inc</c></summary>
    Increase,

    /// <summary><c>dec</c></summary>
    Decrease,
}

/// <summary>How often, or how far.</summary>
public abstract record AmountSyntax(TextSpan Span) : SyntaxNode(Span);

/// <summary>A count: <c>5</c>; of a bracket, <c>6 times</c>.</summary>
public sealed record CountAmount(ExpressionSyntax Count, TextSpan Span) : AmountSyntax(Span);

/// <summary><c>across</c> or <c>around</c>.</summary>
public sealed record AcrossAmount(bool Around, TextSpan Span) : AmountSyntax(Span);

/// <summary><c>until 5 remain</c>.</summary>
public sealed record UntilAmount(ExpressionSyntax Remain, TextSpan Span) : AmountSyntax(Span);

/// <summary><c>to corner</c>, <c>until 2 remain before corner</c>.</summary>
/// <param name="Remain">How many places are to remain before the corner; null for none.</param>
/// <param name="Span">Where it stands.</param>
public sealed record CornerAmount(ExpressionSyntax? Remain, TextSpan Span) : AmountSyntax(Span);

/// <summary><c>to turn</c>, <c>until 1 remains before turn</c>.</summary>
/// <param name="Remain">How many places are to remain before the turn below; null for none.</param>
/// <param name="Span">Where it stands.</param>
public sealed record TurnAmount(ExpressionSyntax? Remain, TextSpan Span) : AmountSyntax(Span);

/// <summary><c>8 evenly</c>.</summary>
public sealed record EvenlyAmount(ExpressionSyntax Count, TextSpan Span) : AmountSyntax(Span);

/// <summary><c>in next</c>, <c>in first</c>, <c>in each st and sp until 1 remains</c>, <c>in next ch-3 sp</c>.</summary>
/// <param name="Word">Which place.</param>
/// <param name="Kind">The words that name the kind of place (<c>sp</c>; <c>ch-3 sp</c>; <c>dc</c>); empty if unsaid.</param>
/// <param name="AndKind">What stands behind <c>and</c>; empty if unsaid.</param>
/// <param name="Remain">Of <c>in each …</c>, how many places at the row's end it stays away from; null if unsaid.</param>
/// <param name="Span">Where it stands, with its <c>in</c>.</param>
public sealed record PlaceSyntax(
    PlaceWord Word, IReadOnlyList<NameSyntax> Kind, IReadOnlyList<NameSyntax> AndKind, ExpressionSyntax? Remain, TextSpan Span) : SyntaxNode(Span)
{
    /// <summary>Which one it is in a special stitch: <c>in 3rd dc of next shell</c>; null if unsaid.</summary>
    public NumberSyntax? Nth { get; init; }

    /// <summary>Of <c>in skipped</c>, how it passes what was worked since: <c>in skipped in front</c>, <c>in skipped behind</c>; null if unsaid.</summary>
    public CrossingWord? Crossing { get; init; }

    /// <summary>Of <c>in each …</c>, true of <c>to corner</c> and <c>until 2 remain before corner</c>: it goes to the next corner and no further.</summary>
    public bool ToCorner { get; init; }

    /// <summary>What is worked in each place of another kind: <c>sc in each st and 2 sc in each sp</c>; null if unsaid.</summary>
    public OtherPlaceSyntax? Other { get; init; }
}

/// <summary><c>2 sc in each sp</c>, behind <c>sc in each st and</c>.</summary>
/// <param name="Many">How many in each; null for one.</param>
/// <param name="Words">The stitch.</param>
/// <param name="Kind">The words that name the kind of place.</param>
/// <param name="Span">Where it stands.</param>
public sealed record OtherPlaceSyntax(
    ExpressionSyntax? Many, IReadOnlyList<NameSyntax> Words, IReadOnlyList<NameSyntax> Kind, TextSpan Span) : SyntaxNode(Span);

/// <summary>How what goes back passes what was worked since.</summary>
public enum CrossingWord
{
    /// <summary>In front of it.</summary>
    InFront,

    /// <summary>Behind it.</summary>
    Behind,
}

/// <summary>Which place of the row below.</summary>
public enum PlaceWord
{
    /// <summary>The next one.</summary>
    Next,

    /// <summary>The first of the row.</summary>
    First,

    /// <summary>The last of the row.</summary>
    Last,

    /// <summary>The one just worked into.</summary>
    Same,

    /// <summary>Each to the end of the row.</summary>
    Each,

    /// <summary>The corner.</summary>
    Corner,

    /// <summary>The next one that was passed over, in a stitch that is defined.</summary>
    Skipped,

    /// <summary>The one place that all of a stitch goes into, where it is defined.</summary>
    One,

    /// <summary>The nth of a kind in a special stitch.</summary>
    Nth,

    /// <summary>The ring that the piece begins with.</summary>
    Ring,
}

/// <summary>What stands behind <c>=</c>: the designer's own counts.</summary>
/// <param name="Parts">One a kind; a part without a kind counts stitches.</param>
/// <param name="Scope">What the count leaves out or takes in.</param>
/// <param name="Span">Where it stands, with its <c>=</c>.</param>
public sealed record ClaimSyntax(IReadOnlyList<ClaimPartSyntax> Parts, ClaimScope Scope, TextSpan Span) : SyntaxNode(Span);

/// <summary><c>61</c>, <c>61 sts</c>, <c>7 shell</c>, <c>14 sp</c>.</summary>
public sealed record ClaimPartSyntax(ExpressionSyntax Count, NameSyntax? Kind, TextSpan Span) : SyntaxNode(Span);

/// <summary>What a claim counts.</summary>
public enum ClaimScope
{
    /// <summary>The pattern's own way.</summary>
    Usual,

    /// <summary><c>without turning chain</c></summary>
    WithoutTurningChain,

    /// <summary><c>with chains</c></summary>
    WithChains,
}
