using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Diagnostics.Kinds;

/// <summary>A line that ends too early.</summary>
public static class LineUnfinished
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "line-unfinished",
        "TR0103",
        Severity.Error,
        """
        The line ends where something has to follow. If it was to go on in the next line, end it with a comma or a semicolon, or leave a bracket
        open, and put neither a blank line nor a line that begins like a statement between.
        """,
        Coaster.With("row 2:"),
        Coaster.With("row 2: dc across"));

    /// <param name="end">Where the line ends, without comment.</param>
    /// <param name="last">Its last word.</param>
    /// <param name="expected">What could follow, in words.</param>
    /// <param name="example">A line of this kind.</param>
    /// <param name="mends">Texts that make the line readable.</param>
    internal static Diagnostic At(
        int end, string last, IReadOnlyList<string> expected, string? example, IReadOnlyList<Mend> mends) =>
        new(Kind, new TextSpan(end, 0), $"the line stops after `{Quote.Short(last)}`, where {Quote.OneOf(expected)} should follow")
        {
            Help = example is null ? null : $"such a line reads: {example}",
            Mends = mends,
        };

    /// <param name="join">The word at the end of the line.</param>
    /// <param name="withComma">The same, with the comma before it.</param>
    /// <param name="isAfterComma">True if there is one.</param>
    internal static Diagnostic AtJoin(TextSpan join, TextSpan withComma, bool isAfterComma) =>
        new(Kind, join, "`join` is a stitch into another piece, and the line does not say which")
        {
            Help = "rounds are joined by themselves: take it out; to join to another piece, write `join to next st of front left edge`",
            Mends = isAfterComma ? [new Mend("take it out", withComma, string.Empty)] : [],
        };

    internal static Diagnostic AfterPart(TextSpan part, string text) =>
        At(part.End, text, ["`stitches at`", "an edge"], "piece left-front from back: 24 stitches at left edge", []);

    internal static Diagnostic AfterBegin(TextSpan amount, string text) =>
        At(amount.End, text, ["`stitches`"], "begin with 77 stitches, begin with 40 foundation sc, begin with ring, or begin with ring of 4 chains", [new Mend("say that they are stitches", new TextSpan(amount.End, 0), " stitches")]);

    internal static Diagnostic AfterRate(TextSpan rate, string text) =>
        At(rate.End, text, ["`in each row`", "`per 2 rows`"], "seam back right side-seam with front right side-seam: 2 sc in each row", []);

    internal static Diagnostic WithoutEdge(TextSpan shaping) =>
        new(Kind, new TextSpan(shaping.End, 0), "the shaping does not say at which edge")
        {
            Help = "say `at both edges`, `at right edge`, or `at` and the edge's name",
        };

    internal static Diagnostic AfterShaping(TextSpan shaping) =>
        new(Kind, new TextSpan(shaping.End, 0), "the shaping does not say in which rows")
        {
            Help = "say `every row`, `every 4 rows` or `by turns every 3 and 4 rows`",
            Mends = [new Mend("do it in every row", new TextSpan(shaping.End, 0), " every row")],
        };
}
