namespace Turnrow.Compiler.Tests.Naive;

/// <summary>Works a whole pattern, size by size, piece by piece in the order of the file.</summary>
public sealed class NaiveWorker
{
    private static readonly string[] s_ordinals = ["first", "second", "third", "fourth"];

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
            {
                worker._results.Add((piece.Name, size), worker.WorkPiece(piece, size));
                // Each of several is made by itself and has edges of its own; they are told once, so the yarn is cut each time.
                for (var nth = 0; piece.Copies > 1 && nth < piece.Copies; nth++)
                {
                    var copy = worker.WorkPiece(piece, size);
                    copy.IsFastenedOff = true;
                    worker._results.Add((Copy(piece.Name, nth), size), copy);
                }
            }
        }
        return new NaiveResult(pattern, worker._results);
    }

    public static string Copy(string piece, int nth) => $"{s_ordinals[nth]} {piece}";

    private PieceResult WorkPiece(NaivePiece piece, int size)
    {
        var result = new PieceResult(piece.Name, size);
        var resolved = Mirror.Resolve(_pattern, piece);
        var work = new PieceWork(result, _turns, resolved.IsMirrored) { Yarn = _pattern.Yarns is [var first, ..] ? first : "", PlacesBeside = join => join.Places(Base(join.Piece, size)) };
        try
        {
            if (piece.Copies > 1 && piece.Start is not (BeginWith or FoundationRow or ChainStart))
                throw new UnworkableException("what is made several times begins by itself");
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
            case FoundationRow row: work.BeginWithFoundationRow(row.Stitch, row.Stitches[result.Size]); break;
            case ChainStart chain: work.BeginWithChains(chain.Chains[result.Size]); break;
            case RingOf: work.BeginWithRing(); break;
            case BothSidesOf both: work.BeginWithBothSides(both.Stitches[result.Size]); break;
            case PartOf part: BeginPart(part, work, result); break;
            case PickedUp up: PickUp(up, work, result); break;
            case PickedUpInside inside: PickUpInside(inside, work, result); break;
            case PickedUpLoops loops: PickUpLoops(loops, work, result); break;
            case PickedUpRim rim: PickUpRim(rim, work, result); break;
            case AcrossOf across: BeginAcross(across, work, result); break;
        }
    }

    private PieceResult Base(string piece, int size)
    {
        if (_pattern.Pieces.Any(made => made.Name == piece && made.Copies > 1))
            throw new UnworkableException($"it is not said which {piece}");
        return _results.TryGetValue((piece, size), out var found) && found.IsValid && found.Rows.Count > 0
            ? found
            : throw new UnworkableException($"{piece} is not there to go on from");
    }

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
        var isWhole = count == last.Places.Count;
        work.TakesYarn = hand => Takes(from, (hand == Hand.Right ? firstPlace == 0 : firstPlace + count == last.Places.Count) && (isWhole || HangsAt(last, hand)));
        var places = last.Places.Skip(firstPlace).Take(count).ToList();
        // Cut off at a corner, a part has an edge there.
        if (firstPlace > 0)
            places[0] = places[0] with { IsCorner = false };
        if (firstPlace + count < last.Places.Count)
            places[^1] = places[^1] with { IsCorner = false };
        work.Yarn = from.LastYarn;
        work.GoOnFrom(places, last.Side, last.IsRound);
    }

    /// <summary>The hook is at the end of a row, and where a round was joined, which is at both edges.</summary>
    private static bool HangsAt(RowResult last, Hand hand) => last.IsRound || last.End == hand;

    private static bool Takes(PieceResult from, bool isThere)
    {
        var goesOn = isThere && !from.IsFastenedOff && !from.IsYarnTaken;
        from.IsYarnTaken |= goesOn;
        return goesOn;
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
        work.PickUp(up.Stitch, count, false);
    }

    private void PickUpInside(PickedUpInside up, PieceWork work, PieceResult result)
    {
        var from = Base(up.Piece, result.Size);
        var edges = up.Names.Select(name => from.Inner.FindAll(inner => inner.Name == name)).ToList();
        if (edges.Exists(found => found.Count == 0))
            throw new UnworkableException("no such edge inside the piece");
        var counts = edges.Select(found => found.Sum(inner => inner.Count)).Sum();
        if (up.OnSameBase)
        {
            // Turned over, the first that a row holds is the last.
            var turned = edges.SelectMany(found => found).Select(inner => TurnedOver(from, inner)).Sum(inner => inner.Count);
            if (turned != counts)
                throw new UnworkableException("turned over, it is picked up along other stitches");
        }
        result.Yarn = YarnAt.JoinedAnew;
        work.PickUp(up.Stitch, counts, up.Around);
    }

    private void PickUpLoops(PickedUpLoops up, PieceWork work, PieceResult result)
    {
        var from = Base(up.Piece, result.Size);
        if (up.Row < 1 || up.Row >= from.Rows.Count || !from.Rows[up.Row].LeavesLoops)
            throw new UnworkableException("the row above left no loops of it");
        var places = from.Rows[up.Row - 1].Places;
        if (places.Any(place => place.IsSpace))
            throw new UnworkableException("a space has no loops");
        result.Yarn = YarnAt.JoinedAnew;
        work.PickUp(up.Stitch, places.Count, up.Around);
    }

    private void PickUpRim(PickedUpRim up, PieceWork work, PieceResult result)
    {
        var from = Base(up.Piece, result.Size);
        var walk = Rim.Walk(from, up.Edges, up.Around);
        if (up.OnSameBase && !Rim.AreAlike(walk, Rim.Walk(from, [.. up.Edges.Reverse().Select(Mirror.TurnedOver)], up.Around)))
            throw new UnclearException("the base has no mirror, and its edges are not alike");
        var row = Rim.PickedUp(walk, up);
        if (up.FromOtherEnd && !Rim.CornersLieAlike(row, Rim.PickedUp([.. Enumerable.Reverse(walk)], up)))
            throw new UnclearException("1 in 2 rows falls otherwise from the other end, so that it is no mirror image between its corners");
        if (up.Claim is { } claim && claim[result.Size] != row.Count)
            throw new UnworkableException(FormattableString.Invariant($"claimed {claim[result.Size]}, calculated {row.Count}"));
        result.PickedUpRows = walk.Where(place => place.Row > 0).Select(place => place.Row).ToList();
        // It hangs at an end of the last row: there a walk down the left edge begins, or one along that row.
        var last = from.Rows[^1];
        var goesOn = up.Edges[0] switch
        {
            RimEdge.Left => Takes(from, last.End == Hand.Left),
            RimEdge.LastRow => Takes(from, last.End == Hand.Right && !last.IsRound),
            _ => false,
        };
        result.Yarn = goesOn ? YarnAt.GoesOn : YarnAt.JoinedAnew;
        work.PickUp(up.Stitch, row, up.Around);
    }

    private static InnerEdge TurnedOver(PieceResult from, InnerEdge inner)
    {
        var row = from.Inner.FindAll(other => other.Row == inner.Row && other.IsBridge == inner.IsBridge);
        return row[row.Count - 1 - row.IndexOf(inner)];
    }

    private void BeginAcross(AcrossOf across, PieceWork work, PieceResult result)
    {
        var parts = across.Pieces.Select(piece => Base(piece, result.Size)).ToList();
        var inRows = parts.Select(part => part.Rows[^1]).Where(row => !row.IsRound).ToList();
        if (inRows.Select(row => row.Side).Distinct().Count() > 1)
            throw new UnworkableException("the pieces end on different sides");
        var last = inRows.Count > 0 ? inRows[0] : parts[0].Rows[^1];
        var places = new List<Place>();
        foreach (var part in parts)
        {
            var all = part.Rows[^1].Places;
            if (!Enumerable.Range(0, all.Count).All(part.UsedPlaces.Add))
                throw new UnworkableException("a stitch is used by two parts");
            places.AddRange(all);
        }
        // Of what is made several times each is cut off, since one yarn can't hang at all of them.
        work.TakesYarn = hand => (hand == Hand.Right ? 0 : parts.Count - 1) is var at && !across.Pieces[at].Contains(' ', StringComparison.Ordinal)
            && Takes(parts[at], HangsAt(parts[at].Rows[^1], hand));
        work.GoOnFrom(places, last.Side, last.IsRound);
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
