using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Rows;

/// <summary>What a row is to be, before it is known what it is worked over.</summary>
public abstract record RowPlan
{
    /// <summary>The words in working order of a row that starts at an edge.</summary>
    public abstract IReadOnlyList<Word> WordsFrom(Hand start);
}

/// <summary>A row given by its words.</summary>
public sealed record WordsPlan(IReadOnlyList<Word> Words) : RowPlan
{
    /// <summary>The row of a stitch pattern that it is; null for none.</summary>
    public InPattern? Of { get; init; }

    /// <inheritdoc/>
    public override IReadOnlyList<Word> WordsFrom(Hand start) => Words;

    /// <inheritdoc/>
    public bool Equals(WordsPlan? other) => other is not null && WordLists.Same(Words, other.Words);

    /// <inheritdoc/>
    public override int GetHashCode() => WordLists.Hash(Words);
}

/// <summary>Single increases (above 0) or decreases (below 0) side by side at an edge.</summary>
/// <param name="Change">How many.</param>
/// <param name="StitchesIn">Plain stitches between the edge and the first of them.</param>
public readonly record struct EdgeChange(int Change, int StitchesIn)
{
    /// <summary>True if a stitch is passed over for each decrease, instead of two worked together.</summary>
    public bool Skips { get; init; }

    /// <summary>Places that the changes take, the plain stitches before them left out.</summary>
    internal int Takes => Change >= 0 ? Change : Skips ? (-2 * Change) - 1 : -2 * Change;
}

/// <summary>Increases (above 0) or decreases (below 0) spread evenly over a row.</summary>
/// <param name="Change">How many.</param>
/// <param name="Shifted">True if they lie half a gap further on than else.</param>
public readonly record struct SpreadChange(int Change, bool Shifted);

/// <summary>A plain row, with or without shaping at its edges or all along. It means the same wherever the row starts.</summary>
/// <param name="Stitch">The stitch.</param>
/// <param name="Right">Shaping at the right edge.</param>
/// <param name="Left">Shaping at the left edge.</param>
public sealed record ShapedPlan(Stitch Stitch, EdgeChange Right, EdgeChange Left) : RowPlan
{
    private IReadOnlyList<Word>? _fromRight;
    private IReadOnlyList<Word>? _fromLeft;

    // What is changed by `with` has words of its own: those of the original are not taken along.
    private ShapedPlan(ShapedPlan original) : base(original) => (Stitch, Right, Left, Evenly) = (original.Stitch, original.Right, original.Left, original.Evenly);

    /// <summary>What is spread over the row, between the shaping at its edges.</summary>
    public SpreadChange Evenly { get; init; }

    /// <summary>A row without shaping.</summary>
    public static ShapedPlan Plain(Stitch stitch) => new(stitch, default, default);

    /// <summary>True if nothing is shaped.</summary>
    public bool IsPlain => Right.Change == 0 && Left.Change == 0 && Evenly.Change == 0;

    /// <summary>The shaping at an edge.</summary>
    public EdgeChange At(Hand hand) => hand == Hand.Right ? Right : Left;

    /// <inheritdoc/>
    public override IReadOnlyList<Word> WordsFrom(Hand start) => start == Hand.Right
        ? _fromRight ??= Build(Right, Left)
        : _fromLeft ??= Right == Left ? WordsFrom(Hand.Right) : Build(Left, Right);

    /// <inheritdoc/>
    public bool Equals(ShapedPlan? other) =>
        other is not null && Stitch == other.Stitch && Right == other.Right && Left == other.Left && Evenly == other.Evenly;

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Stitch.Id, Right, Left, Evenly);

    private List<Word> Build(EdgeChange start, EdgeChange end)
    {
        var words = new List<Word>();
        if (start.Change != 0)
        {
            AddPlain(words, start.StitchesIn);
            AddChanges(words, start);
        }

        var keep = end.Change == 0 ? 0 : end.StitchesIn + end.Takes;
        var over = keep == 0 ? Amount.Across : Amount.Until(keep);
        words.Add(Evenly.Change == 0 ? Work.Plain(Stitch, over) : Spread.Of(Stitch, Evenly.Change) with { Over = over, Shifted = Evenly.Shifted });
        if (end.Change != 0)
        {
            AddChanges(words, end);
            AddPlain(words, end.StitchesIn);
        }

        return words;
    }

    private void AddPlain(List<Word> words, int count)
    {
        if (count > 0) words.Add(Work.Plain(Stitch, Amount.Of(count)));
    }

    // Between two that are skipped one is worked, as between two decreases side by side.
    private void AddChanges(List<Word> words, EdgeChange edge)
    {
        if (!edge.Skips || edge.Change > 0)
        {
            words.Add(edge.Change > 0 ? Work.Increase(Stitch, edge.Change) : Work.Decrease(Stitch, -edge.Change));
            return;
        }

        for (var i = 0; i < -edge.Change; i++)
        {
            if (i > 0) AddPlain(words, 1);
            words.Add(new Skip(1));
        }
    }
}
