using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Tests.Mutations;

/// <summary>Why a slip can't be found.</summary>
/// <param name="Name">In a few words.</param>
/// <param name="Explanation">To the designer.</param>
/// <param name="Covers">True of a slip for which it is the reason.</param>
internal sealed record Reason(string Name, string Explanation, Func<Judged, bool> Covers);

/// <summary>All the reasons there are. Of several that hold, the first is given.</summary>
internal static class Reasons
{
    /// <summary>What is no fault: the thing made is the same.</summary>
    public static Reason Same { get; } = new(
        "Nothing that is made changes",
        "The maker does the same, stitch for stitch, in every size: a line of the heading or for the eye, lines whose order does not matter, the same place of a row in other words, a claim that is gone.",
        j => j.Difference == Difference.Nothing);

    public static IReadOnlyList<Reason> All { get; } =
    [
        Same,
        new(
            "The swatch is hers",
            "Only she has the swatch in her hand. Every length is counted by it, so the pieces go on fitting each other; only a gauge over 10 in or 4 cm is too odd to be believed.",
            j => j.Statement is GaugeStatement),
        new(
            "The body is hers",
            "A measurement is said once, and all that has to fit it is calculated from it. The garment stays a whole one, for another body; only a size that falls out of line with the others is seen.",
            j => j.Statement is MeasureStatement),
        new(
            "A table in either unit",
            "A published table gives the same bodies in centimetres and in inches, each rounded for itself: now and then it makes a round more or fewer, and the pieces go on fitting.",
            j => j.Statement is BodyStatement && j.Kind == "a unit"),
        new(
            "How she turns is hers",
            "Published patterns turn with one chain more or fewer, counted or not. No count depends on it, and the instructions say what she says.",
            j => j.Statement is TurnStatement),
        new(
            "Which side faces is hers",
            "The first row of a foundation may face either side, and a mirror may be turned over where a fabric has none. All that comes after is calculated from that.",
            j => j.Kind is "right side and wrong side" or "a mirror turned over"),
        new(
            "How closely she sews and picks up is hers",
            "A rate that comes out is a good rate. What it gives is only wrong against a claim, as of the six stitches of a tie.",
            j => j.Within<RateSyntax>() || j.Only(Difference.SeamRates)),
        new(
            "A row's stitch is hers",
            "As many stitches, in another stitch: another fabric, not a wrong one. It is found where such a row is sewn to one of another stitch, or where a height or a gauge needs it.",
            j => j.Only(Difference.Stitches | Difference.Turning | Difference.Beginnings) && j.Has(Difference.Stitches)),
        new(
            "As many stitches, in other places",
            "A claim counts. It does not say over which stitches the chains of a mesh lie, how far buttonholes are apart, or at which edge a row is shaped, where the other edge would come out as well.",
            j => j.Only(Difference.Places | Difference.Turning | Difference.Steps)),
        new(
            "Rows that nothing compares",
            "How deep an armhole is, or how long a tie, is hers to choose, and no seam, claim or `expect` of the pattern depends on it. Front and back meet at side and shoulder, not along the armhole: `expect back rows are front rows` compares them.",
            j => j.Has(Difference.RowCount) && !j.Has(Difference.Pieces) && IsOfRows(j)),
        new(
            "Where short rows lie",
            "How high a dart sits is hers to choose. In the end the piece has as many rows and stitches, and its edges meet the others row for row.",
            j => j.Statement is StraightStatement && j.Has(Difference.Seams) && !j.Has(Difference.RowCount | Difference.LastCounts | Difference.Pieces)),
        new(
            "A number said once under a name",
            "Every line that needs the count takes it by its name, so the pieces go on fitting each other: another drop, shoulder or ease, not a wrong one.",
            j => j.Statement is CountStatement),
        new(
            "A part as long as the one meant",
            "Another edge or other rows, exactly as many: it comes out, and only she knows which were meant.",
            j => j.Only(Difference.Beginnings | Difference.Seams) && (j.Within<WalkSyntax>() || j.Within<EdgeSyntax>() || j.Within<SelectionSyntax>())),
        new(
            "Which side of a motif stays open",
            "A cushion is closed over its pad, a bag has a mouth: a side that is sewn to nothing, where the others are, may be meant.",
            j => j.Only(Difference.Seams) && j.Statement is SeamStatement { First: [{ Words: [.., { Text: "side" }] }] }),
        new(
            "The same count in the end",
            "The piece has as many rows and ends with as many stitches. Whether stitches are left a row earlier, or the changes come in other rows on the way, is hers to say.",
            j => !j.Has(Difference.RowCount | Difference.LastCounts | Difference.Pieces | Difference.Seams) && j.Statement is not CountStatement),
        new(
            "An edge may stay open",
            "Edges without a name of their own may be left open, like the ends of a band. Where two edges have the same name and one is joined, it is found.",
            j => j.Statement is SeamStatement && j.Only(Difference.Seams)),
        new(
            "A count that no claim says",
            "The line has no claim, or took it along. `turnrow claim` writes the counts into the file, and then each of these slips is found.",
            j => j.FoundIfClaimed),
    ];

    // A line of rows, or a count that only the rows of one piece and its mirror use.
    private static bool IsOfRows(Judged judged) => judged.Statement switch
    {
        StraightStatement => true,
        RowStatement => judged.Only(Difference.RowCount | Difference.Seams | Difference.Beginnings | Difference.LastCounts),
        ShapeStatement or RepeatStatement => judged.Only(Difference.RowCount | Difference.Seams | Difference.Beginnings),
        CountStatement count => UsedBy(judged.Slip.Pattern, count.Name.Text).Distinct().Count() == 1,
        _ => false,
    };

    private static IEnumerable<PieceStatement?> UsedBy(SlipPattern pattern, string name) =>
        Enumerable.Range(0, pattern.Tree.Lines.Count)
            .Where(i => pattern.NodesOf(i).Any(n => n.Node is NameExpression { Name: var used } && used.Text == name))
            .Select(pattern.PieceAt);
}
