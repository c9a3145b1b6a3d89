using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Shaping;

/// <summary>Where a piece stands that is worked in a stitch pattern between edges of plain stitches.</summary>
/// <param name="Next">Index of the pattern's row that comes next.</param>
/// <param name="Repeats">Whole repeats.</param>
/// <param name="Right">Plain stitches at the right edge.</param>
/// <param name="Left">Plain stitches at the left edge.</param>
public readonly record struct EdgedState(int Next, int Repeats, int Right, int Left)
{
    /// <summary>Plain stitches at an edge.</summary>
    public int At(Hand hand) => hand == Hand.Right ? Right : Left;
}

/// <summary>Repeats that join the pattern at each edge in a row (1), or leave it (-1).</summary>
public readonly record struct RepeatMove(int Right, int Left)
{
    /// <summary>At an edge.</summary>
    public int At(Hand hand) => hand == Hand.Right ? Right : Left;
}

/// <summary>
/// A stitch pattern between edges of plain stitches. What is shaped is shaped in the edges; when one is wide enough a whole repeat joins the
/// pattern, and when it is used up a whole repeat leaves it. Either may happen only in a row in which the pattern then stands as if it had been that
/// wide from its beginning: that is tried with the row model itself, on a few repeats, since what happens at one edge does not reach the other.
/// </summary>
/// <param name="pattern">The pattern.</param>
/// <param name="edge">The stitch of its edges.</param>
/// <param name="rules">How rows are turned.</param>
/// <param name="ground">The yarn of the edges beside a row that says its own; null where there is none but the one in the hand.</param>
public sealed class EdgedPattern(StitchPattern pattern, Stitch edge, IReadOnlyDictionary<Stitch, TurnRule> rules, string? ground = null)
{
    // A repeat may leave at each edge, and there are some in the middle all the same.
    private readonly int _few = pattern.Least + 4;
    private readonly Dictionary<int, PatternAlone> _whole = [];
    private readonly Dictionary<Trial, Outcome?> _tried = [];
    private readonly Dictionary<(int, int, int, RepeatMove, string, string), IReadOnlyList<Word>> _words = [];
    private readonly Repeat? _first = FirstRepeat(pattern);

    /// <summary>The pattern.</summary>
    public StitchPattern Pattern => pattern;

    /// <summary>The edges' stitch.</summary>
    public Stitch Edge => edge;

    /// <summary>As many whole repeats as go over some places, and what is left over shared between the edges; null if there is room for none.</summary>
    public EdgedState? Begin(int places)
    {
        var repeats = (places - pattern.Plus) / pattern.Multiple;
        if (repeats < pattern.Least) return null;
        var over = places - pattern.Plus - (repeats * pattern.Multiple);
        return new EdgedState(0, repeats, over / 2, over - (over / 2));
    }

    /// <summary>
    /// Where the piece stands when stitches were left (below 0) or added at its edges since: an edge gets narrower or wider by them, and where it has
    /// too few, repeats leave the pattern. Null if too few are left.
    /// </summary>
    /// <param name="state">Where the piece stood.</param>
    /// <param name="before">Index of the pattern's row below.</param>
    /// <param name="right">Stitches added at the right edge.</param>
    /// <param name="left">Stitches added at the left edge.</param>
    public EdgedState? Stepped(EdgedState state, int before, int right, int left)
    {
        if (right == 0 && left == 0) return state;
        var places = pattern.PlacesMadeBy(before)?.PerRepeat ?? pattern.Multiple;
        var (lostRight, lostLeft) = (Lost(state.Right + right), Lost(state.Left + left));
        var repeats = state.Repeats - lostRight - lostLeft;
        if (repeats < pattern.Least) return null;
        return state with { Repeats = repeats, Right = state.Right + right + (lostRight * places), Left = state.Left + left + (lostLeft * places) };

        int Lost(int stitches) => stitches >= 0 ? 0 : (places - 1 - stitches) / places;
    }

    /// <summary>
    /// The next row with so many repeats more or fewer at each edge; null if the pattern then does not come out, or if an edge has too few stitches
    /// for its change.
    /// </summary>
    /// <param name="state">Where the piece stands.</param>
    /// <param name="below">The places in the row's working order, of the first row; null behind another such row.</param>
    /// <param name="before">Index of the pattern's row that was worked before, behind another such row.</param>
    /// <param name="start">The edge where the row starts.</param>
    /// <param name="right">The change at the right edge.</param>
    /// <param name="left">The change at the left edge.</param>
    /// <param name="move">Repeats that join or leave.</param>
    public (WordsPlan Plan, EdgedState State)? Row(EdgedState state, PlaceSequence? below, int before, Hand start, EdgeChange right, EdgeChange left, RepeatMove move)
    {
        var repeats = state.Repeats + move.Right + move.Left;
        if (repeats < pattern.Least) return null;
        var (atStart, atEnd) = start == Hand.Right ? (right, left) : (left, right);
        var trial = new Trial(state with { Repeats = below is null ? Math.Min(state.Repeats, _few) : state.Repeats }, before, start, atStart, atEnd, move);
        if ((below is null ? Tried(trial) : Try(trial, below)) is not { } row) return null;
        var (rightEdge, leftEdge) = start == Hand.Right ? (row.First, row.Last) : (row.Last, row.First);
        var next = new EdgedState(pattern.IndexOf(state.Next + 1), repeats, rightEdge, leftEdge);
        var places = (repeats * pattern.Multiple) + pattern.Plus + rightEdge + leftEdge;
        var of = new InPattern(pattern, state.Next, places) { Edge = edge, State = next, RightChange = right.Change, LeftChange = left.Change };
        return (new WordsPlan(row.Words) { Of = of }, next);
    }

    private Outcome? Tried(Trial trial)
    {
        if (!_tried.TryGetValue(trial, out var known)) _tried[trial] = known = Below(trial) is { } below ? Try(trial, below) : null;
        return known;
    }

    // What lies below a row behind another: the pattern as wide as it stands, between its edges.
    private PlaceSequence? Below(Trial trial)
    {
        if (Whole(trial.State.Repeats, trial.Before) is not { } whole) return null;
        var top = Place.TopOf(edge);
        return PlaceSequence.Of(top, trial.State.At(trial.Start)).Then(whole.Reversed()).Then(PlaceSequence.Of(top, trial.State.At(trial.Start.Opposite())));
    }

    private Outcome? Try(Trial trial, PlaceSequence below)
    {
        var (state, start, end, move) = (trial.State, trial.Start, trial.Start.Opposite(), trial.Move);
        if (EdgePlaces(below, state.At(start), move.At(start)) is not { } first || EdgePlaces(below.Reversed(), state.At(end), move.At(end)) is not { } last) return null;
        if (first + last >= below.Count) return null;
        var (atStart, atEnd) = (below.Slice(0, first), below.Slice(below.Count - last, last).Reversed());
        if (EdgeRow.Words(atStart, edge, trial.AtStart) is not { } opening || EdgeRow.Words(atEnd, edge, trial.AtEnd) is not { } closing) return null;
        var (madeFirst, madeLast) = (EdgeRow.Columns(atStart) + trial.AtStart.Change, EdgeRow.Columns(atEnd) + trial.AtEnd.Change);
        if (Whole(state.Repeats + move.Right + move.Left, state.Next) is not { } whole) return null;
        // A repeat that joins is worked as the others are; where that does not come out on plain stitches, as in the pattern's first row.
        foreach (var joins in (ReadOnlySpan<RepeatMove>)[default, new RepeatMove(Math.Max(0, move.At(start)), Math.Max(0, move.At(end)))])
        {
            if (Known(state.Next, first, last, joins, opening, closing) is not { } words) continue;
            var worked = RowWorker.Work(words, below);
            if (worked.Fault is not null || worked.Tops.Count < madeFirst + madeLast) continue;
            if (SamePlaceKinds.Are(worked.Tops.Slice(madeFirst, worked.Tops.Count - madeFirst - madeLast), whole)) return new Outcome(words, madeFirst, madeLast);
        }

        return null;
    }

    // Places of the row below that the edge is worked over: its own less a repeat that joins, or with those of a repeat that leaves.
    private int? EdgePlaces(PlaceSequence fromEdge, int stitches, int joins)
    {
        if (stitches > fromEdge.Count) return null;
        if (joins > 0) return stitches >= pattern.Multiple ? stitches - pattern.Multiple : null;
        return joins == 0 ? stitches : EdgeRow.PlacesOver(fromEdge, stitches + pattern.Multiple);
    }

    // The same words for rows that are alike, so that each is worked once.
    private IReadOnlyList<Word>? Known(int index, int first, int last, RepeatMove joins, IReadOnlyList<Word> opening, IReadOnlyList<Word> closing)
    {
        var key = (index, first, last, joins, EdgeRow.Key(opening), EdgeRow.Key(closing));
        if (_words.TryGetValue(key, out var known)) return known;
        var behind = last + (joins.Left * pattern.Multiple);
        List<Word> words = [.. EdgeRow.Between(pattern.Rows[index].Words, first, behind)];
        if (joins != default && !Join(words, joins)) return null;
        return _words[key] = EdgeRow.Joined(InGround(opening, words, [.. closing.Reverse()]));
    }

    // The colours of a pattern end where the pattern does: the edges are of the yarn that lies round it.
    private IReadOnlyList<Word> InGround(IReadOnlyList<Word> opening, List<Word> words, IReadOnlyList<Word> closing)
    {
        if (ground is null || YarnWords.First(words) is not { } first) return [.. opening, .. words, .. closing];
        var change = new ChangeYarn(ground);
        var behind = opening.Count > 0 && first == ground ? YarnWords.WithoutFirst(words) : words;
        return
        [
            .. opening.Count > 0 ? [change, .. opening] : opening,
            .. behind,
            .. closing.Count > 0 && YarnWords.Last(words) != ground ? [change, .. closing] : closing,
        ];
    }

    // Puts the first row's repeat beside the row's own, before it (right) or behind it (left).
    private bool Join(List<Word> words, RepeatMove joins)
    {
        var at = words.FindIndex(static word => word is Repeat { Amount.Reach: not Reach.Fixed });
        if (_first is not { } repeat || at < 0) return false;
        // What is skipped behind the last repeat belongs to that one: it would push the new one out of its middle.
        var behind = at + 1;
        while (behind < words.Count && words[behind] is Skip) behind++;
        if (joins.Left > 0) words.InsertRange(behind, repeat.Words);
        if (joins.Right > 0) words.InsertRange(at, repeat.Words);
        return true;
    }

    // What the pattern's first row repeats, if one time of it is one repeat.
    private static Repeat? FirstRepeat(StitchPattern pattern)
    {
        foreach (var word in pattern.Rows[0].Words)
        {
            if (word is not Repeat { Amount.Reach: not Reach.Fixed } repeat) continue;
            return RowWorker.Work(repeat.Words, PlaceSequence.Of(Place.TopOf(StitchBook.Single), pattern.Multiple)).Fault is null ? repeat : null;
        }

        return null;
    }

    // What the pattern's row makes where it is so wide from its beginning: the last time that it comes, so that it lies on the pattern itself.
    private PlaceSequence? Whole(int repeats, int index)
    {
        if (!_whole.TryGetValue(repeats, out var alone)) _whole[repeats] = alone = new PatternAlone(pattern, repeats, rules);
        return alone.Tops(index);
    }

    // What a row's coming out depends on; nothing else tells one trial from another.
    private readonly record struct Trial(EdgedState State, int Before, Hand Start, EdgeChange AtStart, EdgeChange AtEnd, RepeatMove Move);

    // A row that comes out: its words, and the stitches of its edges in working order.
    private sealed record Outcome(IReadOnlyList<Word> Words, int First, int Last);
}
