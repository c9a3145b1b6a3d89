using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Pieces;

/// <summary>
/// Rows already worked by one set of turning-chain rules. Working a row is a function of its words and what is below, so a thousand like
/// rows are worked once.
/// </summary>
internal sealed class RowCache
{
    private readonly Dictionary<PlaceSequence, PlaceSequence> _known = [];
    private readonly Dictionary<Key, RowWork> _rows = [];
    private readonly Dictionary<(Stitch Stitch, EdgeChange Start, EdgeChange End, SpreadChange Evenly), IReadOnlyList<Word>> _shaped = [];

    public RowWork? Find(IReadOnlyList<Word> words, PlaceSequence below, Step? start, RowBegins begins, bool isRound) =>
        _rows.GetValueOrDefault(new Key(words, below, start is { Adds: true } ? start.Count : 0, begins, isRound));

    public void Keep(IReadOnlyList<Word> words, PlaceSequence below, Step? start, RowBegins begins, bool isRound, RowWork work) =>
        _rows[new Key(words, below, start is { Adds: true } ? start.Count : 0, begins, isRound)] = work;

    /// <summary>The words of a shaped row; the same ones for all that are shaped alike from where they start.</summary>
    public IReadOnlyList<Word> WordsOf(ShapedPlan plan, Hand start)
    {
        var key = (plan.Stitch, plan.At(start), plan.At(start.Opposite()), plan.Evenly);
        return _shaped.TryGetValue(key, out var words) ? words : _shaped[key] = plan.WordsFrom(start);
    }

    /// <summary>The one sequence that stands for all equal ones, so that keys compare by reference first.</summary>
    public PlaceSequence Intern(PlaceSequence places) => _known.TryGetValue(places, out var known) ? known : _known[places] = places;

    /// <summary>The words by reference: the same list object comes from the same line, or from <see cref="WordsOf"/>.</summary>
    private readonly record struct Key(IReadOnlyList<Word> Words, PlaceSequence Below, int Added, RowBegins Begins, bool IsRound);
}
