using Turnrow.Fabric.Words;

namespace Turnrow.Fabric.Colours;

/// <summary>A yarn that rests within a row and is taken up again further on: there it is carried over the stitches of the others.</summary>
/// <param name="Yarn">The yarn.</param>
/// <param name="From">The first stitch that it is carried over, counted from where the row starts, from 1.</param>
/// <param name="To">The last one.</param>
public readonly record struct Float(string Yarn, long From, long To)
{
    /// <summary>Of those, how many it is carried over at the end of the round before, to where that is joined; they are not among the others.</summary>
    public long BeforeJoin { get; init; }

    /// <summary>Stitches that it is carried over.</summary>
    public long Stitches => To - From + 1 + BeforeJoin;

    /// <summary>The longest of each yarn in a worked row, of those that are longer than so many stitches.</summary>
    public static IReadOnlyList<Float> Longer(IReadOnlyList<Word> worked, string yarn, int most)
    {
        var walk = new Walk(yarn);
        walk.Along(worked);
        return [.. walk.Longest.Values.Where(f => f.Stitches > most)];
    }

    /// <summary>
    /// What is carried from a round over the join into the next one, over more than so many stitches. Turned, the yarn rests where it is taken up
    /// again.
    /// </summary>
    public static IReadOnlyList<Float> OverJoin((IReadOnlyList<Word> Worked, string Yarn) round, (IReadOnlyList<Word> Worked, string Yarn) next, int most)
    {
        var (before, after) = (new Walk(round.Yarn), new Walk(next.Yarn));
        before.Along(round.Worked);
        after.Along(next.Worked);
        var found = new List<Float>();
        foreach (var (yarn, begun) in after.Begun)
        {
            if (!before.Ends.TryGetValue(yarn, out var end)) continue;
            var carried = new Float(yarn, 1, begun) { BeforeJoin = before.Stitches - end };
            if (carried.Stitches > most) found.Add(carried);
        }

        return found;
    }

    /// <summary>Stitches of a worked row before a yarn is used first, up to where it is used last, and in all; null if it is not used.</summary>
    internal static (long First, long Last, long All)? Span(IReadOnlyList<Word> worked, string begun, string yarn)
    {
        var walk = new Walk(begun);
        walk.Along(worked);
        return walk.Begun.TryGetValue(yarn, out var first) ? (first, walk.Ends[yarn], walk.Stitches) : null;
    }

    private sealed class Walk(string yarn)
    {
        private readonly Dictionary<string, long> _ends = [];
        private readonly Dictionary<string, long> _begun = [];
        private string _yarn = yarn;
        private long _at;

        public Dictionary<string, Float> Longest { get; } = [];

        /// <summary>Of each yarn, stitches before it is used first.</summary>
        public IReadOnlyDictionary<string, long> Begun => _begun;

        /// <summary>Of each yarn, stitches up to where it is used last.</summary>
        public IReadOnlyDictionary<string, long> Ends => _ends;

        /// <summary>Stitches so far.</summary>
        public long Stitches => _at;

        public void Along(IReadOnlyList<Word> words)
        {
            for (var i = 0; i < words.Count; i++)
            {
                switch (words[i])
                {
                    case ChangeYarn change: _yarn = change.Yarn; break;
                    case Repeat { Ways.Count: > 0 } repeat: Along(repeat.Ways); break;
                    case Repeat repeat when YarnWords.Has(repeat.Words): Again(repeat); break;
                    case Chains chains: Work(chains.Count); break;
                    case var word: Work(WordCounts.Makes(word)); break;
                }
            }
        }

        // All times after the second are like the second: what it leaves is moved on.
        private void Again(Repeat repeat)
        {
            var (times, begun) = (repeat.Amount.Times, _at);
            if (times > 0) Along(repeat.Words);
            // Where nothing is made, no yarn is carried over anything either, however often.
            if (times < 2 || _at == begun) return;
            var before = _at;
            Along(repeat.Words);
            var on = (_at - before) * (times - 2);
            foreach (var (yarn, end) in _ends.ToList())
            {
                if (end > before) _ends[yarn] = end + on;
            }

            _at += on;
        }

        private void Work(long stitches)
        {
            if (stitches <= 0) return;
            if (_ends.TryGetValue(_yarn, out var end) && end < _at)
            {
                var carried = new Float(_yarn, end + 1, _at);
                if (!Longest.TryGetValue(_yarn, out var longest) || carried.Stitches > longest.Stitches) Longest[_yarn] = carried;
            }

            _begun.TryAdd(_yarn, _at);
            _at += stitches;
            _ends[_yarn] = _at;
        }
    }
}
