using Turnrow.Fabric.Colours;
using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;

namespace Turnrow.Publishing.Tests.Reader;

/// <summary>The yarns of a row of the model, place by place.</summary>
internal static class RowYarns
{
    /// <summary>`navy 5, cream 3`.</summary>
    public static string Of(Row row)
    {
        var (runs, yarn) = (new List<(string, int)>(), row.Yarn ?? "");
        Add(row.Work!.Words, ref yarn, runs);
        return YarnMemory.Runs(runs);
    }

    /// <summary>The yarns' names.</summary>
    public static IEnumerable<string> Names(Row row)
    {
        if (row.Yarn is not { } yarn || row.Work is not { } work) return [];
        var runs = new List<(string Yarn, int Count)>();
        Add(work.Words, ref yarn, runs);
        return runs.Where(run => run.Count > 0).Select(run => run.Yarn).Append(row.Yarn.Replace('-', ' ')).Distinct();
    }

    private static void Add(IReadOnlyList<Word> words, ref string yarn, List<(string, int)> runs)
    {
        foreach (var word in words)
        {
            if (word is ChangeYarn change)
            {
                yarn = change.Yarn;
                continue;
            }

            if (word is not Repeat repeat)
            {
                runs.Add((yarn.Replace('-', ' '), YarnPlaces.Made(word)));
                continue;
            }

            foreach (var way in repeat.Ways.Count > 0 ? repeat.Ways : [repeat])
            {
                for (var i = 0; i < way.Amount.Times; i++) Add(way.Words, ref yarn, runs);
            }
        }
    }
}
