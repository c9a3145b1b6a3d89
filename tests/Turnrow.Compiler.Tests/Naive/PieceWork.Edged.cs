namespace Turnrow.Compiler.Tests.Naive;

/// <content>
/// A stitch pattern between plain edges: in each row the middle is what a pattern so wide from its beginning would make there, and what is shaped is
/// shaped in the edges. Where a repeat would join or leave, this model does not say which row that is.
/// </content>
public sealed partial class PieceWork
{
    private readonly record struct EdgedState(StitchPattern Pattern, int Worked, int Right, int Left);

    private EdgedState? _edged;

    private void WorkEdged(EdgedIn line)
    {
        GoOnAs(line);
        if (_inRounds || NextRow == 1 || _addLater is not null || _asked.Sum() + _waiting.Sum(pile => pile.Count) > 0 || _in?.Pattern == line.Pattern)
            throw new UnclearException("what stands beside the pattern there is not told");
        var goesOn = _edged is { } before && before.Pattern == line.Pattern;
        if (goesOn && result.Edge(Hand.Right).Concat(result.Edge(Hand.Left)).Any(stretch => stretch.Row == NextRow))
            throw new UnclearException("a step between rows of a pattern with edges");
        var state = goesOn ? _edged!.Value : BeginEdged(line);
        var shaping = new ShapingWork(line.Rows[Size], line.Schedules, _manner, HandsOf);
        for (var row = 1; row <= line.Rows[Size]; row++)
            state = MakeEdged(state, line.Stitch, shaping.At(Hand.Right, row), shaping.At(Hand.Left, row));
    }

    /// <summary>As many whole repeats as there is room for; of what is left over half stands at each edge, the larger half at the left.</summary>
    private EdgedState BeginEdged(EdgedIn line)
    {
        if (!line.IsNamed)
            throw new UnworkableException("the piece is worked in no pattern that could go on");
        var (count, pattern) = (Ahead().Count, line.Pattern);
        if ((count - pattern.Plus) / pattern.Multiple < 2 || Ahead().Exists(place => place.IsSpace || place.IsCorner))
            throw new UnclearException("so few repeats, or what they stand on, is another matter");
        var over = (count - pattern.Plus) % pattern.Multiple;
        return isMirrored ? new(pattern, 0, over - (over / 2), over / 2) : new(pattern, 0, over / 2, over - (over / 2));
    }

    private EdgedState MakeEdged(EdgedState state, string stitch, EdgeTask right, EdgeTask left)
    {
        if (Math.Max(state.Right, state.Left) >= state.Pattern.Multiple || ShapingWork.Taken(right) > state.Right || ShapingWork.Taken(left) > state.Left || right.Left + left.Left + right.Later + left.Later > 0)
            throw new UnclearException("a repeat joins or leaves, or a step is made");
        TurnRound(false);
        var below = InOrder();
        var wordSide = isMirrored ? Frame.Opposite(_order) : _order;
        var middle = new RowWork(Frame.InWorkingOrder([.. below.Skip(state.Right).SkipLast(state.Left)], wordSide), Size);
        middle.Work(state.Pattern.Row(state.Worked));
        var atRight = ShapingWork.MakeRow([.. below.Take(state.Right)], stitch, right, default);
        var atLeft = ShapingWork.MakeRow([.. below.TakeLast(state.Left)], stitch, default, left);
        _plain = null;
        MakeRow([.. atRight, .. Frame.InWorkingOrder(middle.Made, wordSide), .. atLeft]);
        var next = new EdgedState(state.Pattern, state.Worked + 1, atRight.Count, atLeft.Count);
        _edged = next;
        return next;
    }
}
