using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Colours;

/// <summary>Which yarns are worked with.</summary>
public static class YarnsWorked
{
    /// <summary>The yarns that a pattern's pieces are worked with, in its own order.</summary>
    public static IReadOnlyList<Yarn> In(Pattern pattern)
    {
        if (pattern.Yarns.Count < 2) return pattern.Yarns;
        var used = new HashSet<string>(StringComparer.Ordinal);
        var seen = new HashSet<(string Yarn, RowWork? Work)>();
        foreach (var piece in pattern.Pieces)
        {
            foreach (var size in piece.InSizes)
            {
                foreach (var row in size.Rows)
                {
                    if (row.Yarn is { } yarn && seen.Add((yarn, row.Work))) used.UnionWith(In(row));
                }
            }
        }

        return [.. pattern.Yarns.Where(y => used.Contains(y.Name))];
    }

    /// <summary>True if a pattern is worked with several yarns, so that each piece has to say which.</summary>
    public static bool AreSeveral(Pattern pattern) => pattern.Yarns.Count > 1 && In(pattern).Count > 1;

    /// <summary>True if a piece is worked with several yarns in its sizes together.</summary>
    public static bool AreSeveral(IReadOnlyList<Piece> inSizes)
    {
        string? only = null;
        var seen = new HashSet<RowWork>(ReferenceEqualityComparer.Instance);
        foreach (var size in inSizes)
        {
            foreach (var row in size.Rows)
            {
                if (row.Yarn == only && row.Work is { } work && !seen.Add(work)) continue;
                foreach (var yarn in In(row))
                {
                    if (only is not null && only != yarn) return true;
                    only = yarn;
                }
            }
        }

        return false;
    }

    /// <summary>The yarns of a row, each once, as they come up.</summary>
    public static IReadOnlyList<string> In(Row row)
    {
        if (row.Yarn is not { } yarn) return [];
        if (row.Work is not { } work || !YarnWords.Has(work.Words)) return [yarn];
        var yarns = new List<string> { yarn };
        YarnWords.Visit(work.Words, yarn, (also, _, _) =>
        {
            if (!yarns.Contains(also)) yarns.Add(also);
        });
        return yarns;
    }

    /// <summary>What becomes of a yarn that rests after a row.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="index">The row's place in it, from 0.</param>
    /// <param name="yarn">The yarn.</param>
    /// <param name="most">The most stitches that it may be carried over.</param>
    public static YarnRest After(Piece piece, int index, string yarn, int most)
    {
        // So many rows a yarn is carried up along an edge; over more the ends are woven in instead.
        const int MostRows = 6;
        for (var i = index + 1; i < piece.Rows.Count; i++)
        {
            if (!In(piece.Rows[i]).Contains(yarn)) continue;
            if (piece.Rows[i].Yarn != yarn || piece.Rows[index].YarnAfter != yarn) return IsNear(piece.Rows[index], piece.Rows[i], yarn, most) ? YarnRest.Left : YarnRest.Cut;
            var there = piece.Rows[i].IsRound || piece.Rows[index].IsRound
                ? piece.Rows[i].IsRound && piece.Rows[index].IsRound
                : piece.Rows[i].StartsAt == piece.Rows[index].EndsAt;
            return there && i - index - 1 <= MostRows ? YarnRest.Carried : YarnRest.Cut;
        }

        return YarnRest.Cut;
    }

    // Between flat rows a yarn hangs where it was left: from the other end of the row it can't be brought over. Round a tube it goes on the way that the
    // work goes.
    private static bool IsNear(Row row, Row next, string yarn, int most)
    {
        if (row.IsRound || next.IsRound) return true;
        return YarnSpan.Of(row, yarn) is not { } left || YarnSpan.Of(next, yarn) is not { } taken || Math.Abs(left.Last - taken.First) <= most;
    }
}

/// <summary>What becomes of a yarn that rests.</summary>
public enum YarnRest
{
    /// <summary>It is not needed again, or not where it hangs: it is cut.</summary>
    Cut,

    /// <summary>It is needed at the end of the row in which it hangs too far back: it is cut there, and joined anew.</summary>
    CutThere,

    /// <summary>It is needed again where it hangs, and carried up to there.</summary>
    Carried,

    /// <summary>It is needed again within a row: it is not cut.</summary>
    Left,
}
