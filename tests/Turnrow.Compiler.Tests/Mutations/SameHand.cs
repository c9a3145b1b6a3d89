using Turnrow.Fabric.Stitches;
using Turnrow.Fabric.Words;

namespace Turnrow.Compiler.Tests.Mutations;

/// <summary>Whether a maker's hands do the same for two rows' words, however they are put.</summary>
internal static class SameHand
{
    public static bool Is(IReadOnlyList<Word> first, IReadOnlyList<Word> second) => WordLists.Same(Plainly(first), Plainly(second));

    /// <summary>The stitches that words make.</summary>
    public static HashSet<Stitch> Stitches(IReadOnlyList<Word> words)
    {
        var found = new HashSet<Stitch>();
        var open = new Stack<Word>(words);
        while (open.TryPop(out var word))
        {
            if (word is Work work) found.Add(work.Stitch);
            foreach (var inner in word switch { Repeat repeat => repeat.Words, Group group => group.Words, _ => [] }) open.Push(inner);
        }

        return found;
    }

    // `in first` of what is the first place and `in last` of what is the last are the next place; a skip below chains is said before or behind them.
    private static List<Word> Plainly(IReadOnlyList<Word> words)
    {
        var plain = new List<Word>(words.Count);
        foreach (var word in words)
        {
            var said = word switch
            {
                Work { Target.Aim: Aim.First or Aim.Last or Aim.NextOfKind, Passed: 0 } work => work with { Target = Target.Next },
                Work { Amount.Times: 0 } => null,
                Repeat { Amount.Times: 0 } => null,
                Repeat repeat => repeat with { Words = Plainly(repeat.Words), Ways = [] },
                _ => word,
            };
            if (said is null) continue;
            if (said is Skip && plain is [.., Chains]) plain.Insert(plain.Count - 1, said);
            else plain.Add(said);
        }

        return plain;
    }
}
