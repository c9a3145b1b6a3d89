using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>`inc` or `dec` in a row of several stitches.</summary>
public static class ChangeWithoutStitch
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "change-without-stitch",
        "TR0235",
        Severity.Error,
        """
        `inc` is two stitches in one place and `dec` two drawn together, in the stitch of the row. A row that names no stitch goes
        on with the one stitch of the row below. This row has several kinds of stitch, or it has none and the row below has several, so it
        can't be told which one is meant, and they differ in height. Write the stitch in front of it: `dc inc`, `hdc dec`.
        """,
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2: sc 10, inc, dc across
            """),
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2: sc 10, dc inc, dc across
            """));

    internal static Diagnostic At(TextSpan span, bool increase, IReadOnlyList<string> stitches)
    {
        var word = increase ? "inc" : "dec";
        return new(Kind, span, stitches.Count == 0
            ? $"no stitch is named in this row: of which is this `{word}`?"
            : $"the row has {Findings.Join(stitches)}: of which is this `{word}`?")
        {
            Help = $"name the stitch in front of it: {(stitches.Count == 0 ? $"`dc {word}`" : string.Join(" or ", stitches.Take(3).Select(s => $"`{s} {word}`")))}",
            Mends = [.. stitches.Take(3).Select(s => new Mend($"write `{s} {word}`", new TextSpan(span.Start, 0), s + " "))],
        };
    }
}
