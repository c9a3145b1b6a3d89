using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;

namespace Turnrow.Fabric.Motifs;

/// <summary>How often pieces are made that motifs of a blanket are picked up around: once for each of these motifs.</summary>
public static class MotifNumbers
{
    /// <summary>Of each such piece by its name, how many are made in a size; the motifs themselves are not among them.</summary>
    public static IReadOnlyDictionary<string, long> Of(Pattern pattern, int size)
    {
        var motifs = new Dictionary<string, long>(StringComparer.Ordinal);
        foreach (var blanket in pattern.Blankets)
        {
            if (blanket.InSizes[size] is not { } made) continue;
            for (var kind = 0; kind < blanket.Motifs.Count; kind++) Add(motifs, blanket.Motifs[kind], made.Layout.Of(kind));
        }

        var bases = new Dictionary<string, long>(StringComparer.Ordinal);
        if (motifs.Count == 0) return bases;
        // A piece is picked up around earlier ones, which may be picked up around others in their turn.
        foreach (var piece in pattern.Pieces.Reverse())
        {
            var number = motifs.GetValueOrDefault(piece.Name) + bases.GetValueOrDefault(piece.Name);
            if (number == 0 || piece.InSizes[size].Start is not PickUpStart start) continue;
            foreach (var name in start.Walk.Select(static leg => leg.Piece.Name).Distinct()) Add(bases, name, number);
        }

        return bases;
    }

    private static void Add(Dictionary<string, long> numbers, string name, long more) => numbers[name] = numbers.GetValueOrDefault(name) + more;
}
