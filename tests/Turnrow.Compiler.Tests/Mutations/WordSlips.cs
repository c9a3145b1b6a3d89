using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Tests.Mutations;

/// <summary>Slips in single words: right for left, one stitch for another, odd for even.</summary>
internal static class WordSlips
{
    private static readonly (string Kind, string One, string Other)[] Pairs =
    [
        ("right side and wrong side", "RS", "WS"),
        ("inc and dec", "inc", "dec"),
        ("odd and even", "odd", "even"),
        ("a sign of arithmetic", "+", "-"),
        ("a sign of arithmetic", "x", "/"),
        ("US and UK terms", "US", "UK"),
        ("first and last", "first", "last"),
        ("to and for", "to", "for"),
        ("right and left", "right", "left"),
        ("a yarn's unit", "g", "oz"),
        ("a yarn's unit", "m", "yd"),
    ];

    private static readonly string[][] Stitches = [["sc", "hdc", "dc", "tr"], ["dc", "htr", "tr", "dtr"]];

    public static IEnumerable<Slip> Of(SlipPattern pattern, int index)
    {
        var statement = pattern.Tree.Lines[index].Statement!;
        var tokens = pattern.TokensOf(index);
        for (var i = 0; i < tokens.Count; i++)
        {
            var (text, span) = (pattern.Text(tokens[i].Span), tokens[i].Span);
            foreach (var (kind, one, other) in Pairs)
            {
                if ((text == one || text == other) && Applies(kind, statement)) yield return pattern.Slip(KindIn(kind, statement), index, span, text == one ? other : one);
            }

            if (text == "counts" && statement is TurnStatement) yield return pattern.Slip("a turning chain that counts, or not", index, span, "does not count");
            if (text == "does" && statement is TurnStatement) yield return pattern.Slip("a turning chain that counts, or not", index, TextSpan.FromBounds(span.Start, tokens[i + 2].Span.End), "counts");
            if (text == "across") yield return pattern.Slip("how far a word of a row goes", index, span, "until 1 remains");
            foreach (var stitch in OtherStitches(pattern, text)) yield return pattern.Slip(StitchKind(pattern, index, statement, span), index, span, stitch);
        }
    }

    private static bool Applies(string kind, StatementSyntax statement) => kind switch
    {
        "to and for" => statement is StraightStatement { Extent: not StraightExtent.Rows },
        "a yarn's unit" => statement is YarnStatement,
        "first and last" => statement is RowStatement or SeamStatement or PieceStatement or ShapeStatement,
        _ => true,
    };

    private static string KindIn(string kind, StatementSyntax statement) => kind != "right and left" ? kind : statement switch
    {
        SeamStatement => "a seam's right and left",
        PieceStatement { Origin: PickUpOriginSyntax } => "a pick-up's right and left",
        _ => "an edge's right and left",
    };

    private static IEnumerable<string> OtherStitches(SlipPattern pattern, string text)
    {
        var stitches = Stitches[pattern.Compilation.Pattern.Terms == Turnrow.Fabric.Stitches.Terms.UK ? 1 : 0];
        var at = Array.IndexOf(stitches, text);
        if (at > 0) yield return stitches[at - 1];
        if (at >= 0 && at + 1 < stitches.Length) yield return stitches[at + 1];
    }

    private static string StitchKind(SlipPattern pattern, int index, StatementSyntax statement, TextSpan span) =>
        pattern.NodesOf(index).Any(n => n.Node is RateSyntax && n.Node.Span.Start <= span.Start && span.End <= n.Node.Span.End) ? "a rate's stitch"
        : statement switch
        {
            GaugeStatement => "a gauge's stitch",
            TurnStatement => "a turning chain's stitch",
            RowStatement => "a row's stitch",
            _ => "the stitch that a length is counted in",
        };
}
