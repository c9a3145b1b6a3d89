using Turnrow.Fabric.Places;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Pieces;

/// <summary>
/// Rows with which a piece goes on that mirrors another: worked over the same places met from the other end, and then read from there, as the
/// rows before them were. Rows that are alike share their words.
/// </summary>
public sealed class MirroredRows(PieceBuilder builder)
{
    private readonly Dictionary<(IReadOnlyList<Word> Words, PlaceSequence Ahead, string? Yarn), IReadOnlyList<Word>> _known = [];

    /// <summary>The next row of the piece, made of a row of the original; null if what it is worked over is not known, or if it can't be worked there.</summary>
    public WordsPlan? Of(WordsPlan original)
    {
        if (builder.Ahead is not { } ahead) return null;
        var yarn = YarnWords.First(original.Words) ?? builder.Yarn;
        if (!_known.TryGetValue((original.Words, ahead, yarn), out var words))
        {
            var worked = RowWorker.Work(original.Words, ahead.Reversed(), builder.InRounds);
            if (worked.Fault is not null) return null;
            _known[(original.Words, ahead, yarn)] = words = WordReversal.Reverse(worked.Words, yarn);
        }

        return new WordsPlan(words) { Of = original.Of?.Mirrored() };
    }
}
