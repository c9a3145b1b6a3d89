using System.Text.RegularExpressions;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>
/// Picking up along edges, the edge on top and from right to left: with the right side facing she works up a right edge and down a left one.
/// </summary>
internal sealed partial class EdgeWalk(IReadOnlyDictionary<string, ReadPiece> pieces, bool rightSide, List<string> walked)
{
    /// <summary>What stands behind `join yarn with sl st at`: the places from there on.</summary>
    public IReadOnlyList<Place> From(string text)
    {
        if (InTheEndOf().Match(text) is { Success: true } end)
        {
            var from = end.Groups["from"].Value;
            return RowEnds(Piece(end), end.Groups["edge"].Value, from, end.Groups["way"].Value, end.Groups["to"].Success ? end.Groups["to"].Value : from);
        }

        var start = FirstOfThem().Match(text);
        var along = text.TrimEnd('.');
        if (start.Success)
        {
            along = text[..start.Index];
            if (!start.Groups["rim"].Success) CheckRound(along, start);
            else if (!rightSide) throw new Misread("that is not the corner that she meets first");
            if (start.Groups["order"].Success && Loops().IsMatch(along) && start.Groups["order"].Value == "first" != rightSide) throw new Misread("that is not the st that she meets first");
            if (start.Groups["end"].Success && start.Groups["end"].Value == "right" != (rightSide != IsAtFoot(text))) throw new Misread("she would go from left to right");
            if (start.Groups["most"].Success && start.Groups["most"].Value != FirstAtStep(along)) throw new Misread($"the first that she meets is not the {start.Groups["most"].Value}");
        }

        return Along(along);
    }

    // A ring or a round has no edges, but the ch or the st where it was joined, and with the right side facing that st is the first.
    private void CheckRound(string along, Match start)
    {
        if (Beginning().Match(along) is { Success: true } ring)
        {
            if (start.Groups["join"].Success != (Piece(ring).Rows[0] is { IsRound: true, Number: 1 })) throw new Misread("where along this edge she begins is not there");
            return;
        }

        if ((LastRow().Match(along) is { Success: true } last ? last : Open().Match(along)) is not { Success: true } row) return;
        var order = start.Groups["order"];
        if (order.Success != Piece(row).Rows[^1].IsRound || (order.Success && order.Value == "first" != rightSide)) throw new Misread("that is not the st that she meets first");
    }

    // The foundation and the other side of a bridge hang from the stitches on them: along these she goes from left to right.
    private static bool IsAtFoot(string text) =>
        text.StartsWith("the other side of the ch", StringComparison.Ordinal) || text.StartsWith("the beginning edge of ", StringComparison.Ordinal);

    // Going up an edge a step that narrows is met from outside, one that widens from inside.
    private string FirstAtStep(string text)
    {
        var step = AtStep().Match(text);
        var goesUp = rightSide == (Called(step.Groups["edge"].Value) == Side.Right);
        return goesUp == (step.Groups["what"].Value == "added ch") ? "innermost" : "outermost";
    }

    /// <summary>`the armhole edge of Back from Row 9 up to its last row`, and what else lies along an edge.</summary>
    public IReadOnlyList<Place> Along(string text)
    {
        if (Rows().Match(text) is { Success: true } rows)
        {
            var from = rows.Groups["from"].Value;
            return RowEnds(Piece(rows), rows.Groups["edge"].Value, from, rows.Groups["way"].Value, rows.Groups["to"].Success ? rows.Groups["to"].Value : from);
        }

        if (AtStep().Match(text) is { Success: true } step) return Step(Piece(step), step.Groups["edge"].Value, step.Groups["what"].Value, step.Groups["row"]);
        if (Open().Match(text) is { Success: true } open) return Between(Piece(open));
        if (PartOfRound().Match(text) is { Success: true } part) return Part(Piece(part), Number.Of(part.Groups["from"].Value), Number.Of(part.Groups["to"].Value));
        if (Held().Match(text) is { Success: true } held) return Inside(Piece(held), held.Groups["name"].Value, false);
        if (Bridge().Match(text) is { Success: true } bridge) return Inside(Piece(bridge), bridge.Groups["name"] is { Success: true, Value: var name } ? name : null, true);
        if (Loops().Match(text) is { Success: true } loops) return FreeLoops(Piece(loops), Number.Of(loops.Groups["row"].Value), Number.Of(loops.Groups["over"].Value), loops.Groups["side"].Value == "RS");
        if (SideOfMotif().Match(text) is { Success: true } side) return OfSide(Piece(side), side.Groups["name"].Value);
        if (LastRow().Match(text) is { Success: true } last) return Top(Piece(last));
        if (Beginning().Match(text) is { Success: true } beginning) return Foot(Piece(beginning));
        throw new Misread($"`{text}` is no edge to go along");
    }

    private List<Place> RowEnds(ReadPiece piece, string name, string from, string way, string to)
    {
        var (first, last) = (RowOf(piece, from), RowOf(piece, to));
        if (way == "up" && first > last || way == "back" && first < last) throw new Misread($"{from} {way} to {to} is the other way round");
        var side = Called(name);
        if (way.Length > 0 && way == "up" != (rightSide == (side == Side.Right))) throw new Misread($"with this side facing she would go {way} the {name} edge from left to right");
        var rows = first <= last ? Enumerable.Range(first, last - first + 1) : Enumerable.Range(last, first - last + 1).Reverse();
        foreach (var row in rows) walked.Add($"{piece.Title}, {side}, row {row}");
        return [.. rows.Select(_ => new Place(Seen.RowEnd))];
    }

    private List<Place> Step(ReadPiece piece, string name, string what, Group row)
    {
        var side = Called(name);
        var added = what == "added ch";
        var parts = piece.Edge(side).Where(part => part.Lies == (added ? Lies.AddedChain : Lies.LeftStitches)
            && (!row.Success || part.Row == Number.Of(row.Value))).ToList();
        if (parts.Count != 1) throw new Misread($"the {side} edge of {piece.Title} has {parts.Count} steps like that");
        var slipped = !added && piece.Rows[parts[0].Row - 1].StartsAt == side && piece.Rows[parts[0].Row - 1].Made[0].Seen == Seen.SlipStitch;
        if (slipped != (what == "slip-stitched sts")) throw new Misread($"at this step there are {(slipped ? "sl sts" : "no sl sts")}");
        walked.Add($"{piece.Title}, {side}, {(added ? "added" : "left")} {parts[0].Count}");
        return [.. Enumerable.Repeat(added ? new Place(Seen.Chain) : new Place(Seen.Stitch, "?"), parts[0].Count)];
    }

    // The markers in it are those of the piece that it ends, and stay there.
    private List<Place> Top(ReadPiece piece)
    {
        walked.Add($"{piece.Title}, last row");
        var places = piece.Rows[^1].FromRight.Where(place => place.Seen != Seen.SlipStitch).Select(place => place.Counts ? new Place(Seen.Stitch, "?") : place with { IsMarked = false });
        return [.. rightSide ? places : places.Reverse()];
    }

    // She looks for the loops where the row above went through the others: on the side that faced her for the back loops, else on the other.
    private List<Place> FreeLoops(ReadPiece piece, int row, int over, bool right)
    {
        if (over != row + 1 || over > piece.Rows.Count) throw new Misread($"Row {over} of {piece.Title} is not the one that left loops of Row {row}");
        var said = LoopsOf(piece.Steps[over]).ToList();
        if (said.Count == 0 || said.Contains(true) == said.Contains(false)) throw new Misread($"Row {over} of {piece.Title} leaves no loops free");
        if (said[0] == (piece.Rows[over - 1].RightSide == right)) throw new Misread($"these loops of {piece.Title} lie on the other side");
        walked.Add($"{piece.Title}, loops of row {row}");
        return [.. piece.Rows[row - 1].Made.Where(place => place.Seen != Seen.SlipStitch).Select(_ => new Place(Seen.Stitch, "?"))];
    }

    // True for each step that goes through front loops, false for each through back loops.
    private static IEnumerable<bool> LoopsOf(IEnumerable<Step> steps) => steps.SelectMany(step => step switch
    {
        RepeatSteps repeat => LoopsOf(repeat.Steps),
        WorkInto { Places.Loop: { Length: > 0 } loop } => [loop == "front"],
        WorkTogether together => together.Places.Where(places => places.Loop.Length > 0).Select(places => places.Loop == "front"),
        _ => [],
    });

    private List<Place> OfSide(ReadPiece piece, string name)
    {
        var side = piece.SideOf(name);
        walked.Add($"{piece.Title}, {name}, {side.Count}");
        var places = side.Select(place => place.Counts ? new Place(Seen.Stitch, "?") : place with { IsMarked = false });
        return [.. rightSide ? places : places.Reverse()];
    }

    // Between the parts that stand on the row.
    private List<Place> Between(ReadPiece piece)
    {
        var row = piece.Rows[^1].FromRight;
        var open = Enumerable.Range(0, row.Count).Where(at => !piece.Taken.Contains(at)).ToList();
        if (open.Count == 0 || open[^1] - open[0] >= open.Count) throw new Misread($"the sts left unworked in the last row of {piece.Title} do not lie side by side");
        walked.Add($"{piece.Title}, open {open.Count}");
        var places = open.Select(at => row[at].Counts ? new Place(Seen.Stitch, "?") : row[at]);
        return [.. rightSide ? places : places.Reverse()];
    }

    // A part of a last round, its sts counted from the beginning of that.
    private List<Place> Part(ReadPiece piece, int from, int to)
    {
        var row = piece.Rows[^1].FromRight;
        if (!piece.Rows[^1].IsRound || to > row.Count || Enumerable.Range(from - 1, to - from + 1).Any(piece.Taken.Contains)) throw new Misread($"these sts of {piece.Title} are not there to be worked into");
        walked.Add($"{piece.Title}, open {to - from + 1}");
        var places = row.Skip(from - 1).Take(to - from + 1).Select(place => place.Counts ? new Place(Seen.Stitch, "?") : place);
        return [.. rightSide ? places : places.Reverse()];
    }

    private List<Place> Foot(ReadPiece piece)
    {
        walked.Add($"{piece.Title}, foundation");
        return [.. Enumerable.Repeat(new Place(Seen.Chain), piece.FoundationStitches ?? throw new Misread($"{piece.Title} has no foundation"))];
    }

    // Round a gap she goes along what is held from right to left, and along the bridge from left to right.
    private List<Place> Inside(ReadPiece piece, string? name, bool bridge)
    {
        var found = piece.Inner.FindAll(inner => inner.IsBridge == bridge && inner.Name == name);
        if (found.Count != 1) throw new Misread($"{piece.Title} has {found.Count} such places");
        walked.Add($"{piece.Title}, {(bridge ? "bridge" : "held")} {found[0].Count} for {name}");
        return [.. Enumerable.Repeat(bridge ? new Place(Seen.Chain) : new Place(Seen.Stitch, "?"), found[0].Count)];
    }

    private static Side Called(string edge) => edge == "right" ? Side.Right : Side.Left;

    private static int RowOf(ReadPiece piece, string words)
    {
        var row = words == "its last row" ? piece.Rows.Count : Number.Of(words["Row ".Length..]);
        return row >= 1 && row <= piece.Rows.Count ? row : throw new Misread($"{piece.Title} has no {words}");
    }

    private ReadPiece Piece(Match match) =>
        pieces.GetValueOrDefault(match.Groups["piece"].Value) ?? throw new Misread($"there is no piece {match.Groups["piece"].Value}");

    private const string Row = @"Row \d+|its last row";

    private const string Edge = @"(?<edge>right|left) edge(?: \([^)]+\))? of (?<piece>[^,.]+?)";

    [GeneratedRegex($@"^the {Edge}, in the end of (?<from>{Row})(?:; work along the edge from there (?<way>up|back) to (?<to>{Row}))?\.$")]
    private static partial Regex InTheEndOf();

    [GeneratedRegex(@", in (?:the one nearest the (?<end>right|left) edge|the (?<most>outermost|innermost) of them|(?<rim>its top left corner)|(?<corner>the corner at its (?:beginning|end))|(?<join>the ch where the ring was joined)|its (?<order>first|last) st|the (?<order>first|last) of them|its first (?:st|ch) at the (?<end>right|left) edge|the one at their (?<end>right|left) end|the ch at its (?<end>right|left) end)\.$")]
    private static partial Regex FirstOfThem();

    [GeneratedRegex($@"^the {Edge} (?:from|at) (?<from>{Row})(?: (?<way>up|back) to (?<to>{Row}))?$")]
    private static partial Regex Rows();

    [GeneratedRegex($@"^the (?<what>sts left unworked|slip-stitched sts|added ch)(?: (?:of|by) Row (?<row>\d+))? at the {Edge}$")]
    private static partial Regex AtStep();

    [GeneratedRegex(@"^the sts left unworked in the last (?:row|round) of (?<piece>.+)$")]
    private static partial Regex Open();

    [GeneratedRegex(@"^stitches (?<from>\d+)-(?<to>\d+) of the last round of (?<piece>.+?) \( ?.+?\)$")]
    private static partial Regex PartOfRound();

    [GeneratedRegex(@"^the sts of (?<piece>.+) held for (?<name>.+)$")]
    private static partial Regex Held();

    [GeneratedRegex(@"^the other side of the ch (?:for (?<name>.+)|over the gap) of (?<piece>.+)$")]
    private static partial Regex Bridge();

    [GeneratedRegex(@"^the loops of (?:Row|Round) (?<row>\d+) of (?<piece>.+) left free on the (?<side>RS|WS) by (?:Row|Round) (?<over>\d+)$")]
    private static partial Regex Loops();

    [GeneratedRegex(@"^the (?<name>[a-z]+ side) of (?<piece>.+), from corner to corner$")]
    private static partial Regex SideOfMotif();

    [GeneratedRegex(@"^the (?:last (?:row|round)|rim) of (?<piece>.+)$")]
    private static partial Regex LastRow();

    [GeneratedRegex(@"^the beginning edge of (?<piece>.+)$")]
    private static partial Regex Beginning();
}
