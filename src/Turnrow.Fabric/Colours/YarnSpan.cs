using Turnrow.Fabric.Rows;

namespace Turnrow.Fabric.Colours;

/// <summary>Where in a flat row a yarn is worked with first and last.</summary>
/// <param name="First">Stitches between the row's right edge and where it is taken up, on the piece with its right side facing.</param>
/// <param name="Last">Stitches between that edge and where it is left hanging.</param>
internal readonly record struct YarnSpan(long First, long Last)
{
    /// <summary>Of a yarn in a worked row; null if the row does not use it.</summary>
    public static YarnSpan? Of(Row row, string yarn)
    {
        if (row is not { Work: { } work, Yarn: { } begun } || Float.Span(work.Words, begun, yarn) is not var (first, last, all)) return null;
        return row.StartsAt == Hand.Right ? new YarnSpan(first, last) : new YarnSpan(all - first, all - last);
    }
}
