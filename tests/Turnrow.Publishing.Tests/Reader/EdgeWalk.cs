using System.Text.RegularExpressions;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>
/// Picking up along edges, the edge on top and from right to left: with the right side facing she works up a right edge and down a left one.
/// </summary>
internal sealed partial class EdgeWalk(IReadOnlyDictionary<string, ReadPiece> pieces, bool rightSide, List<string> walked, List<string> doubts)
{
    /// <summary>The edge that she went along last.</summary>
    private (string Piece, Side Side)? _before;

    /// <summary>What stands behind `join yarn with sl st at`: the places from there on.</summary>
    public IReadOnlyList<Place> From(string text)
    {
        if (InTheEndOf().Match(text) is { Success: true } end)
        {
            var from = end.Groups["from"].Value;
            return RowEnds(Piece(end), end.Groups["edge"].Value, from, end.Groups["way"].Value, end.Groups["to"].Success ? end.Groups["to"].Value : from);
        }

        return Along(FirstOfThem().Replace(text, string.Empty).TrimEnd('.'));
    }

    /// <summary>`the armhole edge of Back from Row 9 up to its last row`, and what else lies along an edge.</summary>
    public IReadOnlyList<Place> Along(string text)
    {
        if (Rows().Match(text) is { Success: true } rows)
        {
            var piece = Piece(rows);
            var all = !rows.Groups["from"].Success;
            if (all && piece.Rows.Count > 1) throw new Misread($"along which rows of {piece.Title} is not said");
            return RowEnds(piece, rows.Groups["edge"].Value, all ? "Row 1" : rows.Groups["from"].Value, rows.Groups["way"].Value, all ? "Row 1" : rows.Groups["to"].Value);
        }

        if (AtStep().Match(text) is { Success: true } step) return Step(Piece(step), step.Groups["edge"].Value, step.Groups["what"].Value == "added ch");
        if (LastRow().Match(text) is { Success: true } last) return Top(Piece(last));
        if (Beginning().Match(text) is { Success: true } beginning) return Foot(Piece(beginning));
        throw new Misread($"`{text}` is no edge to go along");
    }

    private List<Place> RowEnds(ReadPiece piece, string name, string from, string way, string to)
    {
        var (first, last) = (RowOf(piece, from), RowOf(piece, to));
        if (way == "up" && first > last || way == "back" && first < last) throw new Misread($"{from} {way} to {to} is the other way round");
        Side? tells = way.Length == 0 ? null : way == "up" == rightSide ? Side.Right : Side.Left;
        var side = Find(piece, name, tells);
        var rows = first <= last ? Enumerable.Range(first, last - first + 1) : Enumerable.Range(last, first - last + 1).Reverse();
        foreach (var row in rows) walked.Add($"{piece.Title}, {side}, row {row}");
        _before = (piece.Title, side);
        return [.. rows.Select(_ => new Place(Seen.RowEnd))];
    }

    private List<Place> Step(ReadPiece piece, string name, bool added)
    {
        Side? near = _before?.Piece == piece.Title ? _before.Value.Side : null;
        var side = Find(piece, name, near ?? (piece.Called(name).Count == 1 ? null : rightSide ? Side.Right : Side.Left));
        var parts = piece.Edge(side).Where(part => part.Lies == (added ? Lies.AddedChain : Lies.LeftStitches)).ToList();
        if (parts.Count != 1) throw new Misread($"the {side} edge of {piece.Title} has {parts.Count} steps like that");
        walked.Add($"{piece.Title}, {side}, {(added ? "added" : "left")} {parts[0].Count}");
        _before = (piece.Title, side);
        return [.. Enumerable.Repeat(added ? new Place(Seen.Chain) : new Place(Seen.Stitch, "?"), parts[0].Count)];
    }

    private List<Place> Top(ReadPiece piece)
    {
        walked.Add($"{piece.Title}, last row");
        var places = piece.Rows[^1].FromRight.Where(place => place.Seen != Seen.SlipStitch).Select(place => place.Counts ? new Place(Seen.Stitch, "?") : place);
        return [.. rightSide ? places : places.Reverse()];
    }

    private List<Place> Foot(ReadPiece piece)
    {
        walked.Add($"{piece.Title}, foundation");
        return [.. Enumerable.Repeat(new Place(Seen.Chain), piece.FoundationStitches ?? throw new Misread($"{piece.Title} has no foundation"))];
    }

    /// <summary>Which edge a name means: what the piece's text has shown, or failing that the way she is told to go.</summary>
    private Side Find(ReadPiece piece, string name, Side? tells)
    {
        var called = piece.Called(name);
        if (called.Count == 1 && tells is { } told && told != called[0]) throw new Misread($"the {name} edge of {piece.Title} is its {called[0]} edge, and she is sent along the {told} one");
        if (called.Count == 1) return called[0];
        doubts.Add($"which edge of {piece.Title} is its {name} edge: {(called.Count == 0 ? "its text does not show it" : "both are")}");
        return tells ?? throw new Misread($"which edge of {piece.Title} is its {name} edge");
    }

    private static int RowOf(ReadPiece piece, string words)
    {
        var row = words == "its last row" ? piece.Rows.Count : Number.Of(words["Row ".Length..]);
        return row >= 1 && row <= piece.Rows.Count ? row : throw new Misread($"{piece.Title} has no {words}");
    }

    private ReadPiece Piece(Match match) =>
        pieces.GetValueOrDefault(match.Groups["piece"].Value) ?? throw new Misread($"there is no piece {match.Groups["piece"].Value}");

    private const string Row = @"Row \d+|its last row";

    [GeneratedRegex($@"^the (?<edge>.+) edge of (?<piece>.+), in the end of (?<from>{Row})(?:; work along the edge from there (?<way>up|back) to (?<to>{Row}))?\.$")]
    private static partial Regex InTheEndOf();

    [GeneratedRegex(@", in (?:the first of them|its first (?:st|ch) at the (?:right|left) edge)(?=\.$)")]
    private static partial Regex FirstOfThem();

    [GeneratedRegex($@"^the (?!beginning )(?!sts )(?!added )(?<edge>.+?) edge of (?<piece>.+?)(?: from (?<from>{Row}) (?<way>up|back) to (?<to>{Row}))?$")]
    private static partial Regex Rows();

    [GeneratedRegex(@"^the (?<what>sts left unworked|added ch) at the (?<edge>.+) edge of (?<piece>.+)$")]
    private static partial Regex AtStep();

    [GeneratedRegex(@"^the last row of (?<piece>.+)$")]
    private static partial Regex LastRow();

    [GeneratedRegex(@"^the beginning edge of (?<piece>.+)$")]
    private static partial Regex Beginning();
}
