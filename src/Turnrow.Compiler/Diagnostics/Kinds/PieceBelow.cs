using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A piece that is opened further down.</summary>
public static class PieceBelow
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "piece-below",
        "TR0205",
        Severity.Error,
        """
        A piece can go on from another, be its mirror, or be joined to it only once that other piece is there. The file is read from the
        top, as a maker reads the pattern, and she can't work a thumb from a palm that she has not made. Move the lines of the piece that
        comes first above the others; a seam stands below both pieces that it joins.
        """,
        SmallPattern.With("Mitten",
            """
            piece thumb from palm: 8 stitches at right edge
              row 1: dc across

            piece palm
              begin with 24 stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Mitten",
            """
            piece palm
              begin with 24 stitches
              row 1 RS: dc across

            piece thumb from palm: 8 stitches at right edge
              row 1: dc across
            """));

    internal static Diagnostic At(TextSpan span, string name, TextSpan later) =>
        new(Kind, span, span == later ? $"`{name}` can't begin from itself" : $"`{name}` begins further down, so it is not there yet")
        {
            Help = span == later
                ? "begin it with chains of its own, or from another piece"
                : $"move the lines of `{name}` above this one",
            Related = span == later ? [] : [new Related(later, $"`{name}` begins here")],
        };
}
