using Turnrow.Fabric.Numbers;
using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using static System.FormattableString;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>A number that is too small.</summary>
public static class TooSmall
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "too-small",
        "TR0213",
        Severity.Error,
        """
        A count came out smaller than it can be: below nothing, or nothing where at least 1 is needed, as for the stitches of a piece's
        first row. Mostly more is taken away than there was, and often only in the smallest size, where the same number weighs most. Look
        at the numbers that it is made of, in the sizes named. Give the small sizes a smaller number: `4 (6, 8)`.
        """,
        SmallPattern.With("Bib",
            """
            count width is 20
            count neck is width - 24

            piece bib
              begin with neck stitches
              row 1 RS: dc across
            """),
        SmallPattern.With("Bib",
            """
            count width is 20
            count neck is width - 14

            piece bib
              begin with neck stitches
              row 1 RS: dc across
            """));

    internal static Diagnostic At(TextSpan span, Findings findings, int[] sizes, int least, Func<int, Rational> value) =>
        new(Kind, span, Invariant($"this makes {findings.Each(sizes, i => value(i).ToString())}, and it has to be {least} or more"))
        {
            Sizes = findings.Names(sizes),
            Help = sizes.Length == findings.Sizes ? "look at the numbers that it is made of" : "look at the numbers that it is made of, in these sizes",
        };

    internal static Diagnostic Length(TextSpan span, Findings findings, int[] sizes) =>
        new(Kind, span, $"this length comes out below 0{findings.InSizes(sizes)}")
        {
            Sizes = findings.Names(sizes),
            Help = "more is taken away than there is: look at the lengths that it is made of",
        };
}
