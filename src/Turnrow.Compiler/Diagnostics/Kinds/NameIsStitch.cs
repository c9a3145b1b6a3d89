using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A name that is a stitch.</summary>
public static class NameIsStitch
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "name-is-stitch",
        "TR0207",
        Severity.Error,
        """
        A count, a measure or a piece has the name of a stitch. In a row nobody could tell which is meant: would `dc 5, tr` be a treble,
        or the number called `tr`? Choose another name. Most words of the trade are free: `hem`, `neck`, `armhole`, `cuff`.
        """,
        SmallPattern.With("Scarf",
            """
            count tr is 24

            piece scarf
              begin with tr stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Scarf",
            """
            count width is 24

            piece scarf
              begin with width stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(TextSpan span, string name) =>
        new(Kind, span, $"`{name}` is a stitch, so it can't be a name too")
        {
            Help = "choose another name, here and wherever it is used",
        };
}
