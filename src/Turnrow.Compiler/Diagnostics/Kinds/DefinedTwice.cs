using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A name that is given twice.</summary>
public static class DefinedTwice
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "defined-twice",
        "TR0206",
        Severity.Error,
        """
        Two lines give the same name, or there are two gauges for one stitch. Which of the two is meant can't be told, and the wrong one
        would give the wrong size; the first is used for now. Take one of the lines out, or give one of them a name of its own.

        Tip: names may be long and plain, `sleeve-width` and `body-width`, so that they are never mixed up.
        """,
        SmallPattern.With("Scarf",
            """
            count width is 24
            count width is 26

            piece scarf
              begin with width stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Scarf",
            """
            count width is 24
            count border is 26

            piece scarf
              begin with width stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(TextSpan span, string name, TextSpan earlier) =>
        new(Kind, span, $"the name `{name}` is given a second time")
        {
            Help = "give one of the two another name, or take one out",
            Related = [new Related(earlier, "it is given here")],
        };

    internal static Diagnostic Gauge(TextSpan span, string stitch, TextSpan earlier) =>
        new(Kind, span, $"the gauge of {stitch} is given a second time")
        {
            Help = "keep the one that you measured with this yarn and hook",
            Related = [new Related(earlier, "it is given here")],
        };

    internal static Diagnostic Swatch(TextSpan span, string stitch, TextSpan earlier) =>
        new(Kind, span, $"the swatch of {stitch} is given a second time")
        {
            Help = "keep the larger one: it is the more exact",
            Related = [new Related(earlier, "it is given here")],
        };
}
