using Turnrow.Fabric.Places;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Words;

/// <summary>One thing that a row says to do.</summary>
public abstract record Word
{
    /// <summary>What it was made from.</summary>
    public Origin Origin { get; init; }

    /// <summary>The words that it holds, in working order; most hold none.</summary>
    public virtual IReadOnlyList<Word> Held => [];

    /// <summary>The place that it goes to; null for a word that names none.</summary>
    public virtual Target? GoesTo => null;

    /// <summary>How far it goes; of a word that is not measured, so many times.</summary>
    public virtual Reach Reach => Reach.Fixed;
}

/// <summary>
/// Stitches: <see cref="Makes"/> of them over <see cref="Takes"/> places, <see cref="Amount"/> times. One each in the next five is
/// 1 over 1, five times; an increase 2 over 1, a decrease 1 over 2, dc3tog 1 over 3.
/// </summary>
public sealed record Work(Stitch Stitch, int Takes, int Makes, Amount Amount, Target Target, HookInto Hook) : Word
{
    /// <summary>Places passed over to get to the kind of place named, all times together; known once the row is worked.</summary>
    public int Passed { get; init; }

    /// <summary>Of those passed over, the ones before the first place of the kind.</summary>
    public int PassedBefore { get; init; }

    /// <summary>Corners among the places worked into; known once the row is worked.</summary>
    public int Corners { get; init; }

    /// <summary>Of a stitch that joins the piece to another, where it goes there; null for all others.</summary>
    public JoinTo? To { get; init; }

    /// <summary>True if it draws several places together; a stitch of the designer's own over several places lies on them one by one.</summary>
    public bool IsDecrease => Takes > 1 && Stitch.IsOne;

    /// <inheritdoc/>
    public override Target? GoesTo => Target;

    /// <inheritdoc/>
    public override Reach Reach => Amount.Reach;

    /// <summary>One in each of so many.</summary>
    public static Work Plain(Stitch stitch, Amount amount) => new(stitch, 1, 1, amount, Target.Next, HookInto.BothLoops);

    /// <summary>So many increases, two in one place each.</summary>
    public static Work Increase(Stitch stitch, int times) =>
        new(stitch, 1, 2, Amount.Of(times), Target.Next, HookInto.BothLoops);

    /// <summary>So many decreases, two together each.</summary>
    public static Work Decrease(Stitch stitch, int times) =>
        new(stitch, 2, 1, Amount.Of(times), Target.Next, HookInto.BothLoops);
}

/// <summary>Stitches and chains in one place, worked so many times: <c>(2 dc, ch 2, 2 dc) in next sp</c>.</summary>
public sealed record Group(IReadOnlyList<Word> Words, Target Target) : Word
{
    /// <summary>Places passed over to get there; known once the row is worked.</summary>
    public int Passed { get; init; }

    /// <summary>Of those passed over, the ones before the first place of the kind.</summary>
    public int PassedBefore { get; init; }

    /// <summary>Corners among the places worked into; known once the row is worked.</summary>
    public int Corners { get; init; }

    /// <summary>The special stitch that it is, written out; null for none.</summary>
    public Stitch? Special { get; init; }

    /// <summary>How often it was worked: once, or of <see cref="Aim.EachOfKind"/> as many as there are.</summary>
    public int Times { get; init; } = 1;

    /// <inheritdoc/>
    public override IReadOnlyList<Word> Held => Words;

    /// <inheritdoc/>
    public override Target? GoesTo => Target;

    // What its words make, kept with the words that it was found for: a group is worked in every corner of every round.
    internal (IReadOnlyList<Word>? For, PlaceSequence? Made) Known { get; set; }

    /// <inheritdoc/>
    public bool Equals(Group? other) =>
        other is not null && Target == other.Target && Passed == other.Passed && PassedBefore == other.PassedBefore && Times == other.Times
        && Corners == other.Corners
        && WordLists.Same(Words, other.Words);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Target, Passed, Times, WordLists.Hash(Words));
}

/// <summary>Chains over the work: a space.</summary>
public sealed record Chains(int Count) : Word;

/// <summary>A marker in the place made last: from here on it is a corner.</summary>
public sealed record MarkCorner : Word;

/// <summary>The markers are taken out with this row: no stitch of it carries a corner up.</summary>
public sealed record RemoveCorners : Word;

/// <summary>
/// At the end of a round of a spiral: its marker is moved here. The places of the round below that are left come first in the next round.
/// </summary>
public sealed record MarkerHere : Word;

/// <summary>Another yarn is taken up: what follows, in the row and after it, is worked with it. No place knows of it.</summary>
public sealed record ChangeYarn(string Yarn) : Word;

/// <summary>Places passed over.</summary>
public sealed record Skip(int Count) : Word
{
    /// <summary>True of what is left at the end of a round whose last word names a kind of place: nobody says so, as nobody does of what is passed over before it.</summary>
    public bool IsUnsaid { get; init; }
}

/// <summary>Slip stitches to get past places at the beginning of the row; not counted, and what is passed is left for good.</summary>
public sealed record SlipOver(int Count) : Word;

/// <summary>Places at the end of the row that stay unworked; <see cref="Count"/> below 0 for all that remain.</summary>
public sealed record Leave(int Count) : Word
{
    /// <summary>True if they wait for a later row, false if they are left for good.</summary>
    public bool ForLater { get; init; }
}

/// <summary>Places inside the row that are not worked but kept, with a name, for another piece to take up.</summary>
public sealed record Hold(int Count, string Name) : Word;

/// <summary>
/// Chains over a gap, most often over stitches held: the next row is worked into each of them. Their other side is an edge; it may have a name.
/// </summary>
public sealed record Bridge(int Count, string? Name) : Word;

/// <summary>Words worked one after the other so many times.</summary>
public sealed record Repeat(IReadOnlyList<Word> Words, Amount Amount) : Word
{
    /// <summary>
    /// Where the times are not all alike (places passed over differ), each way with its number of times; else empty. Known once the
    /// row is worked.
    /// </summary>
    public IReadOnlyList<Repeat> Ways { get; init; } = [];

    /// <summary>The ways that it is worked in, one after the other: itself, where all its times are alike.</summary>
    public IReadOnlyList<Repeat> WorkedWays => Ways.Count > 0 ? Ways : [this];

    /// <inheritdoc/>
    public override IReadOnlyList<Word> Held => Words;

    /// <inheritdoc/>
    public override Reach Reach => Amount.Reach;

    /// <inheritdoc/>
    public bool Equals(Repeat? other) =>
        other is not null && Amount == other.Amount && WordLists.Same(Words, other.Words) && WordLists.Same(Ways, other.Ways);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Amount, WordLists.Hash(Words));
}
