using Turnrow.Fabric.Joins;
using Turnrow.Fabric.Stitches;

namespace Turnrow.Fabric.Words;

/// <summary>Where a stitch that joins a piece to another goes there.</summary>
/// <param name="Edge">The other piece's edge.</param>
/// <param name="Target">Which of the places that are left along it.</param>
/// <param name="Skipped">How many of them are passed over before.</param>
public sealed record JoinTo(JoinedEdge Edge, Target Target, int Skipped);

/// <summary>
/// Stitches that join a row to other pieces. They take no place of the row below and make none; chains on both sides of them are one space.
/// What they do along an edge is, by itself, a row worked over its places.
/// </summary>
public static class JoinWords
{
    /// <summary>A stitch that joins.</summary>
    public static Work Of(Stitch stitch, JoinTo to) => new(stitch, 0, 1, Amount.Once, Target.Next, HookInto.BothLoops) { To = to };

    /// <summary>True of a stitch that joins.</summary>
    public static bool IsOne(Word word) => word is Work { To: not null, Takes: 0 };

    /// <summary>True if any of the words joins.</summary>
    public static bool Any(IReadOnlyList<Word> words) => WordLists.Any(words, IsOne);

    /// <summary>The edges that words join to, in order of first appearance.</summary>
    internal static List<JoinedEdge> EdgesOf(IReadOnlyList<Word> words)
    {
        var edges = new List<JoinedEdge>();
        Visit(words, work =>
        {
            if (!edges.Contains(work.To!.Edge)) edges.Add(work.To.Edge);
        });
        return edges;
    }

    /// <summary>The first stitch that joins; null if none does.</summary>
    internal static Work? First(IReadOnlyList<Word> words)
    {
        Work? found = null;
        Visit(words, work => found ??= work);
        return found;
    }

    /// <summary>The first stitch that joins and has other words behind it, or stands in a bracket; null if all stand at the end.</summary>
    internal static Work? BeforeTheEnd(IReadOnlyList<Word> words)
    {
        var end = words.Count;
        while (end > 0 && IsOne(words[end - 1])) end--;
        return First([.. words.Take(end)]);
    }

    /// <summary>True if chains that come next go on with a space: chains are there, and behind them only what joins.</summary>
    internal static bool GoesOnSpace(IReadOnlyList<Word> before, int count)
    {
        var at = count - 1;
        while (at >= 0 && IsOne(before[at])) at--;
        return at >= 0 && at < count - 1 && before[at] is Chains;
    }

    /// <summary>What worked words do along an edge, as the words of a row over it; what is left of it stays.</summary>
    internal static IReadOnlyList<Word> Along(IReadOnlyList<Word> words, JoinedEdge edge) => [new RemoveCorners(), .. On(words, edge), new Leave(-1)];

    private static void Visit(IReadOnlyList<Word> words, Action<Work> visit)
    {
        for (var i = 0; i < words.Count; i++)
        {
            if (words[i] is Work { To: not null } work) visit(work);
            else Visit(words[i].Held, visit);
        }
    }

    private static List<Word> On(IReadOnlyList<Word> words, JoinedEdge edge)
    {
        var along = new List<Word>();
        for (var i = 0; i < words.Count; i++)
        {
            switch (words[i])
            {
                case Work { To: { } to } work when to.Edge == edge:
                    if (to.Skipped > 0) along.Add(new Skip(to.Skipped) { Origin = work.Origin });
                    along.Add(work with { Takes = 1, Target = to.Target });
                    break;
                case Group group:
                    AddTimes(along, On(group.Words, edge), group.Times);
                    break;
                case Repeat { Ways.Count: > 0 } repeat:
                    foreach (var way in repeat.Ways) AddTimes(along, On(way.Words, edge), way.Amount.Times);
                    break;
                case Repeat repeat:
                    AddTimes(along, On(repeat.Words, edge), repeat.Amount.Times);
                    break;
            }
        }

        return along;
    }

    private static void AddTimes(List<Word> along, List<Word> once, int times)
    {
        if (once.Count == 0 || times == 0) return;
        if (times == 1) along.AddRange(once);
        else along.Add(new Repeat(once, Amount.Of(times)));
    }
}
