using Turnrow.Fabric.Rows;
using Turnrow.Fabric.Words;

namespace Turnrow.Compiler.StitchPatterns;

/// <summary>
/// What a row of a picture is worked over, column by column. A picture counts columns: a stitch is one wide, and a space is as wide as the chains
/// over it. The words of its key say what they do over columns; here they become words over what is there.
/// </summary>
internal sealed class PictureColumns
{
    private readonly List<int> _widths;
    private int _at;

    private PictureColumns(List<int> widths) => _widths = widths;

    /// <summary>So many plain stitches: what the first row is worked over.</summary>
    public static PictureColumns Plain(int columns) => new([.. Enumerable.Repeat(0, columns)]);

    /// <summary>
    /// What words make, as the next row meets it: from the other end; in rounds in the same order, unless they are turned, when the place at the join
    /// still comes first.
    /// </summary>
    public static PictureColumns Above(IEnumerable<Word> said, RoundWay? way)
    {
        var widths = new List<int>();
        foreach (var word in said)
        {
            if (word is Chains chains) widths.Add(chains.Count);
            else if (word is Work work) widths.AddRange(Enumerable.Repeat(0, work.Makes * work.Amount.Count));
        }

        if (way is null) widths.Reverse();
        else if (way == RoundWay.Turned && widths.Count > 1) widths.Reverse(1, widths.Count - 1);
        return new PictureColumns(widths);
    }

    /// <summary>Columns that words take.</summary>
    public static int Takes(IEnumerable<Word> said) => InAll(said, static word => word switch
    {
        Skip skip => skip.Count,
        Work work => (long)work.Takes * work.Amount.Count,
        _ => 0L,
    });

    /// <summary>Columns that words make.</summary>
    public static int Makes(IEnumerable<Word> said) => InAll(said, static word => word switch
    {
        Chains chains => chains.Count,
        Work work => (long)work.Makes * work.Amount.Count,
        _ => 0L,
    });

    // A key may say more than any row holds; then it is wider than any picture, which is all that has to be known.
    internal static int InAll<T>(IEnumerable<T> parts, Func<T, long> columns) => (int)Math.Min(int.MaxValue, parts.Sum(columns));

    /// <summary>The words over what is there; null if one of them begins or ends inside a space.</summary>
    public List<Word>? Over(IEnumerable<Word> said)
    {
        var words = new List<Word>();
        foreach (var word in said)
        {
            var fits = word switch
            {
                Skip skip => PassOver(skip, words),
                Work { Takes: 1, Makes: 1 } work => OneEach(work, words),
                Work work => Together(work, words),
                _ => true,
            };
            if (!fits) return null;
            if (word is Chains or ChangeYarn) words.Add(word);
        }

        return words;
    }

    private bool PassOver(Skip skip, List<Word> words)
    {
        var places = 0;
        for (var left = skip.Count; left > 0; places++)
        {
            if (!Take(left, out var width)) return false;
            left -= width;
        }

        if (places > 0) words.Add(skip with { Count = places });
        return true;
    }

    // One into each stitch, and over a space as many into it as it is wide.
    private bool OneEach(Work work, List<Word> words)
    {
        var stitches = 0;
        for (var left = work.Amount.Count; left > 0;)
        {
            var isSpace = _at < _widths.Count && _widths[_at] > 0;
            if (!Take(left, out var width)) return false;
            left -= width;
            if (!isSpace) stitches++;
            if (stitches > 0 && (isSpace || left == 0)) words.Add(work with { Amount = Amount.Of(stitches) });
            if (!isSpace) continue;
            stitches = 0;
            words.Add(work with { Makes = width, Amount = Amount.Once, Target = new Target(Aim.NextOfKind, new PlaceFilter(PlaceFilterKind.AnySpace, null, 0)) });
        }

        return true;
    }

    private bool Together(Work work, List<Word> words)
    {
        for (var i = 0; i < work.Takes * work.Amount.Count; i++)
        {
            if (_at >= _widths.Count || _widths[_at] > 0) return false;
            _at++;
        }

        words.Add(work);
        return true;
    }

    private bool Take(int atMost, out int width)
    {
        width = 0;
        if (_at >= _widths.Count) return false;
        width = Math.Max(1, _widths[_at++]);
        return width <= atMost;
    }
}
