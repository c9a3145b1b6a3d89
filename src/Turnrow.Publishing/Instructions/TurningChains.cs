using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;
using Turnrow.Publishing.Instructions.Telling;

namespace Turnrow.Publishing.Instructions;

/// <summary>The turning chains that a pattern's rows open with.</summary>
internal sealed class TurningChains
{
    private readonly List<Opening> _ways = [];
    private readonly HashSet<Opening> _ofRows = [];
    private readonly HashSet<Opening> _ofRounds = [];

    private TurningChains()
    {
    }

    /// <summary>Each way in which rows are turned, in order of first use.</summary>
    public IReadOnlyList<Opening> Ways => _ways;

    /// <summary>True if rows that are turned begin in this way.</summary>
    public bool IsOfRows(Opening way) => _ofRows.Contains(way);

    /// <summary>True if there are rounds that are not joined.</summary>
    public bool HasSpirals { get; private set; }

    /// <summary>True if rounds begin in this way.</summary>
    public bool IsOfRounds(Opening way) => _ofRounds.Contains(way);

    /// <summary>Reads them off a pattern's rows.</summary>
    public static TurningChains Of(Pattern pattern)
    {
        var chains = new TurningChains();
        foreach (var piece in pattern.Pieces)
        {
            foreach (var inSize in piece.InSizes)
            {
                Row? last = null;
                foreach (var row in inSize.Rows)
                {
                    // A round that comes after a row may be worked as a row was.
                    if (row.Work is { } work && (!ReferenceEquals(work, last?.Work) || row.IsRound != last.IsRound) && !IsSpiral(row)) chains.Take(work, row.IsRound);
                    chains.HasSpirals |= IsSpiral(row);
                    last = row;
                }
            }
        }

        return chains;
    }

    /// <summary>True if rows that begin with a stitch are turned by one rule in the whole pattern.</summary>
    public bool IsTheSameThroughout(Stitch stitch)
    {
        var ways = 0;
        foreach (var way in _ways) ways += way.Stitch == stitch ? 1 : 0;
        return ways <= 1;
    }

    // Chains of a foundation, and those lengthened by a space or shortened for a decrease, say what they are themselves.
    private void Take(RowWork work, bool isRound)
    {
        var opening = work.Opening;
        if (opening is not { Stitch: not null, FirstStitchIn: 0, Space: 0, Chains: > 0 }) return;
        if (opening.Counts && Leading.First(work.Words) is Work { IsDecrease: true }) return;
        if (!_ways.Contains(opening)) _ways.Add(opening);
        (isRound ? _ofRounds : _ofRows).Add(opening);
    }

    // Only its first round begins with a chain, and says so.
    private static bool IsSpiral(Row row) => row is { IsRound: true, Way: RoundWay.Spiral };
}
