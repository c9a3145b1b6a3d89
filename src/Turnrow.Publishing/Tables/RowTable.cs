using System.Globalization;
using Turnrow.Fabric.Colours;
using Turnrow.Fabric.Numbers;
using Turnrow.Fabric.Patterns;
using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Publishing.Tables;

/// <summary>The rows of a pattern as flat records, in the order piece, size, row; of a blanket, each kind of motif that is joined is a piece.</summary>
public static class RowTable
{
    /// <summary>All records.</summary>
    /// <param name="pattern">The pattern.</param>
    /// <param name="lineOf">The line of the file that made a row; null to leave lines out.</param>
    public static IEnumerable<RowRecord> Of(Pattern pattern, Func<Row, int>? lineOf) =>
        from piece in TabledPieces.Of(pattern)
        from size in Enumerable.Range(0, Math.Min(piece.InSizes.Count, pattern.Sizes.Count))
        from record in Of(pattern, piece.InSizes[size], pattern.Sizes[size], lineOf)
        select record;

    /// <summary>The records of one piece in one size.</summary>
    /// <param name="pattern">The pattern, for its terms and gauges.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="size">The size's name.</param>
    /// <param name="lineOf">The line of the file that made a row; null to leave lines out.</param>
    public static IEnumerable<RowRecord> Of(Pattern pattern, Piece piece, string size, Func<Row, int>? lineOf)
    {
        var right = new EdgeNames(piece.Right);
        var left = new EdgeNames(piece.Left);
        Rational? height = Rational.Zero;
        var several = YarnsWorked.AreSeveral(pattern);
        foreach (var row in piece.Rows)
        {
            height = height is { } sum && pattern.Gauges.HeightOf([row]) is { } more ? sum + more : null;
            var (start, end) = row.StartsAt == Hand.Right ? (right, left) : (left, right);
            yield return new RowRecord(
                piece.Name,
                size,
                row.Number,
                row.RightSide ? "RS" : "WS",
                row.Work?.Stitches,
                row.Work is { } work ? CountsOf(work.Tops, pattern.Terms) : null,
                start.At(row, row.StartsAt),
                end.At(row, row.EndsAt),
                Rounded(pattern.Gauges.WidthOf(row)),
                Rounded(height),
                lineOf?.Invoke(row))
            { Yarns = several ? YarnsOf(row) : null };
        }
    }

    private static List<KeyValuePair<string, long>>? YarnsOf(Row row)
    {
        if (row.Work is not { } work || row.Yarn is not { } begun) return null;
        var yarns = new List<KeyValuePair<string, long>>();
        foreach (var yarn in YarnsWorked.In(row))
        {
            yarns.Add(new(yarn, YarnTally.Stitches(work, begun, yarn)));
        }

        return yarns;
    }

    private static List<KeyValuePair<string, int>> CountsOf(PlaceSequence tops, Terms terms)
    {
        var counts = new List<KeyValuePair<string, int>>();
        foreach (var kind in tops.Kinds())
        {
            var name = NameOf(kind.Place, terms);
            var at = counts.FindIndex(count => count.Key == name);
            if (at < 0) counts.Add(new(name, kind.Count));
            else counts[at] = new(name, counts[at].Value + kind.Count);
        }

        return counts;
    }

    private static string NameOf(Place place, Terms terms) => place.Kind == PlaceKind.Space
        ? string.Create(CultureInfo.InvariantCulture, $"ch-{place.Chains} sp")
        : (place.Stitch ?? StitchBook.Chain).In(terms).Abbreviation;

    private static decimal? Rounded(Rational? centimetres) =>
        centimetres is { } exact ? Math.Round((decimal)exact.Numerator / exact.Denominator, 2, MidpointRounding.AwayFromZero) : null;

    /// <summary>The names along an edge, row by row from the first.</summary>
    private sealed class EdgeNames(EdgeWalk walk)
    {
        private readonly string _hand = walk.Hand == Hand.Right ? "right" : "left";
        private int _stretch;

        // A row that does not reach the edge turns before it.
        public string At(Row row, Hand hand) => row.Reaches(hand) ? At(row.Number) : "before " + _hand;

        private string At(int row)
        {
            while (_stretch < walk.Stretches.Count && !Holds(walk.Stretches[_stretch], row)) _stretch++;
            return _stretch < walk.Stretches.Count && walk.Stretches[_stretch].Name is { } name ? $"{_hand} {name}" : _hand;
        }

        private static bool Holds(Stretch stretch, int row) =>
            stretch.Kind == StretchKind.RowEnds && row >= stretch.FirstRow && row <= stretch.LastRow;
    }
}
