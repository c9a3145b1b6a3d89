using System.Text.RegularExpressions;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>`sl st in next sp of the third side of Tile`: a stitch into another piece while this one is worked.</summary>
/// <param name="Skipped">Places passed over before.</param>
/// <param name="Place">What it goes into: row-end, sp, corner …</param>
/// <param name="IsNext">True of the next such place, whatever lies before it.</param>
/// <param name="Edge">The edge, `the third side of Tile`.</param>
internal sealed record JoinBeside(int Skipped, string Place, bool IsNext, string Edge) : Step;

/// <summary>
/// The edges that the maker joins a piece to: she holds both with the right side up, takes place after place, and must come to the end of each.
/// </summary>
internal sealed partial class JoinsInHand(IReadOnlyDictionary<string, ReadPiece> pieces)
{
    private readonly Dictionary<string, (string Way, Queue<Place> Left)> _edges = [];

    /// <summary>Reads `Joined as it is worked to …`; false if a paragraph is something else.</summary>
    public bool Begin(string paragraph)
    {
        if (Sentence().Match(paragraph) is not { Success: true } said) return false;
        var edge = said.Groups["edge"].Value;
        var places = Places(edge);
        if (places.Count != Number.Of(said.Groups["n"].Value)) throw new Misread($"{edge} has {places.Count} places");
        var way = said.Groups["way"].Value;
        if (way is "from its last row down" or "from its last corner back to its first" or "from its left end to its right" or "against the order in which it was worked") places.Reverse();
        else if (way is not ("from its first row up" or "from its first corner to its last" or "from its right end to its left" or "in the order in which it was worked")) throw new Misread($"`{way}` is no way");
        _edges[edge] = (way, new Queue<Place>(places));
        return true;
    }

    /// <summary>A motif of a blanket lies along another one: its side is met from its end.</summary>
    public void LayAlong(string edge, IEnumerable<Place> places) => _edges[edge] = ("from its last corner back to its first", new Queue<Place>(places.Reverse()));

    /// <summary>Joins what a row joins.</summary>
    public void Take(IEnumerable<JoinBeside> joins, ReadRow row)
    {
        foreach (var join in joins)
        {
            if (!_edges.TryGetValue(join.Edge, out var edge)) throw new Misread($"that it is joined to {join.Edge} is not said");
            if (IsBackwards(edge.Way) != LiesBackwards(join.Edge, row)) throw new Misread($"with both right sides up she would go the other way along {join.Edge}");
            for (var i = 0; i < join.Skipped; i++) _ = Next(edge.Left, join.Edge);
            var place = Next(edge.Left, join.Edge);
            while (!Is(place, join.Place))
            {
                // The next stitch may lie behind a space, as in a row.
                if (!join.IsNext || join.Place is "row-end" || (join.Place is "st" && place.Seen != Seen.Space)) throw new Misread($"what comes next along {join.Edge} is no {join.Place}");
                place = Next(edge.Left, join.Edge);
            }
        }
    }

    /// <summary>All of them have to be joined to their ends.</summary>
    public void End()
    {
        foreach (var (edge, (_, left)) in _edges)
        {
            if (left.Count > 0) throw new Misread($"{left.Count} places of {edge} are left");
        }
    }

    // The chain that a round began with is a stitch as the others are.
    private static bool Is(Place place, string word)
    {
        if (word == "corner") return place.IsMarked;
        if (word is "st and sp" or "row-end or st" || (place.Counts && (word == "st" || word == place.Stitch))) return true;
        var isSpace = word.StartsWith("ch-", StringComparison.Ordinal);
        return new PlaceName(isSpace ? "sp" : word, isSpace ? Number.Of(word[3..^3]) : 0).Fits(place);
    }

    private static Place Next(Queue<Place> left, string edge) => left.TryDequeue(out var place) ? place : throw new Misread($"nothing is left of {edge}");

    private static bool IsBackwards(string way) => way.Contains("down", StringComparison.Ordinal) || way.Contains("back", StringComparison.Ordinal) || way.Contains("to its right", StringComparison.Ordinal) || way.Contains("against", StringComparison.Ordinal);

    // A row that ends at its left edge lies to the right of the other piece and climbs along it; a round runs past what lies beside it. What was
    // worked round with the wrong side facing lies the other way round.
    private bool LiesBackwards(string edge, ReadRow row)
    {
        var againstClock = row.IsRound ? row.StartsAt == Side.Left : row.EndsAt == Side.Left;
        if (Edge().Match(edge) is { Success: true } named && IsAlongRound(named) && pieces[named.Groups["piece"].Value].Rows[^1].StartsAt == Side.Left) againstClock = !againstClock;
        return edge.StartsWith("the left edge", StringComparison.Ordinal) || edge.StartsWith("the beginning edge", StringComparison.Ordinal) ? againstClock : !againstClock;
    }

    private bool IsAlongRound(Match edge) => edge.Groups["side"].Success || (edge.Groups["round"].Success && pieces[edge.Groups["piece"].Value].Rows[^1].IsRound);

    private List<Place> Places(string edge)
    {
        var named = Edge().Match(edge);
        if (!named.Success || !pieces.TryGetValue(named.Groups["piece"].Value, out var piece)) throw new Misread($"`{edge}` is no edge");
        if (named.Groups["hand"] is { Success: true } hand)
        {
            var ends = piece.Edge(hand.Value == "right" ? Side.Right : Side.Left).ToList();
            return [.. ends.SelectMany(part => Enumerable.Repeat(new Place(part.Lies == Lies.RowEnd ? Seen.RowEnd : part.Lies == Lies.AddedChain ? Seen.AddedChain : Seen.Stitch, "?"), part.Count))];
        }

        if (named.Groups["side"] is { Success: true } side) return [.. piece.SideOf(side.Value)];
        if (named.Groups["foot"].Success) return [.. Enumerable.Repeat(new Place(Seen.Chain), piece.FoundationStitches ?? 0)];
        return [.. (piece.Rows[^1] is { IsRound: true } round ? round.Made : piece.Rows[^1].FromRight).Where(place => place.Seen != Seen.SlipStitch)];
    }

    [GeneratedRegex(@"^Joined as it is worked to (?<edge>the .+?), RS of both up, (?<way>[a-z ]+): (?<n>\d+) .+\.$")]
    private static partial Regex Sentence();

    [GeneratedRegex(@"^the (?:(?<hand>right|left) edge(?: \([^)]*\))?|(?<side>[a-z]+ side)|last (?:row|(?<round>round))|(?<foot>beginning edge)) of (?<piece>.+)$")]
    private static partial Regex Edge();
}
