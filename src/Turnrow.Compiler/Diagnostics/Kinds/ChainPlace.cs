using Turnrow.Syntax.Diagnostics;
using Turnrow.Syntax.Text;
using Turnrow.Syntax.Tree;

namespace Turnrow.Compiler.Diagnostics.Kinds;

/// <summary>Chains that go somewhere.</summary>
public static class ChainPlace
{
    /// <summary>Its name, code and page.</summary>
    public static readonly DiagnosticKind Kind = new(
        "chain-place",
        "TR0234",
        Severity.Error,
        """
        Chains in a row go over the work; they are not worked into anything. So they have a number and no place: `ch 1` with `skip 1`
        behind it makes a hole one stitch wide. To go on from a certain place, say it of the stitch that follows the chains. If you meant
        a stitch into that place, name the stitch.
        """,
        SmallPattern.With("Curtain",
            """
            piece curtain
              begin with 21 stitches
              row 1 RS: dc across
              row 2: dc, (ch 1 in next, dc) across
            """),
        SmallPattern.With("Curtain",
            """
            piece curtain
              begin with 21 stitches
              row 1 RS: dc across
              row 2: dc, (ch 1, skip 1, dc) across
            """));

    internal static Diagnostic At(StitchItem item) =>
        new(Kind, item.Span, item.Place is null ? "chains go over the work, so nothing in the row below says how many they are" : "chains go over the work and into nothing")
        {
            Help = item.Place is null ? "write how many: `ch 3`" : "write only how many, `ch 1`; what lies below them is passed with `skip 1`",
            Mends = item is { Before: null, Change: null, Amount: CountAmount amount, Place: { } place }
                ? [new Mend("take the place out", TextSpan.FromBounds(amount.Span.End, place.Span.End), string.Empty)]
                : [],
        };
}
