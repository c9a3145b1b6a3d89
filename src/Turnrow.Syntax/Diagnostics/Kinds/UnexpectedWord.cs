using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Diagnostics.Kinds;

/// <summary>A word or sign where another should stand.</summary>
public static class UnexpectedWord
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "unexpected-word",
        "TR0102",
        Severity.Error,
        """
        The line can be read up to the underlined word; what stands there is not what can follow. The message says what could
        follow, the help shows a line of this kind as it is written. A comma that was forgotten between two parts of a row is a common cause.
        """,
        Coaster.With("row 2: dc 5 inc across"),
        Coaster.With("row 2: dc 5, dc across"));

    /// <param name="span">The word.</param>
    /// <param name="word">The same, as text.</param>
    /// <param name="expected">What could stand there, in words.</param>
    /// <param name="example">A line of this kind.</param>
    /// <param name="mends">Texts that make the line readable.</param>
    internal static Diagnostic At(
        TextSpan span, string word, IReadOnlyList<string> expected, string? example, IReadOnlyList<Mend> mends) =>
        new(Kind, span, $"`{Quote.Short(word)}` can't stand here; it should be {Quote.OneOf(expected)}")
        {
            Help = example is null ? null : $"such a line reads: {example}",
            Mends = mends,
        };

    internal static Diagnostic Misspelt(TextSpan span, string word, string meant) =>
        new(Kind, span, $"`{Quote.Short(word)}` can't stand here")
        {
            Help = $"did you mean `{meant}`?",
            Mends = [new Mend($"write `{meant}`", span, meant)],
        };

    internal static Diagnostic SeveralNext(TextSpan number, string text) =>
        new(Kind, number, $"`{text}` can't stand here; `in next` is one place")
        {
            Help = $"one in each of the next {text} is `dc {text}`; all {text} into one is `{text} dc in next`",
        };

    internal static Diagnostic SkipNext(TextSpan span, string text) =>
        new(Kind, span, $"`{Quote.Short(text)}` can't stand here; what is skipped is a number of stitches")
        {
            Help = "write `skip 1`, or `skip 2` for the next two",
        };

    internal static Diagnostic ChainFromHook(TextSpan span, string text) =>
        new(Kind, span, $"`{Quote.Short(text)}` can't stand here; which chain the first stitch goes into is worked out")
        {
            Help = "the row on a foundation reads `dc across` or `dc in each ch`",
        };

    internal static Diagnostic SecondWord(TextSpan span, string text, string first, TextSpan between) =>
        new(Kind, span, $"`{Quote.Short(text)}` can't stand here; a name is one word")
        {
            Help = $"write `{Quote.Short($"{first}-{text}")}`",
            Mends = [new Mend($"write `{Quote.Short($"{first}-{text}")}`", between, "-")],
        };

    internal static Diagnostic WithBehind(TextSpan with, string yarn, TextSpan before) =>
        new(Kind, with, "`with` can't stand here; it should be a comma")
        {
            Help = $"another yarn is a part of the row by itself: `sc 3, with {Quote.Short(yarn)}, sc across`",
            Mends = [new Mend("put in `,`", before, ",")],
        };

    internal static Diagnostic StripesUntil(TextSpan span, string word) =>
        new(Kind, span, $"`{word}` can't stand here; stripes go on until a line says otherwise")
        {
            Help = "take it out; a line `with navy`, or other stripes, ends them",
        };

    internal static Diagnostic Together(TextSpan span, string text) =>
        new(Kind, span, $"`{Quote.Short(text)}` can't stand here; stitches that are worked together have one word")
        {
            Help = "write `sc2tog` or `dc3tog`, and how many of them behind it: `sc2tog 4`",
        };

    internal static Diagnostic Unit(TextSpan span, string text, string unit) =>
        new(Kind, span, $"`{Quote.Short(text)}` can't stand here; units are `cm`, `mm`, `m`, `in` and `yd`")
        {
            Help = $"write `{unit}`",
            Mends = [new Mend($"write `{unit}`", span, unit)],
        };

    internal static Diagnostic YarnOfPiece(TextSpan span, string text) =>
        new(Kind, span, $"`{Quote.Short(text)}` can't stand here; the yarn of a piece is said in the line below it")
        {
            Help = "write `with navy` in a line of its own below this one: it holds for what is picked up, too",
        };

    internal static Diagnostic Twice(TextSpan span, string text) =>
        new(Kind, span, $"`{Quote.Short(text)}` can't stand here; the line says such a thing already")
        {
            Help = "say it once",
        };

    internal static Diagnostic NoStitch(TextSpan span, string text) =>
        new(Kind, span, $"`{Quote.Short(text)}` can't stand here; it should be a stitch or nothing")
        {
            Help = "such a line reads: count hem is sc stitches for 40 cm",
        };

    internal static Diagnostic ManyNames(TextSpan span, string text) =>
        new(Kind, span, $"`{Quote.Short(text)}` can't stand here; it should be `rows` or `stitches`")
        {
            Help = "such a line reads: expect back rows are front rows",
        };

    internal static Diagnostic Lying(TextSpan span, string text) =>
        new(Kind, span, $"`{Quote.Short(text)}` can't stand here; a piece lies flat, cups or ruffles")
        {
            Help = "such a line reads: expect crown lies flat in rounds 1 to 6",
        };

    internal static Diagnostic RateWithoutNumber(TextSpan span, string stitch) =>
        new(Kind, span, $"`{Quote.Short(stitch)}` can't stand here; it should be a number of stitches")
        {
            Help = $"such words read: 2 {Quote.Short(stitch)} in each row",
            Mends = [new Mend($"write `1 {stitch}`", new TextSpan(span.Start, 0), "1 ")],
        };

    internal static Diagnostic SumBeforeStitch(TextSpan span, string sign) =>
        new(Kind, span, $"`{sign}` can't stand here; it should be a stitch")
        {
            Help = "a sum in front of a stitch needs a name of its own: `count edge is hem - 4`, then `edge dc in next`",
        };

    internal static Diagnostic Prose(TextSpan sign) =>
        new(Kind, sign, "`>` can't stand here; it begins a line")
        {
            Help = "put it on a line of its own, or write `#` for a note that only you read",
            Mends = [new Mend("make it a comment", sign, "#")],
        };

    internal static Diagnostic Version(TextSpan span, string text) =>
        new(Kind, span, $"`{Quote.Short(text)}` can't stand here; it should be numbers and points, a word, or a text in quotes")
        {
            Help = $"write `version \"{Quote.Short(text)}\"`",
            Mends = [new Mend("put it in quotes", span, $"\"{text}\"")],
        };

    internal static Diagnostic UntilWithoutEach(TextSpan span, string text) =>
        new(Kind, span, $"`{Quote.Short(text)}` can't stand here; only `in each …` goes on until something remains")
        {
            Help = "such words read: dc in each st and sp until 1 remains",
        };

    internal static Diagnostic NumberBeforeKind(TextSpan span, string text) =>
        new(Kind, span, $"`{Quote.Short(text)}` can't stand here; it should be a kind of place, or a stitch and where it goes")
        {
            Help = "such words read: sc in each st and sp; sc in each st and 2 sc in each sp",
        };

    internal static Diagnostic SpreadOverWhat(TextSpan with, TextSpan stitch) =>
        new(Kind, with, "`with` can't stand here; before it should be said how far the stitches go between which something is spread")
        {
            Help = "such words read: sc across with (ch 2, skip 2) 5 times evenly",
            Mends = [new Mend("spread it over the row", new TextSpan(stitch.End, 0), " across")],
        };

    internal static Diagnostic EvenlyAlone(TextSpan span, string text) =>
        new(Kind, span, $"`{Quote.Short(text)}` can't stand here; so many in all and a rate can't both be said")
        {
            Help = "such words read: 84 sc evenly; or: 84 sc evenly, 3 sc in each corner; or: 3 sc per 2 rows, 1 sc in each st",
        };

    internal static Diagnostic EvenlyAlongSeam(TextSpan span) =>
        new(Kind, span, "`evenly` can't stand here; a seam says how many go into each row or stitch")
        {
            Help = "such words read: 1 sc in each row",
        };

    internal static Diagnostic SkippedAlongSeam(TextSpan span) =>
        new(Kind, span, "`skip` can't stand here; a seam joins place for place")
        {
            Help = "such words read: 1 sc in each st",
        };

    internal static Diagnostic SkipsAll(TextSpan span) =>
        new(Kind, span, "all that is said here is what to skip; say what goes into the rest")
        {
            Help = "such words read: 1 sc in each st, skip each sp",
        };

    internal static Diagnostic AtEachEnd(TextSpan span, string text) =>
        new(Kind, span, $"`{Quote.Short(text)}` can't stand here; how many stay plain at each end is said of what is spread evenly, once, with a number or a name")
        {
            Help = "such words read: sc across with (ch 2, skip 2) 5 times evenly, 3 at each end",
        };

    internal static Diagnostic Nth(TextSpan span, string text) =>
        new(Kind, span, $"`{Quote.Short(text)}` can't stand here; it says which place of a special stitch is meant")
        {
            Help = "such words read: stitch shell is (5 dc) in one place, centre is 3rd dc; or: sc in 3rd dc of next shell",
        };

    internal static Diagnostic SumWithoutStitch(TextSpan span, string text) =>
        new(Kind, span, $"`{Quote.Short(text)}` can't stand here; a stitch should stand before it")
        {
            Help = "such words read: dc hem - 4; a sum in front of a stitch needs a name of its own (`count edge is hem - 4`)",
        };

    internal static Diagnostic RoundsWay(TextSpan span, string text) =>
        new(Kind, span, $"`{Quote.Short(text)}` is no way in which rounds follow each other")
        {
            Help = "such a line reads: rounds are joined, rounds are joined and turned, or rounds are spiral",
        };
}
