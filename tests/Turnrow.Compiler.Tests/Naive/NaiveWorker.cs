namespace Turnrow.Compiler.Tests.Naive;

/// <summary>Works a whole pattern, size by size, piece by piece in the order of the file.</summary>
public sealed class NaiveWorker
{
    private readonly NaivePattern _pattern;
    private readonly TurnTable _turns;
    private readonly Dictionary<(string Piece, int Size), PieceResult> _results = [];

    private NaiveWorker(NaivePattern pattern)
    {
        _pattern = pattern;
        _turns = new TurnTable(pattern.Turns);
    }

    public static NaiveResult Work(NaivePattern pattern)
    {
        var worker = new NaiveWorker(pattern);
        for (var size = 0; size < pattern.Sizes.Count; size++)
        {
            foreach (var piece in pattern.Pieces)
                worker._results.Add((piece.Name, size), worker.WorkPiece(piece, size));
        }
        return new NaiveResult(pattern, worker._results);
    }

    private PieceResult WorkPiece(NaivePiece piece, int size)
    {
        var result = new PieceResult(piece.Name, size);
        var resolved = Mirror.Resolve(_pattern, piece);
        var work = new PieceWork(result, _turns, resolved.IsMirrored);
        try
        {
            Begin(resolved.Start, work, result);
            foreach (var statement in resolved.Statements)
                work.Work(statement);
            work.End();
        }
        catch (UnworkableException unworkable)
        {
            result.IsUnclear = unworkable is UnclearException;
            result.WhyNot = FormattableString.Invariant($"{piece.Name}, {_pattern.Sizes[size]}, after row {result.Rows.Count}: {unworkable.Message}");
        }
        return result;
    }

    private void Begin(Start start, PieceWork work, PieceResult result)
    {
        switch (start)
        {
            case BeginWith begin: work.BeginWith(begin.Stitches[result.Size]); break;
            case ChainStart chain: work.BeginWithChains(chain.Chains[result.Size]); break;
            case PartOf part: BeginPart(part, work, result); break;
            case PickedUp up: PickUp(up, work, result); break;
        }
    }

    private PieceResult Base(string piece, int size) =>
        _results.TryGetValue((piece, size), out var found) && found.IsValid && found.Rows.Count > 0
            ? found
            : throw new UnworkableException($"{piece} is not there to go on from");

    private void BeginPart(PartOf part, PieceWork work, PieceResult result)
    {
        var from = Base(part.Piece, result.Size);
        var last = from.Rows[^1];
        var count = part.Stitches[result.Size];
        if (count > last.Places.Count)
            throw new UnworkableException("the part needs more stitches than the row has");
        var firstPlace = part.Edge == Hand.Right ? 0 : last.Places.Count - count;
        for (var place = firstPlace; place < firstPlace + count; place++)
        {
            if (!from.UsedPlaces.Add(place))
                throw new UnworkableException("a stitch is used by two parts");
        }
        var side = Frame.Opposite(last.Side);
        var startsAt = Frame.StartOf(side) == Hand.Right ? firstPlace : firstPlace + count - 1;
        var hookAt = last.End == Hand.Right ? 0 : last.Places.Count - 1;
        var goesOn = startsAt == hookAt && !from.IsFastenedOff && !from.IsYarnTaken;
        from.IsYarnTaken |= goesOn;
        result.Yarn = goesOn ? YarnAt.GoesOn : YarnAt.JoinedAnew;
        var places = last.Places.Skip(firstPlace).Take(count).ToList();
        // Cut off at a corner, a part has an edge there.
        if (firstPlace > 0)
            places[0] = places[0] with { IsCorner = false };
        if (firstPlace + count < last.Places.Count)
            places[^1] = places[^1] with { IsCorner = false };
        work.GoOnFrom(places, side);
    }

    private void PickUp(PickedUp up, PieceWork work, PieceResult result)
    {
        var from = Base(up.Piece, result.Size);
        if (up.OnSameBase && up.Name is not null)
            throw new UnclearException("the base has no mirror, so its edge names are not mirrored");
        var hand = up.Hand ?? HandNamed(from, up.Name!);
        var rows = Within(up.Window, from.RowEnds(hand, up.Name), result.Size);
        if (HasStepAmong(from.Edge(hand), up.Name, rows))
            throw new UnclearException("the edge has a step between its rows");
        if (rows.Count == 0 || (up.Evenly is null && rows.Count * up.Stitches % up.PerRows != 0))
            throw new UnworkableException("the rate does not come out over these rows");
        // The edge is on top and is worked right to left: the right edge upwards, the left edge downwards.
        if (hand == Hand.Left)
            rows.Reverse();
        result.PickedUpRows = rows;
        // The yarn hangs at an end of the last row: it is there for a walk down from that row, and then no later part can go on with it.
        var goesOn = hand == Hand.Left && rows[0] == from.Rows.Count && from.Rows[^1].End == hand && !from.IsFastenedOff && !from.IsYarnTaken;
        from.IsYarnTaken |= goesOn;
        result.Yarn = goesOn ? YarnAt.GoesOn : YarnAt.JoinedAnew;
        var count = up.Evenly?[result.Size] ?? rows.Count * up.Stitches / up.PerRows;
        if (up.Claim is { } claim && claim[result.Size] != count)
            throw new UnworkableException(FormattableString.Invariant($"claimed {claim[result.Size]}, calculated {count}"));
        work.PickUp(up.Stitch, count);
    }

    /// <summary>A step is met on the walk if the row after it is in the window.</summary>
    private static bool HasStepAmong(List<Stretch> edge, string? name, List<int> rows) => edge.Exists(stretch =>
        stretch.Kind != StretchKind.RowEnd
        && (name is null || stretch.Name == name)
        && rows.Contains(stretch.Row));

    private static Hand HandNamed(PieceResult from, string name)
    {
        var hands = new[] { Hand.Right, Hand.Left }.Where(hand => from.RowEnds(hand, name).Count > 0).ToList();
        return hands.Count == 1 ? hands[0] : throw new UnworkableException($"{name} is not one edge of {from.Piece}");
    }

    private static List<int> Within(RowWindow window, List<int> rows, int size)
    {
        var count = window.Rows[size];
        if (count > rows.Count)
            throw new UnworkableException("the edge has fewer rows");
        return window.Kind switch
        {
            WindowKind.First => rows.Take(count).ToList(),
            WindowKind.Last => rows.TakeLast(count).ToList(),
            WindowKind.AllButFirst => rows.Skip(count).ToList(),
            WindowKind.AllButLast => rows.SkipLast(count).ToList(),
            _ => rows,
        };
    }
}
