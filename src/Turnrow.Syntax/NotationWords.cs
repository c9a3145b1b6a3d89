using Turnrow.Syntax.Reading;

namespace Turnrow.Syntax;

/// <summary>A word that begins a line.</summary>
/// <param name="Text">The word as the grammar spells it.</param>
/// <param name="Example">A whole line that begins with it.</param>
public sealed record StatementWord(string Text, string Example);

/// <summary>The words of the notation that a designer meets by name: those that begin lines, those that can't be names.</summary>
public static class NotationWords
{
    /// <summary>Every word that a line can begin with, in the order of a pattern. Prose begins with the sign <c>&gt;</c>.</summary>
    public static IReadOnlyList<StatementWord> Statements { get; } =
    [
        new("notation", "notation 1"),
        new("pattern", "pattern \"Fenland Wrap Waistcoat\""),
        new("version", "version 1.0"),
        new("terms", "terms US"),
        new("sizes", "sizes XS, S, M, L, \"6-9 months\""),
        new("skill", "skill \"easy\""),
        new("notion", "notion \"4 buttons\""),
        new("wearer", "wearer child"),
        new("body", "body women, cm"),
        new("yarn", "yarn main \"sport cotton\", weight 2, 50 g, 125 m"),
        new("hook", "hook 3.5 mm"),
        new("gauge", "gauge dc: 19 stitches and 10 rows to 10 cm"),
        new("swatch", "swatch dc: 20 stitches and 10 rows weigh 4.2 g"),
        new("turn", "turn dc: ch 3 counts"),
        new("stitch", "stitch shell is (5 dc) in one place"),
        new("measure", "measure bust is 76 (86, 97) cm"),
        new("count", "count hem is stitches for bust / 2 + 2 cm, odd"),
        new("ease", "ease bust is 5 cm"),
        new("use", "use \"stitches.turnrow\""),
        new("key", "key \"x\" is (dc 3)"),
        new("piece", "piece back"),
        new("begin", "begin with 77 stitches"),
        new("chain", "chain 79"),
        new("both", "both edges are side-seam"),
        new("right", "right edge is armhole"),
        new("left", "left edge is neck"),
        new("from", "from here both edges are armhole"),
        new("row", "row 5: dc 3, 2 dc in next, dc across = 61"),
        new("rows", "rows 2 to 19: dc across"),
        new("straight", "straight to 20 cm, even rows"),
        new("leave", "leave 6 at both edges"),
        new("add", "add 6 at armhole"),
        new("mark", "mark next row armhole"),
        new("repeat", "repeat rows 3 to 6, 9 more times"),
        new("shape", "shape 30 rows: dec 1 at both edges every 4 rows"),
        new("solid", "solid sphere 10 cm across"),
        new("with", "with navy"),
        new("stripes", "stripes are navy 2 rows, cream 4 rows"),
        new("floats", "floats at most 7 stitches"),
        new("for", "for L to 3X: straight 2 rows"),
        new("divide", "divide: 22 for left, skip 8, 50 for back, skip 8, 22 for right"),
        new("fasten", "fasten off"),
        new("weave", "weave in ends"),
        new("blanket", "blanket throw of tile: 5 across, 7 down, join in each sp"),
        new("seam", "seam back right side-seam with front right side-seam: 2 sc in each row"),
        new("expect", "expect 85 stitches measure 45 cm, within 1 cm"),
        new("finished", "finished bust is 2 x hem stitches"),
        new("made", "made S: back 45.5 cm wide, 38 cm high"),
        new("accept", "accept grade-falls: \"the straps have one length in all sizes\""),
        new("claims", "claims without turning chain"),
    ];

    private static readonly Dictionary<string, StatementWord> ByText = Statements.ToDictionary(word => word.Text, StringComparer.Ordinal);

    /// <summary>The statement that begins with a word; null if none does.</summary>
    public static StatementWord? Statement(string word) => ByText.GetValueOrDefault(word);

    /// <summary>The words that can't be names, since they have a meaning of their own wherever they stand.</summary>
    public static IReadOnlyList<string> Reserved => Words.Reserved();
}
