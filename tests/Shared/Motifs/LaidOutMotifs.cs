namespace Turnrow.Tests.Motifs;

/// <summary>
/// A blanket laid out on a table motif by motif, each where it lies, with the points of its corners: what a person sees who puts them down row by row from
/// the bottom, each row from left to right. Written from the meaning alone; it shares nothing with what counts them.
/// </summary>
internal sealed class LaidOutMotifs
{
    private readonly List<(int X, int Row)> _motifs = [];
    private readonly int _sides;

    private LaidOutMotifs(int sides) => _sides = sides;

    /// <summary>All motifs in the order in which they are worked, each with the sides on which something lies already.</summary>
    public IReadOnlyList<IReadOnlyList<int>> Joined { get; private set; } = [];

    /// <summary>How many are joined on which sides, in the order in which they come up; the very first is left out.</summary>
    public IReadOnlyList<(string Sides, int Count)> Kinds =>
        [.. Joined.Skip(1).GroupBy(static sides => string.Join(' ', sides)).Select(static kind => (kind.Key, kind.Count()))];

    /// <summary>Which of so many kinds each motif is, where they take turns along a row and each row begins with the next of them.</summary>
    public IReadOnlyList<int> Turns(int kinds)
    {
        var turns = new List<int>();
        var (begins, next) = (0, 0);
        for (var i = 0; i < _motifs.Count; i++)
        {
            if (i > 0 && _motifs[i].Row != _motifs[i - 1].Row)
            {
                begins = begins + 1 == kinds ? 0 : begins + 1;
                next = begins;
            }

            turns.Add(next);
            next = next + 1 == kinds ? 0 : next + 1;
        }

        return turns;
    }

    /// <summary>Puts them down.</summary>
    /// <param name="sides">Four sides or six.</param>
    /// <param name="across">In the lowest row and every second one.</param>
    /// <param name="between">In the others.</param>
    /// <param name="down">Rows.</param>
    public static LaidOutMotifs Of(int sides, int across, int between, int down)
    {
        var laid = new LaidOutMotifs(sides);
        for (var row = 0; row < down; row++)
        {
            var many = row % 2 == 0 ? across : between;
            // A motif is two wide. A shorter row lies between the motifs of a longer one; of two as long the upper one begins further right.
            var begins = sides == 4 ? 0 : across == between ? row % 2 : many < Math.Max(across, between) ? 1 : 0;
            for (var at = 0; at < many; at++) laid._motifs.Add((begins + (2 * at), row));
        }

        var there = new HashSet<(int X, int Row)>();
        var joined = new List<IReadOnlyList<int>>();
        foreach (var motif in laid._motifs)
        {
            joined.Add([.. Enumerable.Range(0, sides).Where(side => there.Contains(laid.Beyond(motif, side)))]);
            there.Add(motif);
        }

        laid.Joined = joined;
        return laid;
    }

    /// <summary>
    /// The sides at the rim as one walks round it with the motifs at one's left hand, from the left side of the first motif of the top row: which side it is, and whether it
    /// is another motif's than the one before.
    /// </summary>
    public IReadOnlyList<(int Side, bool IsOther)> Rim()
    {
        var there = _motifs.ToHashSet();
        var from = new Dictionary<(int X, int Y), ((int X, int Row) Motif, int Side)>();
        foreach (var motif in _motifs)
        {
            for (var side = 0; side < _sides; side++)
            {
                if (!there.Contains(Beyond(motif, side))) from.Add(Corner(motif, side), (motif, side));
            }
        }

        var top = _motifs.First(motif => motif.Row == _motifs[^1].Row);
        var at = (Motif: top, Side: 0);
        var rim = new List<(int, bool)> { (0, false) };
        while (true)
        {
            var next = from[Corner(at.Motif, (at.Side + 1) % _sides)];
            if (next == (top, 0)) return rim;
            rim.Add((next.Side, next.Motif != at.Motif));
            at = next;
        }
    }

    // What lies beyond a side: left, then round by the bottom.
    private (int X, int Row) Beyond((int X, int Row) motif, int side)
    {
        (int X, int Row)[] beyond = _sides == 4
            ? [(-2, 0), (0, -1), (2, 0), (0, 1)]
            : [(-2, 0), (-1, -1), (1, -1), (2, 0), (1, 1), (-1, 1)];
        return (motif.X + beyond[side].X, motif.Row + beyond[side].Row);
    }

    // The point where a side begins; rows of hexagons are three high from one to the next, and a tip reaches one beyond a flank.
    private (int X, int Y) Corner((int X, int Row) motif, int side)
    {
        (int X, int Y)[] corners = _sides == 4
            ? [(-1, 1), (-1, 0), (1, 0), (1, 1)]
            : [(-1, 1), (-1, -1), (0, -2), (1, -1), (1, 1), (0, 2)];
        return (motif.X + corners[side].X, (motif.Row * (_sides == 4 ? 1 : 3)) + corners[side].Y);
    }
}
