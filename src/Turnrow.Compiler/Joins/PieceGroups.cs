using Turnrow.Compiler.Diagnostics.Kinds;
using Turnrow.Compiler.Pieces;
using Turnrow.Fabric.Pieces;

namespace Turnrow.Compiler.Joins;

/// <summary>
/// Looks whether a whole pattern falls apart into groups of pieces that are joined to one another and to no other. Two that mirror each other are a
/// pair, as mittens are, and so are those that are made alike.
/// </summary>
internal static class PieceGroups
{
    public static void Add(Context context, PieceBook book)
    {
        var groups = GroupsOf(book);
        var first = groups.Find(g => g.Count > 1);
        foreach (var group in groups)
        {
            if (group.Count < 2 || group == first || IsMirrored(book, group) || group.TrueForAll(static piece => piece.CopyOf is not null)) continue;
            context.Findings.Add(PieceUnjoined.Group(group[0].Span, [.. group.Select(p => p.Name)], first![0].Name));
        }
    }

    private static bool IsMirrored(PieceBook book, List<PieceState> group) =>
        group.Exists(piece => book.MirrorOf(piece.Name) is { } mirror && !group.Contains(mirror));

    private static List<List<PieceState>> GroupsOf(PieceBook book)
    {
        var joined = new Dictionary<PieceState, List<PieceState>>();
        foreach (var piece in book.Made) joined[piece] = [];
        foreach (var piece in book.Made)
        {
            foreach (var name in BeganFrom(piece.Finished[0].Start))
            {
                if (book.Find(name) is { } other) Join(piece, OwnOf(other, piece));
            }
        }

        foreach (var (first, second) in book.Seams)
        {
            foreach (var walk in first.Concat(second)) Join(first[0].Piece, walk.Piece);
        }

        foreach (var (one, other) in book.JoinedAsTheyGo) Join(one, other);
        var groups = new List<List<PieceState>>();
        var seen = new HashSet<PieceState>();
        foreach (var piece in book.Made)
        {
            if (!seen.Add(piece)) continue;
            var group = new List<PieceState> { piece };
            for (var i = 0; i < group.Count; i++) group.AddRange(joined[group[i]].Where(seen.Add));
            groups.Add(group);
        }

        return groups;

        // Where it is not said which of several is meant, that was told.
        void Join(PieceState one, PieceState other)
        {
            if (!joined.TryGetValue(one, out var ofOne) || !joined.TryGetValue(other, out var ofOther)) return;
            ofOne.Add(other);
            ofOther.Add(one);
        }
    }

    // Where both are made several times, each began at its own.
    private static PieceState OwnOf(PieceState other, PieceState piece) =>
        piece.CopyOf is { } model && other.Copies.Count == model.Copies.Count ? other.Copies[model.Copies.ToList().IndexOf(piece)] : other;

    private static IEnumerable<string> BeganFrom(PieceStart? start) => start switch
    {
        PartStart part => [part.Base.Name],
        AcrossStart across => across.Parts.Select(part => part.Base.Name).Distinct(),
        PickUpStart pickUp => pickUp.Walk.Select(leg => leg.Piece.Name).Distinct(),
        _ => [],
    };
}
