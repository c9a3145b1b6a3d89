using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A name that is defined nowhere.</summary>
public static class UnknownName
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "unknown-name",
        "TR0201",
        Severity.Error,
        """
        A name stands here for a number, and no `count` or `measure` line says what that number is. Mostly it is a slip of spelling, or
        the line was given another name later on. The number decides how many stitches or rows are made, so nothing can be counted from
        here until it is known. Correct the spelling, or write the line at the top: `count width is 24`, `measure bust is 90 cm`.

        Tip: give a number a name as soon as you write it a second time; a change then needs one line only.
        """,
        SmallPattern.With("Scarf",
            """
            count width is 24

            piece scarf
              begin with widht stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Scarf",
            """
            count width is 24

            piece scarf
              begin with width stitches
              row 1 RS: dc across
            """));

    // Where a count may stand in a row, these may too.
    private static readonly string[] RowWords = ["across", "around"];

    internal static Diagnostic At(TextSpan span, string name, IEnumerable<string> known)
    {
        var near = Spelling.Nearest(name, known.Concat(RowWords));
        return new(Kind, span, $"no line says what `{name}` is")
        {
            Help = near is null ? $"say it above the first piece: `count {name} is 12`, or `measure {name} is 30 cm`" : $"did you mean `{near}`?",
            Mends = near is null ? [] : [new Mend($"write {near}", span, near)],
        };
    }
}
