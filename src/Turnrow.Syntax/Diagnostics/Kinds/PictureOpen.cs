using Turnrow.Syntax.Text;

namespace Turnrow.Syntax.Diagnostics.Kinds;

/// <summary>A row of a picture without its second bar.</summary>
public static class PictureOpen
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "picture-bar",
        "TR0125",
        Severity.Error,
        """
        A row of a picture stands between two bars: `| . x x . |`. The bars are the edges of the fabric, and each letter between them is a part
        of the row that the key explains.
        """,
        Picture("| . x"),
        Picture("| . x |"));

    internal static Diagnostic At(TextSpan span) =>
        new(Kind, span, "this row of a picture has no bar at its end")
        {
            Help = "close it with a bar: `| . x |`",
            Mends = [new Mend("close it at the line's end", new TextSpan(span.End, 0), " |")],
        };

    private static string Picture(string row) =>
        $"""
        notation 1
        pattern "Filet square"
        terms US

        stitch pattern squares from picture, over multiple of 6 + 1
          key first is (dc)
          key "." is (ch 2, skip 2, dc)
          key "x" is (dc 3)
          {row}
          | x . |

        piece square
          begin with 19 stitches
          straight 4 rows, in squares

        """;
}
