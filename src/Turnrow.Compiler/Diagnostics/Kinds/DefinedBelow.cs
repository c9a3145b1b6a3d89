using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A name used above its definition.</summary>
public static class DefinedBelow
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "defined-below",
        "TR0208",
        Severity.Error,
        """
        A number, or a stitch of your own within another, is used on a line above the one that says what it is. The lines at the top are read in
        order, each standing on those before it, so that you can follow the arithmetic down the page as well. Move that line above the line
        that uses it.

        Tip: begin with the body's measurements, then the counts made of them.
        """,
        SmallPattern.With("Scarf",
            """
            count half is width / 2
            count width is 24

            piece scarf
              begin with half stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Scarf",
            """
            count width is 24
            count half is width / 2

            piece scarf
              begin with half stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(TextSpan span, string name, TextSpan later) =>
        new(Kind, span, $"what `{name}` is, is said only further down")
        {
            Help = "move that line above this one",
            Related = [new Related(later, "it is said here")],
        };
}
