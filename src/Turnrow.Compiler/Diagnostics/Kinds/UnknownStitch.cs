using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A word that is no stitch.</summary>
public static class UnknownStitch
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "unknown-stitch",
        "TR0202",
        Severity.Error,
        """
        A word stands where a stitch should, and no stitch is called so in the terms of this pattern. Until it is known how many stitches
        below it takes and how many it makes, the row can't be counted. Look for a slip of spelling first. Stitches are written by their
        abbreviation: `ch`, `sl st`, `sc`, `hdc`, `dc`, `tr`, `dtr`, `trtr` in US terms; several drawn together are `dc2tog`, `dc3tog` and so on.

        Tip: `inc` and `dec` need no stitch in front of them if the row has only one kind.
        """,
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dv across
            """),
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dc across
            """));

    internal static Diagnostic At(TextSpan span, string word, IEnumerable<string> known)
    {
        var stitches = known.ToList();
        if (PrintHabits.InRow(word) is { } habit) return new(Kind, span, $"`{word}` is not a stitch") { Help = habit };
        var near = Spelling.Nearest(word, stitches);
        return new(Kind, span, $"`{word}` is not a stitch")
        {
            Help = near is null ? $"stitches in these terms: {string.Join(", ", stitches)}" : $"did you mean `{near}`?",
            Mends = near is null ? [] : [new Mend($"write {near}", span, near)],
        };
    }
}
