using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A stitch with a number of places and a place.</summary>
public static class StitchBoth
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "stitch-both",
        "TR0233",
        Severity.Error,
        """
        A number behind a stitch puts one in each of so many places: `dc 3`. A number in front puts so many into one place, and says
        which: `3 dc in next`. Both at once would need a picture to be understood. Keep one of the two. For two in each of three places in
        a row write `(2 dc in next) 3 times`, or in short `inc 3`.
        """,
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dc 9, dc 3 in next, dc across
            """),
        SmallPattern.With("Coaster",
            """
            piece coaster
              begin with 20 stitches
              row 1 RS: dc across
              row 2: dc 9, 3 dc in next, dc across
            """));

    internal static Diagnostic At(TextSpan span) =>
        new(Kind, span, "this says at once how many go into one place and how many places there are")
        {
            Help = "`3 dc in next` puts three in one place, `dc 3` one in each of three; for both write a repeat: (2 dc in next) 3 times",
        };
}
