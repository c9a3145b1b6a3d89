using System.Globalization;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

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

    internal static Diagnostic At(StitchItem item) =>
        new(Kind, item.Span, "this says at once how many stitches go into one place and in how many places they are")
        {
            Help = "`3 dc in next` puts three in one place, `dc 3` puts one in each of three; two in each of three are `(2 dc in next) 3 times`; two in the last one are `2 dc in last`",
            Mends = item is { Before: null, Change: null, Words: [var stitch], Amount: CountAmount { Count: NumberExpression number } amount, Place: { } place }
                ?
                [
                    new Mend("put them all in one place", TextSpan.FromBounds(stitch.Span.Start, place.Span.Start), $"{number.Number.Numerator.ToString(CultureInfo.InvariantCulture)} {stitch.Text} "),
                    new Mend("put one in each", TextSpan.FromBounds(amount.Span.End, place.Span.End), string.Empty),
                ]
                : [],
        };
}
