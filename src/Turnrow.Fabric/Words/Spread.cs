using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Words;

/// <summary>
/// The same words so many times, spread evenly over plain stitches: increases, decreases, buttonholes. Becomes plain stitches and
/// repeats when the row is worked.
/// </summary>
/// <param name="Stitch">The plain stitch.</param>
/// <param name="Words">What is spread; each of them takes a number of places that is known beforehand.</param>
/// <param name="Times">How often.</param>
/// <param name="Over">How far it all goes: so many places, to the end of the row, or until some remain.</param>
public sealed record Spread(Stitch Stitch, IReadOnlyList<Word> Words, int Times, Amount Over) : Word
{
    /// <summary>So many stitches stay plain at each end, and all else is between; null for half of what stands between two.</summary>
    public int? AtEachEnd { get; init; }

    /// <summary>
    /// True if they lie half a gap further on than else: between those of a round below that has as many, instead of above them.
    /// </summary>
    public bool Shifted { get; init; }

    /// <summary>Where the hook goes in the plain stitches.</summary>
    public HookInto Hook { get; init; }

    /// <summary>The plain stitch, and what is spread over it.</summary>
    public override IReadOnlyList<Word> Held => [Work.Plain(Stitch, Amount.Once) with { Hook = Hook, Origin = Origin }, .. Words];

    /// <inheritdoc/>
    public override Reach Reach => Over.Reach;

    /// <summary>Places that the words take once.</summary>
    public int Takes => (int)Math.Min(int.MaxValue, Words.Sum(static word => (long)WordCounts.Takes(word)));

    /// <summary>
    /// True if two of them can't touch: chains that follow chains with nothing but skipped places between would be one space.
    /// </summary>
    public bool StandsApart => Words.Count > 0 && (Words[0] is Chains or Skip || Words[^1] is Chains or Skip);

    /// <summary>So many increases (above 0) or decreases (below) spread over all the places there are.</summary>
    public static Spread Of(Stitch stitch, int change, HookInto hook = HookInto.BothLoops) =>
        new(stitch, [(change > 0 ? Work.Increase(stitch, 1) : Work.Decrease(stitch, 1)) with { Hook = hook }], Math.Abs(change), Amount.Across) { Hook = hook };

    /// <summary>True if words take as many places wherever they are worked: they go into the next ones, one after the other.</summary>
    public static bool CanTake(IReadOnlyList<Word> words) => words.All(word => word switch
    {
        Work work => work is { Target.Aim: Aim.Next or Aim.Same, Amount.Reach: Reach.Fixed },
        Group group => group is { Target.Aim: Aim.Next or Aim.Same },
        Repeat repeat => repeat.Amount.Reach == Reach.Fixed && CanTake(repeat.Words),
        Chains or Skip => true,
        _ => false,
    });

    /// <inheritdoc/>
    public bool Equals(Spread? other) =>
        other is not null && Stitch == other.Stitch && Times == other.Times && Over == other.Over && AtEachEnd == other.AtEachEnd && Shifted == other.Shifted && Hook == other.Hook
        && WordLists.Same(Words, other.Words);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Stitch, Times, Over, AtEachEnd, Hook, WordLists.Hash(Words));
}

/// <summary>
/// One thing in each stitch and another in each space, to the end of the row or until some places remain. Becomes plain stitches and
/// repeats when the row is worked.
/// </summary>
/// <param name="InStitch">What goes into a stitch.</param>
/// <param name="InSpace">What goes into a space.</param>
/// <param name="Remain">Places that it stays away from at the row's end.</param>
public sealed record ByPlace(Work InStitch, Work InSpace, int Remain) : Word
{
    /// <summary>True if it goes to the next corner and no further; the places that it stays away from lie before that.</summary>
    public bool ToCorner { get; init; }

    /// <summary>What goes into a stitch and what goes into a space.</summary>
    public override IReadOnlyList<Word> Held => [InStitch, InSpace];

    /// <inheritdoc/>
    public override Reach Reach => ToCorner ? Reach.ToCorner : Reach.Until;
}
