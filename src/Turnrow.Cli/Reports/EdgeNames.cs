using Turnrow.Fabric.Pieces;
using Turnrow.Fabric.Rows;

namespace Turnrow.Cli.Reports;

/// <summary>What the ends of a piece's rows are called: <c>right neck</c>, or <c>right</c> where the edge has no name.</summary>
internal sealed class EdgeNames(Piece piece)
{
    private readonly string?[] _right = NamesOf(piece.Right, piece.Rows.Count);
    private readonly string?[] _left = NamesOf(piece.Left, piece.Rows.Count);

    /// <summary>Where a row starts.</summary>
    public string StartOf(Row row) => At(row, row.StartsAt);

    /// <summary>Where a row ends.</summary>
    public string EndOf(Row row) => At(row, row.EndsAt);

    private string At(Row row, Hand hand)
    {
        var (word, names) = hand == Hand.Right ? ("right", _right) : ("left", _left);
        var name = row.Number >= 1 && row.Number <= names.Length ? names[row.Number - 1] : null;
        if (!row.Reaches(hand)) return $"before {word}";
        return name is null ? word : $"{word} {name}";
    }

    private static string?[] NamesOf(EdgeWalk walk, int rows)
    {
        var names = new string?[rows];
        foreach (var stretch in walk.Stretches)
        {
            if (stretch.Kind != StretchKind.RowEnds) continue;
            for (var row = Math.Max(1, stretch.FirstRow); row <= Math.Min(rows, stretch.LastRow); row++) names[row - 1] = stretch.Name;
        }

        return names;
    }
}
