namespace Turnrow.Fabric.Motifs;

/// <summary>
/// How the motifs of a blanket lie: squares in rows and columns, hexagons in rows that are set off by half a motif. They are worked row by row from
/// the bottom up, each row from left to right. A motif's first side lies at its left, and the others follow it against the clock, so those that
/// are joined are the sides in front: the left one, and what lies below.
/// </summary>
/// <param name="Sides">Sides of a motif: four, or six.</param>
/// <param name="Across">Motifs in the first row, the lowest, and in every second one from there.</param>
/// <param name="Between">Motifs in the rows between; of squares as many.</param>
/// <param name="Down">Rows.</param>
public sealed record MotifLayout(int Sides, int Across, int Between, int Down)
{
    /// <summary>How many kinds of motif take turns along each row; each row begins with the next one.</summary>
    public int Turns { get; init; } = 1;

    /// <summary>Which kind a motif is, from 0.</summary>
    /// <param name="row">Its row, from 1 from the bottom up.</param>
    /// <param name="at">Its place in the row, from 1 at the left.</param>
    public int KindAt(int row, int at) => (int)((row + (long)at - 2) % Turns);

    /// <summary>All motifs of a kind.</summary>
    public long Of(int kind)
    {
        var sum = 0L;
        for (var row = 1; row <= Down; row++) sum += Among(row, 1, In(row), kind);
        return sum;
    }

    // Of the motifs of a row from one to another, how many are of a kind.
    private int Among(int row, int from, int to, int kind)
    {
        var first = from + (((kind - KindAt(row, from)) % Turns) + Turns) % Turns;
        return first > to ? 0 : 1 + ((to - first) / Turns);
    }

    /// <summary>True if each row is set off by half a motif.</summary>
    public bool IsSetOff => Sides == 6;

    /// <summary>All motifs.</summary>
    public long Motifs => ((Down + 1L) / 2 * Across) + (Down / 2L * Between);

    /// <summary>Motifs in the longest row.</summary>
    public int Longest => Down > 1 ? Math.Max(Across, Between) : Across;

    /// <summary>How wide the whole is, in halves of a motif.</summary>
    public int HalvesAcross => (2 * Longest) + (IsSetOff && Down > 1 && Across == Between ? 1 : 0);

    /// <summary>Motifs in a row, counted from 1 from the bottom up.</summary>
    public int In(int row) => row % 2 != 0 ? Across : Between;

    /// <summary>By how many halves of a motif a row begins behind the row that begins furthest left.</summary>
    public int Offset(int row) => IsSetOff && (row % 2 != 0) == Across < Between && (Down > 1) ? 1 : 0;

    /// <summary>What lies beside a motif when it is worked, along each of its sides.</summary>
    /// <param name="row">Its row, from 1 from the bottom up.</param>
    /// <param name="at">Its place in the row, from 1 at the left.</param>
    public Neighbour?[] Beside(int row, int at)
    {
        var beside = new Neighbour?[Sides];
        if (at > 1) beside[0] = Neighbour.Before;
        if (row == 1) return beside;
        if (!IsSetOff)
        {
            beside[1] = Neighbour.Below;
            return beside;
        }

        // Of the two below, the right one; a row that begins further right has its first motif between the first two.
        var right = at + Offset(row) - Offset(row - 1) + (Offset(row) > Offset(row - 1) ? 0 : 1);
        if (right - 1 >= 1) beside[1] = Neighbour.BelowLeft;
        if (right <= In(row - 1)) beside[2] = Neighbour.BelowRight;
        return beside;
    }

    /// <summary>Which motifs are joined alike, and how many of them there are, in the order in which they come up; without the very first.</summary>
    public IReadOnlyList<(IReadOnlyList<Neighbour?> To, int Kind, long Count)> Kinds()
    {
        var kinds = new List<(IReadOnlyList<Neighbour?> To, int Kind, long Count)>();
        // All rows of a parity lie alike on the rows below; the lowest lies on none.
        foreach (var (row, rows) in ((int, int)[])[(1, 1), (2, Down / 2), (3, (Down - 1) / 2)])
        {
            if (rows == 0) continue;
            var many = In(row);
            if (row > 1) Add(row, rows, 1, 1);
            if (many > 2) Add(row, rows, 2, many - 1);
            if (many > 1) Add(row, rows, many, many);
        }

        return kinds;

        // Every second row from one on; which kinds they have comes round as the kinds do.
        void Add(int row, int rows, int from, int to)
        {
            var beside = Beside(row, from);
            for (var kind = 0; kind < Turns; kind++)
            {
                var count = 0L;
                for (var i = 0; i < Math.Min(rows, Turns); i++) count += (1 + ((rows - 1L - i) / Turns)) * Among(row + (2 * i), from, to, kind);
                if (count == 0) continue;
                var at = kinds.FindIndex(k => k.Kind == kind && k.To.SequenceEqual(beside));
                if (at < 0) kinds.Add((beside, kind, count));
                else kinds[at] = (beside, kind, kinds[at].Count + count);
            }
        }
    }

    /// <summary>The sides that lie at the rim, against the clock from the corner at the top left; what comes again and again is said once.</summary>
    public IReadOnlyList<RimPart> Rim() => IsSetOff ? SetOff() : Straight();

    private IReadOnlyList<RimPart> Straight()
    {
        var parts = new List<RimPart>();
        for (var side = 0; side < Sides; side++)
        {
            parts.Add(new([new(side, false)], 1));
            parts.Add(new([new(side, true)], (side % 2 == 0 ? Down : Across) - 1));
        }

        return parts;
    }

    private IReadOnlyList<RimPart> SetOff()
    {
        var parts = new List<RimPart> { new([new(0, false)], 1) };
        // Down the left side a row either stands out over the one below it, or that one over it.
        RimSide[] outDown = [new(1, false), new(0, true)], inDown = [new(5, true), new(0, false)];
        AddByTurns(parts, IsOutAtLeft(Down) ? outDown : inDown, IsOutAtLeft(Down) ? inDown : outDown);
        parts.Add(new([new(1, false), new(2, false)], 1));
        parts.Add(new([new(1, true), new(2, false)], In(1) - 1));
        parts.Add(new([new(3, false)], 1));
        RimSide[] outUp = [new(4, false), new(3, true)], inUp = [new(2, true), new(3, false)];
        AddByTurns(parts, IsOutAtRight(1) ? outUp : inUp, IsOutAtRight(1) ? inUp : outUp);
        parts.Add(new([new(4, false), new(5, false)], 1));
        parts.Add(new([new(4, true), new(5, false)], In(Down) - 1));
        return parts;
    }

    // From each row to the next one; the two ways take turns.
    private void AddByTurns(List<RimPart> parts, RimSide[] one, RimSide[] other)
    {
        parts.Add(new([.. one, .. other], (Down - 1) / 2));
        if (Down % 2 == 0) parts.Add(new(one, 1));
    }

    private bool IsOutAtLeft(int row) => Down > 1 && Offset(row) == 0;

    private bool IsOutAtRight(int row) => Down > 1 && Offset(row) + (2 * In(row)) == HalvesAcross;
}

/// <summary>A side of a motif at the rim.</summary>
/// <param name="Side">Which, from 0.</param>
/// <param name="IsOtherMotif">True if the side before it is another motif's, so that two corners lie side by side; else its corner is one, and stands out.</param>
public readonly record struct RimSide(int Side, bool IsOtherMotif);

/// <summary>Sides at the rim that come so many times.</summary>
/// <param name="Sides">The sides.</param>
/// <param name="Times">How often.</param>
public sealed record RimPart(IReadOnlyList<RimSide> Sides, int Times);
