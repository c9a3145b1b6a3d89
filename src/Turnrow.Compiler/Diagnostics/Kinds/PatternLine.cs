using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A line in a stitch pattern that can't stand there.</summary>
public static class PatternLine
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "pattern-line",
        "TR0456",
        Severity.Error,
        """
        A stitch pattern is its rows, from row 1 on, and below them one line that says which of them come again and again: `repeat rows 2 to 3`, up to
        the last one; without it all of them do. How often is said where the pattern is used, `straight 30 rows, in shells`, and so is every
        count: how many stitches a row has depends on how many repeats there are.
        """,
        SmallPattern.With("Scarf",
            """
            stitch pattern shells over multiple of 6 + 1
              row 1: sc, (skip 2, 5 dc in next, skip 2, sc) across
              row 2: 3 dc in first, skip 2, sc, (skip 2, 5 dc in next, skip 2, sc) until 3 remain, skip 2, 3 dc in next
              row 3: sc, (skip 2, 5 dc in next, skip 2, sc) across
              repeat rows 2 to 3, 9 more times

            piece scarf
              begin with 25 stitches
              straight 8 rows, in shells
            """),
        SmallPattern.With("Scarf",
            """
            stitch pattern shells over multiple of 6 + 1
              row 1: sc, (skip 2, 5 dc in next, skip 2, sc) across
              row 2: 3 dc in first, skip 2, sc, (skip 2, 5 dc in next, skip 2, sc) until 3 remain, skip 2, 3 dc in next
              row 3: sc, (skip 2, 5 dc in next, skip 2, sc) across
              repeat rows 2 to 3

            piece scarf
              begin with 25 stitches
              straight 8 rows, in shells
            """));

    internal static Diagnostic Repeat(TextSpan span) => new(Kind, span, "how often the rows of a stitch pattern come is said where it is used")
    {
        Help = "write `repeat rows 2 to 3` alone; the rows come as often as the piece needs them",
    };

    internal static Diagnostic Claim(TextSpan span) => new(Kind, span, "a row of a stitch pattern has as many stitches as there are repeats")
    {
        Help = "leave the count out here; a piece that is worked in the pattern can claim its own",
    };

    internal static Diagnostic BehindRepeat(TextSpan span) => new(Kind, span, "this row stands behind the rows that repeat, and would never be worked")
    {
        Help = "put `repeat rows …` behind the last row; a row that ends the work is written out in the piece",
    };

    internal static Diagnostic RepeatTwice(TextSpan span, TextSpan first) => new(Kind, span, "which rows repeat is said twice")
    {
        Help = "one line says it, up to the pattern's last row",
        Related = [new Related(first, "first here")],
    };

    internal static Diagnostic RepeatRows(TextSpan span, string name, int rows, int from, int to) =>
        new(Kind, span, from < 1 ? Invariant($"{name} has only {Counted.Rows(rows)}") : from > to ? "these rows run backwards" : Invariant($"{name} has {Counted.Rows(rows)}, and rows {from} to {to} are not its last ones"))
        {
            Help = Invariant($"write the rows that come again up to the last one, such as `repeat {(rows > 1 ? Invariant($"rows {rows - 1} to {rows}") : "row 1")}`"),
        };

    internal static Diagnostic Multiple(TextSpan span, int least, int most) => new(Kind, span, Invariant($"a multiple is a whole number from {least} to {most}"))
    {
        Help = "write how many stitches a repeat takes, and behind + how many there are beside the repeats: `over multiple of 6 + 1`",
    };

    internal static Diagnostic TooMany(TextSpan span, int most) => new(Kind, span, Invariant($"a stitch pattern can have {most} rows"))
    {
        Help = "longer pieces repeat the rows of a pattern; write the rows that differ into the piece",
    };

    internal static Diagnostic NoRows(TextSpan span, string name) => new(Kind, span, $"{name} has no rows")
    {
        Help = "write them below, each in a line of its own: `row 1: sc, (skip 2, 5 dc in next, skip 2, sc) across`",
    };

    internal static Diagnostic BothWays(TextSpan span, string name) => new(Kind, span, $"{name} has rows and rounds")
    {
        Help = "a stitch pattern is worked one way; make two of them",
    };
}
